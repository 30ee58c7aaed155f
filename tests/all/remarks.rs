//! The lesser remarks: when each is made, what may be silenced and what may not, and the clinic's thresholds.

use super::shared::{Dice, path, read};
use super::words::{random_exam, write};
use handspan::clinic::{self, Thresholds};
use handspan::commands::{Check, Command, Outcome, Request, Source, exit, run};
use handspan::reckon::ledger::RULES;
use handspan::reckon::{Grade, reckon};
use handspan::report::Look;

/// The ids of the lesser remarks of an exam that come from `guidance`.
fn lesser(text: &str) -> Vec<&'static str> {
    let subjects = [
        "presentation-early",
        "presentation-not-known",
        "womb-hard-or-tender",
        "scar-of-unknown-operation",
        "not-head-down",
        "crosswise-at-term",
        "womb-operated-on",
        "head-free-at-term",
        "placenta-low",
        "signs-to-weigh",
        "fever",
        "one-sign-of-pressure",
        "waters-broken",
        "tightenings-before-term",
        "itching",
    ];
    let reckoning = reckon(&read(text), &Thresholds::default());
    reckoning.remarks.iter().map(|remark| remark.id).filter(|id| subjects.contains(id)).collect()
}

#[test]
fn each_is_made_when_it_should_be_and_not_else() {
    let down = "[baby]\nhead=\"above pubic bone\"\n";
    let up = "[baby]\nhead=\"fundus\"\nbreech=\"above pubic bone\"\n";
    let across = "[baby]\nhead=\"left flank\"\nbreech=\"right flank\"\n";
    let cases: &[(String, &[&str])] = &[
        // A head that is down early is how most lie: it is no remark any more.
        (format!("weeks=\"35+6\"\n{down}"), &[]),
        (format!("weeks=\"36+0\"\n{down}"), &[]),
        ("weeks=\"35+6\"\n[baby]\nhead=\"above pubic bone (scan 35+5)\"\n".to_owned(), &[]),
        (down.to_owned(), &[]),
        (format!("weeks=\"35+6\"\n{up}"), &["presentation-early"]),
        (format!("weeks=\"36+0\"\n{up}"), &["not-head-down"]),
        (format!("weeks=\"36+6\"\n{across}"), &["not-head-down"]),
        (format!("weeks=\"37+0\"\n{across}"), &["crosswise-at-term"]),
        ("weeks=\"38+0\"\n[baby]\nhead=\"left iliac fossa\"\n".to_owned(), &["crosswise-at-term"]),
        ("weeks=\"36+0\"\n[baby]\nhead=\"not felt\"\n".to_owned(), &["presentation-not-known"]),
        ("weeks=\"35+6\"\n[baby]\nhead=\"not felt\"\n".to_owned(), &[]),
        ("weeks=\"36+0\"\n[baby]\nheart-rate=140\n".to_owned(), &[]),
        ("weeks=\"36+0\"\n[baby]\nhead=\"above pubic bone?\"\n".to_owned(), &["presentation-not-known"]),
        (format!("weeks=\"37+0\"\n{down}head-above-brim=\"5/5\"\n"), &["head-free-at-term"]),
        (format!("weeks=\"37+0\"\n{down}head-above-brim=\"4/5\"\n"), &[]),
        (format!("weeks=\"37+0\"\n{down}descent=\"free\"\n"), &["head-free-at-term"]),
        (format!("weeks=\"36+6\"\n{down}descent=\"free\"\n"), &[]),
        ("[mother]\nplacenta=\"low (scan 20+3)\"\n".to_owned(), &["placenta-low"]),
        ("[mother]\nplacenta=\"front\"\n".to_owned(), &[]),
        ("[mother]\nwomb=\"hard\"\n".to_owned(), &["womb-hard-or-tender"]),
        ("[mother]\nwomb=[\"tender\", \"tightening\"]\n".to_owned(), &["womb-hard-or-tender"]),
        ("[mother]\nwomb=[\"hard\", \"tender\"]\n".to_owned(), &[]),
        ("[mother]\nscars=\"low transverse\"\n".to_owned(), &["scar-of-unknown-operation"]),
        ("[mother]\nscars=\"low transverse\"\noperations=\"none\"\n".to_owned(), &[]),
        ("[mother]\nscars=\"none\"\n".to_owned(), &[]),
        ("[mother]\nscars=\"low transverse\"\noperations=\"caesarean\"\n".to_owned(), &["womb-operated-on"]),
        ("[mother]\noperations=\"myomectomy\"\n".to_owned(), &["womb-operated-on"]),
        ("[mother]\nwomb-cut=\"vertical\"\n".to_owned(), &["womb-operated-on"]),
        // Each has a rule of its own now; before 20+0 headache is weighed as it was.
        ("[mother]\nreports=[\"headache\", \"fever\"]\n".to_owned(), &["one-sign-of-pressure", "fever"]),
        ("weeks=\"12+0\"\n[mother]\nreports=\"headache\"\n".to_owned(), &["signs-to-weigh"]),
        ("[mother]\nreports=\"itching\"\n".to_owned(), &["itching"]),
        ("weeks=\"36+6\"\n[mother]\nreports=\"tightenings\"\n".to_owned(), &["tightenings-before-term"]),
        ("weeks=\"37+0\"\n[mother]\nreports=\"tightenings\"\n".to_owned(), &[]),
        (
            format!("weeks=\"39+0\"\n[mother]\nreports=\"waters broken\"\n{down}head-above-brim=\"2/5\"\n"),
            &["waters-broken"],
        ),
        // These cannot wait, and are said there.
        (
            format!("weeks=\"36+0\"\n[mother]\nreports=\"waters broken\"\n{down}head-above-brim=\"4/5\"\n"),
            &[],
        ),
        (format!("weeks=\"36+0\"\n[mother]\nreports=\"waters broken\"\n{up}"), &["not-head-down"]),
    ];
    for (text, ids) in cases {
        assert_eq!(lesser(text), *ids, "{text}");
    }
    // Of two babies it is said once that it holds for today only, for both.
    let twins = read("weeks=\"31+0\"\n[[baby]]\nhead=\"left flank\"\n[[baby]]\nhead=\"fundus\"\n");
    let remarks = reckon(&twins, &Thresholds::default()).remarks;
    let early: Vec<_> = remarks.iter().filter(|remark| remark.id == "presentation-early").collect();
    assert_eq!(early.len(), 1);
    assert_eq!(
        (early[0].baby, &early[0].findings[..]),
        (None, &["baby.1.head".to_owned(), "baby.2.head".to_owned()][..])
    );
    // Of one of them it names that one.
    let twins = read("weeks=\"31+0\"\n[[baby]]\nhead=\"above pubic bone\"\n[[baby]]\nhead=\"fundus\"\n");
    let remarks = reckon(&twins, &Thresholds::default()).remarks;
    let early: Vec<_> = remarks.iter().filter(|remark| remark.id == "presentation-early").collect();
    assert_eq!((early.len(), early[0].baby), (1, Some(1)));
}

