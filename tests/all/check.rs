//! What follows from the findings: sides from both ends, lies, engagement, contradictions, and what cannot wait.

use super::shared::{baby, read, rows};
use handspan::commands::{Check, Command, Request, Source, exit, run};
use handspan::exam::{BackTurn, Conclusion, Exam, Lie, Position, Presentation, conclude};
use handspan::reckon::{Grade, Remark, reckon};
use handspan::report::Look;
use handspan::units::MotherSide::{Left, Right};

fn concluded(lines: &str) -> Conclusion {
    conclude(&baby(lines), 0)
}

fn code(conclusion: &Conclusion) -> Option<String> {
    conclusion.position.map(Position::code)
}

/// How a back is written that points to this many degrees from her front towards her left.
fn back_at(degrees: u16) -> &'static str {
    [
        "front",
        "left front",
        "left lateral",
        "left, towards her spine",
        "towards her spine",
        "right, towards her spine",
        "right lateral",
        "right front",
    ][usize::from(degrees / 45)]
}

/// Every row of the published list: from the back as felt to the code, and from the code to the back.
#[test]
fn every_position_from_both_ends() {
    let rows = rows("positions.csv");
    assert_eq!(rows.len(), 36);
    for row in rows {
        let (published, presentation, back_side) = (row[0].as_str(), row[1].as_str(), row[6].as_str());
        let given = concluded(&format!("position = \"{published}\""));
        assert_eq!(code(&given).as_deref(), Some(published));
        if presentation.starts_with("shoulder") {
            let head = if row[5] == "mother right" { "right" } else { "left" };
            let bottom = if head == "right" { "left" } else { "right" };
            let back = if back_side == "front" { "front" } else { "towards her spine" };
            let felt = concluded(&format!(
                "head = \"{head}, at navel\"\nbreech = \"{bottom}, at navel\"\nback = \"{back}\""
            ));
            assert_eq!(code(&felt).as_deref(), Some(published));
            assert_eq!(given.head_side, felt.head_side);
            assert_eq!(given.back, felt.back);
            continue;
        }
        let degrees: u16 = row[3].parse().expect("degrees");
        let (ends, attitude, opposite) = match presentation {
            "vertex" => ("head = \"above pubic bone\"\nbreech = \"fundus\"", "flexed", false),
            "face" => ("head = \"above pubic bone\"", "face (vaginal examination)", true),
            "brow" => ("breech = \"fundus\"", "brow (scan)", true),
            "breech" => ("head = \"fundus\"", "", false),
            other => panic!("{other}"),
        };
        let back = back_at(if opposite { (degrees + 180) % 360 } else { degrees });
        let attitude =
            if attitude.is_empty() { String::new() } else { format!("\nattitude = \"{attitude}\"") };
        let felt = concluded(&format!("{ends}\nback = \"{back}\"{attitude}"));
        assert_eq!(code(&felt).as_deref(), Some(published), "back {back}");
        assert_eq!(felt.conflicts, []);
        // The side of the back, as published and as the code leads to it.
        let side = match back_side {
            "mother left" => Some(Left),
            "mother right" => Some(Right),
            "midline" => None,
            other => panic!("{other}"),
        };
        assert_eq!(given.back.expect("a back").side, side, "{published}");
        assert_eq!(felt.back, given.back, "{published}");
        // With its own code beside them the findings stand.
        let both = concluded(&format!("{ends}\nback = \"{back}\"{attitude}\nposition = \"{published}\""));
        assert_eq!((both.conflicts, both.position), (vec![], felt.position), "{published}");
    }
}

