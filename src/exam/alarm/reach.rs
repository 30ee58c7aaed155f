//! What quiets a mention: a denial, an earlier time, advice. In: the text, its words, and which of them. Out: yes or no.

use super::{About, Token};

/// A denial of the word that follows, carried on by a stroke, `or` and `nor`.
const NO: &[&str] = &[
    "no",
    "nil",
    "neg",
    "negative",
    "not",
    "without",
    "never",
    "non",
    "sin",
    "ninguna",
    "ningún",
    "ningun",
    "nunca",
    "tampoco",
    "ausencia",
    "pas",
    "aucun",
    "aucune",
    "ni",
    "sans",
    "jamais",
    "absence",
    "não",
    "nao",
    "sem",
    "nenhum",
    "nenhuma",
    "ausência",
    "nie",
    "bez",
    "brak",
    "żadnych",
    "zadnych",
    "nigdy",
];
/// Two words that deny a whole list.
const DENIES_IN_TWO: &[(&str, &[&str])] = &[
    ("não", &["refere", "relata", "apresenta", "queixa"]),
    ("nao", &["refere", "relata", "apresenta", "queixa"]),
    ("nie", &["zgłasza", "zglasza", "podaje", "zgłaszała", "zglaszala", "podawała", "podawala"]),
];
/// What may stand between `nie` and what it denies in French; in Polish it denies the next word alone.
const FRENCH: &[&str] = &["le", "la", "les", "des", "de", "du", "tout", "toute", "toutes", "avoir", "l", "d"];
/// A denial of a whole list, to the end of the sentence.
const DENIES: &[&str] = &[
    "denies",
    "denied",
    "denying",
    "niega",
    "negaba",
    "réfute",
    "dénie",
    "nega",
    "negou",
    "negando",
    "neguje",
    "negowała",
    "zaprzecza",
    "zaprzeczyła",
];
/// After the word: it is denied.
const AFTER: &[&str] = &[
    "nil",
    "none",
    "neg",
    "negative",
    "no",
    "denied",
    "negativo",
    "negativa",
    "ausente",
    "ausentes",
    "négatif",
    "négative",
    "négatifs",
    "négatives",
    "absent",
    "absente",
    "absents",
    "absentes",
    "0",
    "não",
    "nao",
    "nie",
    "brak",
    "neguje",
    "nega",
    "ujemny",
    "ujemne",
];
/// Those of them that may begin what comes next: `headache no PVB`.
const AFTER_AT_END: &[&str] = &["no", "não", "nao", "nie", "brak", "neguje", "nega"];
/// Idioms: a word, and what after it makes it another thing.
const IDIOMS: &[(&str, &[&str])] = &[
    ("fell", &["pregnant", "asleep", "behind", "out"]),
    ("fit", &["and", "well", "for", "in", "to", "with", "as", "healthy"]),
    ("fallen", &["pregnant", "asleep", "behind", "out"]),
    ("green", &["notes", "note", "book", "folder", "top", "pathway", "card", "light"]),
];
/// After a low placenta: it is low no longer.
const NO_LONGER: &[&str] = &["resolved", "excluded", "cleared", "resuelta", "descartada", "exclu", "exclue"];
/// What is earlier in Spanish, before `previa`.
const BEFORE_PREVIA: &[&str] = &[
    "cesárea",
    "cesarea",
    "gestación",
    "gestacion",
    "cirugía",
    "cirugia",
    "cicatriz",
    "incisión",
    "visita",
    "consulta",
    "cita",
    "ecografía",
    "analítica",
    "medicación",
    "pérdida",
    "historia",
];
/// What may stand between a denial and its word.
const BETWEEN: &[&str] = &[
    "any",
    "further",
    "more",
    "new",
    "c",
    "o",
    "complaints",
    "complaint",
    "of",
    "signs",
    "sign",
    "evidence",
    "hay",
    "refiere",
    "de",
    "d",
    "du",
    "des",
    "s",
    "x",
    "fresh",
    "visible",
    "has",
    "had",
    "been",
    "ha",
    "tenido",
    "presenta",
    "tiene",
    "nuevo",
    "nueva",
    "a",
    "eu",
    "signe",
    "signes",
    "signo",
    "signos",
    "nouveau",
    "nouvelle",
    "há",
    "houve",
    "teve",
    "relata",
    "apresenta",
    "sente",
    "tem",
    "se",
    "mais",
    "qualquer",
    "sinais",
    "queixa",
    "queixas",
    "ma",
    "miała",
    "zgłasza",
    "zglasza",
    "podaje",
    "było",
    "bylo",
    "występuje",
    "wystepuje",
    "wystąpiło",
    "obserwuje",
    "stwierdza",
    "stwierdzono",
    "odczuwa",
    "żadnego",
    "cech",
    "objawów",
    "objawow",
    "się",
    "sie",
];
/// What carries a denial on.
const CARRIES: &[&str] = &["or", "nor", "ni", "o", "ou", "nem", "ani", "lub", "albo"];
/// What ends a denial of a list.
const ENDS: &[&str] = &[
    "but",
    "reports",
    "reporting",
    "except",
    "however",
    "then",
    "now",
    "pero",
    "salvo",
    "excepto",
    "ahora",
    "sí",
    "mais",
    "sauf",
    "maintenant",
    "par contre",
    "mas",
    "porém",
    "exceto",
    "agora",
    "ale",
    "jednak",
    "natomiast",
    "teraz",
    "obecnie",
];
/// What says that it is so today, in the same part of the sentence: no denial, history or advice reaches it over a comma.
const TODAY: &[&str] = &[
    "today",
    "tonight",
    "now",
    "currently",
    "since",
    "yesterday",
    "morning",
    "afternoon",
    "evening",
    "has",
    "reports",
    "noticed",
    "hoy",
    "ahora",
    "ayer",
    "desde",
    "anoche",
    "esta",
    "refiere",
    "presenta",
    "actualmente",
    "aujourd'hui",
    "aujourd\u{2019}hui",
    "hier",
    "depuis",
    "matin",
    "soir",
    "ce",
    "cette",
    "actuellement",
    "maintenant",
    "signale",
    "hoje",
    "agora",
    "ontem",
    "manhã",
    "noite",
    "refere",
    "relata",
    "apresenta",
    "atualmente",
    "dziś",
    "dzis",
    "dzisiaj",
    "teraz",
    "wczoraj",
    "od",
    "rano",
    "wieczorem",
    "obecnie",
    "nocy",
    "zgłasza",
    "zglasza",
    "podaje",
];
/// An earlier time, or somebody else: before the word, in the same part of the sentence.
const PAST: &[&str] = &[
    "prev",
    "previous",
    "previously",
    "hx",
    "history",
    "fhx",
    "pmh",
    "pmhx",
    "poh",
    "obhx",
    "mother's",
    "sister's",
    "antecedente",
    "antecedentes",
    "previo",
    "previos",
    "previa",
    "previas",
    "anterior",
    "anteriores",
    "hermana",
    "antécédent",
    "antécédents",
    "atcd",
    "atcds",
    "précédent",
    "précédente",
    "sœur",
    "prévia",
    "prévias",
    "prévio",
    "irmã",
    "poprzedniej",
    "poprzednia",
    "poprzednim",
    "poprzednich",
    "siostra",
    "siostry",
];
/// Words that tell of an earlier time only before these: `last night` is today's.
const PAST_BEFORE: &[(&str, &[&str])] = &[
    ("last", &["pregnancy", "preg", "baby", "time", "birth", "delivery", "labour", "labor", "one"]),
    ("past", &["history", "hx", "pregnancy", "obstetric", "medical"]),
    ("family", &["history", "hx", "h"]),
    ("h", &["o"]),
];
/// Words of an earlier time that belong to the name of something: `placenta previa`.
const NOT_PAST_AFTER: &[&str] = &["placenta", "vasa", "plac"];
/// Before four figures: they are a time of the day or a beginning, no year long gone.
const FROM: &[&str] = &["at", "since", "from", "till", "until", "by", "desde", "las", "depuis", "à", "vers"];
/// After four figures: they are a time of the day.
const OF_DAY: &[&str] = &["h", "hr", "hrs", "hours", "hs"];
/// Advice, plans and talk: before the word, in the same sentence.
const ADVICE: &[&str] = &[
    "advised",
    "advise",
    "advice",
    "advising",
    "discussed",
    "discuss",
    "if",
    "aware",
    "leaflet",
    "explained",
    "explain",
    "warned",
    "info",
    "information",
    "counselled",
    "taught",
    "risk",
    "risks",
    "re",
    "regarding",
    "about",
    "asked",
    "when",
    "should",
    "safety",
    "si",
    "aconsejado",
    "aconsejada",
    "aconseja",
    "explicado",
    "explicados",
    "explicada",
    "explica",
    "explican",
    "informada",
    "informa",
    "advertida",
    "avisar",
    "acudir",
    "acuda",
    "conseils",
    "conseillé",
    "conseillée",
    "expliqué",
    "expliqués",
    "informée",
    "prévenue",
    "consulter",
    "reconsulter",
    "revenir",
    "cas",
    "orientações",
    "aconselhada",
    "procurar",
    "retornar",
    "regressar",
    "explicados",
    "jeśli",
    "jesli",
    "jeżeli",
    "jezeli",
    "gdyby",
    "razie",
    "zgłosić",
    "zglosic",
    "zgłaszać",
    "pouczona",
    "poinformowana",
    "poinformowano",
    "zalecono",
    "zalecenia",
    "omówiono",
    "wyjaśniono",
    "ryzyko",
];

