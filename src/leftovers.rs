//! Files that are not finished yet, and those that never will be. In: a directory. Out: a file of one's own to be filled and then
//! renamed; or what earlier runs left there, removed.
//!
//! An unfinished file is called `.handspan-unfinished-` and six letters, and the run that fills it holds a lock on it. The lock
//! ends with the run, however that ends: what nobody holds was left behind, and the next run that writes there removes it.

use std::fs::{self, File, Permissions};
use std::io;
use std::path::Path;
use tempfile::NamedTempFile;

const NAME: &str = ".handspan-unfinished-";
const LETTERS: usize = 6;
/// How often a file is begun anew when it was taken for a leftover before it was held.
const TRIES: usize = 16;

/// A new unfinished file in `directory`, held until it is dropped.
pub fn begin(directory: &Path, permissions: Option<Permissions>) -> io::Result<NamedTempFile> {
    let mut builder = tempfile::Builder::new();
    builder.prefix(NAME).rand_bytes(LETTERS);
    if let Some(permissions) = permissions {
        builder.permissions(permissions);
    }
    for _ in 0..TRIES {
        let file = builder.tempfile_in(directory)?;
        // Where files cannot be locked, none is taken for a leftover either.
        let _ = file.as_file().lock();
        if fs::symlink_metadata(file.path()).is_ok() {
            return Ok(file);
        }
    }
    Err(io::Error::other("each file that was begun there was removed"))
}

/// Remove what earlier runs left in `directory`; a sentence when there was something.
pub fn clear(directory: &Path) -> Option<String> {
    let entries = fs::read_dir(directory).ok()?;
    let removed = entries.filter_map(Result::ok).filter(is_left).count();
    (removed > 0).then(|| {
        let files =
            if removed == 1 { "1 unfinished file".to_owned() } else { format!("{removed} unfinished files") };
        format!("handspan: removed {files} that an earlier run left in {}\n", directory.display())
    })
}

/// Removes the file when it is unfinished and nobody holds it; whether it did.
fn is_left(entry: &fs::DirEntry) -> bool {
    let name = entry.file_name();
    let letters = name.to_str().and_then(|name| name.strip_prefix(NAME)).unwrap_or_default();
    if letters.len() != LETTERS || !letters.bytes().all(|letter| letter.is_ascii_alphanumeric()) {
        return false;
    }
    let own = entry.file_type().is_ok_and(|kind| kind.is_file());
    // Removed while held, so that a run that has just begun it sees that it is gone.
    let held = File::open(entry.path()).ok().filter(|file| own && file.try_lock().is_ok());
    held.is_some() && fs::remove_file(entry.path()).is_ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_nobody_holds_is_removed_and_nothing_else() -> io::Result<()> {
        let here = tempfile::tempdir()?;
        let held = begin(here.path(), None)?;
        let left = here.path().join(".handspan-unfinished-aB3xYz");
        fs::write(&left, b"<svg")?;
        let others =
            ["page.svg", ".handspan-unfinished-", ".handspan-unfinished-aB3xYz.svg", ".handspan-a.toml"];
        for other in others {
            fs::write(here.path().join(other), b"mine")?;
        }
        fs::create_dir(here.path().join(".handspan-unfinished-folder"))?;
        assert!(clear(here.path()).is_some_and(|said| said.contains("removed 1 unfinished file that")));
        assert!(!left.exists() && held.path().exists());
        assert!(others.iter().all(|other| here.path().join(other).exists()));
        assert!(here.path().join(".handspan-unfinished-folder").is_dir());
        assert_eq!(clear(here.path()), None);
        Ok(())
    }
}
