//! README.md, DEVELOPERS.md and the manual say what is so. Every console block is run, every path exists, the code map is that of
//! the sources, every named test is there, and `docs/rules.md` holds the rules that the program has. `BLESS=1` rewrites the
//! outputs, the pictures, the rules and the map: look at them, then commit.

use super::shared::{path, run_in, rust_files, said};
use handspan::reckon::ledger::{RULES, Trust};
use std::collections::BTreeSet;
use std::fs;
use std::path::Path;

fn read(name: &str) -> String {
    fs::read_to_string(path(name)).unwrap_or_else(|fault| panic!("{name}: {fault}"))
}

fn bless() -> bool {
    let bless = std::env::var_os("BLESS").is_some();
    assert!(!(bless && std::env::var_os("CI").is_some()), "documents are never rewritten by a machine");
    bless
}

/// README.md and the chapters of the manual, as paths from the root.
fn manual() -> Vec<String> {
    let mut chapters: Vec<String> = fs::read_dir(path("docs"))
        .expect("docs")
        .map(|entry| entry.expect("an entry").file_name().into_string().expect("a name"))
        .map(|name| format!("docs/{name}"))
        .collect();
    chapters.sort();
    chapters.insert(0, "README.md".to_owned());
    chapters
}

/// A temporary directory with a copy of the examples.
fn examples() -> tempfile::TempDir {
    let here = tempfile::tempdir().expect("a directory");
    for folder in ["examples", "examples/growth"] {
        fs::create_dir(here.path().join(folder)).expect("a directory");
        for entry in fs::read_dir(path(folder)).expect("examples") {
            let from = entry.expect("an entry").path();
            if from.is_file() {
                let name = from.file_name().expect("a name");
                fs::copy(&from, here.path().join(folder).join(name)).expect("a copy");
            }
        }
    }
    here
}

/// `examples/growth/*.toml` as a shell would give it; any other argument as it is.
fn expanded(here: &Path, argument: &str) -> Vec<String> {
    let Some(folder) = argument.strip_suffix("*.toml") else { return vec![argument.to_owned()] };
    let entries = fs::read_dir(here.join(folder)).expect("a directory");
    let name = |entry: std::io::Result<fs::DirEntry>| entry.expect("an entry").file_name().into_string();
    let mut names: Vec<String> =
        entries.map(|entry| format!("{folder}{}", name(entry).expect("a name"))).collect();
    names.sort();
    names
}

/// The fenced blocks of a document in this language: the lines between the fences.
fn blocks(text: &str, language: &str) -> Vec<String> {
    let mut found = vec![];
    let mut inside: Option<(bool, String)> = None;
    for line in text.lines() {
        match (&mut inside, line.strip_prefix("```")) {
            (None, Some(opened)) => inside = Some((opened == language, String::new())),
            (Some(_), Some(_)) => {
                found.extend(inside.take().filter(|(wanted, _)| *wanted).map(|(_, block)| block));
            }
            (Some((_, block)), None) => {
                block.push_str(line);
                block.push('\n');
            }
            (None, None) => {}
        }
    }
    assert!(inside.is_none(), "a block is never closed");
    found
}

/// Runs `line` (`handspan ...`, or `echo '...' | handspan ...`) in `here`: the exit code and what was said.
fn run_line(here: &Path, line: &str) -> (i32, String) {
    let (input, command) = match line.split_once(" | ") {
        Some((echo, command)) => {
            let text = echo.strip_prefix("echo '").and_then(|rest| rest.strip_suffix('\''));
            (format!("{}\n", text.unwrap_or_else(|| panic!("cannot run `{line}`"))), command)
        }
        None => (String::new(), line),
    };
    let arguments = command.strip_prefix("handspan ").unwrap_or_else(|| panic!("cannot run `{line}`"));
    // Between double quotes, a line of shorthand is one argument.
    let arguments: Vec<&str> = arguments
        .split('"')
        .enumerate()
        .flat_map(|(at, part)| if at % 2 == 1 { vec![part] } else { part.split_whitespace().collect() })
        .collect();
    let arguments: Vec<String> = arguments.iter().flat_map(|argument| expanded(here, argument)).collect();
    let arguments: Vec<&str> = arguments.iter().map(String::as_str).collect();
    let output = run_in(here, &arguments, input.as_bytes());
    (output.status.code().expect("an exit code"), said(&output))
}

