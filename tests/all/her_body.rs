//! The mother with arms and clothes: what she may not move, hide or cross, and that her two sides answer each other.

use super::shared::{family_page, path};
use handspan::body::cast::Cast;
use handspan::body::her_arms::{Reach, casts};
use handspan::body::mother::MotherShape;
use handspan::body::pose::{self, Pose};
use handspan::commands::{
    self, Chosen, Command, Draft, Draw, Format, Hair, Handout, Labels, MotherAs, Palette, Request,
};
use handspan::commands::{Source, Style, View};
use handspan::exam::{self, Scar};
use handspan::figure::{self, her_clothes};
use handspan::report::Look;
use handspan::units::{FigurePoint, MotherSide};
use handspan::write::TextAs;

const SCARRED: &str = "weeks = \"37+0\"\n[mother]\nfundal-height = \"35 cm\"\n\
    scars = [\"low transverse\"]\nskin = [\"striae\", \"linea nigra\"]\n\
    [baby]\nposition = \"LOA\"\nhead-above-brim = \"2/5\"\nheart = \"left, below navel\"\n";

fn drawn(text: &str, mother: MotherAs, style: Style, palette: Palette) -> String {
    let draw = Draw {
        exam: Source::new("exam.toml", text),
        format: Format::Svg,
        style,
        palette,
        mother,
        hands: None,
        view: View::Facing,
        labels: Labels::Few,
        lang: "en".to_owned(),
        draft: Draft::Refused,
        width: None,
        text_as: TextAs::Outlines,
    };
    let outcome = commands::run(&Request { command: Command::Draw(draw), look: Look::Plain });
    let [page] = &outcome.pages[..] else { panic!("{text}\n{}", outcome.notes) };
    String::from_utf8(page.clone()).expect("text")
}

/// The marks of a group, as they are written.
fn group<'a>(svg: &'a str, id: &str) -> Option<&'a str> {
    let from = svg.find(&format!("<g id=\"{id}\""))?;
    let mut depth = 0;
    for (at, _) in svg[from..].match_indices('<') {
        let tag = &svg[from + at..];
        if tag.starts_with("<g ") || tag.starts_with("<g>") {
            depth += 1;
        } else if tag.starts_with("</g>") {
            depth -= 1;
            if depth == 0 {
                return Some(&svg[from..from + at]);
            }
        }
    }
    None
}

fn posed(text: &str) -> Pose {
    let reading = exam::read("exam.toml", text.as_bytes());
    let exam = reading.exam.unwrap_or_else(|| panic!("{text}"));
    let conclusions: Vec<_> = (0..exam.babies.len()).map(|i| exam::conclude(&exam, i)).collect();
    pose::from_exam(&exam, &conclusions)
}

#[test]
fn her_body_moves_no_mark_no_womb_and_no_baby() {
    for style in [Style::Soft, Style::Line] {
        let (outline, body) = (
            drawn(SCARRED, MotherAs::Outline, style, Palette::Neutral),
            drawn(SCARRED, MotherAs::Body, style, Palette::Neutral),
        );
        for id in ["baby", "womb-wall", "scar-1", "navel", "heart-1", "linea-nigra", "brim", "fundus-line"] {
            let (one, other) = (group(&outline, id), group(&body, id));
            assert!(one.is_some(), "{style:?}: {id} is drawn");
            assert_eq!(one, other, "{style:?}: {id}");
        }
    }
}

#[test]
fn her_hands_lie_before_the_wall_of_the_womb_and_behind_the_baby_and_no_bone_is_drawn() {
    let svg = drawn(SCARRED, MotherAs::Body, Style::Soft, Palette::Neutral);
    let at = |id: &str| svg.find(&format!("<g id=\"{id}\"")).unwrap_or_else(|| panic!("{id} is drawn"));
    let order = ["mother-body", "mother-skirt", "womb", "womb-wall", "mother-arm-left", "mother-arm-right"];
    for pair in order.iter().chain(&["baby", "scar-1", "navel"]).collect::<Vec<_>>().windows(2) {
        assert!(at(pair[0]) < at(pair[1]), "{} before {}", pair[0], pair[1]);
    }
    assert!(!svg.contains("pelvis"), "no bone");
    for forbidden in ["Gradient", "filter", "opacity"] {
        assert!(!svg.contains(forbidden), "{forbidden}");
    }
}

