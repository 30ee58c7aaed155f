//! Dates to weeks: 280 days, against published and derived rows.

use super::shared::{problems, read, rows};
use handspan::exam::dates::{at_visit, due_by_calendar_rule, due_from_last_period};
use handspan::units::Gestation;

#[test]
fn published_due_dates() {
    let rows = rows("dating.csv");
    assert_eq!(rows.len(), 9);
    for row in rows {
        let last_period = row[0].parse().expect("a date");
        let due = due_from_last_period(last_period, 28).expect("a due date");
        let calendar = due_by_calendar_rule(last_period).expect("a due date");
        assert_eq!(due.to_string(), row[1], "280 days from {}", row[0]);
        assert_eq!(calendar.to_string(), row[2], "the calendar rule from {}", row[0]);
        assert_eq!(due.until(calendar).expect("days").get_days().to_string(), row[3]);
        assert_eq!(at_visit(due, due), Gestation::new(40, 0));
    }
}

#[test]
fn weeks_from_each_kind_of_date() {
    let weeks =
        |top: &str| read(&format!("{top}\n[baby]\nhead = \"fundus\"\n")).weeks.expect("weeks").to_string();
    assert_eq!(weeks("visit = 2025-09-03\nlast-period = 2025-01-01"), "35+0");
    assert_eq!(weeks("visit = 2025-09-03\nlast-period = 2025-01-01\ncycle = 35"), "34+0");
    assert_eq!(weeks("visit = 2025-09-03\nlast-period = 2025-01-01\ncycle = \"26 days\""), "35+2");
    assert_eq!(weeks("visit = 2025-09-03\ndue = 2025-10-08"), "35+0");
    assert_eq!(weeks("visit = \"2025-09-03\"\ndue = \"2025-10-08\""), "35+0");
    assert_eq!(weeks("visit = 2026-03-14\nscan = \"12+3 on 2025-09-20\""), "37+3");
    // The scan sets the date when it is given.
    assert_eq!(weeks("visit = 2026-03-14\nscan = \"12+3 on 2025-09-20\"\nlast-period = 2025-06-01"), "37+3");
    assert_eq!(weeks("weeks = \"37+3\"\nvisit = 2026-03-14\nscan = \"12+3 on 2025-09-20\""), "37+3");
    assert_eq!(weeks("weeks = \"37+3\"\ndue = 2026-04-01"), "37+3");
}

#[test]
fn dates_that_do_not_hold_together() {
    let ids = |top: &str| problems(&format!("{top}\n[baby]\nhead = \"fundus\"\n"));
    assert_eq!(ids("weeks = \"37+0\"\nvisit = 2025-09-03\ndue = 2025-10-08"), ["weeks-and-dates-disagree"]);
    assert_eq!(
        ids("visit = 2026-03-14\ndue = 2026-04-02\nscan = \"12+3 on 2025-09-20\""),
        ["weeks-and-dates-disagree"]
    );
    assert_eq!(ids("due = 2025-10-08"), ["date-missing"]);
    assert_eq!(ids("visit = 2024-09-03\nlast-period = 2025-01-01"), ["out-of-range"]);
    assert_eq!(ids("visit = 2025-12-03\nlast-period = 2025-01-01"), ["out-of-range"]);
    assert_eq!(ids("visit = 2025-02-30\ndue = 2025-10-08"), ["not-a-date"]);
    assert_eq!(ids("visit = \"03/09/2025\"\ndue = 2025-10-08"), ["not-a-date"]);
    assert_eq!(ids("visit = 2025-09-03T10:00:00\ndue = 2025-10-08"), ["not-a-date"]);
    assert_eq!(ids("visit = 2025-09-03\ncycle = 28\ndue = 2025-10-08"), ["date-missing"]);
    // A settled due date is used, and the reader is told that the last period gives another.
    assert_eq!(
        ids("visit = 2025-09-03\ndue = 2025-10-09\nlast-period = 2025-01-01"),
        ["due-and-last-period-differ"]
    );
}