/// A console block with the real output under each command; `...` in a block stands for any lines and is kept.
fn replayed(here: &Path, block: &str) -> String {
    let mut out = String::new();
    let mut last = 0;
    let mut lines = block.lines().peekable();
    while let Some(line) = lines.next() {
        let command = line.strip_prefix("$ ").unwrap_or_else(|| panic!("`{line}` is no command"));
        let mut expected = String::new();
        while let Some(line) = lines.next_if(|line| !line.starts_with("$ ")) {
            expected.push_str(line);
            expected.push('\n');
        }
        out.push_str(&format!("$ {command}\n"));
        if command == "echo $?" {
            out.push_str(&format!("{last}\n"));
            continue;
        }
        let (code, said) = run_line(here, command);
        last = code;
        match expected.strip_prefix("...\n").and_then(|rest| rest.strip_suffix("...\n")) {
            Some(part) if said.contains(part) => out.push_str(&expected),
            Some(part) => panic!("`{command}` does not say\n{part}\nbut\n{said}"),
            None => out.push_str(&said),
        }
    }
    out
}

#[test]
fn every_console_block_is_what_the_program_says() {
    let here = examples();
    let mut count = 0;
    for document in manual() {
        let mut text = read(&document);
        for block in blocks(&text, "console") {
            count += 1;
            let real = replayed(here.path(), &block);
            if bless() {
                text = text.replace(&format!("```console\n{block}```"), &format!("```console\n{real}```"));
            } else {
                assert_eq!(block, real, "{document}: look, then BLESS=1");
            }
        }
        if bless() {
            fs::write(path(&document), text).expect("the document is written");
        }
    }
    assert!(count >= 16, "{count} blocks");
}

#[test]
fn the_first_commands_of_the_readme_work() {
    let here = examples();
    let text = read("README.md");
    let mut shell = vec![];
    for block in blocks(&text, "sh") {
        shell.extend(block.lines().map(str::to_owned));
    }
    let [job, tests] = shell.as_slice() else { panic!("two commands first, not {}", shell.len()) };
    let arguments =
        job.strip_prefix("cargo run --profile first -- ").expect("a command that runs the program");
    let (code, said) = run_line(here.path(), &format!("handspan {arguments}"));
    assert_eq!((code, said.as_str()), (0, "wrote page.pdf: the family page\n"));
    assert!(fs::read(here.path().join("page.pdf")).expect("the page").starts_with(b"%PDF-"));
    assert!(path(tests).is_file(), "there is no {tests}");
}

/// Every command is in the help of the program, in its group; each ends with two examples, and what they say is so.
#[test]
fn the_examples_of_the_help_work() {
    let here = examples();
    let help = |line: &str| {
        let (code, said) = run_line(here.path(), &format!("handspan {line}"));
        assert_eq!(code, 0, "{line}: {said}");
        said
    };
    let whole = help("--help");
    let groups = ["\nLook:\n", "\nGive:\n", "\nTeach:\n", "\nReference:\n", "\nOptions:\n"];
    let at = groups.map(|group| whole.find(group).unwrap_or_else(|| panic!("no {group} in\n{whole}")));
    assert!(at.is_sorted(), "{whole}");
    let lines = whole[at[0]..at[4]].lines().filter_map(|line| line.strip_prefix("  "));
    let listed = lines.filter(|line| !line.starts_with(' ')).filter_map(|line| line.split(' ').next());
    let commands: BTreeSet<&str> = listed.collect();
    // As the program names them where it is asked for one that is not there.
    let table = read("src/cli.rs");
    let variants = table.split_once("pub enum Command {").expect("the table").1;
    let count = variants.split("\n}\n").next().expect("its end").matches("    /// ").count();
    assert_eq!(commands.len(), count, "{commands:?}");
    for command in commands {
        let said = help(&format!("{command} --help"));
        let (_, after) = said.split_once("Examples:\n  ").unwrap_or_else(|| panic!("no examples:\n{said}"));
        let examples: Vec<&str> = after.lines().map(str::trim).collect();
        assert_eq!(examples.len(), 2, "{said}");
        for line in examples {
            // A program without the page says so, and that it was asked rightly.
            let (code, said) = run_line(here.path(), line);
            let without = line.starts_with("handspan desk") && said.contains("built without the page");
            assert!(code == 0 || without, "{line}: {code}: {said}");
        }
    }
}

