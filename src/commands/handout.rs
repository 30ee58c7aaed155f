//! `family-page`. In: an exam and options. Out: the family page; or the reason why none is made.
//!
//! While anything stands that cannot wait, no page is made that could comfort. Someone who must have the page all the
//! same names each such remark (`--despite bleeding`); the exit code still tells of it. While the heart has not been heard there is
//! no way round.

use super::against;
use super::languages::{self, Draft, Tongues};
use super::layouts::{self, Chosen};
use super::load::{self, Loaded};
use super::picture::{self, Maker, Wanted};
use super::{Format, Outcome, Source, exit};
use crate::body::pose::Pose;
use crate::clinic::{self, Clinic};
use crate::exam::Exam;
use crate::figure::{self, Labels, MotherAs, Palette, Style, View};
use crate::fonts::Fonts;
use crate::report::Look;
use crate::sheet::family::{self, Asked, Invitation};
use crate::sheet::{
    Block, Content, FAMILY_PAGE, Kind, Layout, PHONE_PICTURE, SHIPPED, SheetError, Shipped, Shown,
};
use crate::words::{Part, Words, WordsError};
use crate::write::{self, TextAs};

/// Paper sizes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 × 297 mm.
    A4,
    /// 8.5 × 11 in.
    Letter,
    /// 297 × 420 mm.
    A3,
}

impl Paper {
    /// Its name in a layout.
    pub fn name(self) -> &'static str {
        match self {
            Paper::A4 => "a4",
            Paper::Letter => "letter",
            Paper::A3 => "a3",
        }
    }

    /// Width and height on its short side, mm.
    pub fn size_mm(self) -> (f32, f32) {
        match self {
            Paper::A4 => (210.0, 297.0),
            Paper::Letter => (215.9, 279.4),
            Paper::A3 => (297.0, 420.0),
        }
    }
}

/// The page to make.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Handout {
    /// The exam.
    pub exam: Source,
    /// The kind of file.
    pub format: Format,
    /// Language tag; two with a comma between stand side by side.
    pub lang: String,
    /// What becomes of a language that nobody has signed.
    pub draft: Draft,
    /// Paper; `None` for the layout's own.
    pub paper: Option<Paper>,
    /// The colours of skin; `None` for those of the clinic's file.
    pub palette: Option<Palette>,
    /// How much of the mother is drawn; `None` for as much as the clinic's file says.
    pub mother: Option<MotherAs>,
    /// The clinic's file.
    pub clinic: Option<Source>,
    /// Which layout; `None` for the family page.
    pub layout: Option<Chosen>,
    /// Ids of act-now remarks despite which the page is made.
    pub despite: Vec<String>,
    /// The emergency number to print, whatever the clinic's file says.
    pub emergency: Option<String>,
    /// Invite to lay an ear where the heart was heard.
    pub invite_listening: bool,
    /// Print the tape and the heart's rate.
    pub numbers: bool,
}

/// Make the family page, unless something stands against it.
pub fn run(options: &Handout, look: Look) -> Outcome {
    if let Some(Err(expected)) = options.emergency.as_deref().map(clinic::is_number) {
        let number = options.emergency.as_deref().unwrap_or_default();
        let why = format!("--emergency {number}: expected {expected}");
        let notes = format!("handspan: {why}\n");
        return Outcome { notes, why, code: exit::FAILED, ..Outcome::default() };
    }
    let (clinic, clinic_problems, clinic_failed) = load::clinic(options.clinic.as_ref(), look);
    let given = clinic.clone().unwrap_or_default();
    let changed = languages::changed_since_signed(&options.lang, &given).unwrap_or_default();
    let tongues = match Tongues::chosen_by(&options.lang, options.draft, &[Part::Family], &given) {
        Ok(tongues) => tongues,
        // What is wrong in the clinic's file is said first: it may be what the language lacks.
        Err(fault) => {
            let wordless = load::wordless(&fault);
            return Outcome { notes: clinic_problems + &changed + &wordless.notes, ..wordless };
        }
    };
    let loaded = load::exam(&options.exam, clinic.as_ref());
    let exam = match loaded.exam(look) {
        Ok(exam) => exam,
        Err(outcome) => return *outcome,
    };
    let against = against::Asked { document: "family page", despite: &options.despite };
    let mut notes = match against::look(&loaded, &against, look, tongues.english()) {
        Ok(notes) => notes,
        Err(outcome) => return *outcome,
    };
    notes.push_str(&clinic_problems);
    notes.push_str(&changed);
    if clinic_failed {
        let why = "the clinic's file has a fault".to_owned();
        return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
    }
    let missing = blank_lines(clinic.as_ref(), options);
    let mut clinic = clinic.unwrap_or_default();
    clinic.emergency = options.emergency.clone().or(clinic.emergency);
    if let (Format::Html, Some(why)) = (options.format, no_number(&clinic)) {
        notes.push_str(&format!("handspan: {why}\n"));
        return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
    }
    let invite_listening = options.invite_listening || clinic.invite_listening;
    let asked = Asked { invite_listening, numbers: options.numbers };
    let layout = match layout(options, look) {
        Ok(layout) => layout,
        Err(fault) => {
            notes.push_str(&fault);
            let why = "the layout has a fault".to_owned();
            return Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() };
        }
    };
    let job = Job { exam, loaded: &loaded, clinic: &clinic, asked, options };
    match job.files(layout, tongues.pages()) {
        Ok((pages, told)) => {
            notes.push_str(&told);
            notes.push_str(&missing);
            notes.push_str(numbers_left_out(&clinic));
            notes.push_str(&left_out(exam, &loaded, asked));
            Outcome { notes, pages, made: "the family page", code: loaded.code(), ..Outcome::default() }
        }
        Err(why) => {
            notes.push_str(&format!("handspan: {why}\n"));
            Outcome { notes, why, code: loaded.code().max(exit::FAILED), ..Outcome::default() }
        }
    }
}