/// Changing left and right over in the findings changes them over in the conclusion, and in nothing else.
#[test]
fn the_other_side_gives_the_other_side() {
    let mirrored = |text: &str| text.replace("left", "@").replace("right", "left").replace('@', "right");
    for lines in [
        "head = \"above pubic bone\"\nback = \"left front\"",
        "head = \"left iliac fossa\"\nbreech = \"right, above navel\"\nback = \"front\"",
        "head = \"left, at navel\"\nback = \"towards her feet\"",
        "breech = \"left 6 cm, 8 cm below navel\"\nhead = \"right 4 cm, 6 cm above navel\"",
        "head = \"left flank\"\nback = \"front\"",
    ] {
        let (one, other) = (concluded(lines), concluded(&mirrored(lines)));
        assert_eq!(one.lie, other.lie);
        assert_eq!(one.presentation, other.presentation);
        assert_eq!(one.head_up, other.head_up);
        assert_eq!(one.head_side.map(|side| side.opposite()), other.head_side, "{lines}");
        assert_eq!(
            one.back.and_then(|b| b.side).map(|side| side.opposite()),
            other.back.and_then(|b| b.side)
        );
        match (one.position, other.position) {
            (Some(Position::Lengthwise { octant: a, .. }), Some(Position::Lengthwise { octant: b, .. })) => {
                assert_eq!((a.get() + b.get()) % 8, 0);
            }
            (Some(Position::Crosswise { head: a, .. }), Some(Position::Crosswise { head: b, .. })) => {
                assert_ne!(a, b)
            }
            (None, None) => {}
            _ => panic!("{lines}"),
        }
    }
}

#[test]
fn lies_from_head_and_bottom() {
    use Lie::{Longitudinal, Oblique, Transverse};
    let cases = [
        ("head = \"above pubic bone\"", Some(Longitudinal), Some(false), None),
        ("head = \"fundus\"", Some(Longitudinal), Some(true), None),
        ("breech = \"fundus\"", Some(Longitudinal), Some(false), None),
        ("breech = \"above pubic bone\"", Some(Longitudinal), Some(true), None),
        ("head = \"below navel\"", Some(Longitudinal), Some(false), None),
        (
            "head = \"right, below navel\"\nbreech = \"right, above navel\"",
            Some(Longitudinal),
            Some(false),
            None,
        ),
        (
            "head = \"left, above navel\"\nbreech = \"left, below navel\"",
            Some(Longitudinal),
            Some(true),
            None,
        ),
        (
            "head = \"left, above pubic bone\"\nbreech = \"right, above navel\"",
            Some(Longitudinal),
            Some(false),
            None,
        ),
        ("head = \"left iliac fossa\"", Some(Oblique), Some(false), Some(Left)),
        ("head = \"left iliac fossa\"\nbreech = \"fundus\"", Some(Oblique), Some(false), Some(Left)),
        (
            "head = \"right, below navel\"\nbreech = \"left, above navel\"",
            Some(Oblique),
            Some(false),
            Some(Right),
        ),
        (
            "head = \"right, above navel\"\nbreech = \"left, below navel\"",
            Some(Oblique),
            Some(true),
            Some(Right),
        ),
        (
            "head = \"right, above navel\"\nbreech = \"left iliac fossa\"",
            Some(Oblique),
            Some(true),
            Some(Right),
        ),
        ("breech = \"left iliac fossa\"", Some(Oblique), Some(true), Some(Right)),
        ("head = \"right, at navel\"", Some(Transverse), None, Some(Right)),
        ("breech = \"right, at navel\"", Some(Transverse), None, Some(Left)),
        ("head = \"right flank\"", Some(Transverse), None, Some(Right)),
        ("head = \"right\"\nbreech = \"left\"", Some(Transverse), None, Some(Right)),
        ("head = \"right\"\nback = \"towards her feet\"", Some(Transverse), None, Some(Right)),
        ("head = \"right, at navel\"\nbreech = \"left, above navel\"", Some(Transverse), None, Some(Right)),
        (
            "head = \"right, below navel\"\nbreech = \"left, below navel\"",
            Some(Transverse),
            None,
            Some(Right),
        ),
        ("back = \"towards her ribs\"", Some(Transverse), None, None),
        ("back = \"left front\"", Some(Longitudinal), None, None),
        ("head = \"right, below navel\"\nback = \"right front\"", Some(Longitudinal), Some(false), None),
        // Measured along the skin: 8 cm below the navel on the left, 7 cm above it on the right.
        (
            "head = \"left 7 cm, 8 cm below navel\"\nbreech = \"right 6 cm, 7 cm above navel\"",
            Some(Oblique),
            Some(false),
            Some(Left),
        ),
        ("head = \"4 cm above pubic bone\"", Some(Longitudinal), Some(false), None),
        (
            "head = \"left 8 cm, 1 cm above navel\"\nbreech = \"right 8 cm, 1 cm below navel\"",
            Some(Transverse),
            None,
            Some(Left),
        ),
        // Not enough to tell.
        ("head = \"right, below navel\"", None, Some(false), Some(Right)),
        ("head = \"left, above navel\"", None, Some(true), Some(Left)),
        ("head = \"right\"", None, None, Some(Right)),
        ("head = \"at navel\"", None, None, None),
        ("back = \"front\"", None, None, None),
        ("head = \"could not tell (thick wall)\"", None, None, None),
        ("head = \"not felt\"", None, None, None),
        ("lie = \"transverse\"", Some(Transverse), None, None),
        ("lie = \"oblique\"", Some(Oblique), None, None),
        ("presentation = \"breech\"", Some(Longitudinal), Some(true), None),
        ("head-above-brim = \"3/5\"", Some(Longitudinal), Some(false), None),
    ];
    for (lines, lie, head_up, head_side) in cases {
        let conclusion = concluded(lines);
        let up = if conclusion.lie == Some(Transverse) { None } else { conclusion.head_up };
        assert_eq!((conclusion.lie, up, conclusion.head_side), (lie, head_up, head_side), "{lines}");
        assert_eq!(conclusion.conflicts, [], "{lines}");
        let expected = match (lie, head_up) {
            (Some(Longitudinal), Some(false)) => Some(Presentation::Cephalic),
            (Some(Longitudinal), Some(true)) => Some(Presentation::Breech),
            _ => None,
        };
        assert_eq!(conclusion.presentation, expected, "{lines}");
    }
}

