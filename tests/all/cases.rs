//! Practice cases: the key's position fits, what is planted is what is found, nothing is told that the visit file does not give.

use crate::shared::{path, read, run_in, said};
use handspan::clinic::Thresholds;
use handspan::exam::{Exam, Position};
use handspan::reckon::{Grade, Reckoning, reckon};
use handspan::teach::{Case, Lesson, Level, case_content, key_content};
use handspan::words::Words;
use std::collections::BTreeSet;
use std::sync::LazyLock;

fn reckoned(exam: &Exam) -> Reckoning {
    reckon(exam, &Thresholds::default())
}

fn fits(exam: &Exam) -> Vec<Position> {
    reckoned(exam).agreement[0].fits.clone()
}

/// A thousand cases, each of a seed of its own, of every level and lesson; made once. `CASES=9000 cargo test --test all cases`
/// holds three thousand seeds of each level.
fn thousand() -> impl Iterator<Item = &'static Case> {
    static CASES: LazyLock<Vec<Case>> = LazyLock::new(|| (0..many()).map(of_seed).collect());
    CASES.iter()
}

fn many() -> u64 {
    std::env::var("CASES").ok().and_then(|many| many.parse().ok()).unwrap_or(1000)
}

fn of_seed(seed: u64) -> Case {
    let level = [Level::Easy, Level::Fair, Level::Hard][(seed % 3) as usize];
    Case::make(seed, 1 + seed / 3, level).expect("a case")
}

/// What a student makes of a printed sheet: its findings, and of its story what a hand met, as an exam.
fn solved(case: &Case, words: &Words) -> Exam {
    let sheet = case_content(case, words).expect("a sheet");
    let story = &sheet.blocks["case-found"][1].text;
    let of_story = match case.lesson {
        Lesson::HerSides => {
            let side = if story.contains("your right hand meets something long") { "left" } else { "right" };
            let turn = if story.contains("well forward") { "front" } else { "lateral" };
            format!("back = \"{side} {turn}\"\n")
        }
        Lesson::HeadOrBottom => {
            let bottom_up = story.starts_with("First grip: at the top of the womb lies something broad");
            let [top, low] = if bottom_up { ["breech", "head"] } else { ["head", "breech"] };
            format!("{top} = \"fundus\"\n{low} = \"above pubic bone\"\n")
        }
        Lesson::HeadStraight => "prominence = \"level\"\n".to_owned(),
        Lesson::FaceLeads if story.contains("a chin") => {
            "attitude = \"face (vaginal examination)\"\n".to_owned()
        }
        Lesson::BrowLeads if story.contains("brow ridges") => {
            "attitude = \"brow (vaginal examination)\"\n".to_owned()
        }
        _ => String::new(),
    };
    let of_mother = match case.lesson {
        Lesson::WhoseHeart => {
            let pulse: String = story.chars().filter(char::is_ascii_digit).collect();
            format!("pulse = {pulse}\n")
        }
        Lesson::FewerMovements if story.contains("quieter") => "movements = \"fewer\"\n".to_owned(),
        _ => String::new(),
    };
    let shown = |name: &str| sheet.blocks[name].iter().map(|block| block.text.as_str());
    if case.level == Level::Easy {
        let all: Vec<&str> = shown("case-found").chain(shown("case-questions-more")).collect();
        let text = format!("{} ", all.join(" "));
        let after = |label: &str| {
            let (_, rest) = text.split_once(label)?;
            rest.split_once(". ").map(|(said, _)| said.to_owned())
        };
        let weeks = text.split_once("found at ").and_then(|(_, rest)| rest.split_once(' ')).expect("weeks").0;
        let mut exam = format!("weeks = \"{weeks}\"\n[mother]\n{of_mother}");
        let put = |exam: &mut String, key: &str, said: Option<String>| {
            if let Some(said) = said {
                exam.push_str(&format!("{key} = \"{said}\"\n"));
            }
        };
        put(&mut exam, "movements", after("Movements: "));
        put(&mut exam, "fundal-height", after("Measured: "));
        exam.push_str(&format!("[baby]\n{of_story}"));
        put(&mut exam, "breech", after("Breech at: "));
        put(&mut exam, "back", after("Back: "));
        if let Some(limbs) = after("Limbs: ") {
            let limbs: Vec<String> = limbs.split("; ").map(|place| format!("\"{place}\"")).collect();
            exam.push_str(&format!("limbs = [{}]\n", limbs.join(", ")));
        }
        put(&mut exam, "head", after("Head at: "));
        put(&mut exam, "head-above-brim", after("Engagement: ").map(|said| said[..3].to_owned()));
        put(
            &mut exam,
            "prominence",
            after("prominence: on the side of the limbs").map(|_| "limb side".to_owned()),
        );
        put(&mut exam, "heart", after("Heard: "));
        put(&mut exam, "heart-with", after("With: "));
        if let Some(counts) = after("Counted: ") {
            let counts: Vec<String> = counts.split("; ").map(|count| format!("\"{count}\"")).collect();
            exam.push_str(&format!("heart-counts = [{}]\n", counts.join(", ")));
        }
        return read(&exam);
    }
    let mut line: Vec<String> = vec![];
    for name in ["case-found", "case-questions-more"] {
        let strong = |block: &&handspan::sheet::Block| block.kind == handspan::sheet::Kind::Strong;
        line.extend(sheet.blocks[name].iter().filter(strong).map(|block| block.text.clone()));
    }
    // The story in the words of a line: keys and values stand beside one another.
    let said = format!("{of_mother}{of_story}").replace(['"', '='], " ");
    line.extend(said.lines().map(|said| said.split_whitespace().collect::<Vec<_>>().join(" ")));
    let line = line.join("; ");
    let reading = handspan::exam::shorthand::read("sheet", &line);
    assert!(reading.problems.is_empty(), "{line}: {}", reading.problems[0].message);
    reading.exam.expect("an exam")
}

