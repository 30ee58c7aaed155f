//! The page for a telephone: one small file that asks for nothing, with the words of the paper page, links that dial, and colours
//! that can be read in light and in dark

use crate::layouts::{examples, sides};
use crate::pages::{texts, words};
use crate::shared::{family_page, path};
use base64::Engine;
use handspan::clinic;
use handspan::commands::{self, Chosen, Command, Format, Handout, Outcome, Request, Source, exit};
use handspan::figure::scene::Role;
use handspan::fonts::Fonts;
use handspan::report::Look;
use handspan::sheet::family::{self, Asked};
use handspan::sheet::{FAMILY_PAGE, PICTURE_FIRST};
use handspan::words::{Part, Words};
use handspan::write::dial;
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;
use usvg::roxmltree::{Document, Node, ParsingOptions};

/// Largest page, of one baby or two, in one language or in a draft with the English after it.
const MOST_BYTES: usize = 200_000;

fn clinic_file() -> Source {
    Source::new("clinic.toml", std::fs::read(path("examples/clinic.toml")).unwrap())
}

fn asked(exam: Source, lang: &str) -> Handout {
    Handout { clinic: Some(clinic_file()), ..family_page(exam, lang) }
}

fn example(name: &str) -> Source {
    let file = format!("{name}.toml");
    Source::new(file.clone(), std::fs::read(path("examples").join(file)).unwrap())
}

fn made(handout: Handout) -> Outcome {
    commands::run(&Request { command: Command::Handout(handout), look: Look::Plain })
}

fn page(handout: Handout) -> String {
    let outcome = made(handout);
    let [page] = &outcome.pages[..] else { panic!("one file: {}", outcome.notes) };
    String::from_utf8(page.clone()).unwrap()
}

/// The page as a tree: it is well-formed XML.
fn tree(page: &str) -> Document<'_> {
    let options = ParsingOptions { allow_dtd: true, ..ParsingOptions::default() };
    Document::parse_with_options(page, options).unwrap_or_else(|fault| panic!("{fault}"))
}

fn elements<'a>(tree: &'a Document<'a>, name: &str) -> Vec<Node<'a, 'a>> {
    tree.descendants().filter(|node| node.has_tag_name(name)).collect()
}

/// The words in and under a node, with single spaces.
fn plain(node: Node<'_, '_>) -> String {
    let texts = node.descendants().filter(Node::is_text).filter_map(|text| text.text());
    one_spaced(&texts.collect::<String>())
}

fn one_spaced(text: &str) -> String {
    text.replace(['\u{a0}', '\u{202f}'], " ").split_whitespace().collect::<Vec<_>>().join(" ")
}

fn style(page: &str) -> &str {
    page.split_once("<style>").unwrap().1.split_once("</style>").unwrap().0
}

