//! Many exams into a directory. In: exams with their targets, and how a request is made of an exam. Out: a file for each,
//! written as soon as it is made; what there is to say of each, in the order given; a summary; the exit code.
//!
//! Threads share nothing but the number of the next exam: how many there are changes neither files nor words.

use crate::files::{self, Fault, Given, Target};
use crate::{leftovers, tell};
use handspan::commands::{self, Request, Source, exit};
use std::collections::BTreeMap;
use std::path::PathBuf;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::sync::mpsc::{Receiver, channel};

/// What is to be made.
pub struct Batch {
    /// The exams, each with its file.
    pub jobs: Vec<Job>,
    /// The request for an exam.
    pub make: Box<dyn Fn(Source) -> Request + Sync>,
    /// How many of them are lines of shorthand.
    pub lines: usize,
    /// Where the files go; it is made when it is not there.
    pub directory: PathBuf,
    /// How many exams are worked on at the same time.
    pub at_once: usize,
    /// Whether someone watches: then exams are counted in place, and those without remarks are not named.
    pub watched: bool,
}

/// One exam and its file.
pub struct Job {
    /// The exam.
    pub exam: Given,
    /// The file.
    pub target: Target,
}

/// What came of one exam.
struct Done {
    /// The exam as the user named it.
    name: String,
    /// Problems and remarks.
    notes: String,
    /// What was written, a line a file; or why nothing was.
    written: Result<String, String>,
    code: u8,
}

/// Makes every file; one exam that fails does not stop the others. The highest exit code.
pub fn run(batch: &Batch) -> u8 {
    if let Err(why) = files::make_directory(&batch.directory) {
        tell(&format!("handspan: {why}\n"));
        return exit::FAILED;
    }
    if let Some(said) = leftovers::clear(&batch.directory) {
        tell(&said);
    }
    let next = AtomicUsize::new(0);
    let (send, receive) = channel();
    let all = std::thread::scope(|scope| {
        for _ in 0..batch.at_once.clamp(1, batch.jobs.len().max(1)) {
            let (send, next) = (send.clone(), &next);
            scope.spawn(move || {
                while let Some((index, job)) = take(batch, next) {
                    if send.send((index, batch.one(job))).is_err() {
                        break;
                    }
                }
            });
        }
        drop(send);
        batch.tell_in_order(&receive)
    });
    tell(&summary(&batch.directory.display().to_string(), &all));
    all.iter().map(|done| done.code).fold(exit::DONE, u8::max)
}

/// The next exam that nobody works on.
fn take<'a>(batch: &'a Batch, next: &AtomicUsize) -> Option<(usize, &'a Job)> {
    let index = next.fetch_add(1, Ordering::Relaxed);
    batch.jobs.get(index).map(|job| (index, job))
}

impl Batch {
    /// Reads one exam, makes its file and lets go of both.
    fn one(&self, job: &Job) -> Done {
        let source = job.exam.load(self.lines > 1);
        let name = source.name.clone();
        let outcome = commands::run(&(self.make)(source));
        let (written, code) = if outcome.pages.is_empty() {
            (Err(outcome.why), outcome.code)
        } else {
            match job.target.put(&outcome.pages) {
                Ok(files) => {
                    let lines = files.iter().map(|file| format!("wrote {file}: {}\n", outcome.made));
                    (Ok(lines.collect()), outcome.code)
                }
                Err(Fault::ReaderLeft) => (Ok(String::new()), outcome.code),
                Err(Fault::Failed(why)) => (Err(why), outcome.code.max(exit::FAILED)),
            }
        };
        Done { name, notes: outcome.notes, written, code }
    }

    /// Tells what came of each exam in the order given, however the threads finish.
    fn tell_in_order(&self, receive: &Receiver<(usize, Done)>) -> Vec<Done> {
        let mut waiting = BTreeMap::new();
        let mut told: Vec<Done> = vec![];
        for (index, done) in receive {
            waiting.insert(index, done);
            let before = told.len();
            while let Some(done) = waiting.remove(&told.len()) {
                self.tell_one(&done);
                told.push(done);
            }
            if self.watched && told.len() > before {
                tell(&format!("{WIPE}{} of {}", told.len(), self.jobs.len()));
            }
        }
        if self.watched {
            tell(WIPE);
        }
        told
    }

    fn tell_one(&self, done: &Done) {
        let mut text = done.notes.clone();
        if !self.watched {
            match &done.written {
                Ok(lines) => text.push_str(lines),
                Err(why) if done.notes.is_empty() => text.push_str(&format!("{}: {why}\n", done.name)),
                Err(_) => {}
            }
        }
        if !text.is_empty() {
            tell(&format!("{}{text}", if self.watched { WIPE } else { "" }));
        }
    }
}

/// Back to the start of the terminal's line, and nothing on it.
const WIPE: &str = "\r\u{1b}[K";

/// How many files are there, which are missing and why, and which exams must be looked at.
fn summary(directory: &str, all: &[Done]) -> String {
    let written = all.iter().filter(|done| done.written.is_ok()).count();
    let mut text = format!("wrote {written} of {} to {directory}\n", all.len());
    for done in all {
        if let Err(why) = &done.written {
            text.push_str(&format!("  not written: {}: {why}\n", done.name));
        }
    }
    for (code, what) in [(exit::ACT_NOW, "cannot wait"), (exit::CANNOT_BOTH, "cannot both be right")] {
        let names: Vec<&str> =
            all.iter().filter(|done| done.code == code).map(|done| done.name.as_str()).collect();
        if !names.is_empty() {
            text.push_str(&format!("  {what}: {}\n", names.join(", ")));
        }
    }
    text
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_summary_counts_and_names_what_needs_a_look() {
        let done = |name: &str, written: Result<&str, &str>, code| Done {
            name: name.to_owned(),
            notes: String::new(),
            written: written.map(str::to_owned).map_err(str::to_owned),
            code,
        };
        let all = [
            done("a.toml", Ok("wrote out/a.svg: the picture\n"), exit::DONE),
            done("b.toml", Err("line 3: `x` is not known"), exit::FAILED),
            done("c.toml", Ok("wrote out/c.svg: the picture\n"), exit::ACT_NOW),
            done("d.toml", Ok("wrote out/d.svg: the picture\n"), exit::CANNOT_BOTH),
            done("e.toml", Ok("wrote out/e.svg: the picture\n"), exit::ACT_NOW),
        ];
        assert_eq!(
            summary("out/", &all),
            "wrote 4 of 5 to out/\n  not written: b.toml: line 3: `x` is not known\n  \
             cannot wait: c.toml, e.toml\n  cannot both be right: d.toml\n"
        );
    }
}
