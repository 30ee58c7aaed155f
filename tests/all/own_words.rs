//! Languages as a clinic says them: its corrections stand in place of ours, never against a warning, a side or a value; a language
//! that it has signed is no draft until a sentence changes; and the book in which one is read

use crate::shared::{family_page, path};
use handspan::clinic::{self, Clinic};
use handspan::commands::{self, Command, Draft, Format, Handout, Outcome, Request, Review, Source, exit};
use handspan::report::Look;
use handspan::words::{LANGUAGES, Language, Own, Part, Words, is_sentence, shipped};
use std::collections::BTreeSet;

fn spanish() -> &'static Language {
    shipped("es").unwrap()
}

#[test]
fn what_may_not_stand_in_place_of_ours_is_refused_with_the_reason() {
    let es = spanish();
    let english = shipped("en").unwrap();
    for (language, id, text, why) in [
        (es, "family-go-fit", "Convulsiones", "did you mean `family-go-fits`?"),
        (es, "language-signed", "yes", "is not a sentence to correct"),
        (es, "draft-mark", "Hoja", "is not a sentence to correct"),
        (es, "family-go-bleeding", "  ", "cannot be left empty"),
        (es, "family-go-bleeding", "...", "cannot be left empty"),
        (es, "family-go-bleeding", "Sangre", "is a warning and cannot be cut short"),
        (
            es,
            "family-come-fever",
            "Fiebre alta de verdad, de 39 °C (102 °F) o más",
            "must keep the number 100.4",
        ),
        (es, "family-go-title-number", "Llame ya al número de emergencias", "must keep { $number }"),
        (es, "family-go-title", "Llame ya al { $number } de emergencias", "must keep no value"),
        (es, "family-side-left", "derecha", "must name the sides that ours names"),
        (es, "your-right", "Izquierda de usted", "must name the sides that ours names"),
        (es, "family-head-left", "La cabeza está a un lado.", "must name the sides that ours names"),
        (es, "family-hold", "Sostenga la hoja en su lado derecho.", "must name the sides that ours names"),
        (es, "family-back-front", "La espalda está { $", "cannot be read"),
        (es, "family-how-hands", "según su { family-nobody }", "there is no message `family-nobody`"),
        (es, "family-carer", "{ family-carer }", "it names itself"),
        (english, "your-left", "Your right", "must name the sides that ours names"),
        (english, "family-worried", "Call.", "is a warning and cannot be cut short"),
    ] {
        let said = language.refuses(id, text).unwrap_or_else(|| panic!("{id} = {text} may stand"));
        assert!(said.contains(why), "{id} = {text}: {said}");
    }
    for (language, id, text) in [
        (es, "family-carer", "partera"),
        (es, "family-go-bleeding", "Sangrado abundante, que corre o empapa la ropa"),
        (es, "family-come-fever", "Calentura de 38 °C (100.4 °F) o más"),
        (es, "family-head-left", "La cabecita está a la izquierda de usted."),
        (es, "family-go-title-number", "Marque ya el { $number }"),
        (english, "family-carer", "nurse"),
        // No side: "right up to".
        (english, "family-moves-keep-one", "Feel for your baby’s movements each day, until the birth."),
    ] {
        assert_eq!(language.refuses(id, text), None, "{id} = {text}");
    }
    // What we say ourselves may stand.
    for language in &LANGUAGES {
        for (id, text) in language.messages().iter().filter(|(id, _)| id.starts_with("family-")) {
            if !text.contains("->") {
                assert_eq!(language.refuses(id, text), None, "{}: {id}", language.tag);
            }
        }
    }
}

fn own(text: &str) -> Clinic {
    let reading = clinic::read("ours.toml", text.as_bytes());
    reading.clinic.unwrap_or_else(|| panic!("{:?}", reading.problems))
}