fn check(text: &str, quiet: &[&str], clinic: Option<&str>, json: bool) -> Outcome {
    let command = Command::Check(Check {
        exams: vec![Source::new("a.toml", text)],
        json,
        clinic: clinic.map(|text| Source::new("clinic.toml", text)),
        quiet: quiet.iter().map(|id| (*id).to_owned()).collect(),
        ..Check::default()
    });
    run(&Request { command, look: Look::Plain })
}

#[test]
fn a_lesser_remark_is_silenced_for_a_run_and_that_is_said() {
    let text = "weeks=\"38+0\"\n[mother]\nreports=\"itching\"\n[baby]\nhead=\"fundus\"\n";
    let whole = check(text, &[], None, false);
    assert!(whole.text.contains("[itching]") && whole.text.contains("[not-head-down]"));
    let quiet = check(text, &["itching", "placenta-low"], None, false);
    assert!(!quiet.text.contains("[itching]") && quiet.text.contains("[not-head-down]"));
    assert!(quiet.text.contains("Left out for this run, as asked: itching.\n"), "{}", quiet.text);
    assert_eq!((quiet.code, quiet.notes.as_str()), (exit::DONE, ""));
    let json = check(text, &["itching"], None, true).text;
    assert!(json.contains("\"quieted\":[\"itching\"]"), "{json}");
}

#[test]
fn what_may_not_be_silenced_is_refused_and_said_all_the_same() {
    let text = "[mother]\nmovements=\"none\"\n";
    for (id, why) in [
        ("movements-none", "`movements-none` cannot wait, and cannot be silenced"),
        (
            "head-in-two-places",
            "`head-in-two-places` says that findings cannot all be right, and cannot be silenced",
        ),
        ("itchin", "there is no remark `itchin`; did you mean `itching`?"),
        ("qqq", "there is no remark `qqq`; handspan rules lists them"),
    ] {
        let said = check(text, &[id], None, false);
        assert!(said.text.contains("ACT NOW [movements-none]"), "{}", said.text);
        assert_eq!((said.code, said.notes), (exit::ACT_NOW, format!("handspan: --quiet-remark: {why}\n")));
        assert_eq!(check("[mother]\nmovements=\"usual\"\n", &[id], None, false).code, exit::FAILED);
    }
}

