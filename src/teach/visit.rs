//! The findings of a visit, as they are written down. In: keys and values. Out: the text of a visit file.

/// One visit: its weeks, then keys and values in the order of the hands.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Visit {
    weeks: String,
    mother: Vec<(&'static str, String)>,
    baby: Vec<(&'static str, String)>,
}

impl Visit {
    pub fn new(weeks: String) -> Self {
        Self { weeks, mother: vec![], baby: vec![] }
    }

    /// Of the mother; in place of what was said before.
    pub fn mother(&mut self, key: &'static str, value: impl Into<String>) {
        put(&mut self.mother, key, value.into());
    }

    /// Of the baby; in place of what was said before.
    pub fn baby(&mut self, key: &'static str, value: impl Into<String>) {
        put(&mut self.baby, key, value.into());
    }

    /// Not examined.
    pub fn without(&mut self, keys: &[&str]) {
        self.mother.retain(|(key, _)| !keys.contains(key));
        self.baby.retain(|(key, _)| !keys.contains(key));
    }

    /// Weeks and what was heard, and nothing else.
    pub fn only_heart(&mut self) {
        self.mother.clear();
        self.baby.retain(|(key, _)| key.starts_with("heart"));
    }

    /// The keys of the baby, in their order.
    pub fn of_baby(&self) -> impl Iterator<Item = &'static str> {
        self.baby.iter().map(|(key, _)| *key)
    }

    /// The same visit with only its first findings of the baby.
    pub fn first(&self, findings: usize) -> Self {
        let baby = self.baby.iter().take(findings).cloned().collect();
        Self { weeks: self.weeks.clone(), mother: self.mother.clone(), baby }
    }

    /// The visit file, under a line of comment.
    pub fn text(&self, comment: &str) -> String {
        let mut text = String::new();
        if !comment.is_empty() {
            text.push_str(&format!("# {comment}\n"));
        }
        text.push_str(&format!("weeks = \"{}\"\n", self.weeks));
        for (table, findings) in [("mother", &self.mother), ("baby", &self.baby)] {
            if !findings.is_empty() {
                text.push_str(&format!("\n[{table}]\n"));
            }
            for (key, value) in findings {
                text.push_str(&format!("{key} = {value}\n"));
            }
        }
        text
    }
}

fn put(findings: &mut Vec<(&'static str, String)>, key: &'static str, value: String) {
    match findings.iter_mut().find(|(known, _)| *known == key) {
        Some((_, known)) => *known = value,
        None => findings.push((key, value)),
    }
}

/// A text in quotes.
pub(super) fn quoted(text: &str) -> String {
    format!("\"{text}\"")
}

/// A list of texts in quotes.
pub(super) fn list(texts: &[String]) -> String {
    let texts: Vec<String> = texts.iter().map(|text| quoted(text)).collect();
    format!("[{}]", texts.join(", "))
}
