//! The bytes of every position's picture, held by checksums that are kept: a debug build, a release build
//! (`cargo test --release --test all bytes`) and every machine must come to the same.
//! `BLESS=1` keeps new ones: look at the pictures first.

use super::shared::path;
use handspan::commands::{self, Command, Draw, Format, Labels, Palette, Request, Source, Style, View};
use handspan::exam::Position;
use handspan::report::Look;
use handspan::write::TextAs;

const KEPT: &str = "tests/kept/positions.txt";

/// FNV-1a, 64 bits.
fn checksum(bytes: &[u8]) -> u64 {
    bytes
        .iter()
        .fold(0xCBF2_9CE4_8422_2325, |sum, byte| (sum ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01B3))
}

/// The picture without a font in it.
fn svg(position: Position) -> Vec<u8> {
    let exam = format!("weeks = \"38+0\"\n[baby]\nposition = \"{}\"\n", position.words());
    let draw = Draw {
        exam: Source::new("exam", exam),
        format: Format::Svg,
        style: Style::Soft,
        palette: Palette::Neutral,
        mother: handspan::commands::MotherAs::Outline,
        hands: None,
        view: View::Facing,
        labels: Labels::None,
        lang: "en".to_owned(),
        draft: handspan::commands::Draft::Refused,
        width: None,
        text_as: TextAs::Outlines,
    };
    let outcome = commands::run(&Request { command: Command::Draw(draw), look: Look::Plain });
    let [page] = &outcome.pages[..] else { panic!("{}: {}", position.words(), outcome.notes) };
    page.clone()
}

#[test]
fn every_position_gives_the_bytes_that_were_kept() {
    let mut found = String::new();
    for position in Position::all() {
        found.push_str(&format!("{:<6}{:016x}\n", position.code(), checksum(&svg(position))));
    }
    if std::env::var_os("BLESS").is_some() {
        assert!(std::env::var_os("CI").is_none(), "nothing is kept by a machine");
        std::fs::write(path(KEPT), &found).expect("the checksums are written");
    }
    let kept = std::fs::read_to_string(path(KEPT)).unwrap_or_default();
    let changed: Vec<&str> =
        found.lines().filter(|line| !kept.lines().any(|kept| kept == *line)).map(|line| &line[..6]).collect();
    assert!(changed.is_empty(), "{KEPT}: other bytes for {}; look, then BLESS=1", changed.join(" "));
    assert_eq!(found.lines().count(), kept.lines().count(), "{KEPT} has other positions");
}

/// The checksum is the published one: FNV-1a of "foobar" (http://www.isthe.com/chongo/tech/comp/fnv/, test vectors).
#[test]
fn the_checksum_is_fnv_1a() {
    assert_eq!(checksum(b""), 0xCBF2_9CE4_8422_2325);
    assert_eq!(checksum(b"foobar"), 0x8594_4171_F739_67E8);
}
