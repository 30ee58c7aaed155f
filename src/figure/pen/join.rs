//! Lines that belong together. In: runs of outlines. Out: runs joined where one goes on as the other, without those that only
//! run beside another, and with what closes the figure.

use super::masses::{Mass, Run};
use super::plane::{self, P, away, dot, length, nearest, tangent};

/// Joins ends nearer than `reach` cm whose lines turn by less than the angle of this cosine; never a head to a body.
pub fn joined(mut runs: Vec<Run>, reach: f32, cosine: f32) -> Vec<Run> {
    while let Some((i, j, a, b)) = best_pair(&runs, reach, cosine) {
        let second = runs.remove(j);
        let first = runs.remove(i);
        let first = if a { first } else { first.turned() };
        let second = if b { second.turned() } else { second };
        // Both ends give way to one smooth turn.
        let give = |run: &Run| if run.line.len() > 20 { 4 } else { 0 };
        let (kept, from) = (first.line.len() - give(&first), give(&second));
        let line = first.line[..kept].iter().chain(&second.line[from..]).copied().collect();
        let of = first.of[..kept].iter().chain(&second.of[from..]).copied().collect();
        runs.push(Run { line, of }.rounded(0.2));
    }
    runs
}

fn best_pair(runs: &[Run], reach: f32, cosine: f32) -> Option<(usize, usize, bool, bool)> {
    let mut best: Option<(f32, (usize, usize, bool, bool))> = None;
    for i in 0..runs.len() {
        for j in i + 1..runs.len() {
            if is_head(&runs[i]) != is_head(&runs[j]) {
                continue;
            }
            for (a, b) in [(true, false), (true, true), (false, false), (false, true)] {
                let gap = away(runs[i].end(a), runs[j].end(b));
                let on = -dot(runs[i].leaving(a), runs[j].leaving(b));
                let cost = gap + (1.0 - on);
                if gap <= reach && on > cosine && best.is_none_or(|(least, _)| cost < least) {
                    best = Some((cost, (i, j, a, b)));
                }
            }
        }
    }
    best.map(|(_, pair)| pair)
}

/// Whether a run goes round the head.
pub fn is_head(run: &Run) -> bool {
    run.share(|m| m == Mass::Head) > 0.5
}

/// Leaves out what runs beside a longer line. `outer` is the outline of the whole figure.
pub fn single(runs: Vec<Run>, outer: &[P]) -> Vec<Run> {
    let on_outline = |run: &Run| {
        let near = run.line.iter().step_by(3).filter(|p| nearest(outer, **p).1 < 0.5).count();
        near as f32 / run.line.len().div_ceil(3) as f32
    };
    let mut sorted: Vec<(bool, f32, Run)> =
        runs.into_iter().map(|run| (on_outline(&run) > 0.5, length(&run.line), run)).collect();
    sorted.sort_by(|a, b| b.0.cmp(&a.0).then(b.1.total_cmp(&a.1)));
    let mut kept: Vec<Run> = vec![];
    for (outside, _, run) in sorted {
        let is_trunk = |m| m == Mass::Trunk;
        let is_thigh = |m| matches!(m, Mass::Thigh(_));
        let mut wide = false;
        let free: Vec<bool> = (0..run.line.len())
            .map(|i| {
                kept.iter().all(|other| {
                    let (j, gap) = nearest(&other.line, run.line[i]);
                    if gap > 0.95 {
                        return true;
                    }
                    let fold = |a: Mass, b: Mass| is_trunk(a) && is_thigh(b);
                    let folded = !outside && (fold(run.of[i], other.of[j]) || fold(other.of[j], run.of[i]));
                    let along = dot(tangent(&run.line, i, 2), tangent(&other.line, j, 2)).abs();
                    let beside = gap < if folded { 0.95 } else { 0.55 } && along > 0.8;
                    wide |= beside && folded;
                    !beside
                })
            })
            .collect();
        let foot = run.share(|m| matches!(m, Mass::Foot(_))) > 0.3;
        let least = if foot {
            0.9
        } else if wide {
            4.6
        } else {
            2.0
        };
        kept.extend(run.kept(&free, least, 0.6));
    }
    kept
}

/// What closes the figure: stretches of its outline that no line follows, each with a little of what comes before and after.
pub fn closing(outer: &[P], of: impl Fn(P) -> Mass, lines: &[&[P]]) -> Vec<Run> {
    const FAR: f32 = 0.6;
    let bare: Vec<bool> = outer.iter().map(|p| lines.iter().all(|line| nearest(line, *p).1 > FAR)).collect();
    let n = outer.len();
    // A stretch reaches over what is near its ends.
    const OVER: usize = 6;
    let wide: Vec<bool> = (0..n).map(|i| (0..=2 * OVER).any(|k| bare[(i + n + k - OVER) % n])).collect();
    let stretches = plane::stretches(outer, &wide, true, 0.3 + 0.2 * OVER as f32, 0.3);
    stretches
        .into_iter()
        .map(|line| {
            let of = line.iter().map(|p| of(*p)).collect();
            Run { line, of }
        })
        .collect()
}