#[test]
fn it_is_one_small_file_that_runs_nothing_and_asks_for_nothing() {
    for (name, lang) in
        [("head-down-left", "en"), ("twins", "en"), ("crosswise", "es"), ("twins", "es"), ("twins", "pt")]
    {
        let page = page(asked(example(name), lang));
        let languages = page.matches("<article").count();
        assert!(page.len() < MOST_BYTES, "{name}, {lang}: {} bytes", page.len());
        assert_eq!(languages, if lang == "en" { 1 } else { 2 });
        for banned in [
            "<script",
            "javascript:",
            "http:",
            "https:",
            "@import",
            "<link",
            "<iframe",
            "<img",
            "<form",
            "src=",
        ] {
            assert!(!page.contains(banned), "{name}: {banned}");
        }
        // What is clipped names its window in the same file; nothing else is named.
        for url in page.split("url(").skip(1) {
            assert!(url.starts_with('#'), "{name}: url({}", &url[..20]);
        }
        let tree = tree(&page);
        for node in tree.descendants() {
            for attribute in node.attributes() {
                let name = attribute.name();
                assert!(!name.starts_with("on") && name != "style", "{name}");
                if name == "href" {
                    let to = attribute.value();
                    assert!(to.starts_with("tel:") || to.starts_with('#'), "{to}");
                }
            }
        }
        // The policy lets this style in, and nothing else.
        let hash = base64::engine::general_purpose::STANDARD.encode(Sha256::digest(style(&page).as_bytes()));
        let policy = elements(&tree, "meta")
            .into_iter()
            .find(|meta| meta.attribute("http-equiv") == Some("Content-Security-Policy"))
            .and_then(|meta| meta.attribute("content"))
            .unwrap();
        let wanted =
            format!("default-src 'none'; style-src 'sha256-{hash}'; base-uri 'none'; form-action 'none'");
        assert_eq!(policy, wanted);
        // Names that stand once.
        let ids: Vec<&str> = tree.descendants().filter_map(|node| node.attribute("id")).collect();
        assert_eq!(ids.iter().collect::<BTreeSet<_>>().len(), ids.len(), "{name}");
        for node in tree.descendants() {
            let to = node.attribute("href").and_then(|to| to.strip_prefix('#')).into_iter();
            let by = node.attribute("aria-labelledby").unwrap_or_default().split_whitespace();
            for id in to.chain(by) {
                assert!(ids.contains(&id), "{name}: {id}");
            }
        }
        assert_eq!(page, self::page(asked(example(name), lang)), "the same exam gives the same bytes");
    }
}

/// In a second language the picture is not written a second time: the babies are drawn once and shown in both.
#[test]
fn a_picture_in_two_languages_is_written_once_and_shown_in_both() {
    let page = page(asked(example("twins"), "es"));
    let tree = tree(&page);
    let [first, second] = elements(&tree, "article")[..] else { panic!("two languages") };
    let named = |name: &str| {
        let node = tree.descendants().find(|node| node.attribute("id") == Some(name));
        node.unwrap_or_else(|| panic!("{name}"))
    };
    let drawn = named("p1-baby");
    assert!(drawn.descendants().filter(|node| node.has_tag_name("path")).count() > 20);
    let shown = named("p2-baby");
    let again = shown.children().find(|node| node.has_tag_name("use")).expect("shown again");
    assert_eq!(again.attribute("href"), Some("#p1-baby"));
    assert!(!shown.descendants().any(|node| node.has_tag_name("path")));
    // Words are each language's own.
    for (article, label) in [(first, "Izquierda de usted"), (second, "Your left")] {
        let there =
            article.descendants().filter(|node| node.has_tag_name("text")).any(|text| plain(text) == label);
        assert!(there, "{label}");
    }
}

/// Every line of words that stands on the sheets of the paper page stands on this one too, and every sentence of the picture's
/// labels.
#[test]
fn every_word_of_the_paper_page_is_on_it() {
    let fonts = Fonts::load().unwrap();
    let clinic =
        clinic::read("clinic.toml", &std::fs::read(path("examples/clinic.toml")).unwrap()).clinic.unwrap();
    let words = words();
    for (name, exam, reckoning) in examples() {
        if !["head-down-left", "probably-breech", "large-build"].contains(&name.as_str()) {
            continue;
        }
        let page = page(asked(example(&name), "en"));
        let tree = tree(&page);
        let said = plain(tree.root());
        let content = family::content(&exam, &reckoning, &clinic, Asked::default(), &words).unwrap();
        let sheets =
            sides(&FAMILY_PAGE.read().unwrap(), (&exam, &reckoning), &content, &words, &fonts).unwrap();
        let over = words.say("family-over", &[]).unwrap();
        let hold = words.say("family-hold", &[]).unwrap();
        let mut lines = 0;
        for text in sheets.iter().flat_map(texts) {
            let line = one_spaced(&text.text);
            if over.contains(&line) || hold.contains(&line) {
                // There is nothing to turn over, and no page to hold on the bump: it leads further down.
                continue;
            }
            assert!(said.contains(&line), "{name}: {line}");
            lines += usize::from(text.role == Role::Body);
        }
        assert!(lines > 40, "{name}: {lines}");
        let on = words.say("family-over-phone", &[]).unwrap();
        let links = elements(&tree, "a");
        let onward = links.iter().find(|link| plain(**link) == on).expect("it leads on");
        assert!(onward.attribute("href").unwrap().starts_with('#'));
    }
}

