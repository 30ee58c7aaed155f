//! The picture as she sees it looking down. In: a scene as someone in front of her sees it. Out: the same turned by
//! half a turn in its own plane: never mirrored, her left still her left.

use super::scene::{Frame, Scene};
use crate::units::FigurePoint;

/// A point after the half-turn.
pub fn turned(p: FigurePoint) -> FigurePoint {
    FigurePoint::new(-p.x, -p.y)
}

/// A frame after the half-turn.
pub fn turned_frame(f: Frame) -> Frame {
    Frame { left: -f.right, bottom: -f.top, right: -f.left, top: -f.bottom }
}

/// Turns every mark and the frame. Words must be placed afterwards.
pub fn half_turn(scene: &mut Scene) {
    scene.items = scene.items.iter().map(|item| item.map(&turned, 1.0)).collect();
    scene.frame = turned_frame(scene.frame);
}
