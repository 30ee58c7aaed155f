//! Cases for learning systems. In: cases with their pictures. Out: the files of a content package after QTI 2.1, the open standard of
//! 1EdTech: a manifest, a test, and an item for each case.
//!
//! Of each case two questions are asked: how the baby lies, to choose from, and that of its lesson, to write. The first is marked; the
//! answer to the second is shown with the key.

use super::answer::sure_id;
use super::ask::{foot, found, of_lesson, title};
use super::case::Case;
use crate::exam::{Denominator, Octant, Position};
use crate::reckon::Reckoning;
use crate::words::{Words, WordsError};
use std::collections::BTreeMap;
use svg::Node;
use svg::node::Text;
use svg::node::element::Element;

/// A case with what is shown of it.
pub struct Shown<'a> {
    /// The case.
    pub case: &'a Case,
    /// What is reckoned of its exam.
    pub reckoning: &'a Reckoning,
    /// Her abdomen, empty, as a PNG.
    pub blank: Vec<u8>,
    /// The picture of the key, as a PNG.
    pub key: Vec<u8>,
    /// The picture of the key in words.
    pub description: String,
}

const ITEMS: &str = "http://www.imsglobal.org/xsd/imsqti_v2p1";
const ITEMS_AT: &str =
    "http://www.imsglobal.org/xsd/imsqti_v2p1 http://www.imsglobal.org/xsd/qti/qtiv2p1/imsqti_v2p1.xsd";
const PACKAGE: &str = "http://www.imsglobal.org/xsd/imscp_v1p1";
const PACKAGE_AT: &str = "http://www.imsglobal.org/xsd/imscp_v1p1 http://www.imsglobal.org/xsd/qti/qtiv2p1/qtiv2p1_imscpv1p2_v1p0.xsd";

