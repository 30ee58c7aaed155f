//! Weeks and dates at the top of a visit file. In: its table. Out: the weeks at the visit, or why they do not follow.

use super::{Reader, entry};
use crate::exam::dates;
use crate::exam::keys::{self, Scope};
use crate::exam::model::Dates;
use crate::exam::piece::{Fault, Piece};
use crate::exam::quantity as q;
use crate::report::{Problem, quoted};
use crate::units::Gestation;
use jiff::civil::Date;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// Days in a cycle.
const CYCLE_DAYS: std::ops::RangeInclusive<u16> = 18..=60;

impl Reader<'_> {
    /// Weeks as given, or from the dates; both, when they agree. And the dates.
    pub(super) fn weeks(&mut self, top: &DeTable<'_>) -> (Option<Gestation>, Dates) {
        let given = self.top(top, "weeks", |reader, value| {
            let text = reader.text_of(value)?;
            let piece = Piece::new(&text);
            q::weeks(piece)
        });
        let visit = self.date(top, "visit");
        let due = self.date(top, "due");
        let last_period = self.date(top, "last-period");
        let cycle = self.top(top, "cycle", |reader, value| {
            let text = reader.text_of(value)?;
            cycle(Piece::new(&text))
        });
        let scan = self.top(top, "scan", |reader, value| {
            let text = reader.text_of(value)?;
            scan(Piece::new(&text))
        });
        self.dates_in_words(visit, due, last_period, cycle, scan);
        let dates = Dates { visit, due, last_period, cycle, scan };
        (self.weeks_from(top, given, dates), dates)
    }

    fn weeks_from(&mut self, top: &DeTable<'_>, given: Option<Gestation>, dates: Dates) -> Option<Gestation> {
        let Dates { visit, due, last_period, cycle, scan } = dates;
        if let (Some(_), None, false) = (cycle, entry(top, "last-period"), self.broken) {
            self.top_fault(
                "cycle",
                Fault::whole("date-missing", "a cycle says nothing without the last period")
                    .expecting("`last-period` beside it"),
            );
        }
        let from_scan = scan.and_then(|(at, date)| dates::due_from_scan(at, date));
        let from_period = last_period
            .and_then(|date| dates::due_from_last_period(date, cycle.map_or(dates::USUAL_CYCLE, i32::from)));
        let settled = from_scan
            .map(|d| ("scan", d))
            .or(due.map(|d| ("due", d)))
            .or(from_period.map(|d| ("last-period", d)));
        self.dates_agree(due, from_scan, from_period, last_period);
        let (by, due) = match (settled, given) {
            (Some(settled), _) => settled,
            (None, given) => return given,
        };
        let Some(visit) = visit else {
            if !self.broken
                && given.is_none()
                && entry(top, "weeks").is_none()
                && entry(top, "visit").is_none()
            {
                self.top_fault(
                    by,
                    Fault::whole(
                        "date-missing",
                        format!("the weeks cannot be worked out from `{by}` without the date of the visit"),
                    )
                    .expecting("`visit = 2026-03-14` beside it"),
                );
            }
            return given;
        };
        let worked_out = dates::at_visit(due, visit).filter(|age| q::WEEKS_DAYS.contains(&age.days()));
        let Some(worked_out) = worked_out else {
            let days = dates::TERM_DAYS - dates::days_between(visit, due);
            let says = if days < 0 {
                "lies before the pregnancy began".to_owned()
            } else {
                format!("would be at {}+{}", days / 7, days % 7)
            };
            self.top_fault(
                "visit",
                Fault::whole("out-of-range", format!("by `{by}` this visit {says}"))
                    .expecting("a visit from 4+0 to 45+0 weeks"),
            );
            return given;
        };
        match given {
            Some(given) if given != worked_out => {
                let message =
                    format!("{given} does not agree with `{by}`: due {due}, so {worked_out} on {visit}");
                self.top_fault(
                    "weeks",
                    Fault::whole("weeks-and-dates-disagree", message)
                        .expecting("one of them mended, or one of them left out"),
                );
                Some(given)
            }
            _ => Some(worked_out),
        }
    }

    pub(super) fn dates_in_words(
        &mut self,
        visit: Option<Date>,
        due: Option<Date>,
        last_period: Option<Date>,
        cycle: Option<u16>,
        scan: Option<(Gestation, Date)>,
    ) {
        for (name, date) in [("visit", visit), ("due", due), ("last-period", last_period)] {
            self.dates.extend(date.map(|date| (name.to_owned(), dates::written(date))));
        }
        self.dates.extend(cycle.map(|days| ("cycle".to_owned(), days.to_string())));
        self.dates
            .extend(scan.map(|(at, date)| ("scan".to_owned(), format!("{at} on {}", dates::written(date)))));
    }

    /// A scan and a due date must say the same; a due date is used as given when it differs from the last period.
    pub(super) fn dates_agree(
        &mut self,
        due: Option<Date>,
        from_scan: Option<Date>,
        from_period: Option<Date>,
        last_period: Option<Date>,
    ) {
        if let (Some(due), Some(from_scan)) = (due, from_scan)
            && due != from_scan
        {
            let message =
                format!("{due} does not agree with the scan, by which the baby is due on {from_scan}");
            self.top_fault(
                "due",
                Fault::whole("weeks-and-dates-disagree", message)
                    .expecting("one of them mended, or one of them left out"),
            );
        }
        if let (Some(due), None, Some(from_period), Some(last_period)) =
            (due, from_scan, from_period, last_period)
            && due != from_period
        {
            let calendar = if dates::due_by_calendar_rule(last_period) == Some(due) {
                " (it is the calendar rule's date)"
            } else {
                ""
            };
            let message = format!("due: {due} is used{calendar}; last period + 280 days gives {from_period}");
            if let Some(span) = self.spans.get("due").cloned() {
                self.problems.push(
                    Problem::at("due-and-last-period-differ", self.file, span, message)
                        .expecting("the date that was settled, alone")
                        .as_warning(),
                );
            }
        }
    }

    /// A key above the first heading.
    pub(super) fn top<T>(
        &mut self,
        table: &DeTable<'_>,
        name: &str,
        parse: impl Fn(&Self, &Spanned<DeValue<'_>>) -> Result<T, Fault>,
    ) -> Option<T> {
        let value = entry(table, name)?;
        self.spans.insert(name.to_owned(), value.span());
        match parse(self, value) {
            Ok(value) => Some(value),
            Err(fault) => {
                self.top_fault(name, fault);
                None
            }
        }
    }

    pub(super) fn top_fault(&mut self, name: &str, fault: Fault) {
        if let (Some(key), Some(span)) = (keys::find(Scope::Top, name), self.spans.get(name).cloned()) {
            self.fault(key, span, fault);
        }
    }

    pub(super) fn date(&mut self, table: &DeTable<'_>, name: &str) -> Option<Date> {
        self.top(table, name, |reader, value| match value.get_ref() {
            DeValue::Datetime(date) => {
                let day = date.date.filter(|_| date.time.is_none() && date.offset.is_none());
                let day = day
                    .ok_or_else(|| Fault::whole("not-a-date", "only a day can stand here, without a time"))?;
                civil(day.year, day.month, day.day).ok_or_else(|| {
                    let raw = reader.source.get(value.span()).unwrap_or_default();
                    Fault::whole("not-a-date", format!("{} is not a day of the calendar", quoted(raw)))
                })
            }
            _ => {
                let text = reader.text_of(value)?;
                day(Piece::new(&text))
            }
        })
    }
}

