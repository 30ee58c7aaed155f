//! Writing that is stopped or refused: killed at any moment, no room, no permission, two runs at once. In: batches into a
//! directory. Out: whole files or none, and nothing else that the next run does not remove.

use super::shared::{Dice, run_in, said};
use std::collections::BTreeMap;
use std::fs;
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Instant;

/// Exams of a batch, and how often it is killed: `HANDSPAN_KILLS=200 cargo test --test all interrupted` is the long way, sooner
/// done with a program built for speed: `HANDSPAN=target/release/handspan`.
const EXAMS: usize = 12;
const EXAMS_LONG: usize = 100;
const KILLS: usize = 8;

/// A directory with exams, and their names.
fn exams(count: usize) -> (tempfile::TempDir, Vec<String>) {
    let here = tempfile::tempdir().expect("a directory");
    let names: Vec<String> = (0..count).map(|number| format!("visit-{number}.toml")).collect();
    for (number, name) in names.iter().enumerate() {
        let position = ["LOA", "ROP", "OA", "LSA", "RST", "LMA"][number % 6];
        let text =
            format!("weeks = \"{}+{}\"\n[baby]\nposition = \"{position}\"\n", 34 + number % 6, number % 7);
        fs::write(here.path().join(name), text).expect("an exam");
    }
    (here, names)
}

fn started(here: &Path, names: &[String], more: &[&str]) -> Child {
    let program = std::env::var_os("HANDSPAN").filter(|_| std::env::var_os("HANDSPAN_KILLS").is_some());
    Command::new(program.unwrap_or_else(|| env!("CARGO_BIN_EXE_handspan").into()))
        .args(["draw", "--style", "sketch", "-o", "out/"])
        .args(more)
        .args(names)
        .current_dir(here)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::piped())
        .spawn()
        .expect("the program starts")
}

/// The files of a directory with their bytes.
fn files(directory: &Path) -> BTreeMap<String, Vec<u8>> {
    let entries = fs::read_dir(directory).expect("a directory").map(|entry| entry.expect("an entry"));
    entries
        .map(|entry| {
            (entry.file_name().to_string_lossy().into_owned(), fs::read(entry.path()).expect("a file"))
        })
        .collect()
}

fn is_leftover(name: &str) -> bool {
    name.starts_with(".handspan-unfinished-")
}

/// Killed at random moments: what is there is whole, what is not is named as unfinished, and the next run removes that and
/// makes the rest.
#[cfg(unix)]
#[test]
fn killed_at_any_moment_nothing_is_half_written() {
    let long = std::env::var("HANDSPAN_KILLS").ok().and_then(|kills| kills.parse().ok());
    let (here, names) = exams(if long.is_some() { EXAMS_LONG } else { EXAMS });
    let out = here.path().join("out");
    let start = Instant::now();
    let whole = started(here.path(), &names, &[]).wait_with_output().expect("the program ends");
    let takes = start.elapsed();
    assert!(whole.status.success(), "{}", said(&whole));
    let real = files(&out);
    assert_eq!(real.len(), names.len());
    let mut dice = Dice::new(17);
    let (mut cut_short, mut left) = (0, 0);
    for kill in 0..long.unwrap_or(KILLS) {
        // Every other time over files that are there.
        let over = kill % 2 == 1;
        if !over {
            fs::remove_dir_all(&out).expect("removed");
        }
        let mut child = started(here.path(), &names, &["--force"]);
        std::thread::sleep(takes.mul_f32(dice.share()));
        child.kill().expect("SIGKILL");
        child.wait().expect("it has ended");
        if !out.exists() {
            cut_short += 1;
            started(here.path(), &names, &[]).wait().expect("the program ends");
            continue;
        }
        let found = files(&out);
        let leftovers = found.keys().filter(|name| is_leftover(name)).count();
        for (name, bytes) in found.iter().filter(|(name, _)| !is_leftover(name)) {
            assert!(real.get(name) == Some(bytes), "kill {kill}: {name} is not whole");
        }
        assert!(!over || found.len() - leftovers == real.len(), "kill {kill}: a file that was there is lost");
        cut_short += usize::from(found.len() - leftovers < real.len() || over);
        left += leftovers;
        let next = started(here.path(), &names, &["--force"]).wait_with_output().expect("the program ends");
        let told = said(&next);
        assert_eq!(told.contains("that an earlier run left in"), leftovers > 0, "kill {kill}: {told}");
        assert!(files(&out) == real, "kill {kill}: other files after the next run");
    }
    assert!(cut_short > 0, "no run was cut short");
    if long.is_some() {
        assert!(left > 0, "no kill fell into the writing of a file");
    }
}