/// What the printed sheet tells, solved by the check, is what its key says.
fn sheet_and_key_agree(case: &Case, words: &Words) {
    let solved = reckoned(&solved(case, words));
    let key = reckoned(&case.exam);
    let ids = |reckoning: &Reckoning| reckoning.remarks.iter().map(|r| r.id).collect::<Vec<_>>();
    let about = format!("{:?} {}\n{}", case.lesson, case.name(), case.file(""));
    assert_eq!(solved.agreement[0].fits, key.agreement[0].fits, "{about}");
    assert_eq!(ids(&solved), ids(&key), "{about}");
    let fits: Vec<String> = solved.agreement[0].fits.iter().map(|position| position.words()).collect();
    let content = key_content(case, &key, &[], words).expect("a key");
    let answers: Vec<&str> = content.blocks["case-answers"].iter().map(|block| block.text.as_str()).collect();
    let answer = |question: &str| {
        let at = answers.iter().position(|text| text.contains(question)).expect("the question");
        answers[at + 1]
    };
    let (lie, sure) = (answer("How does the baby lie?"), answer("Which positions fit"));
    match &fits[..] {
        [] => assert!(sure.contains("No position fits") || sure.contains("cannot tell"), "{sure}\n{about}"),
        [one] => {
            assert!(
                sure.starts_with(&format!("One position fits everything that was found: {one}.")),
                "{about}"
            );
            assert!(lie.contains(one.as_str()), "{lie}\n{about}");
        }
        several => {
            let told = format!("{} positions fit: {}.", several.len(), several.join("; "));
            assert!(sure.starts_with(&told), "{sure}\n{about}");
            for named in [lie, content.description.as_str()] {
                for position in Position::all().map(Position::words) {
                    assert!(!named.contains(&position), "{position}: {named}\n{about}");
                }
            }
        }
    }
    // What the key says was felt was given.
    let small_parts = answers.iter().any(|text| text.to_lowercase().contains("small parts on both"));
    let given = case.shown.babies[0].limbs.value().is_some_and(|limbs| limbs.len() == 2);
    assert!(!small_parts || given, "{about}");
}

