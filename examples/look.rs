use handspan::body::{baby::*, cast, measures::Measures};
use handspan::exam::*;
use handspan::figure::{baby as fb, palette::BabyColours, scene::*};
use handspan::units::*;
use std::fmt::Write;
fn path(p: &Path<FigurePoint>, s: f32) -> String {
    let mut o = String::new();
    let q = |p: &FigurePoint| format!("{:.1} {:.1}", p.x * s, -p.y * s);
    for st in p {
        let _ = match st {
            Step::Move(a) => write!(o, "M{}", q(a)),
            Step::Line(a) => write!(o, "L{}", q(a)),
            Step::Curve(a, b, c) => write!(o, "C{} {} {}", q(a), q(b), q(c)),
            Step::Close => write!(o, "Z"),
        };
    }
    o
}
fn items(v: &[Item<FigurePoint>], s: f32, o: &mut String) {
    for i in v {
        match i {
            Item::Group { items: it, .. } => items(it, s, o),
            Item::Fill { path: p, colour: c, rule } => {
                let _ = write!(
                    o,
                    "<path d='{}' fill='#{:02x}{:02x}{:02x}' fill-rule='{}'/>",
                    path(p, s),
                    c.r,
                    c.g,
                    c.b,
                    if *rule == FillRule::EvenOdd { "evenodd" } else { "nonzero" }
                );
            }
            Item::Stroke { path: p, colour: c, width, dash } => {
                let _ = write!(
                    o,
                    "<path d='{}' fill='none' stroke='#{:02x}{:02x}{:02x}' stroke-width='{}' stroke-linecap='round' {}/>",
                    path(p, s),
                    c.r,
                    c.g,
                    c.b,
                    width * s,
                    dash.map_or(String::new(), |(a, b)| format!("stroke-dasharray='{} {}'", a * s, b * s))
                );
            }
            Item::Clip { items: it, .. } => items(it, s, o),
            Item::Text(_) => {}
        }
    }
}
fn main() {
    let set = std::env::args().nth(1).unwrap_or("sweep".into());
    let tonal = std::env::args().nth(2).map_or(true, |a| a != "line");
    let s: f32 = std::env::args().nth(3).and_then(|a| a.parse().ok()).unwrap_or(9.0);
    let d = Vec3::new(0., -1., 0.);
    let u = Vec3::new(0., 1., 0.);
    let az = |deg: f32| {
        let a = deg.to_radians();
        Vec3::new(a.sin(), 0., a.cos())
    };
    let mut rows: Vec<Vec<(Vec3, Vec3, Attitude, Legs)>> = vec![];
    use Attitude::*;
    match set.as_str() {
        "sweep" => {
            rows.push((0..8).map(|k| (d, az(k as f32 * 45.), Flexed, Legs::Complete)).collect());
            rows.push((0..8).map(|k| (u, az(k as f32 * 45.), Flexed, Legs::Complete)).collect());
            rows.push((0..8).map(|k| (u, az(k as f32 * 45.), Flexed, Legs::Frank)).collect());
            rows.push(
                (0..8)
                    .map(|k| {
                        let hl = if k < 4 { 1. } else { -1. };
                        let a = (k % 4) as f32 * std::f32::consts::FRAC_PI_2;
                        (Vec3::new(hl, 0.1, 0.), Vec3::new(0., -a.cos(), a.sin()), Flexed, Legs::Complete)
                    })
                    .collect(),
            );
        }
        "att" => {
            for a in [Deflexed, Brow, Face] {
                rows.push((0..8).map(|k| (d, az(k as f32 * 45.), a, Legs::Complete)).collect());
            }
            rows.push(
                (0..8).map(|k| (u, az(k as f32 * 45.), Flexed, Legs::Footling(Footling::Left))).collect(),
            );
        }
        one => {
            let v: Vec<f32> = one.split(',').map(|x| x.parse().unwrap()).collect();
            rows.push(vec![(
                if v[0] < 0. { d } else { u },
                az(v[1]),
                Flexed,
                if v.len() > 2 { Legs::Frank } else { Legs::Complete },
            )]);
        }
    }
    let (w, h) = (30. * s, 36. * s);
    let mut o = String::new();
    let mut total = 0.0;
    let mut n = 0;
    for (r, row) in rows.iter().enumerate() {
        for (c, (up, back, att, legs)) in row.iter().enumerate() {
            let t = std::time::Instant::now();
            let p = Posture {
                up: *up,
                back: *back,
                attitude: *att,
                legs: *legs,
                curl: 1.0,
                measures: Measures::at(40.),
                square_on: BabySide::Left,
            };
            let b = pose(&p, *up * -9.5).with_curves();
            let t1 = t.elapsed().as_secs_f64();
            let k = cast::cast(&b.forms, 0.06);
            let t2 = t.elapsed().as_secs_f64();
            let colours = if tonal { BabyColours::NEUTRAL } else { BabyColours::INK };
            let m = fb::draw(&[b], &k, &colours, tonal);
            let t3 = t.elapsed().as_secs_f64();
            total += t3;
            n += 1;
            if n == 1 {
                eprintln!("pose {:.1} cast {:.1} draw {:.1} ms", t1 * 1e3, (t2 - t1) * 1e3, (t3 - t2) * 1e3);
            }
            let mut x = String::new();
            items(&m, s, &mut x);
            if n == 2 || rows[0].len() == 1 {
                eprintln!("{} KB", x.len() / 1024);
            }
            let _ = write!(
                o,
                "<g transform='translate({} {})'>{x}</g>",
                (c as f32 + 0.5) * w,
                (r as f32 + 0.5) * h
            );
        }
    }
    eprintln!("mean {:.1} ms", total / n as f64 * 1e3);
    let svg = format!(
        "<svg xmlns='http://www.w3.org/2000/svg' width='{}' height='{}'><rect width='100%' height='100%' fill='#f6e4da'/>{o}</svg>",
        w * rows[0].len() as f32,
        h * rows.len() as f32
    );
    let t = resvg::usvg::Tree::from_str(&svg, &Default::default()).unwrap();
    let mut pm = resvg::tiny_skia::Pixmap::new(t.size().width() as u32, t.size().height() as u32).unwrap();
    resvg::render(&t, Default::default(), &mut pm.as_mut());
    pm.save_png("/tmp/look/out.png").unwrap();
    std::fs::write("/tmp/look/out.svg", svg).unwrap();
}
