//! Questions of a line, answered where they are asked. In: a line, what is typed. Out: the line with the readings that were chosen.

use handspan::exam::shorthand::{self, ask::Question};
use std::io::{BufRead, IsTerminal, Write};

/// The lines with what was chosen for each; as they are when nobody sits at a terminal.
pub fn in_terminal(lines: &[String]) -> Vec<String> {
    if !std::io::stdin().is_terminal() || !std::io::stderr().is_terminal() {
        return lines.to_vec();
    }
    let (mut typed, mut shown) = (std::io::stdin().lock(), std::io::stderr().lock());
    lines.iter().map(|line| settle(line, &mut typed, &mut shown)).collect()
}

/// One line: each question once. A number chooses a reading; words stand in place of the piece; nothing leaves it open.
fn settle(line: &str, typed: &mut impl BufRead, shown: &mut impl Write) -> String {
    let mut line = line.to_owned();
    let mut asked: Vec<(String, String)> = vec![];
    loop {
        let reading = shorthand::read("--say", &line);
        let is_new = |question: &&Question| {
            !asked.iter().any(|(text, message)| *text == question.text && *message == question.message)
        };
        let Some(question) = reading.questions.iter().find(is_new) else { return line };
        asked.push((question.text.clone(), question.message.clone()));
        let mut told = format!("{}\n", question.message);
        for (number, reading) in (1..).zip(&question.readings) {
            told.push_str(&format!("  {number}  {}\n", reading.says));
        }
        told.push_str("Number, or other words; Enter leaves it open: ");
        let mut answer = String::new();
        let ended = shown.write_all(told.as_bytes()).and_then(|()| shown.flush()).is_err()
            || typed.read_line(&mut answer).is_ok_and(|read| read == 0);
        if ended {
            return line;
        }
        let answer = answer.trim();
        let chosen = answer.parse::<usize>().ok().and_then(|number| number.checked_sub(1));
        line = match chosen.map(|number| question.readings.get(number)) {
            Some(Some(reading)) => reading.line.clone(),
            None if !answer.is_empty() => question.with(&line, answer),
            Some(None) | None => line,
        };
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn settled(line: &str, typed: &str) -> (String, String) {
        let mut shown = vec![];
        let line = settle(line, &mut typed.as_bytes(), &mut shown);
        (line, String::from_utf8_lossy(&shown).into_owned())
    }

    #[test]
    fn each_question_is_asked_once_and_answered_by_number_or_words() {
        let (line, shown) = settled("38+0 ceph 4/5 LOA", "1\n");
        assert_eq!(line, "38+0 ceph; 4/5 palp; LOA");
        assert!(
            shown.contains("  1  4/5 felt above the brim") && shown.contains("  2  4/5 gone in"),
            "{shown}"
        );
        assert_eq!(settled("38+0 ceph 4/5 LOA", "2\n").0, "38+0 ceph; 1/5 palp; LOA");
        assert_eq!(settled("38+0 SFH 3", "SFH 36\n").0, "38+0; SFH 36");
        // Left open, and the end of what is typed.
        for typed in ["\n", "9\n", ""] {
            let (line, shown) = settled("38+0 ceph 4/5 LOA", typed);
            assert_eq!(line, "38+0 ceph 4/5 LOA");
            assert_eq!(shown.matches("4/5 felt above").count(), 1, "{shown}");
        }
        assert_eq!(settled("37+0 LOA", "").1, "");
    }
}