#[test]
fn it_is_read_in_the_order_of_the_paper_page_and_says_its_language() {
    let page = page(asked(example("probably-breech"), "es"));
    let tree = tree(&page);
    assert_eq!(tree.root_element().attribute("lang"), Some("es"));
    let articles = elements(&tree, "article");
    let langs: Vec<_> = articles.iter().map(|article| article.attribute("lang").unwrap()).collect();
    assert_eq!(langs, ["es", "en"]);
    for (article, lang) in articles.iter().zip(["es", "en"]) {
        let words = Words::load_for(lang, &[Part::Family]).unwrap();
        let said = plain(*article);
        let at = |id: &str| {
            let text = one_spaced(
                &words
                    .say(
                        id,
                        &[
                            // The emergency number in its own list, the clinic's in the others.
                            ("number", if id.contains("-go-") { "999" } else { "01632 960123" }),
                            ("where", "Larkfield Hospital, door B"),
                        ],
                    )
                    .unwrap(),
            );
            said.find(&text).unwrap_or_else(|| panic!("{lang}: {id}: {text}"))
        };
        let order = [
            "family-title-one",
            "family-moves-title-one",
            "family-moves-call",
            "family-over-phone",
            "family-moves-keep-one",
            "family-go-title-number",
            "family-go-breath",
            "family-come-title-where-number",
            "family-come-pain",
            "family-call-title-number",
            "family-call-itching",
            "family-worried",
        ];
        for pair in order.windows(2) {
            assert!(at(pair[0]) < at(pair[1]), "{lang}: {} before {}", pair[0], pair[1]);
        }
        // One title, and headings of one level under it.
        let heads: Vec<_> =
            article.descendants().filter(|n| ["h1", "h2", "h3"].contains(&n.tag_name().name())).collect();
        assert_eq!(heads[0].tag_name().name(), "h1");
        assert!(heads.len() > 5 && heads[1..].iter().all(|head| head.tag_name().name() == "h2"), "{lang}");
        // The picture has a title and says in words how the baby lies.
        let picture = article.descendants().find(|node| node.has_tag_name("svg")).unwrap();
        assert_eq!(picture.attribute("role"), Some("img"));
        let names = picture.attribute("aria-labelledby").unwrap();
        let named: Vec<String> = names
            .split(' ')
            .map(|id| plain(article.descendants().find(|node| node.attribute("id") == Some(id)).unwrap()))
            .collect();
        assert!(named[1].len() > 60 && said.contains(&named[1]), "{lang}: {named:?}");
        // A point of a list stands in a list.
        let items: Vec<_> = article.descendants().filter(|node| node.has_tag_name("li")).collect();
        assert!(items.len() > 15 && items.iter().all(|item| item.parent().unwrap().has_tag_name("ul")));
    }
    // The draft says that it is one, on each side of its own language alone.
    let marks = |article: &Node<'_, '_>| {
        article.descendants().filter(|node| node.attribute("class") == Some("draft")).count()
    };
    assert!(marks(&articles[0]) >= 2);
    assert_eq!(marks(&articles[1]), 0);
}