/// `help` prints the chapter of a name, and of a command the chapter that tells of it; what is mistyped is told.
#[test]
fn help_prints_the_chapters_of_the_manual() {
    let here = examples();
    let asked = |topic: &str| run_line(here.path(), &format!("handspan help {topic}"));
    let (code, list) = asked("");
    assert_eq!(code, 0);
    let (_, chapters) = list.split_once("Chapters of the manual").expect("the chapters");
    let names: Vec<&str> =
        chapters.lines().skip(1).filter_map(|line| line.split_whitespace().next()).collect();
    let readme = read("README.md");
    let (_, table) = readme.split_once("## The manual").expect("the manual");
    let files: Vec<&str> = table.split("](").skip(1).filter_map(|link| link.split(')').next()).collect();
    assert!(names.len() >= 11 && files.len() >= names.len(), "{names:?} {files:?}");
    for (name, file) in names.iter().zip(files) {
        let (code, said) = asked(name);
        let heading = read(file).lines().next().expect("a heading").to_owned();
        assert!(code == 0 && said.starts_with(&heading), "{name}: {said}");
        assert!(!said.contains("](") && !said.contains("```"), "{name}: {said}");
    }
    assert_eq!(asked("note").1.lines().next(), asked("chart").1.lines().next());
    assert!(asked("tidy").1.contains("Usage: handspan tidy"));
    let (code, said) = asked("langage");
    assert!(code == 2 && said.contains("did you mean `language`?") && said.lines().count() == 1, "{said}");
}

#[test]
fn the_pictures_are_made_by_the_commands_beside_them() {
    for (document, name, begins) in [
        ("README.md", "head-down-left.svg", "handspan draw"),
        ("README.md", "rop-slide.svg", "handspan plate"),
        ("docs/fundal-height.md", "growth.svg", "handspan fundal-height"),
    ] {
        let text = read(document);
        let picture = format!("examples/pictures/{name}");
        assert!(text.contains(&format!("{picture})")));
        let made = |piece: &&str| piece.starts_with(begins) && piece.contains(&format!("-o {name}"));
        let command = text.split('`').find(made).expect("its command");
        let here = examples();
        assert_eq!(run_line(here.path(), command).0, 0);
        let drawn = fs::read(here.path().join(name)).expect("the picture");
        assert!(drawn.len() <= 200 << 10, "the picture is too large to keep: {} bytes", drawn.len());
        if bless() {
            fs::write(path(&picture), &drawn).expect("the picture is written");
        }
        let kept = fs::read(path(&picture)).expect("the kept picture");
        assert!(drawn == kept, "{picture} has changed: look, then BLESS=1");
    }
}

#[test]
fn the_exam_printed_in_the_manual_is_the_example() {
    assert_eq!(blocks(&read("docs/language.md"), "toml"), [read("examples/head-down-left.toml")]);
}

#[test]
fn the_language_table_has_every_key_and_no_other() {
    let text = read("docs/language.md");
    let rows = || text.lines().filter(|line| line.starts_with("| "));
    let mut listed = BTreeSet::new();
    for row in rows() {
        let cells: Vec<&str> = row.split(" | ").collect();
        if cells.len() == 3 {
            listed.extend(cells[1].split('`').skip(1).step_by(2));
        }
    }
    let keys: BTreeSet<&str> = handspan::exam::keys::KEYS.iter().map(|key| key.name).collect();
    assert_eq!(listed, keys);
}

/// The targets of links, and the file names that begin with a folder of ours, in a document.
fn named_paths(text: &str) -> BTreeSet<String> {
    const FOLDERS: [&str; 8] =
        ["docs/", "src/", "tests/", "layouts/", "examples/", "benches/", "fonts/", ".ci/"];
    let mut found = BTreeSet::new();
    for link in text.split("](").skip(1) {
        let target = link.split(')').next().unwrap_or_default();
        if !target.starts_with("http") && !target.starts_with('#') {
            found.insert(target.to_owned());
        }
    }
    for word in text.split(|c: char| c.is_whitespace() || "`(),;:|".contains(c)) {
        let word = word.trim_end_matches('.');
        if FOLDERS.iter().any(|folder| word.starts_with(folder)) && !word.contains(['*', '<']) {
            found.insert(word.to_owned());
        }
    }
    found
}

#[test]
fn every_path_that_is_named_is_there() {
    let mut documents = manual();
    documents.push("DEVELOPERS.md".to_owned());
    let mut count = 0;
    for document in documents {
        let folder = Path::new(&document).parent().expect("a folder");
        for name in named_paths(&read(&document)) {
            let beside = path(&folder.join(&name).display().to_string());
            assert!(path(&name).exists() || beside.exists(), "{document} names {name}, which is not there");
            count += 1;
        }
    }
    assert!(count > 60, "{count} paths");
}

/// What a file says of itself: its `//!` lines up to the end of the first sentence.
fn first_sentence(text: &str) -> String {
    let lines = text.lines().map_while(|line| line.strip_prefix("//!")).map(str::trim);
    let said = lines.take_while(|line| !line.is_empty()).collect::<Vec<_>>().join(" ");
    let end = said.find(". ").unwrap_or(said.trim_end_matches('.').len());
    said[..end].to_owned()
}

