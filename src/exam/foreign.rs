//! Words of other languages in a visit file or a line. In: words. Out: whether they are such, and what to do about them.

/// What to do about a word of another language.
pub const ENGLISH: &str = "English words: the words of a visit file are English; `handspan words` lists them";

/// Words that people write in visit files of their own languages.
const FOREIGN: &[&str] = &[
    "woche",
    "wochen",
    "ssw",
    "mutter",
    "lage",
    "herz",
    "kopf",
    "ruecken",
    "rücken",
    "steiss",
    "steiß",
    "steißlage",
    "steisslage",
    "schädellage",
    "schaedellage",
    "beckenendlage",
    "querlage",
    "schräglage",
    "fundusstand",
    "herztöne",
    "herztoene",
    "kindsbewegungen",
    "kindslage",
    "stellung",
    "links",
    "rechts",
    "oben",
    "unten",
    "vorne",
    "hinten",
    "nabel",
    "wehen",
    "blutung",
    "fruchtwasser",
    "semanas",
    "madre",
    "bebe",
    "bebé",
    "cabeza",
    "espalda",
    "corazon",
    "corazón",
    "situacion",
    "situación",
    "nalgas",
    "izquierda",
    "derecha",
    "semaines",
    "mère",
    "bébé",
    "tête",
    "coeur",
    "cœur",
    "gauche",
    "droite",
    "cabeça",
    "dorso",
    "esquerda",
    "direita",
    "główka",
    "glowka",
    "plecy",
    "lewo",
    "prawo",
];
/// Such words that are English ones too: as the name of a key they are of another language.
const KEYS_ALONE: &[&str] = &["kind", "mere"];

/// Whether the name of a key is a word of another language.
pub fn is_foreign_key(name: &str) -> bool {
    let name = name.to_lowercase();
    FOREIGN.contains(&name.as_str()) || KEYS_ALONE.contains(&name.as_str())
}

/// Whether a word of another language stands in `text`.
pub fn is_foreign(text: &str) -> bool {
    let text = text.to_lowercase();
    text.split(|c: char| !c.is_alphabetic()).any(|word| FOREIGN.contains(&word))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_of_another_language_are_known() {
        assert!(is_foreign("Kopf unten") && is_foreign("dos à gauche") && is_foreign_key("kind"));
        assert!(!is_foreign("kind regards, back left") && !is_foreign_key("back"));
    }
}
