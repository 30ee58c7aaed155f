//! The parts that messages fall into. In: the id of a message. Out: its part. A language has all messages of a part or none,
//! and a command that needs a part which a language has not is refused in it.

/// What messages are for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Part {
    /// The family page, and what stands on its picture.
    Family,
    /// Pictures: what is said of them and under them, and how the baby lies in words.
    Picture,
    /// The guide for drawing on skin.
    Guide,
    /// Sheets to teach with.
    Plates,
    /// What was understood, what is reckoned, and the remarks.
    Check,
    /// Entries for the chart.
    Chart,
    /// The tape over the visits.
    Growth,
    /// The page in the browser.
    Desk,
    /// Practice cases.
    Cases,
    /// Records as FHIR.
    Records,
}

impl Part {
    /// All of them.
    pub const ALL: [Part; 10] = [
        Part::Family,
        Part::Picture,
        Part::Guide,
        Part::Plates,
        Part::Check,
        Part::Chart,
        Part::Growth,
        Part::Desk,
        Part::Cases,
        Part::Records,
    ];

    /// The part of a message; `None` for what belongs to one language alone, such as the mark of a draft.
    pub fn of(id: &str) -> Option<Part> {
        let longest =
            STARTS.iter().filter(|(start, _)| id.starts_with(start)).max_by_key(|(start, _)| start.len());
        longest.map(|(_, part)| *part)
    }

    /// What it holds, after "has no words for".
    pub fn name(self) -> &'static str {
        match self {
            Part::Family => "the family page",
            Part::Picture => "pictures alone",
            Part::Guide => "the guide for drawing on skin",
            Part::Plates => "plates",
            Part::Check => "what is checked",
            Part::Chart => "entries for the chart",
            Part::Growth => "the tape over the visits",
            Part::Desk => "the page in the browser",
            Part::Cases => "practice cases",
            Part::Records => "records",
        }
    }
}

/// How ids begin, and their part; the longest beginning counts.
const STARTS: &[(&str, Part)] = &[
    ("family-", Part::Family),
    ("colouring-", Part::Family),
    ("label-", Part::Family),
    ("your-", Part::Family),
    ("her-", Part::Family),
    ("told-", Part::Family),
    ("decimal-", Part::Family),
    ("sign-", Part::Family),
    ("language-", Part::Family),
    ("drawing-", Part::Picture),
    ("picture-", Part::Picture),
    ("back-", Part::Picture),
    ("conclude-", Part::Picture),
    ("way-", Part::Picture),
    ("position-", Part::Picture),
    ("for-baby", Part::Picture),
    ("skin-", Part::Guide),
    ("trace-", Part::Guide),
    ("plate-", Part::Plates),
    ("feel-", Part::Plates),
    ("shown-", Part::Plates),
    ("diameter-", Part::Plates),
    ("told-diameter", Part::Plates),
    ("wall-", Part::Plates),
    // On a cut in the midline.
    ("her-front", Part::Plates),
    ("her-back", Part::Plates),
    ("label-axis", Part::Plates),
    ("label-spine", Part::Plates),
    ("label-sacrum", Part::Plates),
    ("below-", Part::Plates),
    ("label-wall", Part::Plates),
    ("check-", Part::Check),
    ("box-", Part::Check),
    ("value-", Part::Check),
    ("word-", Part::Check),
    ("group-", Part::Check),
    ("found-", Part::Check),
    ("name-", Part::Check),
    ("numbers-", Part::Check),
    ("grade-", Part::Check),
    ("remark-", Part::Check),
    ("tape-", Part::Check),
    ("chart-", Part::Chart),
    ("history-", Part::Chart),
    ("handover-", Part::Chart),
    ("slip-", Part::Chart),
    ("growth-", Part::Growth),
    ("desk-", Part::Desk),
    ("read-back-", Part::Desk),
    ("outline-", Part::Desk),
    ("case-", Part::Cases),
    ("fhir-", Part::Records),
    ("language-of-exams", Part::Family),
];
