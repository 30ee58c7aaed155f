//! Files, whole or not at all. In: paths and bytes. Out: sources read; documents written; or a sentence that names the file
//! and what to do.
//!
//! Only regular files are replaced, by a temporary file beside them (`leftovers`) that is then renamed, and only with `--force`.
//! Devices and pipes are written to.

use crate::leftovers;
use handspan::commands::{Source, Written};
use handspan::exam::MOST_BYTES;
use std::collections::BTreeMap;
use std::ffi::OsString;
use std::fs::{self, File, OpenOptions};
use std::io::{self, ErrorKind, Read, Write};
use std::path::{Path, PathBuf};

/// An exam as it was named on the command line.
#[derive(Clone, Debug)]
pub enum Given {
    /// A file.
    File(PathBuf),
    /// A line of shorthand, and which it is, from 1.
    Line(usize, String),
}

impl Given {
    /// The exam's text; lines are numbered when there are several.
    pub fn load(&self, several: bool) -> Source {
        match self {
            Given::File(path) => load(path),
            Given::Line(number, line) if several => Source::line(format!("--say {number}"), line.as_str()),
            Given::Line(_, line) => Source::line("--say", line.as_str()),
        }
    }

    /// Its name in messages.
    fn name(&self) -> String {
        match self {
            Given::File(path) => path.display().to_string(),
            Given::Line(number, _) => format!("--say {number}"),
        }
    }

    /// The name of its file in a directory, without an ending.
    fn stem(&self) -> Result<OsString, String> {
        match self {
            Given::Line(number, _) => Ok(format!("say-{number}").into()),
            Given::File(path) if path.as_os_str() == "-" => {
                Err("standard input has no name to give its file; write it to a file, not to a directory"
                    .to_owned())
            }
            Given::File(path) => match path.file_stem() {
                Some(stem) => Ok(stem.to_os_string()),
                None => Err(format!("{} is not the name of a file", path.display())),
            },
        }
    }
}

/// Read a file for the library; `-` is standard input. Of a file that is too big just enough to see that it is.
pub fn load(path: &Path) -> Source {
    let most = MOST_BYTES as u64 + 1;
    let mut bytes = vec![];
    if path.as_os_str() == "-" {
        let read = io::stdin().lock().take(most).read_to_end(&mut bytes);
        return Source {
            written: Written::File,
            name: "standard input".to_owned(),
            bytes: read.map(|_| bytes).map_err(|fault| reason(&fault)),
        };
    }
    let read = File::open(path).and_then(|file| file.take(most).read_to_end(&mut bytes));
    Source {
        written: Written::File,
        name: path.to_string_lossy().into_owned(),
        bytes: read.map(|_| bytes).map_err(|fault| reason(&fault)),
    }
}

/// Put a page into a file of its own and ask the system to show it; the file's name.
pub fn show(page: &[u8]) -> Result<String, String> {
    let mut file = tempfile::Builder::new()
        .prefix("handspan-")
        .suffix(".html")
        .tempfile()
        .map_err(|fault| format!("no file for the page: {}", reason(&fault)))?;
    file.write_all(page).map_err(|fault| format!("no file for the page: {}", reason(&fault)))?;
    // The browser reads it after this program has ended.
    let (_, path) = file.keep().map_err(|fault| format!("no file for the page: {}", reason(&fault.error)))?;
    let name = path.display().to_string();
    let (program, before): (&str, &[&str]) = if cfg!(target_os = "macos") {
        ("open", &[])
    } else if cfg!(windows) {
        ("cmd", &["/C", "start", ""])
    } else {
        ("xdg-open", &[])
    };
    match std::process::Command::new(program).args(before).arg(&path).status() {
        Ok(status) if status.success() => Ok(name),
        _ => Err(format!("no browser could be started; open {name} in one")),
    }
}

/// Why the system refused, in plain words.
pub fn reason(fault: &io::Error) -> String {
    match fault.kind() {
        ErrorKind::NotFound => "there is no such file".to_owned(),
        ErrorKind::PermissionDenied => "there is no permission for it".to_owned(),
        ErrorKind::IsADirectory => "it is a directory; name a file in it".to_owned(),
        ErrorKind::NotADirectory => "a part of its path is a file, not a directory".to_owned(),
        ErrorKind::StorageFull => "there is no space left".to_owned(),
        ErrorKind::FileTooLarge => "it is larger than a file may be there".to_owned(),
        ErrorKind::ReadOnlyFilesystem => "nothing can be written on that disk".to_owned(),
        ErrorKind::AlreadyExists => {
            "it is there already; add --force to replace it, or choose another name".to_owned()
        }
        _ => fault.to_string(),
    }
}