#[test]
fn a_side_alone_names_no_position() {
    let conclusion = concluded("head = \"above pubic bone\"\nback = \"left\"");
    assert_eq!(conclusion.position, None);
    assert_eq!(conclusion.back.map(|back| (back.side, back.turn)), Some((Some(Left), None)));
    let lateral = concluded("head = \"above pubic bone\"\nback = \"left lateral\"");
    assert_eq!(code(&lateral).as_deref(), Some("LOT"));
    // A code that the side allows says more, and is not contradicted.
    let both = concluded("head = \"above pubic bone\"\nback = \"left\"\nposition = \"LOP\"");
    assert_eq!((code(&both).as_deref(), both.conflicts), (Some("LOP"), vec![]));
    assert_eq!(both.back.and_then(|back| back.turn), Some(BackTurn::Spine));
}

#[test]
fn engaged_is_said_of_a_flexed_head_only() {
    let engaged = |lines: &str| concluded(lines).engaged;
    for (fifths, expected) in [(0, true), (1, true), (2, true), (3, false), (4, false), (5, false)] {
        assert_eq!(
            engaged(&format!("head = \"above pubic bone\"\nhead-above-brim = \"{fifths}/5\"")),
            Some(expected)
        );
    }
    assert_eq!(
        engaged("head = \"above pubic bone\"\nhead-above-brim = \"1/5\"\nattitude = \"face (scan)\""),
        None
    );
    assert_eq!(
        engaged("head = \"above pubic bone\"\nhead-above-brim = \"1/5\"\nattitude = \"deflexed\""),
        None
    );
    assert_eq!(engaged("head = \"above pubic bone\"\ndescent = \"engaged\""), Some(true));
    assert_eq!(engaged("head = \"above pubic bone\"\ndescent = \"free\""), Some(false));
    assert_eq!(engaged("head = \"above pubic bone\"\ndescent = \"deep\""), None);
    assert_eq!(engaged("head = \"fundus\"\ndescent = \"deep\""), None);
    assert_eq!(engaged("head = \"above pubic bone\""), None);
}