/// Whatever is silenced, and whatever a clinic sets, what cannot wait is said, first, with its exit code.
#[test]
fn what_cannot_wait_is_hidden_by_nothing() {
    let everything: Vec<String> = RULES.iter().map(|rule| rule.id.to_owned()).collect();
    let mut dice = Dice::new(4_711);
    let (mut rounds, mut alarms) = (0, 0);
    while rounds < 10_000 {
        rounds += 1;
        let exam = random_exam(&mut dice);
        let usual = reckon(&exam, &Thresholds::default());
        let own = clinic::read(
            "clinic.toml",
            format!(
                "[thresholds]\ntape-cm = {}\nheart-low = {}\nheart-high = {}\n",
                dice.from(1, 4),
                dice.from(100, 120),
                dice.from(160, 180)
            )
            .as_bytes(),
        );
        let thresholds = own.clinic.expect("a clinic's file").thresholds;
        let mut other = reckon(&exam, &thresholds);
        other.quiet(&everything);
        assert!(other.remarks.iter().all(|remark| !remark.grade.is_lesser()));
        let standing: Vec<_> = usual.remarks.iter().filter(|remark| remark.grade == Grade::ActNow).collect();
        for (at, remark) in standing.iter().enumerate() {
            // A clinic's narrower limits say of the same rate that it cannot wait by itself; then that is said instead.
            let narrower = |id: &str| {
                ["heart-outside-usual-with-signs", "heart-outside-usual-still"].contains(&remark.id)
                    && ["heart-rate-low", "heart-rate-high"].contains(&id)
            };
            let still = other.remarks.iter().any(|o| {
                o.baby == remark.baby && o.grade == Grade::ActNow && (o.id == remark.id || narrower(o.id))
            });
            assert!(still, "{} was hidden\n{}", remark.id, write(&exam));
            assert_eq!(usual.remarks[at].id, remark.id, "it does not come first");
        }
        alarms += usize::from(!standing.is_empty());
        // The whole way for some: several exams at once, and as JSON.
        if rounds % 100 == 0 && !standing.is_empty() {
            let lesser: Vec<&str> =
                RULES.iter().filter(|r| r.grade.is_some_and(Grade::is_lesser)).map(|r| r.id).collect();
            for json in [false, true] {
                let command = Command::Check(Check {
                    exams: vec![
                        Source::new("first.toml", "[baby]\nhead=\"above pubic bone\"\n"),
                        Source::new("second.toml", write(&exam)),
                    ],
                    json,
                    quiet: lesser.iter().map(|id| (*id).to_owned()).collect(),
                    ..Check::default()
                });
                let outcome = run(&Request { command, look: Look::Plain });
                assert_eq!(outcome.code, exit::ACT_NOW);
                for remark in &standing {
                    assert!(outcome.text.contains(remark.id), "{}", outcome.text);
                }
            }
        }
    }
    assert!(alarms > 3_000, "only {alarms} exams had something that cannot wait");
}

#[test]
fn a_clinic_moves_its_thresholds_and_the_output_says_local() {
    let own = "[thresholds]\nheart-low = 110\nheart-high = 160\n";
    let text = "weeks=\"37+0\"\n[baby]\nheart-rate=105\n";
    assert_eq!(check(text, &[], None, false).code, exit::DONE);
    let said = check(text, &[], Some(own), false);
    assert_eq!(said.code, exit::ACT_NOW);
    assert!(said.text.contains("105 beats a minute, under 110"), "{}", said.text);
    assert!(said.text.contains("Local thresholds were used"), "{}", said.text);
    assert!(check(text, &[], Some(own), true).text.contains("\"local\":true"));
    // A clinic that states the usual ones is not local.
    assert!(!check(text, &[], Some("[thresholds]\ntape-cm = 2\n"), false).text.contains("local thresholds"));
    // The limits of the heart can only be drawn closer.
    for wrong in ["heart-low = 90", "heart-high = 190", "tape-cm = 0", "tape-cm = 2.5", "movements = 3"] {
        let said = check(text, &[], Some(&format!("[thresholds]\n{wrong}\n")), false);
        assert_eq!(said.code, exit::FAILED, "{wrong}");
        assert!(said.notes.contains("clinic.toml, line 2: "), "{}", said.notes);
    }
}

#[test]
fn the_ledger_is_printed_whole() {
    for json in [false, true] {
        let outcome = run(&Request { command: Command::Rules { json }, look: Look::Plain });
        for rule in RULES {
            for words in [rule.id, rule.meaning, rule.formula, rule.ground(), rule.trust.name(), rule.checked]
            {
                let shown = json || words != rule.checked || !rule.source.is_empty();
                assert!(!shown || outcome.text.contains(words), "{}: {words}", rule.id);
            }
        }
    }
    let chapter = std::fs::read_to_string(path("docs/rules.md")).expect("docs/rules.md");
    assert!(chapter.contains("handspan rules"));
}