/// The files of the package: name and bytes, in a fixed order.
pub fn package(cases: &[Shown<'_>], words: &Words) -> Result<Vec<(String, Vec<u8>)>, WordsError> {
    let mut files: BTreeMap<String, Vec<u8>> = BTreeMap::new();
    let mut names = vec![];
    for shown in cases {
        let name = format!("case-{}", shown.case.name());
        files.insert(format!("{name}.xml"), document(item(shown, &name, words)?));
        files.insert(format!("images/{name}.png"), shown.blank.clone());
        files.insert(format!("images/{name}-key.png"), shown.key.clone());
        names.push(name);
    }
    files.insert("test.xml".to_owned(), document(test(&names, words)?));
    let manifest = document(manifest(&names, cases));
    let mut all = vec![("imsmanifest.xml".to_owned(), manifest)];
    all.extend(files);
    Ok(all)
}

fn document(root: Element) -> Vec<u8> {
    format!("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n{root}\n").into_bytes()
}

/// An element with its attributes and what stands in it.
fn element(name: &str, attributes: &[(&str, &str)], inside: Vec<Element>) -> Element {
    let mut element = Element::new(name);
    for (name, value) in attributes {
        element.assign(*name, *value);
    }
    for child in inside {
        element.append(child);
    }
    element
}

fn says(name: &str, attributes: &[(&str, &str)], text: &str) -> Element {
    let mut element = element(name, attributes, vec![]);
    element.append(Text::new(text));
    element
}

/// The choice that is right when no position is: the identifier, and its message.
const NOT_ONE: [(&str, &str); 3] = [
    ("several", "case-choice-several"),
    ("none-fits", "case-choice-none"),
    ("cannot-tell", "case-choice-cannot-tell"),
];

/// The identifier of the right choice.
fn right(case: &Case, reckoning: &Reckoning) -> String {
    match sure_id(reckoning) {
        "case-answer-sure-one" => identifier(case.position()),
        "case-answer-sure-several" => "several".to_owned(),
        "case-answer-sure-none" => "none-fits".to_owned(),
        _ => "cannot-tell".to_owned(),
    }
}

fn identifier(position: Position) -> String {
    format!("position-{}", position.code())
}

/// Positions to choose from: the true one, its mirror image, and what it is mistaken for.
fn positions(truth: Position) -> Vec<Position> {
    let mut all = match truth {
        Position::Lengthwise { denominator, octant } => {
            let other =
                if denominator == Denominator::Sacrum { Denominator::Occiput } else { Denominator::Sacrum };
            let mirror = Octant::new(8 - octant.get());
            // To the side when it lies in front or behind, else in front.
            let turned =
                Octant::new(if octant.get() % 4 == 2 { octant.get() - 1 } else { octant.get() / 4 * 4 + 2 });
            [
                (denominator, octant),
                (denominator, mirror),
                (other, octant),
                (other, mirror),
                (denominator, turned),
            ]
            .into_iter()
            .map(|(denominator, octant)| Position::Lengthwise { denominator, octant })
            .collect()
        }
        Position::Crosswise { .. } => {
            let across = Position::all().filter(|position| matches!(position, Position::Crosswise { .. }));
            across.collect::<Vec<_>>()
        }
    };
    let order: Vec<Position> = Position::all().collect();
    all.sort_by_key(|position| order.iter().position(|known| known == position));
    all.dedup();
    all
}

fn item(shown: &Shown<'_>, name: &str, words: &Words) -> Result<Element, WordsError> {
    let case = shown.case;
    let title = title("case-title", case, words)?;
    let right = right(case, shown.reckoning);
    let mut choices = vec![says("prompt", &[], &words.say("case-ask-lie", &[])?)];
    for position in positions(case.position()) {
        choices.push(says("simpleChoice", &[("identifier", &identifier(position))], &position.words()));
    }
    for (identifier, message) in NOT_ONE {
        choices.push(says("simpleChoice", &[("identifier", identifier)], &words.say(message, &[])?));
    }
    let mut body = vec![says("p", &[], &words.say("case-about", &[])?)];
    let (mut points, mut told) = (vec![], found(case, &case.shown, words)?);
    let heading = told.remove(0);
    body.push(says("h2", &[], &heading.text));
    for block in told {
        match block.kind {
            crate::sheet::Kind::Item => points.push(says("li", &[], &block.text)),
            _ => body.push(says("p", &[], &block.text)),
        }
    }
    if !points.is_empty() {
        body.push(element("ul", &[], points));
    }
    let alt = words.say("case-blank", &[])?;
    let image = |file: &str, alt: &str| {
        element(
            "p",
            &[],
            vec![element("img", &[("alt", alt), ("src", &format!("images/{file}.png"))], vec![])],
        )
    };
    body.push(image(name, &alt));
    body.push(element(
        "choiceInteraction",
        &[("maxChoices", "1"), ("responseIdentifier", "RESPONSE"), ("shuffle", "false")],
        choices,
    ));
    body.push(element(
        "extendedTextInteraction",
        &[("expectedLines", "3"), ("responseIdentifier", "WRITTEN")],
        vec![says("prompt", &[], &of_lesson(case, "ask", words)?)],
    ));
    body.push(says("p", &[], &foot(words)?));
    let heading = |id: &str| words.say(id, &[]).map(|text| says("h2", &[], &text));
    let key = vec![
        heading("case-answers")?,
        says("p", &[], &of_lesson(case, "answer", words)?),
        says("p", &[], &shown.description),
        image(&format!("{name}-key"), &shown.description),
        heading("case-lesson")?,
        says("p", &[], &of_lesson(case, "lesson", words)?),
    ];
    let declared = |name: &str, identifier: &str, kind: &str, inside: Vec<Element>| {
        let attributes = [("baseType", kind), ("cardinality", "single"), ("identifier", identifier)];
        element(name, &attributes, inside)
    };
    let value = |text: &str| vec![says("value", &[], text)];
    let correct = element("correctResponse", &[], value(&right));
    let nothing = element("defaultValue", &[], value("0"));
    Ok(element(
        "assessmentItem",
        &[
            ("adaptive", "false"),
            ("identifier", name),
            ("timeDependent", "false"),
            ("title", &title),
            ("xml:lang", words.lang()),
            ("xmlns", ITEMS),
            ("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance"),
            ("xsi:schemaLocation", ITEMS_AT),
        ],
        vec![
            declared("responseDeclaration", "RESPONSE", "identifier", vec![correct]),
            declared("responseDeclaration", "WRITTEN", "string", vec![]),
            declared("outcomeDeclaration", "SCORE", "float", vec![nothing]),
            declared("outcomeDeclaration", "KEY", "identifier", vec![]),
            element("itemBody", &[], body),
            processing(),
            element(
                "modalFeedback",
                &[("identifier", "key"), ("outcomeIdentifier", "KEY"), ("showHide", "show")],
                key,
            ),
        ],
    ))
}

/// One point for the right choice; the key is shown after any answer.
fn processing() -> Element {
    let set = |identifier: &str, kind: &str, value: &str| {
        let value = says("baseValue", &[("baseType", kind)], value);
        element("setOutcomeValue", &[("identifier", identifier)], vec![value])
    };
    let chosen = element("variable", &[("identifier", "RESPONSE")], vec![]);
    let correct = element("correct", &[("identifier", "RESPONSE")], vec![]);
    let matched = element("match", &[], vec![chosen, correct]);
    let when = element("responseIf", &[], vec![matched, set("SCORE", "float", "1")]);
    element(
        "responseProcessing",
        &[],
        vec![element("responseCondition", &[], vec![when]), set("KEY", "identifier", "key")],
    )
}

fn test(names: &[String], words: &Words) -> Result<Element, WordsError> {
    let items = names
        .iter()
        .map(|name| {
            element("assessmentItemRef", &[("href", &format!("{name}.xml")), ("identifier", name)], vec![])
        })
        .collect();
    let title = words.say("case-package", &[])?;
    let section = element(
        "assessmentSection",
        &[("identifier", "cases"), ("title", &title), ("visible", "true")],
        items,
    );
    let part = element(
        "testPart",
        &[("identifier", "part"), ("navigationMode", "nonlinear"), ("submissionMode", "individual")],
        vec![section],
    );
    Ok(element(
        "assessmentTest",
        &[
            ("identifier", "test"),
            ("title", &title),
            ("xmlns", ITEMS),
            ("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance"),
            ("xsi:schemaLocation", ITEMS_AT),
        ],
        vec![part],
    ))
}

fn manifest(names: &[String], cases: &[Shown<'_>]) -> Element {
    let set = cases.first().map(|shown| format!("-{}-{}", shown.case.level.name(), shown.case.seed));
    let identifier = format!("practice-cases{}", set.unwrap_or_default());

    let file = |href: &str| element("file", &[("href", href)], vec![]);
    let mut resources: Vec<Element> = names
        .iter()
        .map(|name| {
            let own = format!("{name}.xml");
            element(
                "resource",
                &[("href", &own), ("identifier", name), ("type", "imsqti_item_xmlv2p1")],
                vec![
                    file(&own),
                    file(&format!("images/{name}.png")),
                    file(&format!("images/{name}-key.png")),
                ],
            )
        })
        .collect();
    let mut of_test = vec![file("test.xml")];
    of_test.extend(names.iter().map(|name| element("dependency", &[("identifierref", name)], vec![])));
    resources.push(element(
        "resource",
        &[("href", "test.xml"), ("identifier", "test"), ("type", "imsqti_test_xmlv2p1")],
        of_test,
    ));
    let metadata = element(
        "metadata",
        &[],
        vec![says("schema", &[], "QTIv2.1 Package"), says("schemaversion", &[], "1.0.0")],
    );
    element(
        "manifest",
        &[
            ("identifier", &identifier),
            ("xmlns", PACKAGE),
            ("xmlns:xsi", "http://www.w3.org/2001/XMLSchema-instance"),
            ("xsi:schemaLocation", PACKAGE_AT),
        ],
        vec![metadata, element("organizations", &[], vec![]), element("resources", &[], resources)],
    )
}