#[test]
fn the_picture_stays_small() {
    let mut deepest = 0;
    for palette in [Palette::Neutral, Palette::Skin(Palette::DEEPEST)] {
        deepest = deepest.max(drawn(SCARRED, MotherAs::Body, Style::Soft, palette).len());
    }
    assert!(deepest <= 220 * 1024, "{deepest} bytes");
    let arm = std::fs::metadata(path("src/body/her_arms/arm.bin")).expect("the baked arm").len();
    assert!(arm <= 32 * 1024, "{arm} bytes");
}

#[test]
fn pages_that_go_home_show_her_body_and_pictures_for_clinicians_her_outline() {
    let page = Handout { format: Format::Svg, ..family_page(Source::new("exam.toml", SCARRED), "en") };
    let outcome = commands::run(&Request { command: Command::Handout(page), look: Look::Plain });
    let front = String::from_utf8(outcome.pages.first().expect("a page").clone()).expect("text");
    assert!(front.contains("mother-arm-left") && !front.contains("pelvis-front"));
    let exam = path("examples/head-down-left.toml");
    let exam = exam.to_str().expect("a name");
    let picture = super::shared::run(&["draw", exam, "-o", "-", "--as", "svg"]);
    let picture = String::from_utf8_lossy(&picture.stdout).into_owned();
    assert!(picture.contains("pelvis-front") && !picture.contains("mother-arm-left"));
    let page = super::shared::run(&["family-page", exam, "-o", "-", "--as", "svg", "--sides", "1"]);
    let page = String::from_utf8_lossy(&page.stdout).into_owned();
    assert!(page.contains("mother-arm-left") && !page.contains("pelvis-front"));
}

#[test]
fn a_mirrored_exam_moves_the_other_hand_just_as_far_and_both_arms_mirror_each_other() {
    let text = |position: &str| format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\n");
    let (mut moved, mut uneven) = (0, 0);
    for (left, right) in [("LOA", "ROA"), ("LOT", "ROT"), ("LSA", "RSA")] {
        let reach = |position: &str| {
            let pose = posed(&text(position));
            let cast = pose.cast();
            let taken = |p: FigurePoint| cast.as_ref().is_some_and(|c| c.covers(p.x, p.y));
            (pose.mother, Reach::of(&pose.mother, &taken))
        };
        let ((shape, a), (_, b)) = (reach(left), reach(right));
        for y in [0.0, 4.0, 12.0, 20.0, 33.0] {
            assert_eq!(a.at(MotherSide::Left, y), b.at(MotherSide::Right, y), "{left}, {right} at {y}");
            assert_eq!(a.at(MotherSide::Right, y), b.at(MotherSide::Left, y), "{left}, {right} at {y}");
        }
        moved += usize::from(a.at(MotherSide::Left, 3.0).abs() > 0.1);
        uneven += usize::from(a.at(MotherSide::Left, 3.0) != a.at(MotherSide::Right, 3.0));
        let ([a_left, a_right], [b_left, b_right]) = (casts(&shape, &a), casts(&shape, &b));
        assert!(is_mirrored(&a_left, &b_right) && is_mirrored(&a_right, &b_left), "{left}, {right}");
    }
    assert!(moved > 0 && uneven > 0, "hands give way in some of them: {moved}, {uneven}");
}

fn is_mirrored(a: &Cast, b: &Cast) -> bool {
    let same = (a.width, a.height) == (b.width, b.height) && a.depth.len() == b.depth.len();
    let row = |j: usize| (0..a.width).all(|i| a.depth[j * a.width + i] == b.depth[(j + 1) * a.width - 1 - i]);
    same && (0..a.height).all(row) && a.depth.iter().any(|z| *z > -1e5)
}

#[test]
fn her_fingers_keep_off_a_head_in_the_pelvis() {
    for position in ["LOA", "ROA", "LOT", "OA", "OP", "ROP"] {
        let pose = posed(&format!("weeks = \"38+0\"\n[baby]\nposition = \"{position}\"\n"));
        let baby = pose.cast().expect("a baby");
        let reach = Reach::of(&pose.mother, &|p| baby.covers(p.x, p.y));
        for arm in casts(&pose.mother, &reach) {
            let over = arm.hits().filter(|(x, y, _)| baby.covers(*x, *y)).count();
            assert_eq!(over, 0, "{position}: cells of a hand under the baby");
        }
    }
}

