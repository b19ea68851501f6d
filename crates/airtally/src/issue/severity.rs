//! How bad each trouble is.

use super::Trouble;
use crate::id::Level;

/// How much an issue matters.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// Worth knowing.
    Note,
    /// Legal and possible, but seldom right.
    Unusual,
    /// Outside what the chosen rule allows.
    OutsideRule,
    /// Something cannot be calculated until it is mended.
    Stops,
}

impl Severity {
    /// All of them, worst first.
    pub const WORST_FIRST: [Self; 4] = [Self::Stops, Self::OutsideRule, Self::Unusual, Self::Note];
}

impl Trouble {
    /// How bad it is.
    pub const fn severity(&self) -> Severity {
        use Trouble as T;
        match self {
            T::PointUnread { .. } | T::FewPoints | T::CurveRises { .. } | T::CurveFalls(_) => Severity::Stops,
            T::Unreadable(_) | T::OutOfRange { .. } | T::NoRooms | T::NoSupplyRoom | T::NoExtractRoom => {
                Severity::Stops
            }
            T::AreaMissing => Severity::Stops,
            T::RoomsExceedFloor { .. }
            | T::OutsideEquation { .. }
            | T::BeyondTable { .. }
            | T::RunTimeNotAllowed { .. }
            | T::CreditRefused(_)
            | T::OpenKitchenContinuous
            | T::NeverServed
            | T::AboveMost { .. }
            | T::CheckFails(_)
            | T::OpenFlue
            | T::DrawsDown { .. }
            | T::UnitWeak { .. }
            | T::BoostFallsShort { .. } => Severity::OutsideRule,
            T::SeldomRight { .. }
            | T::LongName { .. }
            | T::NoBedrooms
            | T::ManyRooms { .. }
            | T::AreaTwice
            | T::ManyTubes { .. }
            | T::RunTakesMuch { .. }
            | T::LongerThanCoil { .. }
            | T::Loud { level: Level::Normal, .. }
            | T::VoiceHeard { .. }
            | T::StuffyNight { .. }
            | T::UndercutTall { .. } => Severity::Unusual,
            T::BetweenRows { .. } | T::NoAwayRate | T::StepsRaiseTotal { .. } | T::Loud { .. } => Severity::Note,
        }
    }
}