#[test]
fn findings_that_cannot_both_be_right() {
    for (id, lines) in [
        ("head-and-bottom-in-one-place", "head = \"fundus\"\nbreech = \"fundus\""),
        ("head-and-bottom-in-one-place", "head = \"left, below navel\"\nbreech = \"left, below navel\""),
        ("back-against-lie", "head = \"above pubic bone\"\nback = \"towards her feet\""),
        ("back-against-lie", "head = \"left, at navel\"\nback = \"left front\""),
        ("lie-against-findings", "head = \"above pubic bone\"\nlie = \"transverse\""),
        ("presentation-against-findings", "head = \"fundus\"\npresentation = \"cephalic\""),
        ("presentation-against-findings", "head = \"above pubic bone\"\npresentation = \"shoulder\""),
        (
            "position-against-findings",
            "head = \"above pubic bone\"\nback = \"right front\"\nposition = \"LOA\"",
        ),
        ("position-against-findings", "head = \"above pubic bone\"\nback = \"right\"\nposition = \"LOA\""),
        ("position-against-findings", "head = \"fundus\"\nposition = \"LOA\""),
        ("position-against-findings", "head = \"left, at navel\"\nposition = \"RADA\""),
        (
            "position-against-findings",
            "head = \"above pubic bone\"\nback = \"left front\"\nposition = \"LMA\"",
        ),
        ("conclusions-against-one-another", "presentation = \"breech\"\nposition = \"LOA\""),
        ("conclusions-against-one-another", "lie = \"transverse\"\nposition = \"LOA\""),
        (
            "attitude-against-presentation",
            "head = \"above pubic bone\"\nattitude = \"face\"\npresentation = \"brow\"",
        ),
        ("attitude-against-presentation", "attitude = \"flexed\"\nposition = \"RMA\""),
        ("engaged-and-crosswise", "head = \"left, at navel\"\nhead-above-brim = \"2/5\""),
        ("engaged-and-crosswise", "head = \"left iliac fossa\"\ndescent = \"deep\""),
        ("head-in-two-places", "head = \"fundus\"\nhead-above-brim = \"2/5\""),
        (
            "fifths-on-a-breech",
            "breech = \"above pubic bone\"\nposition = \"LSA\"\nhead-above-brim = \"0/5\"",
        ),
        ("engaged-on-a-breech", "head = \"fundus\"\ndescent = \"engaged\""),
        (
            "fifths-against-descent",
            "head = \"above pubic bone\"\nhead-above-brim = \"1/5\"\ndescent = \"free\"",
        ),
        ("heart-not-heard-but-counted", "heart = \"not heard\"\nheart-rate = 140"),
    ] {
        let conclusion = concluded(lines);
        let ids: Vec<&str> = conclusion.conflicts.iter().map(|conflict| conflict.id).collect();
        assert!(ids.contains(&id), "{lines}: {ids:?}");
        let exam = baby(lines);
        for conflict in &conclusion.conflicts {
            assert!(
                conflict.findings.len() + usize::from(conflict.id == "engaged-on-a-breech") >= 2,
                "{lines}"
            );
            for key in &conflict.findings {
                assert!(exam.read.iter().any(|(read, _)| read == key), "{lines}: {key} was not written");
            }
        }
    }
    // The drawing follows the findings.
    let conclusion = concluded("head = \"above pubic bone\"\nback = \"right front\"\nposition = \"LOA\"");
    assert_eq!(code(&conclusion).as_deref(), Some("ROA"));
    let conclusion = concluded("head = \"fundus\"\nback = \"left front\"\nposition = \"LOA\"");
    assert_eq!(code(&conclusion).as_deref(), Some("LSA"));
}

/// What contradicts in the same way twice is one conflict, with every finding named.
#[test]
fn a_conflict_names_every_finding() {
    for (id, lines, named) in [
        (
            "heart-not-heard-but-counted",
            "heart = \"not heard\"\nheart-rate = 140\nheart-rise = 160",
            &["heart", "heart-rate", "heart-rise"][..],
        ),
        (
            "conclusions-against-one-another",
            "lie = \"transverse\"\npresentation = \"breech\"\nposition = \"LOA\"",
            &["lie", "presentation", "position"],
        ),
    ] {
        let conflicts = concluded(lines).conflicts;
        let found: Vec<_> = conflicts.iter().filter(|conflict| conflict.id == id).collect();
        let [one] = found[..] else { panic!("{lines}: {conflicts:?}") };
        let keys: Vec<String> = named.iter().map(|name| format!("baby.1.{name}")).collect();
        assert_eq!(one.findings, keys, "{lines}");
    }
}

#[test]
fn doubt_is_carried_on() {
    assert!(concluded("head = \"fundus?\"").unsure);
    assert!(concluded("head = \"fundus\"\nback = \"left?\"").unsure);
    assert!(!concluded("head = \"fundus\"\nheart = \"left, above navel?\"").unsure);
    assert!(concluded("position = \"LOA?\"").unsure);
}