/// The code map: every file of the source with what it says of itself, by folder.
fn code_map() -> String {
    let root = path("").display().to_string();
    let mut files = vec![];
    for folder in ["benches", "src", "tests/all", "tests/outside"] {
        for (file, text) in rust_files(&path(folder)) {
            let name = file.strip_prefix(&root).expect("a file of ours").trim_start_matches('/').to_owned();
            files.push((name, first_sentence(&text)));
        }
    }
    let of = |name: &str| name.rfind('/').map_or(String::new(), |at| name[..=at].to_owned());
    files.sort_by(|a, b| (of(&a.0), &a.0).cmp(&(of(&b.0), &b.0)));
    let (mut map, mut folder) = (String::new(), String::new());
    for (name, said) in files {
        assert!(!said.is_empty(), "{name} does not say what it is");
        if of(&name) != folder {
            folder = of(&name);
            map.push_str(&format!("\n### `{folder}`\n\n"));
        }
        map.push_str(&format!("- `{}`: {said}\n", &name[folder.len()..]));
    }
    map
}

#[test]
fn the_code_map_is_that_of_the_sources() {
    let text = read("docs/code-map.md");
    let (begins, ends) = ("<!-- made from the sources -->\n", "<!-- written by hand -->\n");
    let (before, rest) = text.split_once(begins).expect("its beginning");
    let (kept, after) = rest.split_once(ends).expect("its end");
    let real = format!("{}\n", code_map());
    if bless() {
        fs::write(path("docs/code-map.md"), format!("{before}{begins}{real}{ends}{after}"))
            .expect("it is written");
    } else {
        assert_eq!(kept, real, "docs/code-map.md: look, then BLESS=1");
    }
    let mut folder = "";
    for line in after.lines() {
        if line.starts_with("### ") {
            folder = line.split('`').nth(1).expect("a folder");
        } else if let Some(point) = line.strip_prefix("- ") {
            let names = point.split(':').next().unwrap_or_default();
            for name in names.split('`').skip(1).step_by(2) {
                assert!(path(&format!("{folder}{name}")).exists(), "the code map names {folder}{name}");
            }
        }
    }
}

#[test]
fn the_documents_stay_short() {
    for (document, most) in [("README.md", 10 << 10), ("DEVELOPERS.md", 30 << 10)] {
        let bytes = read(document).len();
        assert!(
            bytes <= most,
            "{document} has {bytes} bytes: a chapter of docs/ is the place for the manual"
        );
    }
}

#[test]
fn every_test_that_is_named_is_there() {
    let text = read("DEVELOPERS.md") + &read("docs/hazards.md");
    let mut count = 0;
    for name in text.split('`').filter(|piece| piece.contains("::") && !piece.contains(char::is_whitespace)) {
        let (module, test) = name.rsplit_once("::").expect("a module and a test");
        let file = match module.split_once("::") {
            Some((_, inner)) => format!("tests/outside/{inner}.rs"),
            None if module == "outside" => "tests/outside/mod.rs".to_owned(),
            None => format!("tests/all/{module}.rs"),
        };
        let source = read(&file);
        assert!(source.contains(&format!("#[test]\nfn {test}()")), "there is no test {name}");
        count += 1;
    }
    assert!(count >= 60, "{count} tests");
}

#[test]
fn the_ledger_of_the_documents_is_that_of_the_program() {
    let rows: String = RULES
        .iter()
        .map(|rule| {
            let formula = if rule.formula.is_empty() { String::new() } else { format!(": {}", rule.formula) };
            let grade = rule.grade.map_or("number", |grade| grade.name());
            let trust = if rule.source.is_empty() { "" } else { rule.trust.name() };
            let held = held_by(rule.id, rule.grade.is_some());
            let (id, meaning, ground) = (rule.id, rule.meaning, rule.ground());
            format!("| `{id}` | {meaning}{formula} | {ground} | {trust} | {grade} | {held} |\n")
        })
        .collect();
    let text = read("docs/rules.md");
    let (before, rest) = text.split_once(LEDGER_HEAD).expect("a ledger");
    let (kept, after) = rest.split_at(rest.find("\n\n").expect("its end") + 1);
    if bless() {
        std::fs::write(path("docs/rules.md"), format!("{before}{LEDGER_HEAD}{rows}{after}"))
            .expect("it can be written");
    } else {
        assert_eq!(kept, rows, "docs/rules.md: the ledger has changed; look, then BLESS=1");
    }
}