#[test]
fn every_printed_sheet_is_solved_to_its_key() {
    let words = Words::load("en").expect("the words");
    for case in thousand() {
        sheet_and_key_agree(case, &words);
    }
}

/// Where to listen is asked before it is told where the heart was heard, and no womb is drawn that would tell the lie.
#[test]
fn where_to_listen_is_asked_before_it_is_told() {
    let words = Words::load("en").expect("the words");
    for case in thousand() {
        let sheet = case_content(case, &words).expect("a sheet");
        let first: Vec<&str> = ["case-found", "case-questions"]
            .iter()
            .flat_map(|name| sheet.blocks[*name].iter().map(|block| block.text.as_str()))
            .collect();
        let first = first.join("\n");
        assert!(first.contains("Where would you listen first"), "{first}");
        assert!(!first.contains("FHH") && !first.contains("Heard: "), "{first}");
        let heard = case.exam.babies[0].heart.value().is_some();
        let second: Vec<&str> =
            sheet.blocks["case-questions-more"].iter().map(|block| block.text.as_str()).collect();
        let second = second.join("\n");
        assert_eq!(second.contains("FHH") || second.contains("Heard: "), heard, "{second}");
    }
}

/// Every answer has its marks, and they are added up.
#[test]
fn a_key_says_what_earns_each_mark() {
    let words = Words::load("en").expect("the words");
    for case in thousand() {
        let key = key_content(case, &reckoned(&case.exam), &[], &words).expect("a key");
        let text = |name: &str| {
            key.blocks[name].iter().map(|block| block.text.clone()).collect::<Vec<_>>().join("\n")
        };
        let marks: u32 = text("case-answers")
            .split(" marks)")
            .filter_map(|before| before.rsplit_once('(')?.1.parse::<u32>().ok())
            .sum();
        let scheme = text("case-sums");
        assert!(scheme.contains(&format!("Marks, {marks} in all.")), "{marks}: {scheme}");
    }
}

#[test]
fn the_position_of_the_key_fits_what_was_found() {
    let mut lessons = BTreeSet::new();
    for case in thousand() {
        lessons.insert(case.lesson);
        let file = case.file("");
        // What is in the file is what was asked and answered.
        assert_eq!(read(&file), case.exam, "{file}");
        let fits = fits(&case.exam);
        match (case.level, case.planted) {
            (Level::Easy | Level::Fair, _) => {
                assert_eq!(fits, [case.position()], "{:?}\n{file}", case.lesson)
            }
            (Level::Hard, None) if case.lesson == Lesson::CannotTell => assert_eq!(fits, [], "{file}"),
            (Level::Hard, None) => {
                assert!(fits.len() > 1 && fits.contains(&case.position()), "{fits:?}\n{file}");
            }
            (Level::Hard, Some(_)) => assert_eq!(fits, [], "{file}"),
        }
    }
    assert!(many() < 300 || lessons.len() == 26, "{lessons:?}");
}

#[test]
fn what_is_planted_is_what_does_not_go_with_the_others() {
    let mut planted = 0_u64;
    for case in thousand() {
        let Some(key) = case.planted else { continue };
        planted += 1;
        let name = format!("baby.1.{key}");
        let against = |exam: &Exam| -> Vec<Vec<String>> {
            let wanted = [
                "limbs-on-the-side-of-the-back",
                "heart-far-from-the-back",
                "heart-height-against-the-end-that-is-down",
                "dip-with-a-back-in-front",
                "findings-fit-no-position",
            ];
            let remarks = reckoned(exam).remarks.into_iter();
            remarks
                .filter(|r| r.grade == Grade::CannotBoth || wanted.contains(&r.id))
                .map(|r| r.findings)
                .collect()
        };
        let with = against(&case.exam);
        assert!(
            !with.is_empty() && with.iter().all(|set| set.contains(&name)),
            "{with:?}\n{}",
            case.file("")
        );
        let without = case.without(key).expect("an exam");
        assert_eq!(against(&without), Vec::<Vec<String>>::new(), "{}", case.file(""));
        assert!(fits(&without).contains(&case.position()), "{}", case.file(""));
    }
    assert!(planted * 10 > many(), "{planted}");
}

