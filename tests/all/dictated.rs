//! Sentences as they are dictated (our own, invented): number words, "plus", "over", "point", words that dictation mishears; and
//! that what was understood is said back so that it can be heard.

use handspan::exam::shorthand::{self, aloud};
use std::collections::BTreeSet;

/// What is said, what is read of it, and what is asked about.
const SENTENCES: [(&str, &str, &str); 40] = [
    (
        "thirty-seven weeks, head down, two fifths palpable, back on her left to the front, heart one forty-two, tape thirty-five",
        "weeks = 37+0; presentation = cephalic; head-above-brim = 2/5; back = left front; heart-rate = 142; fundal-height = 35 cm",
        "",
    ),
    (
        "thirty eight plus two, cephalic, three fifths palpable, back on her right, fetal heart rate one thirty-six",
        "weeks = 38+2; presentation = cephalic; head-above-brim = 3/5; back = right; heart-rate = 136",
        "",
    ),
    (
        "forty plus one, left occiput anterior, one fifth palpable above the brim, fundal height thirty-nine",
        "weeks = 40+1; position = LOA; head-above-brim = 1/5; fundal-height = 39 cm",
        "",
    ),
    (
        "thirty-six weeks, breech presentation, head at the fundus, heart rate one fifty",
        "weeks = 36+0; presentation = breech; head = fundus; heart-rate = 150",
        "",
    ),
    ("tape thirty-four and a half, thirty-six weeks", "weeks = 36+0; fundal-height = 34.5 cm", ""),
    (
        "fundal height thirty-four point five, thirty-six plus three, cephalic",
        "fundal-height = 34.5 cm; weeks = 36+3; presentation = cephalic",
        "",
    ),
    (
        "thirty-nine plus four, right occiput posterior, four fifths palpable, heart one hundred and forty",
        "weeks = 39+4; position = ROP; head-above-brim = 4/5; heart-rate = 140",
        "",
    ),
    (
        "twenty-eight weeks, fundal height twenty-eight, heart heard, one forty-eight",
        "weeks = 28+0; fundal-height = 28 cm; heart = heard; heart-rate = 148",
        "",
    ),
    (
        "thirty-two plus five, transverse lie, head in left flank, back towards her feet, heart one thirty",
        "weeks = 32+5; lie = transverse; head = left flank; back = towards her feet; heart-rate = 130",
        "",
    ),
    (
        "thirty-seven plus zero, to fifths palpable, back left",
        "weeks = 37+0; head-above-brim = 2/5; back = left",
        "",
    ),
    (
        "thirty-eight weeks, so fallick, three fifths palpable",
        "weeks = 38+0; head-above-brim = 3/5",
        "so fallick",
    ),
    ("thirty-five weeks, breach, heart one forty-four", "weeks = 35+0; heart-rate = 144", "breach"),
    (
        "blood pressure one twenty over seventy-eight, thirty-six plus one, cephalic",
        "blood-pressure = 120/78; weeks = 36+1; presentation = cephalic",
        "",
    ),
    (
        "blood pressure one forty-two over ninety-two, thirty-seven weeks, headache",
        "blood-pressure = 142/92; weeks = 37+0; reports = headache",
        "",
    ),
    (
        "temperature thirty-seven point two, pulse eighty-four, thirty-eight plus one",
        "temperature = 37.2 C; pulse = 84; weeks = 38+1",
        "",
    ),
    (
        "pulse seventy-eight, blood pressure one eighteen over seventy, respiratory rate sixteen, thirty-nine weeks",
        "pulse = 78; blood-pressure = 118/70; breathing = 16; weeks = 39+0",
        "",
    ),
    (
        "forty weeks, contractions three in ten, lasting forty-five seconds, strong",
        "weeks = 40+0; reports = tightenings; contractions-in-ten = 3; contraction-length = 45 s; contraction-strength = strong",
        "",
    ),
    (
        "thirty-nine plus one, head free, back on the left, limbs on the right",
        "weeks = 39+1; presentation = cephalic; descent = free; back = left; limbs = right",
        "",
    ),
    (
        "thirty-seven plus three, movements as usual, no bleeding",
        "weeks = 37+3; movements = usual; denies = bleeding",
        "",
    ),
    (
        "thirty-three weeks, movements reduced since yesterday, heart one fifty-two",
        "weeks = 33+0; movements = fewer; heart-rate = 152",
        "",
    ),
    (
        "thirty-six plus six, liquor normal, cephalic, back left lateral",
        "weeks = 36+6; water = adequate; presentation = cephalic; back = left lateral",
        "",
    ),
    (
        "gravida three para two, thirty-eight weeks, cephalic",
        "gravida = 3; births-before = 2; weeks = 38+0; presentation = cephalic",
        "",
    ),
    (
        "thirty-one weeks, twins, twin one cephalic, heart one forty, twin two breech, heart one fifty-two",
        "weeks = 31+0; presentation = cephalic; heart-rate = 140; baby.2.presentation = breech; baby.2.heart-rate = 152",
        "",
    ),
    (
        "thirty-seven weeks, direct occiput posterior, heart one twenty-eight",
        "weeks = 37+0; position = OP; heart-rate = 128",
        "",
    ),
    (
        "thirty-six plus four, left sacrum anterior, heart one forty above the navel on the left",
        "weeks = 36+4; position = LSA; heart-rate = 140; heart = left, above navel",
        "",
    ),
    (
        "thirty-eight plus five, estimated fetal weight three point two kilograms",
        "weeks = 38+5; weight-by-hand = 3.2 kg",
        "",
    ),
    (
        "thirty-five plus two, uterus soft, not tender, cephalic",
        "weeks = 35+2; womb = soft; presentation = cephalic",
        "",
    ),
    (
        "forty plus three, no headache, no bleeding, head three over five palpable, right occiput anterior",
        "weeks = 40+3; denies = headache; bleeding; head-above-brim = 3/5; position = ROA",
        "",
    ),
    ("thirty-four plus one, heart one oh five", "weeks = 34+1; heart-rate = 105", ""),
    (
        "thirty-nine weeks, waters broken, clear liquor, head engaged",
        "weeks = 39+0; reports = waters broken; water-colour = clear; presentation = cephalic; descent = engaged",
        "",
    ),
    (
        "thirty-seven weeks, station minus two, cephalic",
        "weeks = 37+0; station = -2; presentation = cephalic",
        "",
    ),
    ("thirty-two weeks, hiccups felt, back on the left", "weeks = 32+0; hiccups = yes; back = left", ""),
    (
        "thirty-six weeks, placenta anterior, cephalic, back to the right front",
        "weeks = 36+0; placenta = front; presentation = cephalic; back = right front",
        "",
    ),
    ("thirty-eight weeks, unable to hear fetal heart", "weeks = 38+0; heart = not heard", ""),
    (
        "forty-one plus two, cephalic, one fifth palpable, heart one thirty to one forty",
        "weeks = 41+2; presentation = cephalic; head-above-brim = 1/5; heart-rate = 130-140",
        "",
    ),
    (
        "thirty-six weeks, oblique lie, head in the right iliac fossa",
        "weeks = 36+0; lie = oblique; head = right iliac fossa",
        "",
    ),
    (
        "thirty plus six, tape thirty, fetal movements felt",
        "weeks = 30+6; fundal-height = 30 cm; movements = felt",
        "",
    ),
    (
        "thirty-seven plus five, bladder empty, cephalic, for fifths palpable",
        "weeks = 37+5; bladder = empty; presentation = cephalic; head-above-brim = 4/5",
        "",
    ),
    (
        "thirty-nine plus six, back to back, head four fifths above the brim",
        "weeks = 39+6; back = towards her spine; head-above-brim = 4/5",
        "",
    ),
    (
        "thirty-five weeks, itching of palms, urine protein one plus",
        "weeks = 35+0; reports = itching; urine-protein = 1+",
        "",
    ),
];