fn act_now(exam: &Exam) -> Vec<&'static str> {
    reckon(exam, &Default::default())
        .remarks
        .iter()
        .filter(|r| r.grade == Grade::ActNow)
        .map(|r: &Remark| r.id)
        .collect()
}

#[test]
fn what_cannot_wait() {
    let cases: [(&str, &[&str]); 40] = [
        ("weeks=\"37+0\"\n[baby]\nheart=\"not heard\"", &["heart-not-heard"]),
        ("weeks=\"24+0\"\n[baby]\nheart=\"not heard\"", &["heart-not-heard"]),
        // It is not known by what it was listened for: from 20+0 a Doppler would have found it.
        ("weeks=\"23+6\"\n[baby]\nheart=\"not heard\"", &["heart-not-heard"]),
        ("weeks=\"20+0\"\n[baby]\nheart=\"not heard\"", &["heart-not-heard"]),
        ("weeks=\"19+6\"\n[baby]\nheart=\"not heard\"", &[]),
        ("weeks=\"23+6\"\n[baby]\nheart=\"not heard\"\nheart-with=\"Pinard horn\"", &[]),
        ("[baby]\nheart=\"not heard\"", &["heart-not-heard"]),
        (
            "weeks=\"20+0\"\n[mother]\nmovements=\"fewer\"\n[baby]\nheart=\"not heard\"",
            // Few movements before 24+0 are for a Doppler today; with a heart that is not heard it cannot wait.
            &["heart-not-heard"],
        ),
        ("weeks=\"30+0\"\n[baby]\nheart=\"could not tell (noise)\"", &["heart-not-heard"]),
        ("weeks=\"30+0\"\n[baby]\nheart=\"not listened\"", &[]),
        ("weeks=\"30+0\"\n[mother]\nmovements=\"fewer?\"\n[baby]\nheart-rate=140", &["movements-fewer"]),
        ("[mother]\nmovements=\"changed\"", &["movements-changed"]),
        ("[mother]\nmovements=\"none\"", &["movements-none"]),
        ("[mother]\nmovements=\"felt\"", &[]),
        ("[mother]\nmovements=\"not asked\"", &[]),
        ("weeks=\"20+0\"\n[mother]\nmovements=\"not felt yet\"", &[]),
        ("weeks=\"24+0\"\n[mother]\nmovements=\"not felt yet\"", &["movements-not-felt-yet"]),
        ("[mother]\nreports=[\"itching\",\"bleeding\"]", &["bleeding"]),
        ("[mother]\ndenies=\"bleeding\"", &[]),
        ("[mother]\nreports=[\"fits\", \"blurred vision\"]", &["urgent-signs"]),
        ("[mother]\nreports=[\"itching\", \"headache\", \"tightenings\"]", &[]),
        ("[mother]\nreports=\"constant pain\"", &["constant-pain"]),
        ("[mother]\nwomb=\"hard\"", &[]),
        ("[mother]\nwomb=\"tender\"", &[]),
        ("[mother]\nwomb=[\"hard\",\"tender\"]", &["hard-tender-womb"]),
        ("[mother]\nreports=\"scar pain\"\noperations=\"caesarean\"", &["scar-pain"]),
        ("[mother]\nreports=\"scar pain\"\nwomb-cut=\"not known\"", &["scar-pain"]),
        ("[mother]\nreports=\"scar pain\"\noperations=\"none\"", &[]),
        ("[mother]\nreports=\"scar pain\"", &["scar-pain-operations-not-known"]),
        ("[mother]\nreports=\"waters broken\"\n[baby]\nhead=\"fundus\"", &["waters-broken-not-head-down"]),
        (
            "[mother]\nreports=\"waters broken\"\n[baby]\nhead=\"left iliac fossa\"",
            &["waters-broken-not-head-down"],
        ),
        ("[mother]\nreports=\"waters broken\"\n[baby]\nback=\"front\"", &["waters-broken-lie-not-known"]),
        (
            "[mother]\nreports=\"waters broken\"\n[baby]\nhead=\"above pubic bone\"\ndescent=\"free\"",
            &["waters-broken-head-free"],
        ),
        (
            "[mother]\nreports=\"waters broken\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"2/5\"",
            // The weeks are not known, so it may be before term.
            &["waters-broken-before-term"],
        ),
        (
            "weeks=\"37+0\"\n[mother]\nreports=\"waters broken\"\n[baby]\nhead=\"above pubic bone\"\nhead-above-brim=\"2/5\"",
            &[],
        ),
        ("[baby]\nheart-rate=99", &["heart-rate-low"]),
        ("[baby]\nheart-rate=\"100-180\"", &[]),
        ("weeks=\"30+0\"\n[baby]\nheart-counts=\"46 in 15 s\"", &["heart-rate-high"]),
        ("weeks=\"10+0\"\n[baby]\nheart-rate=182", &[]),
        ("[mother]\npulse=120\n[baby]\nheart-rate=135", &["pulse-near-heart"]),
    ];
    for (text, ids) in cases {
        assert_eq!(act_now(&read(text)), ids, "{text}");
    }
    assert_eq!(act_now(&read("[mother]\npulse=119\n[baby]\nheart-rate=135")), Vec::<&str>::new());
    // Of twins each heart is looked at by itself.
    let twins = read("weeks=\"34+0\"\n[[baby]]\nheart-rate=140\n[[baby]]\nheart=\"not heard\"");
    let mut standing = reckon(&twins, &Default::default()).remarks;
    standing.retain(|remark| remark.grade == Grade::ActNow);
    assert_eq!(standing.iter().map(|r| (r.id, r.baby)).collect::<Vec<_>>(), [("heart-not-heard", Some(1))]);
    assert_eq!(standing[0].findings, ["baby.2.heart"]);
}