/// Why a document was not written.
pub enum Fault {
    /// Whoever was reading went away; that is no fault of ours.
    ReaderLeft,
    /// A sentence that names the file.
    Failed(String),
}

/// Where a document goes, looked at before the work starts.
pub struct Target {
    path: PathBuf,
    force: bool,
}

enum Kind {
    StandardOutput,
    New,
    Regular(PathBuf),
    Device,
}

impl Target {
    /// Look whether `path` can be written to.
    pub fn look(path: &Path, force: bool) -> Result<Self, String> {
        kind(path, force)?;
        Ok(Self { path: path.to_owned(), force })
    }

    /// A directory for files whose names are not known yet; it is made when they are.
    pub fn directory(path: &Path, force: bool) -> Result<Self, String> {
        if !path.is_dir() {
            // Without the `/` at its end, a file of that name is found.
            let bare: PathBuf = path.components().collect();
            if bare.exists() {
                return Err(format!("{} is a file; choose another name for the directory", bare.display()));
            }
            new_file(path)?;
        }
        Ok(Self { path: path.to_owned(), force })
    }

    /// Write each page into this directory under its name, all or none; the names written.
    pub fn put_named(&self, pages: &[Vec<u8>], names: &[String]) -> Result<Vec<String>, Fault> {
        let mut there = vec![];
        for name in names {
            let path = self.path.join(name);
            if !self.force && path.exists() {
                there.push(path.display().to_string());
            }
        }
        if let Some(first) = there.first() {
            return Err(Fault::Failed(format!(
                "{first} is there already; add --force to replace what is there, or choose another directory"
            )));
        }
        make_directory(&self.path).map_err(Fault::Failed)?;
        let (mut ready, mut written) = (vec![], vec![]);
        for (page, name) in pages.iter().zip(names) {
            let path = self.path.join(name);
            match kind(&path, self.force).map_err(Fault::Failed)? {
                Kind::Regular(real) => ready.push((beside(&real, page)?, real, true)),
                Kind::New | Kind::StandardOutput | Kind::Device => {
                    ready.push((beside(&path, page)?, path.clone(), self.force));
                }
            }
            written.push(path.display().to_string());
        }
        for (file, path, replace) in ready {
            let renamed = if replace { file.persist(&path) } else { file.persist_noclobber(&path) };
            renamed.map_err(|fault| told(&path.display().to_string(), &fault.error))?;
        }
        Ok(written)
    }

    /// A file in a directory that is not made yet.
    fn in_new_directory(path: PathBuf, force: bool) -> Self {
        Self { path, force }
    }

    /// Remove what earlier runs left where this is to be written; a sentence when there was something.
    pub fn clear_leftovers(&self) -> Option<String> {
        if self.path.as_os_str() == "-" {
            return None;
        }
        if self.path.is_dir() {
            return leftovers::clear(&self.path);
        }
        // A link is followed, as it is when its file is replaced.
        let real = fs::canonicalize(&self.path).unwrap_or_else(|_| self.path.clone());
        leftovers::clear(parent(&real))
    }

    /// Write the pages, all or none; the names written.
    pub fn put(&self, pages: &[Vec<u8>]) -> Result<Vec<String>, Fault> {
        if self.path.as_os_str() == "-" {
            let [page] = pages else {
                return Err(Fault::Failed(
                    "standard output takes one page; write to a file, or say --as pdf".to_owned(),
                ));
            };
            let mut out = io::stdout().lock();
            return match out.write_all(page).and_then(|()| out.flush()) {
                Ok(()) => Ok(vec![]),
                Err(fault) => Err(told("standard output", &fault)),
            };
        }
        let mut ready: Vec<(tempfile::NamedTempFile, PathBuf, bool)> = vec![];
        let mut written = vec![];
        for (index, page) in pages.iter().enumerate() {
            let path = numbered(&self.path, index);
            match kind(&path, self.force).map_err(Fault::Failed)? {
                Kind::StandardOutput | Kind::Device => device(&path, page)?,
                // Another run may make it meanwhile: --force goes for that one, too.
                Kind::New => ready.push((beside(&path, page)?, path.clone(), self.force)),
                Kind::Regular(real) => ready.push((beside(&real, page)?, real, true)),
            }
            written.push(path.display().to_string());
        }
        for (file, path, replace) in ready {
            let renamed = if replace { file.persist(&path) } else { file.persist_noclobber(&path) };
            renamed.map_err(|fault| told(&path.display().to_string(), &fault.error))?;
        }
        Ok(written)
    }
}

/// Whether a name stands for a directory: one that is there, or one to be made, which ends in `/`.
pub fn is_directory(path: &Path) -> bool {
    path.is_dir() || path.to_string_lossy().ends_with(std::path::is_separator)
}

