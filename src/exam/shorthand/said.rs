//! Findings of a line before they are read. In: a key and the texts that belong to it. Out: one entry a finding.

use crate::exam::keys::Key;
use std::ops::Range;

/// A text for the reader, and the bytes of the line it stands for.
#[derive(Clone, Debug)]
pub struct Value {
    /// Bytes of the line.
    pub at: Range<usize>,
    /// The text as a visit file would say it; as a rule the line's own.
    pub text: String,
}

/// One finding.
pub struct Said {
    /// Its key.
    pub key: &'static Key,
    /// Whose it is, from 0; of no meaning for keys that are not a baby's.
    pub baby: usize,
    /// Its values; several only of a list.
    pub values: Vec<Value>,
}

impl Said {
    /// The bytes of the line from its first value to its last.
    pub fn at(&self) -> Range<usize> {
        let start = self.values.iter().map(|value| value.at.start).min().unwrap_or(0);
        let end = self.values.iter().map(|value| value.at.end).max().unwrap_or(start);
        start..end
    }
}