#[test]
fn faults_in_the_clinics_words_are_told_by_their_line() {
    let text = "name = \"Larkfield\"\n[words.es]\nfamily-go-bleeding = \"Sangre\"\nfamily-carer = \"partera\"\n[words.xx]\n\
                family-carer = \"x\"\n[signed.es]\non = \"yesterday\"\nby = \"obstetric nurse\"\nof = \"12\"\nwith = \"x\"\n";
    let reading = clinic::read("ours.toml", text.as_bytes());
    assert!(reading.clinic.is_none());
    let told: Vec<(usize, &str)> =
        reading.problems.iter().map(|p| (p.place.as_ref().map_or(0, |place| place.line), p.id)).collect();
    let wanted = [
        (3, "clinic-words"),
        (5, "unknown-key"),
        (8, "clinic-value"),
        (10, "clinic-value"),
        (11, "unknown-key"),
    ];
    assert_eq!(told, wanted);
}

fn page(lang: &str, draft: bool, clinic: &str) -> Outcome {
    let exam = std::fs::read(path("examples/large-build.toml")).unwrap();
    let handout = Handout {
        draft: Draft::asked(draft),
        clinic: Some(Source::new("ours.toml", format!("{NUMBERS}{clinic}"))),
        ..family_page(Source::new("exam.toml", exam), lang)
    };
    commands::run(&Request { command: Command::Handout(handout), look: Look::Plain })
}

const NUMBERS: &str = "[telephone]\nlabour-ward = \"01632 960123\"\nemergency = \"112\"\n";

fn said(outcome: &Outcome) -> String {
    assert_eq!(outcome.pages.len(), 1, "{}", outcome.notes);
    String::from_utf8(outcome.pages[0].clone()).unwrap()
}

#[test]
fn the_clinics_word_for_who_cares_for_her_stands_on_the_page() {
    let ours = said(&page("es", true, ""));
    assert!(ours.contains("matrona") && !ours.contains("partera"));
    let theirs = said(&page("es", true, "[words.es]\nfamily-carer = \"partera\"\n"));
    let family = theirs.split("<article lang=\"en\">").next().unwrap();
    // The line that says who has read the draft is ours, and stays.
    assert!(family.contains("partera") && family.matches("matrona").count() <= 1, "{family}");
    assert!(theirs.contains("BORRADOR"), "a correction signs nothing");
    let english = said(&page("en", false, "[words.en]\nfamily-carer = \"nurse\"\n"));
    assert!(english.contains("nurse") && !english.contains("midwife"));
    // A fault in it stops the page, by its line.
    let faulty = page("es", true, "[words.es]\nfamily-carer = \"\"\n");
    assert!(faulty.pages.is_empty() && faulty.code == exit::FAILED);
    assert!(faulty.notes.contains("ours.toml, line 5"), "{}", faulty.notes);
}

#[test]
fn a_signed_language_is_no_draft_until_a_sentence_changes() {
    let words = "[words.es]\nfamily-carer = \"partera\"\n";
    let sum = spanish().family_checksum(&own(words).words["es"]);
    assert_ne!(sum, spanish().family_checksum(&Own::new()), "a correction changes what is signed");
    let signed = format!("[signed.es]\non = \"2026-11-29\"\nby = \"obstetric nurse\"\nof = \"{sum}\"\n");
    let made = page("es", false, &format!("{words}{signed}"));
    let alone = said(&made);
    assert!(!alone.contains("BORRADOR") && !alone.contains("<article lang=\"en\">"));
    assert!(!made.notes.contains("changed"), "{}", made.notes);
    // As it is no draft, it is not asked for as one.
    assert!(page("es", true, &format!("{words}{signed}")).pages.is_empty());
    // One sentence later.
    let changed = format!("[words.es]\nfamily-carer = \"matrona\"\n{signed}");
    let refused = page("es", false, &changed);
    assert!(refused.pages.is_empty() && refused.code == exit::FAILED);
    assert!(refused.notes.contains("have changed since they were signed"), "{}", refused.notes);
    let draft = page("es", true, &changed);
    assert!(said(&draft).contains("BORRADOR"));
    assert!(draft.notes.contains("languages review es"), "{}", draft.notes);
    // A signature of one language signs no other.
    assert!(page("fr", false, &format!("{words}{signed}")).pages.is_empty());
}