/// No words for families are smaller, points (source: CDC Simply Put, CMS Toolkit, in readability.csv).
const FAMILY_TYPE_PT: f32 = 12.0;
/// Type of the labels on the picture, points.
const TYPE_PT: f32 = 12.0;

/// What the page is made of.
struct Job<'a> {
    exam: &'a Exam,
    loaded: &'a Loaded<'a>,
    clinic: &'a Clinic,
    asked: Asked,
    options: &'a Handout,
}

impl Job<'_> {
    /// How the family's picture is wanted, with these sentences at its foot.
    fn wanted(&self, captions: Vec<String>) -> Wanted {
        let (own, clinic) = (self.options, self.clinic);
        Wanted {
            style: Style::Soft,
            palette: own.palette.or_else(|| skin(clinic.skin.as_deref()?)).unwrap_or_default(),
            mother: own.mother.or_else(|| mother(clinic.mother.as_deref()?)).unwrap_or(MotherAs::Body),
            hands: None,
            view: View::Facing,
            labels: Labels::Family,
            type_pt: TYPE_PT,
            captions,
        }
    }

    /// The finished files, one a side or one for all, and what is to be said of them.
    fn files(&self, layout: Layout, languages: &[Words]) -> Result<(Vec<Vec<u8>>, String), String> {
        let told = |fault: &dyn std::fmt::Display| fault.to_string();
        let fonts = Fonts::load().map_err(|e| told(&e))?;
        let pose = picture::pose(self.exam, self.loaded);
        let contents = languages
            .iter()
            .map(|words| self.content(&pose, words, languages))
            .collect::<Result<Vec<_>, _>>();
        let contents = contents.map_err(|e| told(&e))?;
        let (mut layout, mut notes) = (layout, String::new());
        // A shipped page that is too full gives way to the same with more sides.
        let mut next = longer(self.options.layout.as_ref());
        while let Some(longer) = next {
            let frames = vec![figure::frame(Style::Soft); layout.pictures().len()];
            let full = |(words, content): (&Words, &Content)| {
                let scales = layout.scales(&frames, content, words, &fonts);
                matches!(scales, Err(SheetError::DoesNotFit { .. }))
            };
            if !languages.iter().zip(&contents).any(full) {
                break;
            }
            layout = on_paper(longer.read().map_err(|e| told(&e))?, self.options)?;
            notes = format!(
                "{}: the words need more room; the page has more sides ({})\n",
                self.loaded.name, longer.name
            );
            next = longer.longer();
        }
        if self.options.format == Format::Html {
            let page = self.phone(&layout, &pose, languages, contents, &fonts)?;
            return Ok((vec![page.into_bytes()], notes));
        }
        let sides = languages::sheets(languages, &fonts, |words, _| {
            let maker = Maker::new(words, &fonts);
            let own = languages.iter().zip(&contents).find(|(other, _)| other.lang() == words.lang());
            let (_, content) = own.ok_or("a language has no words")?;
            // A picture without a page still says how far it is to be trusted.
            let captions = if layout.is_without_words() { content.texts("family-about") } else { vec![] };
            let wanted = self.wanted(captions);
            maker.sheets(&pose, &wanted, &layout, content)
        })?;
        let words = languages.first().ok_or("no language is named")?;
        let maker = Maker::new(words, &fonts);
        Ok((maker.files(&sides, self.options.format, TextAs::Text, None)?, notes))
    }

    /// The page as one file of words for a telephone, a language after the other.
    fn phone(
        &self,
        layout: &Layout,
        pose: &Pose,
        languages: &[Words],
        contents: Vec<Content>,
        fonts: &Fonts,
    ) -> Result<String, String> {
        let told = |fault: &dyn std::fmt::Display| fault.to_string();
        let own = || format!("{}: a page for a telephone", layout.file());
        let grid =
            layout.grid().ok_or_else(|| format!("{} is made of words; this layout has none", own()))?;
        let picture_layout = PHONE_PICTURE.read().map_err(|e| told(&e))?;
        let mut made = vec![];
        for (words, mut content) in languages.iter().zip(contents) {
            let on = words.say("family-over-phone", &[]).map_err(|e| told(&e))?;
            let on = Block::new(Kind::Text, on).leading_on();
            content.blocks.insert("family-over".to_owned(), vec![on]);
            // A telephone is not held on the bump.
            content.blocks.insert("family-hold".to_owned(), vec![]);
            for_screen(&mut content);
            let sides = layout.panels(&content, words).map_err(|e| told(&e))?;
            let said: Vec<&Block> = sides.iter().flatten().flat_map(|panel| &panel.blocks).collect();
            for needed in ["family-front", "family-go", "family-come", "family-call"] {
                let missing =
                    content.blocks.get(needed).into_iter().flatten().find(|block| !said.contains(block));
                if let Some(block) = missing {
                    return Err(format!(
                        "{} says when to call and whom; `{needed}` is left out: {}",
                        own(),
                        block.text
                    ));
                }
            }
            let maker = Maker::new(words, fonts);
            let mut sheets = maker.sheets(pose, &self.wanted(vec![]), &picture_layout, &content)?;
            let picture = sheets.pop().ok_or("no picture is drawn")?;
            let draft = match words.is_signed() {
                true => None,
                false => Some(words.say("draft-mark", &[]).map_err(|e| told(&e))?),
            };
            made.push((words, content.title, draft, sides, picture));
        }
        let pages: Vec<write::Page<'_>> = made
            .iter()
            .map(|(words, title, draft, sides, picture)| write::Page {
                words,
                title,
                draft: draft.clone(),
                sides,
                picture,
            })
            .collect();
        write::html(&pages, &grid, fonts).map_err(|e| told(&e))
    }

    /// The words of the page in one language; a draft, and the page beside it, say so.
    fn content(&self, pose: &Pose, words: &Words, languages: &[Words]) -> Result<Content, WordsError> {
        let mut content = family::content(self.exam, &self.loaded.reckoning, self.clinic, self.asked, words)?;
        family::say_of_drawing(&mut content, &pose.notes, self.exam.babies.len(), words)?;
        let Some(said) = languages::said_of_draft(words, languages)? else { return Ok(content) };
        content
            .blocks
            .entry("family-use".to_owned())
            .or_default()
            .insert(0, Block::new(Kind::Emphasis, said));
        Ok(content)
    }
}

