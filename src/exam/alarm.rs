//! Free words that could be an alarm. In: a note, or words kept of a line, in any language that is shipped. Out: each mention, in
//! the words that stand there, and what it is about.
//!
//! Words under a denial, of an earlier time or of advice are passed over; an earlier cut or rupture of the womb never is. A
//! denial reaches over `/`, `or`, `nor`; a comma ends it, but not after `denies`. What may be read in two ways is mentioned.

mod measures;
mod pain;
mod phrases;
mod reach;
mod spelling;
mod vagina;

use super::model::Report;
use phrases::{PHRASES, PLAIN};

/// What a mention is about, and so what answers it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About {
    /// Something she may report.
    Report(Report),
    /// Movements.
    Movements,
    /// Whether the heart was heard.
    Heart,
    /// A heart that was heard at an earlier time.
    HeartBefore,
    /// Falls of the heart.
    HeartSlows,
    /// What was found by the vagina.
    ByVagina,
    /// Blood pressure.
    Pressure,
    /// Temperature.
    Temperature,
    /// Colour or smell of the water.
    WaterColour,
    /// Labour before its time, or in doubt.
    Labour,
    /// Where the placenta lies.
    Placenta,
    /// An earlier cut or rupture of the womb.
    WombCut,
    /// How the womb feels.
    Womb,
    /// A lie that keeps changing.
    Lie,
    /// How legs or head are held.
    Legs,
    /// A head that overlaps the pubic bone.
    Overlap,
    /// What no key records.
    Nothing,
}

/// Words that could be an alarm.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mention {
    /// As they stand in the text.
    pub words: String,
    /// What they are about.
    pub about: About,
}

/// A word of the text, with its bytes.
#[derive(Clone, Copy)]
struct Token<'t> {
    text: &'t str,
    start: usize,
    end: usize,
}

/// Every mention in `text`, in its order.
pub fn mentions(text: &str) -> Vec<Mention> {
    placed(text).into_iter().map(|(_, mention)| mention).collect()
}

/// Every mention in `text` with the byte where its words begin.
pub fn placed(text: &str) -> Vec<(usize, Mention)> {
    let tokens = tokens(text);
    let lower: Vec<String> = tokens.iter().map(|token| spelling::usual(token.text)).collect();
    let mut found: Vec<(usize, Mention)> = measures::mentions(text);
    let mut at = 0;
    while at < tokens.len() {
        let by_vagina = || vagina::part(text, &tokens, &lower, at).then_some((1, About::ByVagina));
        let pain = || {
            let severe = pain::severe(text, &tokens, &lower, at);
            severe.map(|length| (length, About::Report(Report::ConstantPain)))
        };
        let Some((length, about)) = longest(&tokens, &lower, text, at).or_else(pain).or_else(by_vagina)
        else {
            at += 1;
            continue;
        };
        let (start, end) = (tokens[at].start, tokens[at + length - 1].end);
        if !reach::is_quiet(text, &tokens, &lower, at, length, about) {
            found.push((start, Mention { words: text[start..end].to_owned(), about }));
        }
        at += length;
    }
    found.sort_by_key(|(start, _)| *start);
    found
}

/// Every pain that `text` names, whatever kind of pain it is.
pub fn pains(text: &str) -> Vec<Mention> {
    let tokens = tokens(text);
    let lower: Vec<String> = tokens.iter().map(|token| spelling::usual(token.text)).collect();
    let about = About::Report(Report::ConstantPain);
    let named =
        |at: &usize| pain::is_pain(&lower[*at]) && !reach::is_quiet(text, &tokens, &lower, *at, 1, about);
    let word = |at: usize| Mention { words: tokens[at].text.to_owned(), about };
    (0..tokens.len()).filter(named).map(word).collect()
}

/// Whether `text` speaks of violence or of harming herself, denied or not: for whoever examined alone.
pub fn is_private(text: &str) -> bool {
    let tokens = tokens(text);
    let lower: Vec<String> = tokens.iter().map(|token| spelling::usual(token.text)).collect();
    (0..tokens.len()).any(|at| {
        longest(&tokens, &lower, text, at)
            .is_some_and(|(_, about)| matches!(about, About::Report(Report::Violence | Report::SelfHarm)))
    })
}