/// A leftover is removed by a run that writes one file, too.
#[test]
fn one_file_clears_the_leftovers_beside_it() {
    let (here, names) = exams(1);
    let left = here.path().join(".handspan-unfinished-aB3xYz");
    fs::write(&left, b"<svg").expect("a file");
    let output = run_in(here.path(), &["draw", &names[0], "-o", "page.svg"], b"");
    assert!(output.status.success() && !left.exists(), "{}", said(&output));
    assert!(
        said(&output).contains("removed 1 unfinished file that an earlier run left in"),
        "{}",
        said(&output)
    );
}

/// Two runs into one directory at the same time: every file is whole, none is lost, nothing else stays.
#[test]
fn two_runs_into_one_directory() {
    let (here, names) = exams(EXAMS);
    let out = here.path().join("out");
    assert!(started(here.path(), &names, &[]).wait().expect("the program ends").success());
    let real = files(&out);
    for more in [&["--force"][..], &[]] {
        fs::remove_dir_all(&out).expect("removed");
        let both = [started(here.path(), &names, more), started(here.path(), &names, more)];
        let ends = both.map(|child| child.wait_with_output().expect("the program ends"));
        assert!(files(&out) == real, "{more:?}: {}{}", said(&ends[0]), said(&ends[1]));
        for end in &ends {
            // Without --force one may come too late for a file, and says so.
            let late = said(end).contains("is there already; add --force");
            let code = if late { 2 } else { 0 };
            assert!(end.status.code() == Some(code) && (!late || more.is_empty()), "{more:?}: {}", said(end));
        }
    }
}

/// A file that grows no further (a limit of the shell, as for a disk that is full): an error, and nothing of it stays.
#[cfg(unix)]
#[test]
fn no_room_is_an_error_and_leaves_nothing() {
    let (here, names) = exams(2);
    fs::write(here.path().join("page.svg"), b"mine").expect("a file");
    for (arguments, target) in [
        (&["draw", &names[0], "-o", "page.svg", "--force"][..], "page.svg"),
        (&["draw", &names[0], &names[1], "-o", "out/"], "out/"),
        (&["handout", &names[0], "-o", "page.pdf"], "page.pdf"),
    ] {
        let output = Command::new("sh")
            .args(["-c", "trap '' XFSZ; ulimit -f 2; exec \"$0\" \"$@\"", env!("CARGO_BIN_EXE_handspan")])
            .args(arguments)
            .current_dir(here.path())
            .output()
            .expect("sh");
        let told = said(&output);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {told}");
        assert!(
            told.contains("larger than a file may be there") && told.contains(target.trim_end_matches('/')),
            "{told}"
        );
    }
    assert_eq!(fs::read(here.path().join("page.svg")).expect("the file"), b"mine");
    assert!(!here.path().join("page.pdf").exists());
    assert_eq!(files(&here.path().join("out")), BTreeMap::new());
}

/// A directory that may not be written to, for someone who is not root: an error that says so, and nothing lost.
#[cfg(target_os = "linux")]
#[test]
fn no_permission_is_an_error_that_says_so() {
    use std::os::unix::fs::PermissionsExt;
    let (here, names) = exams(2);
    let mode =
        |path: &Path, mode| fs::set_permissions(path, fs::Permissions::from_mode(mode)).expect("permissions");
    mode(here.path(), 0o755);
    let program = here.path().join("handspan");
    fs::copy(env!("CARGO_BIN_EXE_handspan"), &program).expect("a copy that others may run");
    let out = here.path().join("out");
    fs::create_dir(&out).expect("a directory");
    fs::write(out.join("visit-0.svg"), b"mine").expect("a file");
    mode(&out, 0o555);
    let secret = here.path().join("secret.toml");
    fs::write(&secret, b"weeks = \"37+0\"\n").expect("a file");
    mode(&secret, 0o000);
    let root = Command::new("id").arg("-u").output().is_ok_and(|id| id.stdout == b"0\n");
    let run = |arguments: &[&str]| {
        let mut command = if root {
            // Root may write anywhere.
            let mut other = Command::new("setpriv");
            other.args(["--reuid=65534", "--regid=65534", "--clear-groups", "--"]).arg(&program);
            other
        } else {
            Command::new(&program)
        };
        command.args(arguments).current_dir(here.path()).output().expect("the program ends")
    };
    for (arguments, name) in [
        (&["draw", &names[1], "-o", "out/page.svg"][..], "out/page.svg"),
        (&["draw", &names[0], "-o", "out/visit-0.svg", "--force"], "out/visit-0.svg"),
        (&["draw", &names[0], &names[1], "-o", "out/", "--force"], "out/visit-1.svg"),
        (&["check", "secret.toml"], "secret.toml"),
    ] {
        let output = run(arguments);
        let told = said(&output);
        assert_eq!(output.status.code(), Some(2), "{arguments:?}: {told}");
        assert!(
            told.contains(name) && told.contains("there is no permission for it"),
            "{arguments:?}: {told}"
        );
    }
    assert_eq!(files(&out), BTreeMap::from([("visit-0.svg".to_owned(), b"mine".to_vec())]));
    mode(&out, 0o755);
}