fn read(sentence: &str) -> (BTreeSet<String>, String) {
    let reading = shorthand::read("--say", sentence);
    let exam = reading.exam.expect(sentence);
    let key = |key: &str| match key.strip_prefix("baby.1.").or(key.strip_prefix("mother.")) {
        Some(name) => name.to_owned(),
        None => key.to_owned(),
    };
    let read = exam.read.iter().filter(|(key, _)| key != "note");
    let asked: Vec<&str> = reading.questions.iter().map(|question| question.text.as_str()).collect();
    (read.map(|(name, value)| format!("{} = {}", key(name), value)).collect(), asked.join("|"))
}

#[test]
fn sentences_are_read_as_they_are_dictated() {
    for (sentence, expected, asked) in SENTENCES {
        let expected: BTreeSet<String> = split(expected);
        let (found, questions) = read(sentence);
        assert_eq!(found, expected, "{sentence}");
        assert_eq!(questions, asked, "{sentence}");
    }
}

/// Findings are parted by semicolons before a key; a list has semicolons of its own.
fn split(expected: &str) -> BTreeSet<String> {
    let mut all: Vec<String> = vec![];
    for part in expected.split("; ") {
        match all.last_mut().filter(|_| !part.contains(" = ")) {
            Some(last) => last.push_str(&format!("; {part}")),
            None => all.push(part.to_owned()),
        }
    }
    all.into_iter().collect()
}

