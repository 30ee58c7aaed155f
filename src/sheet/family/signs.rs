//! Which small picture stands beside which words, for layouts that show them. In: the name of a message. Out: its sign.

use crate::sheet::signs::Sign;

pub(super) fn of(id: &str) -> Option<Sign> {
    Some(match id {
        "family-moves-title-one" | "family-moves-title-more" => Sign::Moves,
        "family-moves-call" => Sign::DayNight,
        "family-phone-always" | "family-worried" | "family-call-title" => Sign::Phone,
        "family-go-title" => Sign::GoIn,
        "family-urgent-waters" | "family-call-waters" => Sign::Waters,
        "family-cord" => Sign::Cord,
        "family-go-bleeding" => Sign::Blood,
        "family-go-pain" => Sign::BellyPain,
        "family-go-breath" => Sign::Chest,
        "family-go-faint" => Sign::Faint,
        "family-go-fits" => Sign::Fits,
        "family-go-harm" => Sign::DarkThoughts,
        "family-go-green" => Sign::StainedWaters,
        "family-call-labour" | "family-call-tightenings" => Sign::Tightening,
        "family-call-itching" => Sign::Itch,
        "family-call-head" => Sign::Headache,
        "family-call-fever" => Sign::Fever,
        "family-call-swelling" => Sign::Swelling,
        "family-call-vomit" => Sign::Vomit,
        "family-call-tired" => Sign::Tired,
        "family-call-leg" => Sign::Leg,
        _ => return None,
    })
}
