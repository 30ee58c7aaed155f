//! Which small picture stands beside which words, for layouts that show them. In: the name of a message. Out: its sign.

use crate::sheet::signs::Sign;

pub(super) fn of(id: &str) -> Option<Sign> {
    Some(match id {
        "family-moves-title-one" | "family-moves-title-more" => Sign::Moves,
        "family-moves-keep-one" | "family-moves-keep-more" => Sign::Moves,
        "family-moves-call" => Sign::DayNight,
        "family-phone-always" | "family-worried" | "family-call-title" | "family-go-title" => Sign::Phone,
        "family-come-title" => Sign::GoIn,
        "family-heavy-title" => Sign::DarkThoughts,
        "family-urgent-waters" | "family-come-waters" => Sign::Waters,
        "family-cord" => Sign::Cord,
        "family-go-bleeding" | "family-come-bleeding" => Sign::Blood,
        "family-come-pain" => Sign::BellyPain,
        "family-go-breath" | "family-come-heart" => Sign::Chest,
        "family-go-collapse" => Sign::Faint,
        "family-go-fits" => Sign::Fits,
        "family-come-green" => Sign::StainedWaters,
        "family-come-labour" | "family-come-tightenings" => Sign::Tightening,
        "family-call-itching" => Sign::Itch,
        "family-come-head" => Sign::Headache,
        "family-come-fever" => Sign::Fever,
        "family-come-swelling" => Sign::Swelling,
        "family-call-vomit" => Sign::Vomit,
        "family-call-tired" => Sign::Tired,
        "family-call-leg" => Sign::Leg,
        _ => return None,
    })
}