fn civil(year: u16, month: u8, day: u8) -> Option<Date> {
    Date::new(i16::try_from(year).ok()?, i8::try_from(month).ok()?, i8::try_from(day).ok()?).ok()
}

/// A day written as text, `2025-09-20`.
fn day(piece: Piece<'_>) -> Result<Date, Fault> {
    let parts: Vec<&str> = piece.text.trim().split('-').collect();
    let date = match parts[..] {
        [y, m, d] if (y.len(), m.len(), d.len()) == (4, 2, 2) => match (y.parse(), m.parse(), d.parse()) {
            (Ok(y), Ok(m), Ok(d)) => civil(y, m, d),
            _ => None,
        },
        _ => None,
    };
    date.ok_or_else(|| {
        Fault::at(
            "not-a-date",
            piece,
            format!("{} is not a date that can be read in one way only", quoted(piece.text)),
        )
        .expecting("year-month-day, such as 2026-03-14")
    })
}

/// `12+3 on 2025-09-20`.
fn scan(piece: Piece<'_>) -> Result<(Gestation, Date), Fault> {
    const EXPECTED: &str = "weeks and a date such as `12+3 on 2025-09-20`";
    let Some(at) = piece.text.find(" on ") else {
        return Err(Fault::at(
            "not-a-scan",
            piece,
            format!("{} does not say the weeks and the date", quoted(piece.text)),
        )
        .expecting(EXPECTED));
    };
    let weeks = q::weeks(piece.part(0..at).trim())?;
    let date = day(piece.part(at + 4..piece.text.len()).trim())?;
    Ok((weeks, date))
}

fn cycle(piece: Piece<'_>) -> Result<u16, Fault> {
    let text = piece.text.trim_end_matches("days").trim_end_matches("day").len();
    let days = q::whole_number(piece.part(0..text).trim(), "a number of days such as 28")?;
    if CYCLE_DAYS.contains(&days) {
        return Ok(days);
    }
    Err(Fault::at("out-of-range", piece, format!("a cycle of {days} days is out of range"))
        .expecting(format!("{} to {} days", CYCLE_DAYS.start(), CYCLE_DAYS.end())))
}
