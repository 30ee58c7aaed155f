//! How spine, neck and head bend together. In: an attitude and a curl. Out: frames of pelvis, belly, chest,
//! shoulders, neck and head, in baby space.
//!
//! The spine is a chain of five segments. Angles are degrees from the baby's long axis (y) towards its front (z);
//! negative bends backwards. The flexed chain is the posture of the first drawing study; the others extend the
//! *whole* neck and upper spine, not only the head.

use super::frame::Frame;
use super::measures::Measures;
use crate::exam::Attitude;
use crate::units::Vec3;

/// Lengths of the chain at term, cm: pelvis to belly, to chest, to shoulders, to top of the neck, to the head's centre.
const SEGMENTS: [f32; 5] = [3.93, 4.71, 2.75, 3.86, 3.04];

/// Angles of one attitude.
struct Bend {
    segments: [f32; 5],
    pelvis: f32,
    belly: f32,
    chest: f32,
    head: f32,
}

const fn bend(attitude: Attitude) -> Bend {
    match attitude {
        Attitude::Flexed => Bend {
            segments: [-13.0, -4.0, 19.0, 31.0, 46.0],
            pelvis: -19.0,
            belly: -3.0,
            chest: 15.5,
            head: 34.0,
        },
        Attitude::Deflexed => Bend {
            segments: [-12.0, -5.0, 9.0, 9.0, 12.0],
            pelvis: -16.0,
            belly: -4.0,
            chest: 8.0,
            head: 3.0,
        },
        // The head lies half back: the forehead leads.
        Attitude::Brow => Bend {
            segments: [-10.0, -6.0, -2.0, -14.0, -24.0],
            pelvis: -12.0,
            belly: -5.0,
            chest: -2.0,
            head: -46.0,
        },
        // Full extension: the occiput lies against the back and chin and brow span the inlet.
        Attitude::Face => Bend {
            segments: [-7.0, -6.0, -9.0, -27.0, -42.0],
            pelvis: -9.0,
            belly: -6.0,
            chest: -9.0,
            head: -88.0,
        },
    }
}

/// Frames of the trunk and head in baby space.
#[derive(Clone, Copy, Debug)]
pub struct Spine {
    /// Centre of the pelvis.
    pub pelvis: Frame,
    /// Centre of the belly.
    pub belly: Frame,
    /// Centre of the chest.
    pub chest: Frame,
    /// Between the shoulders.
    pub shoulders: Frame,
    /// Top of the neck.
    pub neck: Vec3,
    /// Centre of the head.
    pub head: Frame,
}

/// The range of curls a flexed baby can take: 1 is the usual; less is straighter.
pub const CURL: (f32, f32) = (0.55, 1.25);

/// How loose a curl is: 0 at the usual curl and above, 1 at the straightest.
pub fn looseness(curl: f32) -> f32 {
    ((1.0 - curl) / (1.0 - CURL.0)).clamp(0.0, 1.0)
}

/// The chain for `attitude`. `curl` scales the flexed bend; `turn` turns the face towards the baby's left, degrees.
pub fn spine(attitude: Attitude, curl: f32, turn: f32, m: &Measures) -> Spine {
    let b = bend(attitude);
    let curl = if attitude == Attitude::Flexed { curl.clamp(CURL.0, CURL.1) } else { 1.0 };
    let step = |from: Vec3, k: usize| {
        let (sin, cos) = libm::sincosf((b.segments[k] * curl).to_radians());
        let length = SEGMENTS[k] * if k < 3 { m.length } else { 0.5 * (m.length + m.head) };
        from + Vec3::new(0.0, cos, sin) * length
    };
    let pelvis = Vec3::new(0.0, 0.2, -0.1) * m.length;
    let belly = step(pelvis, 0);
    let chest = step(belly, 1);
    let shoulders = step(chest, 2);
    let neck = step(shoulders, 3);
    let head = step(neck, 4);
    // The chin stays near the chest when the spine straightens: the head keeps two thirds of its bend.
    let nod = b.head * if attitude == Attitude::Flexed { (1.0 + 2.0 * curl) / 3.0 } else { 1.0 };
    let pitched = Frame::pitched(nod, head);
    let (sin, cos) = libm::sincosf(turn.to_radians());
    let face = pitched.z * cos + pitched.x * sin;
    Spine {
        pelvis: Frame::pitched(b.pelvis * curl, pelvis),
        belly: Frame::pitched(b.belly * curl, belly),
        chest: Frame::pitched(b.chest * curl, chest),
        shoulders: Frame::pitched(b.segments[2] * curl, shoulders),
        neck,
        head: Frame::from_up_front(pitched.y, face, head),
    }
}
