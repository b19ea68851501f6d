//! What can be done about an issue.

use super::typed::kind_at;
use airtally::issue::{Condition, Issue, Trouble};
use airtally::quantity::{Kind, ParseError};

/// What to do, or what would be accepted. `None` where the sentence says it all.
pub fn hint(issue: &Issue) -> Option<String> {
    hint_for(issue.trouble, kind_at(issue.place))
}

/// The same for a field that asks for this kind.
pub fn hint_for(trouble: Trouble, kind: Option<Kind>) -> Option<String> {
    let text = match trouble {
        Trouble::Unreadable(error) => return Some(reading(error, kind)),
        Trouble::OutOfRange { .. } => "Until it is mended the field counts as empty.",
        Trouble::SeldomRight { .. } => "Check the number and its unit.",
        Trouble::LongName { .. } => "A shorter name fits on labels and drawings.",
        Trouble::NoRooms => "Add the rooms one by one, or begin with one of the demo houses.",
        Trouble::NoBedrooms => "Add a bedroom if there is one.",
        Trouble::NoSupplyRoom => "Add a living room or a bedroom.",
        Trouble::NoExtractRoom => "Add a kitchen, a bathroom or a WC.",
        Trouble::ManyRooms { .. } => "A house with several dwellings needs one sheet for each.",
        Trouble::AreaMissing => "Type its floor area, or its length and width.",
        Trouble::AreaTwice => "Mend one of them, or clear length and width.",
        Trouble::RoomsExceedFloor { .. } => "Check the rooms, or clear the floor area of the house.",
        Trouble::NeverServed => {
            "Seal it off as the local code asks. A fire that draws its air from indoors needs a licensed fitter's check and a CO alarm."
        }
        Trouble::BetweenRows { .. } => "Check the area; a little more or less may mean another rate.",
        Trouble::OutsideEquation { .. } => "Check the rate against the number of people.",
        Trouble::BeyondTable { .. } => "Another method of the rule applies; ask the local authority.",
        Trouble::RunTimeNotAllowed { .. } => "Type a longer running time, or clear the field.",
        Trouble::CreditRefused(condition) => condition_met(condition),
        Trouble::OpenKitchenContinuous => "A hood of its own to outdoors is the usual way.",
        Trouble::NoAwayRate => return None,
        Trouble::StepsRaiseTotal { .. } => "A smaller step of the terminals brings it closer.",
        Trouble::AboveMost { .. } => {
            "A smaller system or another method of the rule may apply; ask the local authority."
        }
        Trouble::BoostFallsShort { .. } => "Set its valve for boost, or raise boost as a whole.",
        Trouble::RunTakesMuch { .. } => "A second tube or the next wider one cures it.",
        Trouble::Loud { .. } => {
            "A longer silencer, a quieter unit, or slower air; type the unit's own data when you have them."
        }
        Trouble::VoiceHeard { .. } => "A lined manifold, or a silencer in one of the two runs.",
        Trouble::PointUnread { .. } => {
            "A point is a flow, a colon and a pressure, like 30: 9; points are apart by semicolons."
        }
        Trouble::FewPoints => "Read a second point off the sheet.",
        Trouble::CurveFalls(_) => "More air always takes more pressure: read the point again.",
        Trouble::FanRises { .. } => "Leave out the points left of the hump: there the fan would hunt.",
        Trouble::UnitWeak { .. } => "A larger unit, wider mains or tubes, or a shorter way.",
        Trouble::LongerThanCoil { .. } => "No joint may be hidden: order a longer coil, or move the manifold.",
        Trouble::ManyTubes { .. } => "A wider tube or a second terminal may serve better.",
        Trouble::StuffyNight { .. } => "Give it more supply air, or leave the door open at night.",
        Trouble::CheckFails(_) => return None,
        Trouble::OpenFlue => {
            "Type the air changes at 50 Pa and the floor areas. Buy nothing before a certified heating engineer or the chimney sweep has decided."
        }
        Trouble::DrawsDown { .. } => {
            "Buy nothing before a certified heating engineer or the chimney sweep has decided. A unit that stops both \
             fans, or an appliance that takes its air from outdoors, may be the way."
        }
        Trouble::UndercutTall { .. } => "Use a transfer grille beside or above the door.",
    };
    Some(text.to_owned())
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

const fn condition_met(condition: Condition) -> &'static str {
    match condition {
        Condition::NotInEdition => "Another edition may have one; see which is in force where the house stands.",
        Condition::LivingDiningKitchen => "Bring supply air to one of them.",
        Condition::Tightness => "Type the result of the blower-door test.",
        Condition::WeatherFactor => "Type the factor of the nearest weather station.",
        Condition::EnvelopeHeight => "Type the height from the lowest to the highest point above ground.",
        Condition::Volume => "Type the floor areas.",
    }
}
