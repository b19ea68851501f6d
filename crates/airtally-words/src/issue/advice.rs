//! What can be done about an issue.

use super::typed::kind_at;
use crate::book::advised;
use airtally::issue::{Condition, Issue, Trouble};
use airtally::quantity::{Kind, ParseError};

/// What to do, or what would be accepted. `None` where the sentence says it all.
pub fn hint(issue: &Issue) -> Option<String> {
    hint_for(issue.trouble, kind_at(issue.place))
}

/// The same for a field that asks for this kind.
pub fn hint_for(trouble: Trouble, kind: Option<Kind>) -> Option<String> {
    let advice = match trouble {
        Trouble::Unreadable(error) => return Some(reading(error, kind)),
        Trouble::OutOfRange { .. } => Advice::OutOfRange,
        Trouble::SeldomRight { .. } => Advice::SeldomRight,
        Trouble::LongName { .. } => Advice::LongName,
        Trouble::NoRooms => Advice::NoRooms,
        Trouble::NoBedrooms => Advice::NoBedrooms,
        Trouble::NoSupplyRoom => Advice::NoSupplyRoom,
        Trouble::NoExtractRoom => Advice::NoExtractRoom,
        Trouble::ManyRooms { .. } => Advice::ManyRooms,
        Trouble::AreaMissing => Advice::AreaMissing,
        Trouble::AreaTwice => Advice::AreaTwice,
        Trouble::RoomsExceedFloor { .. } => Advice::RoomsExceedFloor,
        Trouble::NeverServed => Advice::NeverServed,
        Trouble::BetweenRows { .. } => Advice::BetweenRows,
        Trouble::OutsideEquation { .. } => Advice::OutsideEquation,
        Trouble::BeyondTable { .. } => Advice::BeyondTable,
        Trouble::RunTimeNotAllowed { .. } => Advice::RunTimeNotAllowed,
        Trouble::CreditRefused(condition) => condition_met(condition),
        Trouble::OpenKitchenContinuous => Advice::OpenKitchenContinuous,
        Trouble::NoAwayRate => return None,
        Trouble::StepsRaiseTotal { .. } => Advice::StepsRaiseTotal,
        Trouble::AboveMost { .. } => Advice::AboveMost,
        Trouble::BoostFallsShort { .. } => Advice::BoostFallsShort,
        Trouble::RunTakesMuch { .. } => Advice::RunTakesMuch,
        Trouble::Loud { .. } => Advice::Loud,
        Trouble::VoiceHeard { .. } => Advice::VoiceHeard,
        Trouble::PointUnread { .. } => Advice::PointUnread,
        Trouble::FewPoints => Advice::FewPoints,
        Trouble::CurveRises { .. } => Advice::CurveRises,
        Trouble::CurveFalls(_) => Advice::CurveFalls,
        Trouble::UnitWeak { .. } => Advice::UnitWeak,
        Trouble::LongerThanCoil { .. } => Advice::LongerThanCoil,
        Trouble::ManyTubes { .. } => Advice::ManyTubes,
        Trouble::StuffyNight { .. } => Advice::StuffyNight,
        Trouble::CheckFails(_) => return None,
        Trouble::OpenFlue => Advice::OpenFlue,
        Trouble::DrawsDown { .. } => Advice::DrawsDown,
        Trouble::UndercutTall { .. } => Advice::UndercutTall,
    };
    Some(advised(advice as usize).to_owned()).filter(|words| !words.is_empty())
}

/// What can be done, each a line of the book.
#[derive(Clone, Copy)]
#[cfg_attr(test, derive(Debug))]
pub(crate) enum Advice {
    OutOfRange,
    SeldomRight,
    LongName,
    NoRooms,
    NoBedrooms,
    NoSupplyRoom,
    NoExtractRoom,
    ManyRooms,
    AreaMissing,
    AreaTwice,
    RoomsExceedFloor,
    NeverServed,
    BetweenRows,
    OutsideEquation,
    BeyondTable,
    RunTimeNotAllowed,
    OpenKitchenContinuous,
    StepsRaiseTotal,
    AboveMost,
    BoostFallsShort,
    RunTakesMuch,
    Loud,
    VoiceHeard,
    PointUnread,
    FewPoints,
    CurveRises,
    CurveFalls,
    UnitWeak,
    LongerThanCoil,
    ManyTubes,
    StuffyNight,
    OpenFlue,
    DrawsDown,
    UndercutTall,
    NotInEdition,
    LivingDiningKitchen,
    Tightness,
    WeatherFactor,
    EnvelopeHeight,
    Volume,
}