#[test]
fn no_cloth_hides_a_scar_or_the_navel() {
    let shapes = [12.0, 20.0, 28.0, 34.0, 38.0, 42.0].into_iter().flat_map(|weeks| {
        [(None, None), (Some(30.0), Some(85.0)), (Some(42.0), Some(130.0))]
            .map(|(tape, girth)| MotherShape::new(weeks, tape, None, girth))
    });
    for shape in shapes {
        let lowest = her_clothes::hem(&shape).iter().fold(f32::MAX, |low, p| low.min(p.y));
        let scars = [Scar::LowTransverse, Scar::Midline, Scar::RightLower, Scar::Keyhole];
        let marks = scars.iter().flat_map(|scar| shape.scar(*scar)).flatten().map(|p| (p.0.x, p.0.y));
        for (x, y) in marks.chain([(0.0, shape.navel_y as f32)]) {
            assert!(y > her_clothes::waist_y(x) + 0.4 && y < lowest - 0.4, "{x}, {y}: {shape:?}");
        }
    }
}

#[test]
fn her_head_is_shown_where_it_is_wanted_and_nowhere_else() {
    let whole = |hair| drawn(SCARRED, MotherAs::Whole(hair), Style::Soft, Palette::Skin(3));
    let (loose, scarf) = (whole(Hair::Loose), whole(Hair::Scarf));
    for (svg, worn, other) in
        [(&loose, "mother-hair", "mother-scarf"), (&scarf, "mother-scarf", "mother-hair")]
    {
        let at = |id: &str| svg.find(&format!("<g id=\"{id}\"")).unwrap_or_else(|| panic!("{id} is drawn"));
        // Her head lies in her neckline, behind womb, hands and baby; no bone, no gradient.
        let order = ["mother-top", "mother-head", worn, "womb", "mother-arm-left", "mother-sleeves", "baby"];
        assert!(order.windows(2).all(|pair| at(pair[0]) < at(pair[1])), "{worn}");
        assert!(!svg.contains(&format!("<g id=\"{other}\"")) && !svg.contains("pelvis"), "{worn}");
        assert!(["Gradient", "filter", "opacity"].iter().all(|forbidden| !svg.contains(forbidden)));
        assert!(svg.len() <= 300 * 1024, "{} bytes", svg.len());
    }
    // With more of her, nothing that was found moves.
    let body = drawn(SCARRED, MotherAs::Body, Style::Soft, Palette::Skin(3));
    let lips = drawn(SCARRED, MotherAs::Lips(Hair::Loose), Style::Soft, Palette::Skin(3));
    assert!(group(&lips, "mother-head").is_some() && group(&body, "mother-head").is_none());
    let heads = [MotherAs::Body, MotherAs::Lips(Hair::Loose), MotherAs::Whole(Hair::Loose)]
        .map(|mother| figure::frame_with(Style::Soft, mother, View::Facing).top);
    assert!(heads[0] < heads[1] && heads[1] < heads[2], "{heads:?}");
    // As she sees herself, looking down, she has no head.
    let hers = MotherAs::Whole(Hair::Loose);
    assert_eq!(figure::frame_with(Style::Soft, hers, View::Hers), figure::frame(Style::Soft));
    // Her data stay small.
    let file = |name: &str| std::fs::metadata(path(name)).expect("baked").len();
    assert!(file("src/body/her_arms/arm.bin") + file("src/body/her_head/head.bin") <= 100 * 1024);
}

#[test]
fn the_clinics_file_chooses_skin_and_mother_and_an_option_goes_before_it() {
    let front = |own: &str, change: &dyn Fn(Handout) -> Handout| {
        let clinic = Some(Source::new("clinic.toml", format!("[family-page]\n{own}").as_str()));
        let page = Handout {
            format: Format::Svg,
            layout: Some(Chosen::Named("picture".to_owned())),
            clinic,
            ..family_page(Source::new("exam.toml", SCARRED), "en")
        };
        let outcome = commands::run(&Request { command: Command::Handout(change(page)), look: Look::Plain });
        (outcome.pages.first().map(|page| String::from_utf8_lossy(page).into_owned()), outcome.notes)
    };
    let as_it_is = |page: Handout| page;
    let of = |own: &str| front(own, &as_it_is).0.unwrap_or_else(|| panic!("{own}"));
    let asked = |palette| front("skin = \"lightest\"", &|page| Handout { palette: Some(palette), ..page }).0;
    let (usual, deep) = (of(""), of("skin = \"deep\""));
    assert_ne!(usual, deep);
    assert_eq!(asked(Palette::Skin(4)).as_deref(), Some(deep.as_str()), "the option goes before the file");
    assert_eq!(asked(Palette::Neutral).as_deref(), Some(usual.as_str()), "also when it is the usual one");
    assert!(usual.contains("mother-arm-left") && !of("mother = \"outline\"").contains("mother-arm-left"));
    // What is no skin is told, with those there are; no page is made in another.
    let (page, notes) = front("skin = \"beige\"", &as_it_is);
    assert!(page.is_none() && notes.contains("beige") && notes.contains("deepest"), "{notes}");
}