/// Every remark can be said, names no disease and comforts nobody.
#[test]
fn remarks_say_what_to_do_next() {
    let words = std::fs::read_to_string(super::shared::path("layouts/words/en.ftl")).expect("the words");
    let joined = words.replace("\n ", " ");
    let said: Vec<&str> = joined.lines().filter(|line| line.starts_with("remark-")).collect();
    assert!(said.len() > 25);
    for line in said {
        let lower = line.to_lowercase();
        for never in [
            "healthy",
            "normal",
            "good size",
            " well",
            " fine",
            "reassur",
            "abruption",
            "distress",
            "stillbirth",
            "rupture",
        ] {
            assert!(!lower.contains(never), "{line}");
        }
        assert!(lower.matches(['.', '?']).count() >= 2, "a finding and a next step: {line}");
        let act = line.contains("guidance")
            || line.contains("again")
            || line.contains("Keep")
            || line.contains("Say ")
            || line.contains("Ask ");
        assert!(act || line.contains("treat the heart as not heard"), "{line}");
    }
}

fn check_json(text: &str) -> serde_json::Value {
    let command =
        Command::Check(Check { exams: vec![Source::new("a.toml", text)], json: true, ..Check::default() });
    let outcome = run(&Request { command, look: Look::Plain });
    assert_eq!(outcome.text.lines().count(), 1);
    serde_json::from_str(&outcome.text).expect("JSON")
}

