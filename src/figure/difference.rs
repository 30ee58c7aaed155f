//! How different two colours look. In: two colours. Out: their difference, 1 about what an eye just sees side by side.
//!
//! - Formula: CIEDE2000 with all weights 1; sRGB seen under D65.
//! - Source: G. Sharma, W. Wu, E. N. Dalal, "The CIEDE2000 color-difference formula", Color Research and Application 30
//!   (2005), with its table of test values.

use super::scene::Colour;

/// Lightness and the two colour axes of CIE 1976.
fn lab(c: Colour) -> [f64; 3] {
    let linear = |v: u8| {
        let v = f64::from(v) / 255.0;
        if v <= 0.04045 { v / 12.92 } else { libm::pow((v + 0.055) / 1.055, 2.4) }
    };
    let (r, g, b) = (linear(c.r), linear(c.g), linear(c.b));
    let f = |t: f64| if t > 216.0 / 24389.0 { libm::cbrt(t) } else { (24389.0 / 27.0 * t + 16.0) / 116.0 };
    let x = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / 0.95047);
    let y = f(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
    let z = f((0.0193339 * r + 0.119_192 * g + 0.9503041 * b) / 1.08883);
    [116.0 * y - 16.0, 500.0 * (x - y), 200.0 * (y - z)]
}

/// The difference of two colours.
pub fn difference(a: Colour, b: Colour) -> f64 {
    of_lab(lab(a), lab(b))
}

/// The difference of two colours, given as lightness and the two axes.
pub fn of_lab([l1, a1, b1]: [f64; 3], [l2, a2, b2]: [f64; 3]) -> f64 {
    let root = |x: f64| libm::sqrt(x);
    let seventh = |c: f64| {
        let c7 = libm::pow(c, 7.0);
        root(c7 / (c7 + 6_103_515_625.0))
    };
    let g = 0.5 * (1.0 - seventh(0.5 * (libm::hypot(a1, b1) + libm::hypot(a2, b2))));
    let (a1, a2) = (a1 * (1.0 + g), a2 * (1.0 + g));
    let (c1, c2) = (libm::hypot(a1, b1), libm::hypot(a2, b2));
    let hue = |a: f64, b: f64| {
        let h = libm::atan2(b, a).to_degrees();
        if a == 0.0 && b == 0.0 {
            0.0
        } else if h < 0.0 {
            h + 360.0
        } else {
            h
        }
    };
    let (h1, h2) = (hue(a1, b1), hue(a2, b2));
    let grey = c1 * c2 == 0.0;
    let mut turn = h2 - h1;
    if grey {
        turn = 0.0;
    } else if turn > 180.0 {
        turn -= 360.0;
    } else if turn < -180.0 {
        turn += 360.0;
    }
    let sin = |degrees: f64| libm::sin(degrees.to_radians());
    let cos = |degrees: f64| libm::cos(degrees.to_radians());
    let (dl, dc, dh) = (l2 - l1, c2 - c1, 2.0 * root(c1 * c2) * sin(0.5 * turn));
    let (l, c) = (0.5 * (l1 + l2), 0.5 * (c1 + c2));
    let h = if grey {
        h1 + h2
    } else if (h1 - h2).abs() <= 180.0 {
        0.5 * (h1 + h2)
    } else if h1 + h2 < 360.0 {
        0.5 * (h1 + h2 + 360.0)
    } else {
        0.5 * (h1 + h2 - 360.0)
    };
    let t = 1.0 - 0.17 * cos(h - 30.0) + 0.24 * cos(2.0 * h) + 0.32 * cos(3.0 * h + 6.0)
        - 0.20 * cos(4.0 * h - 63.0);
    let around = (h - 275.0) / 25.0;
    let rotation = -2.0 * seventh(c) * sin(60.0 * libm::exp(-around * around));
    let off = (l - 50.0) * (l - 50.0);
    let (sl, sc, sh) = (1.0 + 0.015 * off / root(20.0 + off), 1.0 + 0.045 * c, 1.0 + 0.015 * c * t);
    let (x, y, z) = (dl / sl, dc / sc, dh / sh);
    root(x * x + y * y + z * z + rotation * y * z)
}
