//! Helpers for the tests: texts to exams, published rows, the program.

use handspan::commands::{Draft, Format, Handout, Source};
use handspan::exam::{self, Exam};
use std::path::{Path, PathBuf};
use std::process::{Command, Output, Stdio};

/// A file of the repository.
pub fn path(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join(name)
}

/// Every Rust file under `at`, with its text.
pub fn rust_files(at: &Path) -> Vec<(String, String)> {
    let mut files = vec![];
    if at.is_file() && at.extension().is_some_and(|ending| ending == "rs") {
        files.push((at.display().to_string(), std::fs::read_to_string(at).expect("a source file")));
    } else if at.is_dir() {
        let mut entries: Vec<_> =
            std::fs::read_dir(at).expect("a directory").map(|e| e.expect("an entry").path()).collect();
        entries.sort();
        files.extend(entries.iter().flat_map(|entry| rust_files(entry)));
    }
    files
}

/// The family page of an exam for a telephone, in a language, without a clinic; drafts of unsigned languages are wanted.
pub fn family_page(exam: Source, lang: &str) -> Handout {
    Handout {
        exam,
        format: Format::Html,
        lang: lang.to_owned(),
        draft: Draft::asked(!lang.starts_with("en")),
        paper: None,
        clinic: None,
        layout: None,
        despite: vec![],
        emergency: None,
        invite_listening: false,
        numbers: false,
        palette: None,
        mother: None,
    }
}

/// The exam in `text`, which must be free of errors.
#[track_caller]
pub fn read(text: &str) -> Exam {
    let reading = exam::read("exam.toml", text.as_bytes());
    match reading.exam {
        Some(exam) => exam,
        None => panic!(
            "{text}\n{}",
            handspan::report::draw(&reading.problems, text, handspan::report::Look::Plain)
        ),
    }
}

/// An exam with these lines under [baby].
#[track_caller]
pub fn baby(lines: &str) -> Exam {
    read(&format!("[baby]\n{lines}\n"))
}

/// The ids of the problems in `text`, in order.
pub fn problems(text: &str) -> Vec<&'static str> {
    exam::read("exam.toml", text.as_bytes()).problems.iter().map(|problem| problem.id).collect()
}

/// The rows of a published table without comments and header; quoted cells may hold commas.
pub fn rows(name: &str) -> Vec<Vec<String>> {
    let text = std::fs::read_to_string(path(&format!("tests/published/{name}"))).expect("a published table");
    text.lines().filter(|line| !line.starts_with('#')).skip(1).map(cells).collect()
}

fn cells(line: &str) -> Vec<String> {
    let mut cells = vec![String::new()];
    let mut quoted = false;
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => cells.push(String::new()),
            _ => cells.last_mut().expect("one cell at least").push(c),
        }
    }
    cells
}

/// The program with `arguments`, run in `directory`, with `input` on its standard input.
pub fn run_in(directory: &Path, arguments: &[&str], input: &[u8]) -> Output {
    use std::io::Write;
    let mut child = Command::new(env!("CARGO_BIN_EXE_handspan"))
        .args(arguments)
        .current_dir(directory)
        .env_remove("NO_COLOR")
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts");
    let mut stdin = child.stdin.take().expect("a pipe");
    let input = input.to_vec();
    let writer = std::thread::spawn(move || {
        // A program that does not read its input closes the pipe: no fault of the test.
        let _ = stdin.write_all(&input);
    });
    let output = child.wait_with_output().expect("the program ends");
    writer.join().expect("the writer ends");
    output
}

/// The program with `arguments`, run in the repository.
pub fn run(arguments: &[&str]) -> Output {
    run_in(&path(""), arguments, b"")
}

/// Standard output and standard error together, as text.
pub fn said(output: &Output) -> String {
    format!("{}{}", String::from_utf8_lossy(&output.stdout), String::from_utf8_lossy(&output.stderr))
}

/// Random numbers for tests: xorshift with a fixed seed, the same on every machine.
pub struct Dice(u64);

impl Dice {
    /// From a seed that is not zero.
    pub fn new(seed: u64) -> Self {
        assert_ne!(seed, 0);
        Self(seed)
    }
    /// A number from 0 to `below` - 1.
    pub fn below(&mut self, below: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        (self.0 >> 11) as usize % below
    }
    /// One of these.
    pub fn pick<'a, T>(&mut self, from: &'a [T]) -> &'a T {
        &from[self.below(from.len())]
    }
    /// A number from 0 to 1.
    pub fn share(&mut self) -> f32 {
        self.below(100_000) as f32 / 100_000.0
    }
    /// One time in `times`.
    pub fn once_in(&mut self, times: usize) -> bool {
        self.below(times) == 0
    }
    /// A number from `low` to `high`.
    pub fn from(&mut self, low: u16, high: u16) -> u16 {
        low + self.below(usize::from(high - low) + 1) as u16
    }
}
