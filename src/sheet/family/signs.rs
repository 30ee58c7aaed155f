//! Which small picture stands beside which words, for layouts that show them. In: the name of a message. Out: its sign. No sign
//! stands for two things that call for something different.

use crate::sheet::signs::Sign;

pub(super) fn of(id: &str) -> Option<Sign> {
    Some(match id {
        "family-moves-title-one" | "family-moves-title-more" => Sign::Moves,
        "family-moves-keep-one" | "family-moves-keep-more" => Sign::HandOnBelly,
        "family-moves-call" => Sign::DayNight,
        "family-phone-always" | "family-worried" => Sign::Phone,
        "family-call-title" => Sign::PhoneToday,
        "family-go-title" => Sign::Ambulance,
        "family-come-title" => Sign::GoIn,
        "family-heavy-title" => Sign::DarkThoughts,
        "family-urgent-waters" | "family-come-waters" => Sign::Waters,
        "family-cord" => Sign::Cord,
        "family-cord-kneel" => Sign::Kneel,
        "family-cord-lie" => Sign::LeftSide,
        "family-go-bleeding" => Sign::HeavyBlood,
        "family-come-bleeding" => Sign::Blood,
        "family-come-pain" => Sign::BellyPain,
        "family-go-breath" => Sign::Chest,
        "family-come-heart" => Sign::HeartRacing,
        "family-go-collapse" => Sign::Faint,
        "family-go-fits" => Sign::Fits,
        "family-come-green" => Sign::StainedWaters,
        "family-come-labour" | "family-come-labour-later" => Sign::Clock,
        "family-come-tightenings" => Sign::Tightening,
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