#[test]
fn her_sides_stand_in_words_and_picture_as_they_were_found_from_both_ends() {
    for (side, other) in [("left", "right"), ("right", "left")] {
        let exam = format!(
            "weeks = \"37+0\"\n[baby]\nhead = \"above pubic bone\"\nback = \"{side}\"\nheart = \"{side}, below navel\"\n"
        );
        let page = page(asked(Source::new("exam.toml", exam), "en"));
        let tree = tree(&page);
        let said = plain(tree.root());
        assert!(said.contains(&format!("The back is to your {side}.")), "{said}");
        assert!(!said.contains(&format!("The back is to your {other}")));
        // Seen from the front, her left is at the viewer's right.
        let x = |label: &str| -> f32 {
            let text = elements(&tree, "text").into_iter().find(|text| plain(*text) == label);
            text.unwrap_or_else(|| panic!("{label}")).attribute("x").unwrap().parse().unwrap()
        };
        assert!(x("Your left") > x("Your right"));
    }
}

#[test]
fn numbers_dial_what_is_printed() {
    for (printed, dialled) in [
        ("01632 960123", Some("01632960123")),
        ("01632\u{a0}960123", Some("01632960123")),
        ("(020) 7946-0018", Some("02079460018")),
        ("+44 (0)20 7946 0018", Some("+442079460018")),
        ("999", Some("999")),
        // A stroke may stand before another number.
        ("01632 960123 / 960124", None),
        ("01632 960123 +44", None),
    ] {
        assert_eq!(dial(printed).as_deref(), dialled, "{printed}");
    }
    let page = page(asked(example("head-down-left"), "en"));
    let tree = tree(&page);
    let links: Vec<_> = elements(&tree, "a")
        .into_iter()
        .filter(|a| a.attribute("href").unwrap().starts_with("tel:"))
        .collect();
    let mut dialled = BTreeSet::new();
    for link in &links {
        let digits = link.attribute("href").unwrap().strip_prefix("tel:").unwrap();
        assert!(digits.bytes().all(|byte| byte.is_ascii_digit()), "{digits}");
        let shown: String = plain(*link).chars().filter(char::is_ascii_digit).collect();
        assert_eq!(digits, shown, "it dials what it shows");
        dialled.insert(digits);
    }
    assert_eq!(dialled.into_iter().collect::<Vec<_>>(), ["01632960123", "01632960124", "999"]);
    // The first thing on the page is the number that is answered at any hour, and no number is without a link.
    assert_eq!(plain(links[0]), "01632 960123");
    let loose = elements(&tree, "article")[0].descendants().filter(|node| {
        let text = node.text().unwrap_or_default();
        node.is_text() && text.contains("960") && !node.ancestors().any(|above| above.has_tag_name("a"))
    });
    assert_eq!(loose.count(), 0);
}

/// The colours of a scheme, by their names.
fn colours(rules: &str) -> Vec<(&str, [f64; 3])> {
    let root = rules.split_once(":root{").unwrap().1.split_once('}').unwrap().0;
    let parts = root.split(';').filter_map(|part| part.strip_prefix("--")?.split_once(":#"));
    parts
        .map(|(name, hex)| {
            let wide: String =
                if hex.len() == 3 { hex.chars().flat_map(|c| [c, c]).collect() } else { hex.to_owned() };
            (name, [0, 2, 4].map(|at| f64::from(u8::from_str_radix(&wide[at..at + 2], 16).unwrap()) / 255.0))
        })
        .collect()
}