/// A target in `directory` for each exam, named after it: `visit.toml` becomes `visit.svg`, the second line of shorthand
/// `say-2.svg`. All are looked at before
/// anything is written.
pub fn targets(exams: &[Given], directory: &Path, ending: &str, force: bool) -> Result<Vec<Target>, String> {
    if !directory.is_dir() {
        // Without the `/` at its end, a file of that name is found.
        let bare: PathBuf = directory.components().collect();
        if bare.exists() {
            return Err(format!("{} is a file; choose another name for the directory", bare.display()));
        }
        new_file(directory)?;
    }
    let mut named: BTreeMap<PathBuf, String> = BTreeMap::new();
    let (mut targets, mut there) = (vec![], vec![]);
    for exam in exams {
        let mut name = exam.stem()?;
        name.push(".");
        name.push(ending);
        let path = directory.join(name);
        match named.insert(path.clone(), exam.name()) {
            Some(first) if first == exam.name() => return Err(format!("{first} is named twice")),
            Some(first) => {
                return Err(format!(
                    "{first} and {} would both be written to {}; rename one, or write them to two directories",
                    exam.name(),
                    path.display()
                ));
            }
            None => {}
        }
        if !directory.is_dir() {
            targets.push(Target::in_new_directory(path, force));
        } else if !force && path.is_file() {
            there.push(path);
        } else {
            targets.push(Target::look(&path, force)?);
        }
    }
    let what_to_do = "add --force to replace what is there, or choose another directory";
    match &there[..] {
        [] => Ok(targets),
        [one] => Err(format!("{} is there already; {what_to_do}", one.display())),
        [first, more @ ..] => {
            Err(format!("{} and {} more are there already; {what_to_do}", first.display(), more.len()))
        }
    }
}

/// Makes a directory that is not there yet.
pub fn make_directory(path: &Path) -> Result<(), String> {
    match fs::create_dir(path) {
        Err(_) if path.is_dir() => Ok(()),
        Err(fault) => Err(format!("the directory {} cannot be made: {}", path.display(), reason(&fault))),
        Ok(()) => Ok(()),
    }
}

fn told(name: &str, fault: &io::Error) -> Fault {
    if fault.kind() == ErrorKind::BrokenPipe {
        return Fault::ReaderLeft;
    }
    Fault::Failed(format!("{name} was not written: {}", reason(fault)))
}

/// `name.svg`, then `name-2.svg`.
fn numbered(path: &Path, index: usize) -> PathBuf {
    if index == 0 {
        return path.to_owned();
    }
    let stem = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
    let ending = path.extension().map(|ending| format!(".{}", ending.to_string_lossy())).unwrap_or_default();
    path.with_file_name(format!("{stem}-{}{ending}", index + 1))
}

fn kind(path: &Path, force: bool) -> Result<Kind, String> {
    let name = path.display();
    if path.as_os_str() == "-" {
        return Ok(Kind::StandardOutput);
    }
    match fs::metadata(path) {
        Ok(found) if found.is_dir() => Err(format!("{name} is a directory; name a file in it")),
        // An empty file, as a shell leaves it, holds nothing that could be lost.
        Ok(found) if found.is_file() && !force && found.len() > 0 => {
            Err(format!("{name} is there already; add --force to replace it, or choose another name"))
        }
        Ok(found) if found.is_file() => {
            // A link is followed, so that the file is replaced and not the link.
            let real = fs::canonicalize(path).map_err(|fault| format!("{name}: {}", reason(&fault)))?;
            Ok(Kind::Regular(real))
        }
        Ok(_) => Ok(Kind::Device),
        Err(fault) if fault.kind() == ErrorKind::NotFound => new_file(path),
        Err(fault) if fault.kind() == ErrorKind::NotADirectory => {
            Err(format!("{name} cannot be written: a part of its path is a file; choose another directory"))
        }
        Err(fault) => Err(format!("{name} cannot be written: {}", reason(&fault))),
    }
}

fn new_file(path: &Path) -> Result<Kind, String> {
    let name = path.display();
    if fs::symlink_metadata(path).is_ok() {
        return Err(format!("{name} is a link that leads nowhere; remove it, or choose another name"));
    }
    let parent = parent(path);
    if !parent.is_dir() {
        return Err(format!(
            "{name} cannot be written: there is no directory {}; make it first",
            parent.display()
        ));
    }
    if path.file_name().is_none() {
        return Err(format!("{name} is not the name of a file"));
    }
    Ok(Kind::New)
}

fn parent(path: &Path) -> &Path {
    match path.parent() {
        Some(parent) if !parent.as_os_str().is_empty() => parent,
        _ => Path::new("."),
    }
}