/// Sides from both ends: where the key says "left" of the back, so does the true position.
#[test]
fn the_key_tells_the_side_of_the_true_position() {
    let words = Words::load("en").expect("the words");
    let mut told = [0_usize, 0];
    for case in thousand() {
        let Some(side) = case.position().back_octant().and_then(|octant| octant.side()) else { continue };
        if case.lesson == Lesson::CannotTell || case.planted.is_some() {
            continue;
        }
        let content = key_content(case, &reckoned(&case.exam), &[], &words).expect("a key");
        let answers: Vec<&str> =
            content.blocks["case-answers"].iter().map(|block| block.text.as_str()).collect();
        let answers = answers.join("\n");
        let (own, other) = match side {
            handspan::units::MotherSide::Left => ("on your left side", "on your right side"),
            handspan::units::MotherSide::Right => ("on your right side", "on your left side"),
        };
        assert!(answers.contains(own) && !answers.contains(other), "{}\n{answers}", case.file(""));
        if case.lesson == Lesson::HerSides {
            told[usize::from(own == "on your right side")] += 1;
            let sheet = case_content(case, &words).expect("a sheet");
            let story = &sheet.blocks["case-found"][1].text;
            // The examiner faces her: the other hand's name.
            let hand = if own == "on your left side" { "your right hand" } else { "your left hand" };
            assert!(story.contains(hand), "{story}");
            assert!(answers.contains(&format!("On her {}: ", &own[8..own.len() - 5])), "{answers}");
        }
    }
    assert!(told.iter().all(|times| *times * 200 > many() as usize), "{told:?}");
}

/// The sheet gives neither the position nor what the story tells in other words.
#[test]
fn a_sheet_does_not_give_the_answer_away() {
    let words = Words::load("en").expect("the words");
    for case in thousand() {
        let sheet = case_content(case, &words).expect("a sheet");
        let shown: Vec<&str> = sheet.blocks.values().flatten().map(|block| block.text.as_str()).collect();
        let shown = shown.join("\n");
        assert!(!shown.contains(&case.position().words()), "{shown}");
        assert!(shown.contains("invented") && shown.contains("HER left and right"), "{shown}");
        if case.lesson == Lesson::HeadOrBottom {
            assert!(!shown.contains("Bottom:") && !shown.contains("Head:"), "{shown}");
        }
    }
}

#[test]
fn nothing_comforts_or_diagnoses() {
    let words = Words::load("en").expect("the words");
    for case in thousand() {
        let sheet = case_content(case, &words).expect("a sheet");
        let key = key_content(case, &reckoned(&case.exam), &[], &words).expect("a key");
        for block in sheet.blocks.values().chain(key.blocks.values()).flatten() {
            let text = block.text.to_lowercase();
            for never in ["healthy", "all is well", "good size", "normal", "reassur", "nothing to worry"] {
                assert!(!text.contains(never), "{text}");
            }
        }
    }
}