/// How far two colours stand apart, 1 to 21 (source: WCAG 2.2, relative luminance and contrast ratio).
fn contrast(one: [f64; 3], other: [f64; 3]) -> f64 {
    let light = |colour: [f64; 3]| {
        let part = |c: f64| if c <= 0.04045 { c / 12.92 } else { libm::pow((c + 0.055) / 1.055, 2.4) };
        0.2126 * part(colour[0]) + 0.7152 * part(colour[1]) + 0.0722 * part(colour[2])
    };
    let (a, b) = (light(one), light(other));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

#[test]
fn its_colours_can_be_read_in_light_in_dark_and_on_paper() {
    assert!((contrast([1.0; 3], [0.0; 3]) - 21.0).abs() < 1e-9);
    let page = page(asked(example("large-build"), "en"));
    let style = style(&page);
    let (light, rest) = style.split_once("@media(prefers-color-scheme:dark)").unwrap();
    let print = rest.split_once("@media print").unwrap().1;
    for (scheme, rules) in [("light", light), ("dark", rest), ("print", print)] {
        let colours = colours(rules);
        let of = |name: &str| colours.iter().find(|(known, _)| *known == name).map(|(_, colour)| *colour);
        let paper = of("paper").unwrap();
        for name in ["ink", "soft", "link", "mark"] {
            let apart = contrast(of(name).unwrap(), paper);
            assert!(apart >= 4.5, "{scheme}: {name} on paper {apart:.2}");
        }
        for name in ["ink", "link"] {
            let Some(bar) = of("bar") else { continue };
            let apart = contrast(of(name).unwrap(), bar);
            assert!(apart >= 4.5, "{scheme}: {name} on the bar {apart:.2}");
        }
        // Lines that part one list from the next (WCAG 1.4.11).
        assert!(contrast(of("edge").unwrap(), paper) >= 3.0, "{scheme}");
    }
    // Every colour has a name.
    let named = style.split('}').filter(|rule| !rule.contains(":root{")).collect::<String>();
    assert_eq!(named.split(":#").count() - 1, 1, "only the paper under the picture: {named}");
}

#[test]
fn it_is_refused_where_the_paper_page_is_and_where_a_number_is_missing() {
    let refused = made(asked(example("heart-not-heard"), "en"));
    assert!(refused.pages.is_empty() && refused.code == exit::ACT_NOW, "{}", refused.notes);
    assert!(refused.notes.contains("heart-not-heard"), "{}", refused.notes);
    let odd = made(asked(example("does-not-agree"), "en"));
    assert!(odd.pages.is_empty() && odd.code != exit::DONE, "{}", odd.notes);
    // On a screen there is no line to write a number on.
    let none = made(Handout { clinic: None, ..asked(example("head-down-left"), "en") });
    assert!(none.pages.is_empty() && none.code == exit::FAILED);
    assert!(none.notes.contains("labour-ward") && none.notes.contains("--emergency"), "{}", none.notes);
    let by_day = Source::new("ours.toml", "[telephone]\nday = \"01632 960123\"\nemergency = \"999\"\n");
    let by_day = made(Handout { clinic: Some(by_day), ..asked(example("head-down-left"), "en") });
    assert!(by_day.pages.is_empty() && by_day.notes.contains("answered at night"), "{}", by_day.notes);
    let own = Source::new("ours.toml", "[telephone]\nlabour-ward = \"01632 960123\"\n");
    let emergency = Some("112".to_owned());
    let given = made(Handout { clinic: Some(own), emergency, ..asked(example("large-build"), "en") });
    let text = String::from_utf8(given.pages[0].clone()).unwrap();
    assert!(text.contains("<a href=\"tel:112\">112</a>") && !text.contains(">999<"));
    // A layout that leaves out when to call makes no page.
    for name in ["picture", "colouring"] {
        let bare = made(Handout {
            layout: Some(Chosen::Named(name.to_owned())),
            ..asked(example("large-build"), "en")
        });
        assert!(bare.pages.is_empty() && bare.code == exit::FAILED, "{name}: {}", bare.notes);
        assert!(bare.notes.contains("telephone"), "{name}: {}", bare.notes);
    }
}

#[test]
fn signs_stand_beside_its_words_where_the_layout_has_them() {
    let layout = Some(Chosen::Named(PICTURE_FIRST.name.to_owned()));
    let page = page(Handout { layout, ..asked(example("large-build"), "en") });
    assert!(page.len() < MOST_BYTES, "{} bytes", page.len());
    let tree = tree(&page);
    let signs: Vec<_> =
        elements(&tree, "svg").into_iter().filter(|svg| svg.attribute("class") == Some("sign")).collect();
    assert!(signs.len() > 15, "{}", signs.len());
    for sign in signs {
        assert!(!sign.attribute("aria-label").unwrap().is_empty());
        // In the colour of the words beside it, in the dark too.
        let colours = sign.descendants().flat_map(|node| [node.attribute("fill"), node.attribute("stroke")]);
        assert!(colours.flatten().all(|colour| ["none", "currentColor", "#ffffff"].contains(&colour)));
    }
}

/// A baby that has no room under the top of the womb is drawn smaller, or as rounds: the page says so, and that its picture does not
/// measure the baby, on paper and on a telephone, in every language.
#[test]
fn what_is_drawn_smaller_or_as_rounds_is_said_on_paper_and_on_a_telephone() {
    let one = |tape: &str| {
        format!(
            "weeks = \"38+0\"\n[mother]\nfundal-height = \"{tape}\"\n[baby]\nhead = \"above pubic bone\"\nback = \"left\"\n"
        )
    };
    let two = "weeks = \"34+0\"\n[mother]\nfundal-height = \"24 cm\"\n\
               [[baby]]\nhead = \"above pubic bone\"\nback = \"right\"\n[[baby]]\nbreech = \"above pubic bone\"\nback = \"left\"\n";
    let kinds = [
        "family-drawn-smaller",
        "family-drawn-rounds",
        "family-drawn-smaller-number",
        "family-drawn-rounds-number",
    ];
    let (smaller, rounds) = ([("family-drawn-smaller", "1")], [("family-drawn-rounds", "1")]);
    let both = [("family-drawn-smaller-number", "1"), ("family-drawn-rounds-number", "2")];
    let mut seen = BTreeSet::new();
    for (exam, wanted, langs) in [
        (one("37 cm"), &[][..], &["en"][..]),
        (one("30 cm"), &smaller, &["es", "fr"]),
        (one("22 cm"), &rounds, &["en", "es"]),
        (two.to_owned(), &both, &["en", "fr"]),
    ] {
        for lang in langs {
            let words = Words::load_for(lang, &[Part::Family]).unwrap();
            let exam = || Source::new("exam.toml", exam.clone());
            let of = |format| Handout { format, ..asked(exam(), words.lang()) };
            let phone = plain(tree(&page(of(Format::Html))).root());
            let sides = made(of(Format::Svg)).pages;
            assert!(!sides.is_empty());
            let sides: Vec<String> = sides.into_iter().map(|side| String::from_utf8(side).unwrap()).collect();
            let lines = sides.iter().flat_map(|side| {
                let tree = tree(side);
                elements(&tree, "text").into_iter().map(plain).collect::<Vec<_>>()
            });
            let paper = one_spaced(&lines.collect::<Vec<_>>().join(" "));
            for kind in kinds {
                for number in ["1", "2"] {
                    let sentence = one_spaced(&words.say(kind, &[("number", number)]).unwrap());
                    let of_one = !kind.ends_with("-number") && wanted.contains(&(kind, "1"));
                    let is_said = of_one || wanted.contains(&(kind, number));
                    for (where_to, said) in [("telephone", &phone), ("paper", &paper)] {
                        let lang = words.lang();
                        assert_eq!(
                            said.contains(&sentence),
                            is_said,
                            "{where_to}, {lang}: {sentence}\n{said}"
                        );
                    }
                }
            }
            // The back was felt, whatever has room on the picture.
            let unknown = one_spaced(&words.say("label-back-not-felt", &[]).unwrap());
            assert!(!phone.contains(&unknown) && !paper.contains(&unknown), "{lang}: {unknown}");
            // Of rounds no artist made up a face.
            let artist = one_spaced(&words.say("family-artist", &[]).unwrap());
            assert_eq!(phone.contains(&artist), wanted != rounds, "{lang}: {wanted:?}");
        }
        seen.extend(wanted.iter().map(|(kind, _)| *kind));
    }
    assert_eq!(seen.len(), kinds.len());
}
