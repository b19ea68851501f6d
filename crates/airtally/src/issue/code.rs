//! What other programs call each trouble.

use super::Trouble;

impl Trouble {
    /// A stable code.
    pub const fn code(&self) -> &'static str {
        use Trouble as T;
        match self {
            T::Unreadable(_) => "unreadable",
            T::OutOfRange { .. } => "out-of-range",
            T::SeldomRight { .. } => "seldom-right",
            T::LongName { .. } => "long-name",
            T::NoRooms => "no-rooms",
            T::NoBedrooms => "no-bedrooms",
            T::NoSupplyRoom => "no-supply-room",
            T::NoExtractRoom => "no-extract-room",
            T::ManyRooms { .. } => "many-rooms",
            T::AreaMissing => "area-missing",
            T::AreaTwice => "area-twice",
            T::RoomsExceedFloor { .. } => "rooms-exceed-floor",
            T::NeverServed => "never-served",
            T::BetweenRows { .. } => "between-rows",
            T::OutsideEquation { .. } => "outside-equation",
            T::BeyondTable { .. } => "beyond-table",
            T::RunTimeNotAllowed { .. } => "run-time-not-allowed",
            T::CreditRefused(_) => "credit-refused",
            T::OpenKitchenContinuous => "open-kitchen-continuous",
            T::NoAwayRate => "no-away-rate",
            T::StepsRaiseTotal { .. } => "steps-raise-total",
            T::AboveMost { .. } => "above-most",
            T::BoostFallsShort { .. } => "boost-falls-short",
            T::ManyTubes { .. } => "many-tubes",
            T::RunTakesMuch { .. } => "run-takes-much",
            T::PointUnread { .. } => "point-unread",
            T::FewPoints => "few-points",
            T::CurveRises { .. } => "curve-rises",
            T::CurveFalls(_) => "curve-falls",
            T::UnitWeak { .. } => "unit-weak",
            T::LongerThanCoil { .. } => "longer-than-coil",
            T::Loud { .. } => "loud",
            T::VoiceHeard { .. } => "voice-heard",
            T::StuffyNight { .. } => "stuffy-night",
            T::UndercutTall { .. } => "undercut-tall",
            T::CheckFails(check) => check.id(),
            T::OpenFlue => "open-flue",
            T::DrawsDown { .. } => "draws-down",
        }
    }
}
