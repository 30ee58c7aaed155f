//! Skins, marks and words in grey and to colour-blind eyes: contrast as WCAG 2.2 reckons it; colour vision by the
//! matrices of Machado, Oliveira and Fernandes (IEEE Transactions on Visualization and Computer Graphics 15, 2009), at
//! full severity, on linear light.

use handspan::figure::difference::{difference, of_lab};
use handspan::figure::mother::MotherPalette;
use handspan::figure::palette::{BabyColours, MOST_TONES};
use handspan::figure::scene::Colour;
use handspan::figure::{HEART, Palette};

type Matrix = [[f32; 3]; 3];

const EYES: [(&str, Matrix); 4] = [
    ("usual", [[1.0, 0.0, 0.0], [0.0, 1.0, 0.0], [0.0, 0.0, 1.0]]),
    (
        "protan",
        [[0.152286, 1.052583, -0.204868], [0.114503, 0.786281, 0.099216], [-0.003882, -0.048116, 1.051998]],
    ),
    (
        "deutan",
        [[0.367322, 0.860646, -0.227968], [0.280085, 0.672501, 0.047413], [-0.011820, 0.042940, 0.968881]],
    ),
    (
        "tritan",
        [[1.255528, -0.076749, -0.178779], [-0.078411, 0.930809, 0.147602], [0.004733, 0.691367, 0.303900]],
    ),
];

/// Relative luminance to such eyes (WCAG 2.2); it is also what a grey print keeps.
fn luminance(c: Colour, eyes: &Matrix) -> f32 {
    let linear = [c.r, c.g, c.b].map(|v| {
        let v = f32::from(v) / 255.0;
        if v <= 0.04045 { v / 12.92 } else { libm::powf((v + 0.055) / 1.055, 2.4) }
    });
    let seen = eyes.map(|row| {
        let sum: f32 = row.iter().zip(linear).map(|(m, v)| m * v).sum();
        sum.clamp(0.0, 1.0)
    });
    0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2]
}