fn reading(error: ParseError, kind: Option<Kind>) -> String {
    let text = match error {
        ParseError::Empty => "Type a value, or clear the field.",
        ParseError::NotANumber | ParseError::UnknownUnit { .. } | ParseError::WrongKind { .. } => {
            return format!("Type it like this: {}.", example(kind));
        }
        ParseError::Ambiguous { .. } => "Use a point before decimals and no mark between thousands.",
        ParseError::UnclearUnit => "Give every number its unit, or none.",
        ParseError::TooLong => "Type the value alone.",
        ParseError::NotFinite => "Type a smaller number.",
        ParseError::NotWhole => "Type it without a fraction.",
    };
    text.to_owned()
}

/// Texts that a field reads.
const fn example(kind: Option<Kind>) -> &'static str {
    match kind {
        Some(Kind::Length) => "3.2, 3.2 m, 12 ft 6 in or 3.2 + 1.4",
        Some(Kind::Area) => "12, 12.5 m² or 135 sq ft",
        Some(Kind::Flow) => "30, 30 m³/h, 9 L/s or 20 cfm",
        Some(Kind::Velocity) => "2.5, 2.5 m/s or 500 ft/min",
        Some(Kind::Pressure) => "100, 100 Pa or 0.4 in w.c.",
        Some(Kind::Duration) => "8, 8 h or 1 h 30 min",
        Some(Kind::Sound) => "30 or 30 dB(A)",
        Some(Kind::Price) => "12, 12.50 or 0.0375",
        Some(Kind::Ratio) => "0.05, 5 % or 1/2",
        Some(Kind::Temperature) => "20, 20 °C or 68 °F",
        Some(Kind::Volume) => "300, 300 m³ or 10000 cu ft",
        Some(
            Kind::AirChange
            | Kind::Concentration
            | Kind::Angle
            | Kind::Count
            | Kind::FlowPerArea
            | Kind::Power
            | Kind::Damping,
        )
        | None => "12 or 12.5",
    }
}

const fn condition_met(condition: Condition) -> Advice {
    match condition {
        Condition::NotInEdition => Advice::NotInEdition,
        Condition::LivingDiningKitchen => Advice::LivingDiningKitchen,
        Condition::Tightness => Advice::Tightness,
        Condition::WeatherFactor => Advice::WeatherFactor,
        Condition::EnvelopeHeight => Advice::EnvelopeHeight,
        Condition::Volume => Advice::Volume,
    }
}

#[cfg(test)]
impl Advice {
    /// All of them, in the order of the book.
    pub const ALL: [Self; 40] = [
        Self::OutOfRange,
        Self::SeldomRight,
        Self::LongName,
        Self::NoRooms,
        Self::NoBedrooms,
        Self::NoSupplyRoom,
        Self::NoExtractRoom,
        Self::ManyRooms,
        Self::AreaMissing,
        Self::AreaTwice,
        Self::RoomsExceedFloor,
        Self::NeverServed,
        Self::BetweenRows,
        Self::OutsideEquation,
        Self::BeyondTable,
        Self::RunTimeNotAllowed,
        Self::OpenKitchenContinuous,
        Self::StepsRaiseTotal,
        Self::AboveMost,
        Self::BoostFallsShort,
        Self::RunTakesMuch,
        Self::Loud,
        Self::VoiceHeard,
        Self::PointUnread,
        Self::FewPoints,
        Self::CurveRises,
        Self::CurveFalls,
        Self::UnitWeak,
        Self::LongerThanCoil,
        Self::ManyTubes,
        Self::StuffyNight,
        Self::OpenFlue,
        Self::DrawsDown,
        Self::UndercutTall,
        Self::NotInEdition,
        Self::LivingDiningKitchen,
        Self::Tightness,
        Self::WeatherFactor,
        Self::EnvelopeHeight,
        Self::Volume,
    ];
}