const LEDGER_HEAD: &str = "| id | meaning | source | trust | grade | held by |\n|---|---|---|---|---|---|\n";

/// What holds a rule: how many short visits it stands on, or must not, and up to two tests that name it.
fn held_by(id: &str, is_remark: bool) -> String {
    let rows = super::shared::rows("alarms.csv");
    let of =
        |column: usize| rows.iter().filter(|row| row[column].split_whitespace().any(|one| one == id)).count();
    let mut held = vec![];
    if of(2) + of(3) > 0 {
        held.push(format!("`alarms.csv` ({} must, {} must not)", of(2), of(3)));
    }
    let quoted = format!("\"{id}\"");
    let mut named: Vec<String> = vec![];
    for (file, text) in rust_files(&path("tests/all")) {
        let module = Path::new(&file).file_stem().and_then(|stem| stem.to_str()).expect("a name").to_owned();
        let (mut test, mut is_test) = (String::new(), false);
        for line in text.lines() {
            if line == "#[test]" {
                is_test = true;
            } else if let Some(rest) = line.strip_prefix("fn ").or_else(|| line.strip_prefix("pub fn ")) {
                test = if is_test {
                    rest.split('(').next().unwrap_or_default().to_owned()
                } else {
                    String::new()
                };
                is_test = false;
            }
            let name = format!("`{module}::{test}`");
            if !test.is_empty() && line.contains(&quoted) && !named.contains(&name) {
                named.push(name);
            }
        }
    }
    // The lists of rules that are met elsewhere name them without trying them.
    named.retain(|name| !name.contains("every_rule_is_met_and_missed_by_a_visit"));
    held.extend(named.into_iter().take(2));
    assert!(!is_remark || !held.is_empty(), "nothing holds {id}");
    held.join(", ")
}

/// Each rule that makes a remark stands in one row of the hazards, beside at least one test.
#[test]
fn every_rule_stands_against_a_hazard() {
    let text = read("docs/hazards.md");
    let (_, table) = text.split_once("| hazard | rules | control | held by |").expect("the table of rules");
    let mut named: Vec<&str> = vec![];
    for row in table.lines().skip(2).filter(|line| line.starts_with('|')) {
        let [_, _, rules, control, held, _] = row.split('|').collect::<Vec<_>>()[..] else { panic!("{row}") };
        assert!(!control.trim().is_empty() && held.contains("::"), "{row}");
        named.extend(rules.split('`').skip(1).step_by(2));
    }
    named.sort_unstable();
    let mut all: Vec<&str> = RULES.iter().filter(|rule| rule.grade.is_some()).map(|rule| rule.id).collect();
    all.sort_unstable();
    assert_eq!(named, all, "docs/hazards.md");
}

#[test]
fn every_rule_that_makes_a_remark_has_a_sentence_and_is_made() {
    let words = read("layouts/words/en.ftl");
    let sentences: BTreeSet<&str> =
        words.lines().filter_map(|line| line.strip_prefix("remark-")?.split(" =").next()).collect();
    let rules: BTreeSet<&str> =
        RULES.iter().filter(|rule| rule.grade.is_some()).map(|rule| rule.id).collect();
    assert_eq!(sentences, rules);
    let mut code = read("src/exam/conclude.rs");
    for (file, text) in rust_files(&path("src/reckon")) {
        if !file.contains("ledger") {
            code.push_str(&text);
        }
    }
    let mut seen = BTreeSet::new();
    for rule in RULES {
        assert!(seen.insert(rule.id), "{} has two rows", rule.id);
        assert!(
            rule.grade.is_none() || code.contains(&format!("\"{}\"", rule.id)),
            "nothing makes {}",
            rule.id
        );
        assert!(!rule.meaning.is_empty() && rule.checked.len() == 10, "{}", rule.id);
        // What is ours may name where its parts were seen.
        let sourced = !matches!(rule.trust, Trust::Logic | Trust::CommonPractice);
        let fits = rule.trust == Trust::House || sourced != rule.source.is_empty();
        assert!(fits, "{}: a source, or a trust that needs none", rule.id);
    }
}

#[test]
fn a_language_that_is_not_shipped_is_refused() {
    let here = examples();
    for command in ["draw", "handout", "skin-guide"] {
        let (code, said) =
            run_line(here.path(), &format!("handspan {command} examples/twins.toml -o x.svg --lang xx"));
        assert_eq!(code, 2);
        assert!(said.contains("language `xx` is not shipped; there is en"), "{said}");
        assert!(!here.path().join("x.svg").exists());
    }
}