#[test]
fn json_has_the_published_shape() {
    let text = "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\n[baby]\nback = \"left anterior\"\nhead = \"above symphysis\"\nhead-above-brim = \"2/5\"\nheart-counts = [\"35 in 15 s\", \"36 in 15 s\"]\n";
    let json = check_json(text);
    // A deep head under a long tape leaves room above the drawn baby: a note on the drawing, and no remark.
    let roomy = check_json(&text.replace("2/5", "0/5").replace("35 cm", "39 cm"));
    let off = roomy["babies"][0]["drawn_off_by_cm"].as_f64();
    // The form is as long as the tables say: 25 to 28 cm at term, folded.
    assert!(off.is_some_and(|cm| (-13.0..0.0).contains(&cm)), "{off:?}");
    assert_eq!(json["babies"][0].get("drawn_off_by_cm"), None, "{}", json["babies"][0]["drawn_off_by_cm"]);
    assert_eq!(json["format"], "handspan-check/1");
    assert_eq!(json["exam"], "a.toml");
    assert_eq!(json["gestation"], serde_json::json!({"days": 259, "text": "37+0"}));
    assert_eq!(json["read"]["mother.fundal-height"], "35 cm");
    assert_eq!(json["read"]["baby.1.back"], "left front");
    // (Weights by the tape stand only where they are asked for.)
    assert_eq!(
        json["babies"],
        serde_json::json!([{"said": ["Cephalic presentation, back to her left, anterior: left occipito-anterior (LOA). Engaged: 2/5 palpable \
            above the brim. Follows from what was felt."], "lie": "longitudinal", "presentation": "cephalic", "position": "LOA", "engaged": true,
            "fits": ["LOA"], "heart_rate": {"mean": 142.0, "low": 136.0, "high": 148.0}}])
    );
    assert_eq!(json["remarks"], serde_json::json!([]));
    let json = check_json("[baby]\nhead = \"fundus\"\nback = \"leftt\"\n");
    assert_eq!(
        json["problems"],
        serde_json::json!([{"id": "unknown-word", "severity": "error", "file": "a.toml", "line": 3, "column": 9, "length": 5,
            "text": "leftt", "message": "back: `leftt` is not a word for this; a side is never guessed: write left or right",
            "expected": "`left`, `right`, `front`, `lateral`, `towards her spine`, `towards her ribs` or `towards her feet`"}])
    );
    assert!(json.get("babies").is_none() && json.get("read").is_none() && json.get("gestation").is_none());
    let json = check_json("[baby]\nheart = \"not heard\"\n");
    let remark = &json["remarks"][0];
    assert_eq!((&remark["id"], &remark["grade"]), (&"heart-not-heard".into(), &"act-now".into()));
    assert_eq!(remark["findings"], serde_json::json!(["baby.1.heart"]));
    assert!(remark["text"].as_str().is_some_and(|text| text.contains("not heard")));
}

#[test]
fn several_files_give_the_highest_code() {
    let good = Source::new("good.toml", "[baby]\nhead = \"fundus\"\n");
    let both = Source::new("both.toml", "[baby]\nhead = \"fundus\"\nbreech = \"fundus\"\n");
    let bad = Source::new("bad.toml", "[baby]\nhead = \"fundu\"\n");
    let now = Source::new("now.toml", "[mother]\nmovements = \"none\"\n");
    let code = |exams: &[&Source]| {
        let command = Command::Check(Check {
            exams: exams.iter().map(|s| (*s).clone()).collect(),
            json: false,
            ..Check::default()
        });
        run(&Request { command, look: Look::Plain }).code
    };
    assert_eq!(code(&[&good]), exit::DONE);
    assert_eq!(code(&[&both, &good]), exit::CANNOT_BOTH);
    assert_eq!(code(&[&both, &bad, &good]), exit::FAILED);
    assert_eq!(code(&[&now, &bad]), exit::ACT_NOW);
}

#[test]
fn what_cannot_wait_comes_first() {
    let text = "[mother]\nmovements = \"none\"\n[baby]\nhead = \"fundus\"\nbreech = \"fundus\"\n";
    let command =
        Command::Check(Check { exams: vec![Source::new("a.toml", text)], json: false, ..Check::default() });
    let said = run(&Request { command, look: Look::Plain }).text;
    let at = |word: &str| said.find(word).unwrap_or_else(|| panic!("{word} in {said}"));
    assert!(at("ACT NOW") < at("Movements: none") && at("Movements: none") < at("Cannot both be right"));
}

#[test]
fn left_mento_posterior_is_spelled_out() {
    let command = Command::Check(Check {
        exams: vec![Source::new("a.toml", "[baby]\nposition = \"LMP\"\n")],
        json: false,
        ..Check::default()
    });
    let said = run(&Request { command, look: Look::Plain }).text;
    assert!(said.contains("left mento-posterior") && !said.contains("LMP"), "{said}");
    assert!(said.contains("back to her right, anterior"), "{said}");
}

/// A line that is no text is refused as a whole: bytes that cannot be shown cannot be pointed at.
#[test]
fn a_line_that_is_no_text_is_refused() {
    let exams = vec![Source::line("--say", b"36+4 h\xa0\x9ed fixed, back left front".as_slice())];
    let outcome =
        run(&Request { command: Command::Check(Check { exams, ..Check::default() }), look: Look::Plain });
    assert_eq!(outcome.code, exit::FAILED, "{}", outcome.notes);
    assert!((outcome.text + &outcome.notes).contains("not UTF-8 text"));
}