#[test]
fn the_list_says_of_each_language_what_it_is() {
    let list = |clinic: Option<&str>| {
        let clinic = clinic.map(|text| Source::new("ours.toml", text));
        let outcome = commands::run(&Request { command: Command::Languages { clinic }, look: Look::Plain });
        assert_eq!(outcome.code, exit::DONE, "{}", outcome.notes);
        outcome.text
    };
    let plain = list(None);
    for language in &LANGUAGES {
        let sum = language.family_checksum(&Own::new());
        assert!(plain.contains(&format!("{}: ", language.tag)) && plain.contains(&sum), "{plain}");
    }
    assert_eq!(plain.matches("draft: no native clinician").count(), 4);
    assert!(plain.contains("all but practice cases and records"), "{plain}");
    assert!(plain.contains("the family page alone"), "{plain}");
    let sums: BTreeSet<String> =
        LANGUAGES.iter().map(|language| language.family_checksum(&Own::new())).collect();
    assert_eq!(sums.len(), LANGUAGES.len());
    let sum = spanish().family_checksum(&Own::new());
    let signed = format!("[signed.es]\non = \"2026-11-29\"\nby = \"obstetric nurse\"\nof = \"{sum}\"\n");
    assert!(list(Some(&signed)).contains("signed for families by obstetric nurse, 2026-11-29"));
    let later = format!("[words.es]\nfamily-carer = \"partera\"\n{signed}");
    let later = list(Some(&later));
    assert!(
        later.contains("have changed since they were signed")
            && later.contains("1 sentence of the clinic's own"),
        "{later}"
    );
}

/// The words of a text that is drawn, in their order, without spaces.
fn drawn(svg: &str) -> String {
    let texts = svg.split("<text ").skip(1).map(|text| {
        let rest = text.split_once('>').map_or("", |(_, rest)| rest);
        rest.split("</text>").next().unwrap_or_default().to_owned()
    });
    bare(
        &texts
            .collect::<String>()
            .replace("&lt;", "<")
            .replace("&gt;", ">")
            .replace("&quot;", "\"")
            .replace("&amp;", "&"),
    )
}

fn bare(text: &str) -> String {
    text.chars().filter(|c| !c.is_whitespace() && *c != '\u{a0}' && *c != '\u{202f}').collect()
}

#[test]
fn the_book_has_every_sentence_beside_the_english_and_room_to_correct() {
    let clinic = Some(Source::new("ours.toml", "[words.es]\nfamily-carer = \"partera\"\n"));
    let review = Review { lang: "es".to_owned(), format: Format::Svg, paper: None, clinic };
    let outcome = commands::run(&Request { command: Command::Review(review), look: Look::Plain });
    assert_eq!(outcome.code, exit::DONE, "{}", outcome.notes);
    let sides: Vec<String> = outcome.pages.iter().map(|page| drawn(&String::from_utf8_lossy(page))).collect();
    let all = sides.concat();
    // A cell that is broken over lines stands in pieces of its column only when other cells stand between: ids and short
    // sentences are found whole.
    let english = Words::load("en").unwrap();
    let mut found = 0;
    for (id, _) in spanish().messages() {
        if !is_sentence(&id) || Part::of(&id).is_none() {
            continue;
        }
        assert!(all.contains(&id) || id.len() > 24, "{id} is not in the book");
        found += usize::from(all.contains(&id));
    }
    assert!(found > 1200, "{found}");
    // The family page stands first, with what to do, its checksum, and the clinic's own word.
    let sum = spanish().family_checksum(&Own::from([("family-carer".to_owned(), "partera".to_owned())]));
    assert!(sides[0].contains(&sum) && sides[0].contains("[signed.es]"), "{}", sides[0]);
    assert!(all.contains("partera"));
    assert!(all.contains(&bare(&english.say("family-call-title", &[]).unwrap())));
    // English is not read beside itself; a language that is not there is named.
    for (lang, why) in [("en", "name another"), ("tlh", "is not shipped")] {
        let review = Review { lang: lang.to_owned(), format: Format::Pdf, paper: None, clinic: None };
        let refused = commands::run(&Request { command: Command::Review(review), look: Look::Plain });
        assert!(refused.pages.is_empty() && refused.notes.contains(why), "{}", refused.notes);
    }
}