pub fn is_quiet(
    text: &str,
    tokens: &[Token<'_>],
    lower: &[String],
    at: usize,
    length: usize,
    about: About,
) -> bool {
    let next = lower.get(at + length).map_or("", String::as_str);
    // `keeping fit`: well.
    let before = at.checked_sub(1).map_or("", |before| lower[before].as_str());
    if lower[at] == "fit" && ["feels", "keeping", "keeps", "feeling", "is", "very", "fully"].contains(&before)
    {
        return true;
    }
    // `cesárea previa`: an earlier one, no placenta.
    if lower[at] == "previa" && length == 1 && BEFORE_PREVIA.contains(&before) {
        return true;
    }
    if IDIOMS.iter().any(|(word, after)| lower[at] == *word && after.contains(&next)) {
        return true;
    }
    if about == About::Placenta && NO_LONGER.contains(&next) {
        return true;
    }
    let sentence = start_of(text, tokens, at, &['.', ';', '\n', '!', '?']);
    if denied(text, tokens, lower, at, length, sentence) {
        return true;
    }
    // History never silences a cut or a rupture of the womb; what a death or a device is, is asked whenever it was.
    let timeless = about == About::WombCut || tokens[at].text == "IUD";
    let part = start_of(text, tokens, at, &['.', ';', '\n', '!', '?', ',']);
    let so_today = is_so_today(text, tokens, lower, at, length, part);
    // What says that it is so today, or a `but`, ends what was said before it.
    let reach = |from: usize| (from..at).rev().find(|i| ENDS.contains(&lower[*i].as_str())).unwrap_or(from);
    let advised = |i: usize| ADVICE.contains(&lower[i].as_str()) && !(so_today && i < part);
    if about != About::WombCut && (reach(sentence)..at).any(advised) {
        return true;
    }
    if timeless {
        return false;
    }
    let past = |i: usize| {
        let after = lower.get(i + 1).map_or("", String::as_str);
        let before = i.checked_sub(1).map_or("", |before| lower[before].as_str());
        PAST.contains(&lower[i].as_str()) && !NOT_PAST_AFTER.contains(&before)
            || PAST_BEFORE.iter().any(|(word, then)| lower[i] == *word && then.contains(&after))
    };
    let year = |i: usize| {
        let before = i.checked_sub(1).map_or("", |before| lower[before].as_str());
        let after = lower.get(i + 1).map_or("", String::as_str);
        lower[i].len() == 4
            && (lower[i].starts_with("19") || lower[i].starts_with("20"))
            && lower[i].parse::<u16>().is_ok()
            && !FROM.contains(&before)
            && !OF_DAY.contains(&after)
    };
    (reach(part)..at).any(past)
        || (reach(part)..tokens.len().min(at + length + 2))
            .take_while(|i| *i < at || near(text, tokens, at + length - 1, *i))
            .any(year)
}

/// Whether the part of the sentence in which the words stand says that it is so today.
fn is_so_today(
    text: &str,
    tokens: &[Token<'_>],
    lower: &[String],
    at: usize,
    length: usize,
    part: usize,
) -> bool {
    (part..tokens.len())
        .take_while(|i| *i < at || near(text, tokens, at + length - 1, *i))
        .any(|i| TODAY.contains(&lower[i].as_str()))
}

/// Whether word `i` stands in the same part of the sentence as word `from`.
fn near(text: &str, tokens: &[Token<'_>], from: usize, i: usize) -> bool {
    i <= from || !text[tokens[from].end..tokens[i].start].contains(['.', ';', '\n', ','])
}

/// The first word of the part that `marks` end, in which word `at` stands.
fn start_of(text: &str, tokens: &[Token<'_>], at: usize, marks: &[char]) -> usize {
    (1..=at)
        .rev()
        .find(|i| {
            let between = &text[tokens[i - 1].end..tokens[*i].start];
            // A point between digits is of a number.
            between.contains(marks)
                && !(between == "." && tokens[i - 1].text.bytes().all(|b| b.is_ascii_digit()))
        })
        .unwrap_or(0)
}

fn denied(
    text: &str,
    tokens: &[Token<'_>],
    lower: &[String],
    at: usize,
    length: usize,
    sentence: usize,
) -> bool {
    let between = |i: usize| &text[tokens[i - 1].end..tokens[i].start];
    // A minus before the word.
    let before = &text[..tokens[at].start];
    if before.ends_with(['-', '\u{2212}', '\u{2013}'])
        && before[..before.len() - before.chars().next_back().map_or(0, char::len_utf8)]
            .chars()
            .next_back()
            .is_none_or(char::is_whitespace)
    {
        return true;
    }
    // `PVB nil`.
    let next = at + length;
    if tokens.get(next).is_some_and(|token| {
        AFTER.contains(&lower[next].as_str())
            && text[tokens[next - 1].end..token.start].chars().all(|c| matches!(c, ' ' | ':' | '-' | '='))
            // `headache no PVB`: the denial belongs to what follows it.
            && (!AFTER_AT_END.contains(&lower[next].as_str()) || tokens.get(next + 1).is_none() || text[token.end..].trim_start().starts_with([',', '.', ';']))
    }) {
        return true;
    }
    // `ne saigne pas`.
    let word_before = at.checked_sub(1).map_or("", |before| lower[before].as_str());
    if ["ne", "n"].contains(&word_before)
        && lower
            .get(next)
            .is_some_and(|word| ["pas", "plus", "jamais", "aucun", "aucune"].contains(&word.as_str()))
    {
        return true;
    }
    // `denies A, B, C`: over a comma not what is so today.
    let plus = |from: usize| text[tokens[from].end..tokens[at].start].contains('+');
    let part = start_of(text, tokens, at, &['.', ';', '\n', '!', '?', ',']);
    let so_today = is_so_today(text, tokens, lower, at, length, part);
    let next_word = |i: usize| lower.get(i + 1).map_or("", String::as_str);
    let denies_list = |i: &usize| {
        let word = lower[*i].as_str();
        let in_two = |(first, then): &(&str, &[&str])| word == *first && then.contains(&next_word(*i));
        let french = word == "nie"
            && (FRENCH.contains(&next_word(*i)) || super::spelled(tokens, lower, text, *i + 1).is_some());
        DENIES.contains(&word) || DENIES_IN_TWO.iter().any(in_two) || french
    };
    if let Some(denies) = (sentence..at).rev().find(denies_list)
        && !(denies..at).any(|i| ENDS.contains(&lower[i].as_str()))
        && !plus(denies)
        && !(so_today && denies < part)
    {
        return true;
    }
    // `no A`, `no A/B or C`: back over what the denial reaches.
    let mut i = at;
    let mut carried = true;
    while i > sentence {
        let gap = between(i);
        if gap.contains([',', '&', '+', ':', '(', ')']) {
            return false;
        }
        let stroke = gap.contains('/');
        i -= 1;
        let word = lower[i].as_str();
        if NO.contains(&word) && carried {
            return true;
        }
        if ENDS.contains(&word) || word == "and" || word == "y" || word == "et" {
            return false;
        }
        if stroke || CARRIES.contains(&word) {
            carried = true;
        } else if !BETWEEN.contains(&word) {
            // A word of another finding: only a stroke or an `or` after it carries the denial over it.
            carried = i + 1 != at && carried_over(text, tokens, lower, i);
            if !carried {
                // It may be one word of a phrase: go on to the stroke before it.
                if i + 1 == at {
                    return false;
                }
            }
            carried = true;
        }
    }
    false
}

/// Whether after word `i` a stroke or an `or` follows.
fn carried_over(text: &str, tokens: &[Token<'_>], lower: &[String], i: usize) -> bool {
    let Some(next) = tokens.get(i + 1) else { return false };
    text[tokens[i].end..next.start].contains('/') || CARRIES.contains(&lower[i + 1].as_str())
}