/// The same sentence from her other side is read as the other side.
#[test]
fn a_dictated_side_is_hers_from_both_ends() {
    let mut turned = 0;
    for (sentence, expected, _) in SENTENCES {
        let swap =
            |text: &str| text.replace("left", "\u{1}").replace("right", "left").replace('\u{1}', "right");
        let other = swap(sentence);
        if other == sentence || expected.contains("position") {
            continue;
        }
        assert_eq!(read(&other).0, split(&swap(expected)), "{other}");
        turned += 1;
    }
    assert!(turned >= 8, "{turned}");
}

#[test]
fn what_was_understood_is_said_back_so_that_it_can_be_heard() {
    let line = "37+2 LOA 2/5 palp BP 128/82 station -2 FHR 140-146 prot + back L";
    let exam = shorthand::read("--say", line).exam.expect("an exam");
    let said = aloud(&exam);
    for words in [
        "37 weeks and 2 days",
        "position left occipito-anterior",
        "2 fifths palpable above the brim",
        "blood pressure 128 over 82",
        "station minus 2",
        "heart rate 140 to 146",
        "urine protein 1 plus",
        "back left",
    ] {
        assert!(said.contains(words), "{words}: {said}");
    }
    for (sentence, expected, _) in SENTENCES {
        let exam = shorthand::read("--say", sentence).exam.expect(sentence);
        let said = aloud(&exam);
        assert!(!said.contains(['/', '+', '\n', '=']), "{said}");
        for side in ["left", "right"] {
            if split(expected).iter().any(|one| one.contains(side)) {
                assert!(said.contains(side), "{said}");
            }
        }
    }
}

/// A side that stands apart from the code it belongs to is never lost, and a breech in the fundus is no breech.
#[test]
fn no_side_is_dropped_from_a_code_that_is_written_apart() {
    for (line, expected) in [
        ("lt OA", "position = LOA"),
        ("rt OP", "position = ROP"),
        ("L OP", "position = LOP"),
        ("R O P 4/5 palp", "position = ROP; head-above-brim = 4/5"),
        ("L O A", "position = LOA"),
        ("sacrum Rt ant", "position = RSA"),
        ("occiput left posterior", "position = LOP"),
        ("br palp in fundus?", "breech = fundus?"),
        ("head palpable at fundus", "head = fundus"),
        ("back L A", "back = left front"),
        ("back R A", "back = right front"),
    ] {
        let (found, questions) = read(line);
        assert_eq!((found, questions.as_str()), (split(expected), ""), "{line}");
    }
}