/// The finished bytes in a temporary file beside `path`.
fn beside(path: &Path, bytes: &[u8]) -> Result<tempfile::NamedTempFile, Fault> {
    let name = path.display().to_string();
    let made = leftovers::begin(parent(path), permissions(path)).and_then(|mut file| {
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        Ok(file)
    });
    made.map_err(|fault| told(&name, &fault))
}

/// The permissions of the file that is replaced, or what a new file usually gets.
#[cfg(unix)]
fn permissions(path: &Path) -> Option<fs::Permissions> {
    use std::os::unix::fs::PermissionsExt;
    let found = fs::metadata(path).map(|found| found.permissions());
    Some(found.unwrap_or_else(|_| fs::Permissions::from_mode(0o666)))
}

#[cfg(not(unix))]
fn permissions(_: &Path) -> Option<fs::Permissions> {
    None
}

/// Write to a device or a pipe; it is neither made, cut nor replaced.
fn device(path: &Path, bytes: &[u8]) -> Result<(), Fault> {
    let written = OpenOptions::new().write(true).open(path).and_then(|mut file| {
        file.write_all(bytes)?;
        file.flush()
    });
    written.map_err(|fault| told(&path.display().to_string(), &fault))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn put(path: &Path, force: bool, pages: &[&str]) -> Result<Vec<String>, String> {
        let pages: Vec<Vec<u8>> = pages.iter().map(|page| page.as_bytes().to_vec()).collect();
        Target::look(path, force)?.put(&pages).map_err(|fault| match fault {
            Fault::ReaderLeft => "the reader left".to_owned(),
            Fault::Failed(why) => why,
        })
    }

    fn names(directory: &Path) -> Vec<String> {
        let entries = fs::read_dir(directory).expect("a directory");
        let mut names: Vec<String> = entries
            .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
            .collect();
        names.sort();
        names
    }

    #[test]
    fn whole_files_and_nothing_beside_them() {
        let here = tempfile::tempdir().expect("a directory");
        let page = here.path().join("page.svg");
        put(&page, false, &["one", "two"]).expect("written");
        assert_eq!(names(here.path()), ["page-2.svg", "page.svg"]);
        assert!(put(&page, false, &["three"]).is_err_and(|why| why.contains("--force")));
        assert_eq!(fs::read(&page).expect("the file"), b"one");
        put(&page, true, &["three"]).expect("replaced");
        assert_eq!(fs::read(&page).expect("the file"), b"three");
        assert_eq!(names(here.path()), ["page-2.svg", "page.svg"]);
    }

    #[test]
    fn several_pages_all_or_none() {
        let here = tempfile::tempdir().expect("a directory");
        fs::create_dir(here.path().join("page-2.svg")).expect("a directory");
        assert!(put(&here.path().join("page.svg"), true, &["one", "two"]).is_err());
        assert_eq!(names(here.path()), ["page-2.svg"]);
    }

    #[cfg(unix)]
    #[test]
    fn links_are_followed_and_permissions_kept() {
        use std::os::unix::fs::PermissionsExt;
        let here = tempfile::tempdir().expect("a directory");
        let (real, link) = (here.path().join("real.svg"), here.path().join("link.svg"));
        fs::write(&real, b"old").expect("a file");
        fs::set_permissions(&real, fs::Permissions::from_mode(0o640)).expect("permissions");
        std::os::unix::fs::symlink(&real, &link).expect("a link");
        put(&link, true, &["new"]).expect("written");
        assert!(fs::symlink_metadata(&link).expect("the link").file_type().is_symlink());
        assert_eq!(fs::read(&real).expect("the file"), b"new");
        assert_eq!(fs::metadata(&real).expect("the file").permissions().mode() & 0o777, 0o640);
        let nowhere = here.path().join("nowhere.svg");
        std::os::unix::fs::symlink(here.path().join("gone"), &nowhere).expect("a link");
        assert!(put(&nowhere, true, &["new"]).is_err_and(|why| why.contains("leads nowhere")));
    }

    #[cfg(target_os = "linux")]
    #[test]
    fn devices_are_written_to_and_left_alone() {
        use std::os::unix::fs::FileTypeExt;
        let full = put(Path::new("/dev/full"), true, &["x"]);
        assert!(full.is_err_and(|why| why.contains("/dev/full") && why.contains("no space")));
        assert_eq!(put(Path::new("/dev/null"), false, &["x"]), Ok(vec!["/dev/null".to_owned()]));
        for device in ["/dev/full", "/dev/null"] {
            assert!(fs::metadata(device).expect("the device").file_type().is_char_device());
        }
    }
}