/// The palette of a skin's name in the clinic's file.
fn skin(name: &str) -> Option<Palette> {
    let at = clinic::SKINS.iter().position(|known| *known == name)?;
    Palette::all().nth(at)
}

/// How much of the mother, by its name in the clinic's file.
fn mother(name: &str) -> Option<MotherAs> {
    let at = clinic::MOTHERS.iter().position(|known| *known == name)?;
    [MotherAs::Body, MotherAs::Outline].get(at).copied()
}

/// On a screen the numbers to call stand in the bar, in the frame and in each list: they are not said again. The day, with no
/// line to write it on, is said by the weeks.
fn for_screen(content: &mut Content) {
    let said_already = |block: &Block| block.kind == Kind::Number || block.numbers.is_empty();
    for name in ["family-phone", "family-emergency"] {
        for block in content.blocks.get_mut(name).into_iter().flatten().filter(|block| said_already(block)) {
            block.shown = Shown::OnPaper;
        }
    }
    let day = content.blocks.get("phone-felt-at").cloned().unwrap_or_default();
    let day = day.into_iter().map(|block| block.shown(Shown::OnScreen));
    content.blocks.entry("family-felt-on".to_owned()).or_default().extend(day);
}

/// Why there is no page on a telephone without numbers: there is no line on it to write them on.
fn no_number(clinic: &Clinic) -> Option<String> {
    let missing: Vec<&str> = [
        (clinic.labour_ward.is_none() && clinic.night.is_none(), "a number answered at night (labour-ward)"),
        (
            clinic.emergency.is_none(),
            "the emergency number of the country (emergency, or --emergency NUMBER)",
        ),
    ]
    .into_iter()
    .filter_map(|(missing, what)| missing.then_some(what))
    .collect();
    (!missing.is_empty()).then(|| {
        format!(
            "a page on a telephone has no line to write on; give in the clinic's file (--clinic), under [telephone]: {}",
            missing.join(", and ")
        )
    })
}