#[test]
fn the_program_writes_sheets_a_key_and_exam_files_that_check_reads() {
    let here = tempfile::tempdir().expect("a directory");
    let make = |directory: &str, more: &[&str]| {
        let mut arguments = vec!["cases", "--count", "3", "--seed", "8", "--level", "hard", "-o", directory];
        arguments.extend(more);
        run_in(here.path(), &arguments, b"")
    };
    let first = make("one", &[]);
    assert!(first.status.success(), "{}", said(&first));
    // Five files, and before them which of them is the key.
    assert_eq!(said(&first).lines().count(), 6, "{}", said(&first));
    assert!(said(&first).contains("hand out cases.pdf alone: key.pdf is the answer key"), "{}", said(&first));
    assert!(said(&first).contains("wrote one/key.pdf: the answer key"), "{}", said(&first));
    let again = make("two", &[]);
    assert!(again.status.success());
    for name in ["cases.pdf", "key.pdf", "case-01.toml", "case-02.toml", "case-03.toml"] {
        let file = |directory: &str| std::fs::read(here.path().join(directory).join(name)).expect("a file");
        assert_eq!(file("one"), file("two"), "{name}: the same seed, other bytes");
    }
    let there = make("one", &[]);
    assert_eq!(there.status.code(), Some(2));
    assert!(said(&there).contains("--force"), "{}", said(&there));
    assert!(make("one", &["--force", "--paper", "letter"]).status.success());
    assert!(said(&make("one/case-01.toml", &[])).contains("is a file"));
    assert!(said(&make("-", &[])).contains("name a directory"));
    let exam = std::fs::read_to_string(here.path().join("one/case-01.toml")).expect("an exam");
    assert!(exam.starts_with("# An invented case"), "{exam}");
    let checked = run_in(&path(""), &["check", "-"], exam.as_bytes());
    assert!(!said(&checked).contains("error"), "{}", said(&checked));
}

/// Every level's sheets and keys are laid out on both papers: what does not fit is an error.
#[test]
fn sheets_and_keys_fit_their_papers() {
    use handspan::commands::{Cases, Command, Paper, Request, run};
    for (level, count) in [(Level::Easy, 5), (Level::Fair, 7), (Level::Hard, 8)] {
        for paper in [Paper::A4, Paper::Letter] {
            let cases = Cases { count, seed: 21, level, package: false, paper, lang: "en".to_owned() };
            let request = Request { command: Command::Cases(cases), look: handspan::report::Look::Plain };
            let outcome = run(&request);
            assert_eq!(outcome.code, 0, "{}", outcome.notes);
            assert_eq!(outcome.pages.len(), usize::from(count) + 2);
        }
    }
}

/// A sheet tells its level and seed, and gives the curve of the tape; another level has another baby.
#[test]
fn sheets_of_one_seed_are_told_apart() {
    let words = Words::load("en").expect("the words");
    let mut same = 0;
    for number in 1..=40 {
        let cases = [Level::Easy, Level::Fair, Level::Hard]
            .map(|level| Case::make(7, number, level).expect("a case"));
        let names: BTreeSet<String> = cases.iter().map(Case::name).collect();
        assert_eq!(names.len(), 3, "{names:?}");
        for case in &cases {
            let sheet = case_content(case, &words).expect("a sheet");
            // The sheet says `set number` for the seed, and `medium` for the level between.
            let level = match case.level {
                Level::Easy => "easy",
                Level::Fair => "medium",
                Level::Hard => "hard",
            };
            assert!(sheet.title.contains("set number 7") && sheet.title.contains(level), "{}", sheet.title);
            let found: Vec<&str> =
                sheet.blocks["case-found"].iter().map(|block| block.text.as_str()).collect();
            let weeks = case.exam.weeks.expect("weeks");
            let mean = format!("a mean of {:.1}", handspan::reckon::curves::sfh_mean(weeks));
            assert!(found.join("\n").contains(&mean), "{mean}: {found:?}");
        }
        let of = |case: &Case| (case.position(), case.exam.weeks.map(|weeks| weeks.days()));
        same += usize::from(of(&cases[0]) == of(&cases[1])) + usize::from(of(&cases[1]) == of(&cases[2]));
    }
    assert!(same < 8, "{same} of 80 babies are the same");
}

/// What a hard case hides is not given away by what it asks.
#[test]
fn hard_cases_ask_alike() {
    let words = Words::load("en").expect("the words");
    let mut asked = BTreeSet::new();
    for case in thousand().filter(|case| case.level == Level::Hard) {
        let sheet = case_content(case, &words).expect("a sheet");
        let lesson = sheet.blocks["case-questions-more"].iter().find(|block| block.text.starts_with("3. "));
        asked.insert((
            sheet.blocks["case-questions"][1].text.clone(),
            lesson.expect("a question").text.clone(),
        ));
    }
    assert_eq!(asked.len(), 1, "{asked:?}");
}