/// The longest phrase that stands at token `at`, in any language: how many tokens, and what it is about.
fn longest(tokens: &[Token<'_>], lower: &[String], text: &str, at: usize) -> Option<(usize, About)> {
    let said = spelled(tokens, lower, text, at);
    let plain = unaccented(tokens, lower, text, at);
    let best = match (said, plain) {
        (Some(said), Some(plain)) => Some(if plain.0 > said.0 { plain } else { said }),
        (said, plain) => said.or(plain),
    };
    // A cord or a labour in doubt is asked about, whatever else is said of it.
    let doubted = text[..tokens.get(at).map_or(0, |token| token.start)].trim_end().ends_with('?');
    best.or_else(|| match lower[at].as_str() {
        "cord" | "cordón" | "cordon" if doubted => Some((1, About::ByVagina)),
        "labour" | "labor" if doubted => Some((1, About::Labour)),
        _ => None,
    })
}

/// How many tokens `phrase` takes at token `at`, when each of its words is `same` as the token's.
fn stands(
    tokens: &[Token<'_>],
    text: &str,
    at: usize,
    phrase: &str,
    same: &dyn Fn(usize, &str) -> bool,
) -> Option<usize> {
    let mut length = 0;
    let all = phrase.split(' ').all(|word| {
        let here = at + length;
        length += 1;
        let joined = |token: &Token<'_>| here == at || close(&text[tokens[here - 1].end..token.start]);
        tokens.get(here).is_some_and(joined) && same(here, word)
    });
    all.then_some(length)
}

/// The longest of these phrases, by how many tokens each takes; of those as long the first.
fn longest_of(taken: impl Iterator<Item = (Option<usize>, About)>) -> Option<(usize, About)> {
    taken.fold(None, |best: Option<(usize, About)>, (length, about)| match length {
        Some(length) if length > best.map_or(0, |(most, _)| most) => Some((length, about)),
        _ => best,
    })
}

/// The longest phrase of English, Spanish or French at token `at`.
fn spelled(tokens: &[Token<'_>], lower: &[String], text: &str, at: usize) -> Option<(usize, About)> {
    let phrases =
        PHRASES.iter().flat_map(|(about, phrases)| phrases.iter().map(move |phrase| (*about, *phrase)));
    longest_of(phrases.map(|(about, phrase)| {
        // A phrase in capitals is meant in capitals.
        let capitals = phrase.chars().any(char::is_uppercase);
        let same = |here: usize, word: &str| {
            if capitals { tokens[here].text == word } else { spelling::same(&lower[here], word) }
        };
        (stands(tokens, text, at, phrase, &same), about)
    }))
}

/// The longest phrase of Portuguese or Polish at token `at`, accents or none.
fn unaccented(tokens: &[Token<'_>], lower: &[String], text: &str, at: usize) -> Option<(usize, About)> {
    let is =
        |said: &str, word: &str| word.strip_suffix('*').map_or(said == word, |stem| said.starts_with(stem));
    let first = spelling::plain(lower.get(at)?);
    let phrases = PLAIN.into_iter().flatten();
    let phrases = phrases.flat_map(|(about, phrases)| phrases.iter().map(move |phrase| (*about, *phrase)));
    let begun = phrases.filter(|(_, phrase)| is(&first, phrase.split(' ').next().unwrap_or(phrase)));
    longest_of(begun.map(|(about, phrase)| {
        let same = |here: usize, word: &str| is(&spelling::plain(&lower[here]), word);
        (stands(tokens, text, at, phrase, &same), about)
    }))
}

/// Whether two words with this between them belong to one phrase.
fn close(between: &str) -> bool {
    between.chars().all(|c| matches!(c, ' ' | '-' | '?' | '\u{2011}' | '\u{a0}'))
}

/// The words and numbers of a text; an apostrophe belongs to its word.
fn tokens(text: &str) -> Vec<Token<'_>> {
    let part = |c: char| c.is_alphanumeric() || c == '\'' || c == '\u{2019}';
    let mut tokens = vec![];
    let mut start = None;
    for (at, c) in text.char_indices() {
        match (part(c), start) {
            (true, None) => start = Some(at),
            (false, Some(from)) => {
                tokens.push(Token { text: &text[from..at], start: from, end: at });
                start = None;
            }
            _ => {}
        }
    }
    if let Some(from) = start {
        tokens.push(Token { text: &text[from..], start: from, end: text.len() });
    }
    tokens
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(text: &str) -> Vec<String> {
        mentions(text).into_iter().map(|mention| mention.words).collect()
    }

    #[test]
    fn what_could_be_an_alarm_is_found() {
        for (text, words) in [
            ("Small PV bleed this morning", &["PV bleed"][..]),
            ("cord felt at introitus", &["cord felt"]),
            ("cord ?felt on VE", &["cord ?felt"]),
            ("VE ?cord", &["cord"]),
            ("VE ?bag ?cord below, stop", &["cord below"]),
            ("VE foot at os", &["foot"]),
            ("Kord felt VE", &["Kord felt"]),
            ("VE 3 cm, ? chord", &["chord"]),
            ("hand in vagina", &["hand"]),
            ("sholder on VE", &["sholder"]),
            ("PV bleding since noon", &["PV bleding"]),
            ("fit at home", &["fit"]),
            ("uterus not relaxing between contractions", &["not relaxing"]),
            ("fell on the stairs", &["fell"]),
            ("headache since Tuesday, ankles puffy", &["headache"]),
            ("BP 148/96 sitting", &["148/96"]),
            ("bp 162/88", &["162/88"]),
            ("T 38.4", &["38.4"]),
            ("abdo pain ++", &["pain"]),
            ("abdo pain 9/10", &["pain 9/10"]),
            ("severe lower abdo pain", &["severe lower abdo pain"]),
            ("temp 38,2", &["38,2"]),
            ("no FH heard with Pinard", &["no FH heard"]),
            ("inverted T 2019", &["inverted T"]),
            ("prev classical section", &["classical section"]),
            ("IUD 2018", &["IUD"]),
            ("IUD", &["IUD"]),
            ("RFM today", &["RFM"]),
            ("no PVB, headache", &["headache"]),
            ("no PVB but SROM at 04:15", &["SROM"]),
            ("sangrado desde ayer", &["sangrado"]),
            ("saignement ce matin", &["saignement"]),
            ("perte de liquide", &["perte de liquide"]),
            ("feels suicidal", &["suicidal"]),
            ("afraid of partner", &["afraid of partner"]),
        ] {
            assert_eq!(said(text), words, "{text}");
        }
    }

    #[test]
    fn what_is_denied_or_past_or_advice_is_quiet() {
        for text in [
            "Fit and well",
            "VE: 4 cm, vertex, no cord felt",
            "VE cord not felt",
            "VE OP, face to pubes",
            "swollen feet",
            "held her hand",
            "feels fit",
            "Bloods taken",
            "Cord insertion central",
            "fell pregnant on the pill",
            "FHx PET",
            "Advised RFM/PVB/SROM",
            "advised to ring if RFM, PVB or SROM",
            "no PVB/SROM",
            "no PVB or headache",
            "denies headache, blurred vision, epigastric pain",
            "no RUQ pain",
            "PVB nil",
            "headache: none",
            "-LOF -VB",
            "h/o headaches",
            "prev PPROM 2019",
            "BP 118/72",
            "3/5 palpable",
            "T 37.1",
            "pain 3/10",
            "period type pain",
            "no severe pain",
            "head 3/5, pain-free",
            "seen at 38+0",
            "discussed reduced movements",
            "sin sangrado",
            "no refiere sangrado",
            "pas de saignement",
            "ni saignement ni fièvre",
            "for IOL at 41/40",
            "all well",
        ] {
            assert_eq!(said(text), [""; 0], "{text}");
        }
    }
}