/// The layout with more sides that a shipped one gives way to.
fn longer(chosen: Option<&Chosen>) -> Option<Shipped> {
    match chosen {
        None => FAMILY_PAGE.longer(),
        Some(Chosen::Named(name)) => SHIPPED.iter().find(|one| one.name == *name)?.longer(),
        Some(Chosen::Own(_)) => None,
    }
}

/// The layout asked for, or the family page, on the paper asked for; else why not, as it is to be printed.
fn layout(options: &Handout, look: Look) -> Result<Layout, String> {
    let layout = layouts::layout(options.layout.as_ref(), FAMILY_PAGE, look)?;
    if layout.smallest_type_pt() < FAMILY_TYPE_PT {
        return Err(format!(
            "handspan: a family page has no type under {FAMILY_TYPE_PT} pt; leave smallest-type out of the layout\n"
        ));
    }
    on_paper(layout, options).map_err(|fault| format!("handspan: {fault}\n"))
}

fn on_paper(layout: Layout, options: &Handout) -> Result<Layout, String> {
    match options.paper {
        None => Ok(layout),
        Some(paper) => layout.on_paper(paper.name()).map_err(|fault| fault.to_string()),
    }
}

/// What the page leaves to be written in by hand, as a warning; empty when nothing.
fn blank_lines(clinic: Option<&Clinic>, options: &Handout) -> String {
    let none = Clinic::default();
    let given = clinic.unwrap_or(&none);
    let round_the_clock = given.labour_ward.is_some() || given.night.is_some();
    let lines: Vec<&str> = [
        (given.name.is_none(), "the clinic's name"),
        (!round_the_clock, "a telephone number that is answered at night"),
        (given.emergency.is_none() && options.emergency.is_none(), "the emergency number"),
        (given.come_in.is_none(), "where to come in"),
    ]
    .into_iter()
    .filter_map(|(missing, what)| missing.then_some(what))
    .collect();
    let (what, from) = match (lines.as_slice(), clinic) {
        ([], _) => return String::new(),
        (lines, Some(_)) => (lines.join(", "), "the clinic's file does not give it"),
        (lines, None) => (lines.join(", "), "no --clinic file is given"),
    };
    format!("handspan: write in by hand before the page goes home: {what} ({from})\n")
}

/// That numbers are not printed beside the one for day and night; empty when there are none.
fn numbers_left_out(clinic: &Clinic) -> &'static str {
    if clinic.labour_ward.is_some() && (clinic.day.is_some() || clinic.night.is_some()) {
        "handspan: one number stands on the page, the one that is answered day and night; to print another, say what \
         for and when: other = [{ number = \"...\", for = \"...\" }] under [telephone]\n"
    } else {
        ""
    }
}

/// Why the invitation to listen is not on the page although it was asked for; empty when it is, or was not asked for.
fn left_out(exam: &Exam, loaded: &Loaded<'_>, asked: Asked) -> String {
    if !asked.invite_listening {
        return String::new();
    }
    let why = match family::may_invite(exam, &loaded.reckoning) {
        Invitation::May => return String::new(),
        Invitation::NoMark => "the place where the heart was heard is not recorded",
        Invitation::Twins => "there is more than one baby",
        Invitation::Movements => "the movements are not recorded as usual",
        Invitation::Rate => "the rate or the rhythm of the heart is to be looked at",
        Invitation::Weeks => "it is for 28 weeks and later",
    };
    format!("{}: the invitation to listen is left out: {why}\n", loaded.name)
}