fn contrast(a: Colour, b: Colour, eyes: &Matrix) -> f32 {
    let (a, b) = (luminance(a, eyes), luminance(b, eyes));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

/// A baby that is drawn paler is paler, and its lines still stand out from its skin.
#[test]
fn a_paler_baby_keeps_its_lines() {
    for palette in std::iter::once(Palette::Neutral).chain((1..=Palette::DEEPEST).map(Palette::Skin)) {
        let (full, paper) = (BabyColours::of(palette), MotherPalette::of(palette).paper);
        let pale = full.paler(paper);
        for (name, eyes) in &EYES {
            let found = contrast(pale.ink, pale.skin, eyes);
            assert!(found >= 3.0, "{palette:?} to {name} eyes: {found}");
            for (a, b) in [(pale.skin, full.skin), (pale.shade[2], full.shade[2]), (pale.ink, full.ink)] {
                assert!(luminance(a, eyes) > luminance(b, eyes), "{palette:?} to {name} eyes");
            }
        }
    }
}

/// What a mark can lie on.
fn grounds(baby: &BabyColours, mother: &MotherPalette) -> Vec<Colour> {
    let mut out = vec![baby.skin, baby.light, baby.hair, mother.paper, mother.skin, mother.light];
    out.extend(baby.shade);
    out.extend(mother.shade);
    out.push(mother.womb);
    out.extend(mother.womb_shade);
    out.extend([mother.bone, mother.bone_shade]);
    out
}

#[test]
fn the_heart_stands_out_from_everything_it_can_lie_on() {
    for palette in Palette::all() {
        let (baby, mother) = (BabyColours::of(palette), MotherPalette::of(palette));
        for (who, eyes) in &EYES {
            let rim = mother.paper;
            assert!(contrast(HEART, rim, eyes) >= 4.5, "{palette:?}, {who}");
            for ground in grounds(&baby, &mother) {
                // A dark mark in a pale rim: one of the two makes the shape.
                let best = contrast(HEART, ground, eyes).max(contrast(rim, ground, eyes));
                assert!(best >= 3.0, "{palette:?}, {who}: {best} on {ground:?}");
            }
        }
    }
}

#[test]
fn words_stand_out_from_paper() {
    let ink = BabyColours::NEUTRAL.ink;
    for palette in Palette::all() {
        for (who, eyes) in &EYES {
            let c = contrast(ink, MotherPalette::of(palette).paper, eyes);
            assert!(c >= 4.5, "{palette:?}, {who}: {c}");
        }
    }
    let line = MotherPalette::line();
    assert!(contrast(BabyColours::INK.ink, line.paper, &EYES[0].1) >= 12.0);
}

#[test]
fn lines_stand_out_from_every_skin() {
    for palette in Palette::all() {
        let (baby, mother) = (BabyColours::of(palette), MotherPalette::of(palette));
        for (who, eyes) in &EYES {
            let at_least = |a: Colour, b: Colour, least: f32, what: &str| {
                let c = contrast(a, b, eyes);
                assert!(c >= least, "{palette:?}, {who}: {what} {c}");
            };
            at_least(baby.ink, baby.skin, 3.0, "the baby's lines on lit skin");
            at_least(baby.ink, baby.light, 3.0, "the baby's lines in the light");
            at_least(baby.ink, baby.shade[0], 2.4, "the baby's lines on the first shade");
            at_least(baby.ink, mother.womb, 4.5, "the baby's outline before the womb");
            at_least(mother.ink, mother.skin, 3.0, "her outline");
            at_least(mother.mark, mother.skin, 3.0, "marks on her skin");
            at_least(mother.mark, mother.womb, 4.5, "marks on the womb");
            at_least(mother.womb_line, mother.womb, 3.0, "the wall of the womb");
        }
    }
}

#[test]
fn skins_go_from_light_to_deep_in_even_steps_and_mother_and_baby_are_alike() {
    let eyes = &EYES[0].1;
    let skins: Vec<Palette> = Palette::all().skip(1).collect();
    assert_eq!(skins.len(), 6);
    for pair in skins.windows(2) {
        let (a, b) = (BabyColours::of(pair[0]).skin, BabyColours::of(pair[1]).skin);
        let step = contrast(a, b, eyes);
        assert!(luminance(a, eyes) > luminance(b, eyes) && (1.1..1.75).contains(&step), "{pair:?}: {step}");
        let mothers = pair.iter().map(|p| luminance(MotherPalette::of(*p).skin, eyes)).collect::<Vec<_>>();
        assert!(mothers[0] > mothers[1], "{pair:?}");
    }
    for palette in skins {
        let (baby, mother) = (BabyColours::of(palette), MotherPalette::of(palette));
        let c = contrast(baby.skin, mother.skin, eyes);
        assert!(c < 1.7, "{palette:?}: mother and baby differ by {c}");
        assert!(baby.shade.windows(2).all(|s| luminance(s[0], eyes) > luminance(s[1], eyes)), "{palette:?}");
    }
    assert_eq!(Palette::skin(0), None);
    assert_eq!(Palette::skin(7), None);
    assert_eq!(Palette::skin(6), Some(Palette::Skin(6)));
}

/// Pairs from the table of G. Sharma, W. Wu and E. N. Dalal (2005).
#[test]
fn colour_differences_are_those_that_were_published() {
    for (a, b, published) in [
        ([50.0, 2.6772, -79.7751], [50.0, 0.0, -82.7485], 2.0425),
        ([50.0, -1.0, 2.0], [50.0, 0.0, 0.0], 2.3669),
        ([50.0, 2.4900, -0.0010], [50.0, -2.4900, 0.0011], 7.2195),
        ([50.0, 2.5, 0.0], [61.0, -5.0, 29.0], 22.8977),
        ([60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644),
        ([2.0776, 0.0795, -1.1350], [0.9033, -0.0636, -0.5514], 0.9082),
    ] {
        assert!((of_lab(a, b) - published).abs() < 1e-4, "{a:?} {b:?}: {}", of_lab(a, b));
    }
}

/// No more tones than 24, each a little darker than the one before; no step shows on broad skin, none is coarse in a fold.
#[test]
fn the_tones_of_a_baby_are_few_and_near_each_other() {
    for palette in Palette::all() {
        let colours = BabyColours::of(palette);
        let tones = colours.tones();
        assert!(tones.len() <= MOST_TONES && MOST_TONES == 24, "{palette:?}: {} tones", tones.len());
        for pair in tones.windows(2) {
            assert!(pair[0].0 > pair[1].0, "{palette:?}");
            let step = difference(pair[0].1, pair[1].1);
            // Bands are broad down to the light of the second shade.
            let most = if pair[1].0 > 0.53 { 1.5 } else { 4.0 };
            // Colours have 8 bits a channel: a step may come out a little longer.
            assert!(step <= most + 0.25, "{palette:?}: a step of {step} at {}", pair[1].0);
        }
        assert_eq!(tones.first().map(|tone| tone.1), Some(colours.light));
        assert!(tones.iter().any(|tone| tone.1 == colours.skin), "{palette:?}: the skin's own tone");
    }
}
