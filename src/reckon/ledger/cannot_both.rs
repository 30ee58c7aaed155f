//! What cannot all be right. In: nothing. Out: rows of the ledger; logic only.

use super::{Rule, logic};

pub(super) const RULES: &[Rule] = &[
    logic("reported-and-denied", "the same sign in both lists"),
    logic("head-and-bottom-in-one-place", "both poles at one place"),
    logic("back-against-lie", "a back that cannot lie so with these poles"),
    logic("lie-against-findings", "the lie that was written is not what follows"),
    logic("presentation-against-findings", "the presentation that was written is not what follows"),
    logic("position-against-findings", "the position that was written is not what follows"),
    logic("conclusions-against-one-another", "two written conclusions exclude each other"),
    logic("attitude-against-presentation", "the head held in two ways"),
    logic("engaged-and-crosswise", "a head deep in the pelvis in a transverse or oblique lie"),
    logic("head-in-two-places", "fifths of a head that is felt elsewhere"),
    logic("fifths-on-a-breech", "fifths with the bottom down"),
    logic("engaged-on-a-breech", "engaged said of a bottom"),
    logic("fifths-against-descent", "fifths and the word for descent disagree"),
    logic("heart-not-heard-but-counted", "a rate of a heart that was not heard"),
];
