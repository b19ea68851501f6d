//! What is wrong or doubtful, in sentences: what it is, where, and what would be accepted.

mod advice;
mod typed;

#[cfg(test)]
mod tests;

#[cfg(test)]
pub(crate) use advice::Advice;
pub use advice::{hint, hint_for};
pub use typed::Typed;

use crate::book::book;
use crate::{format, label, room};
use airtally::house::{Display, Field, House};
use airtally::id::CheckRule;
use airtally::issue::{Condition, Issue, Place, Trouble};
use airtally::quantity::{Area, Flow, Length, Unit};
use airtally::rules::Level;

/// What is wrong, where, and what would be accepted.
pub fn sentence(issue: &Issue, house: &House) -> String {
    let display = house.choices.display;
    let place = place(issue.place, house);
    match issue.trouble {
        Trouble::Unreadable(_)
        | Trouble::OutOfRange { .. }
        | Trouble::SeldomRight { .. }
        | Trouble::LongName { .. } => about_typed(issue.trouble, &Typed::at(issue.place, house)),
        Trouble::NoRooms => "No room has been entered yet.".to_owned(),
        Trouble::NoBedrooms => "No bedroom has been entered; the rate counts one.".to_owned(),
        Trouble::NoSupplyRoom => "No room takes supply air, so no air can be shared out.".to_owned(),
        Trouble::NoExtractRoom => "No room is drawn from, so no air can be shared out.".to_owned(),
        Trouble::ManyRooms { count } => format!("{} rooms are a lot for one dwelling.", format::count(count)),
        Trouble::AreaMissing => format!("{place} has no floor area; totals that need it are too low."),
        Trouble::AreaTwice => format!("{place}: the floor area and length × width differ; the floor area is used."),
        Trouble::RoomsExceedFloor { rooms } => rooms_exceed_floor(rooms, display),
        Trouble::NeverServed => format!("{place} is never connected to the system; it is left out."),
        Trouble::BetweenRows { area } => between_rows(area),
        Trouble::OutsideEquation { min, max } => outside_equation(min, max, display),
        Trouble::BeyondTable { most } => format!("The rule's table ends at {} bedrooms.", format::count(most)),
        Trouble::RunTimeNotAllowed { min } => run_time(min),
        Trouble::CreditRefused(condition) => format!("The credit is not given: {}.", missing(condition)),
        Trouble::OpenKitchenContinuous => {
            "The rule has no steady rate for a kitchen that is open to other rooms; its rate on demand is used."
                .to_owned()
        }
        Trouble::NoAwayRate => {
            "The rule names no lower rate for an empty house; away is the same as normal.".to_owned()
        }
        Trouble::StepsRaiseTotal { level, by } => steps_raise_total(level, by, display),
        Trouble::AboveMost { total, most } => above_most(total, most, display),
        Trouble::BoostFallsShort { gets, needs } => boost_falls_short(&place, gets, needs, display),
        Trouble::RunTakesMuch { .. }
        | Trouble::Loud { .. }
        | Trouble::VoiceHeard { .. }
        | Trouble::PointUnread { .. }
        | Trouble::FewPoints
        | Trouble::CurveRises { .. }
        | Trouble::CurveFalls(_)
        | Trouble::UnitWeak { .. }
        | Trouble::LongerThanCoil { .. } => about_ducts(issue.trouble, &place),
        Trouble::ManyTubes { count } => format!("{place}: {} tubes to one room are a lot.", format::count(count)),
        Trouble::StuffyNight { ppm, limit } => stuffy_night(&place, ppm, limit),
        Trouble::UndercutTall { mm } => undercut_tall(&place, mm, display),
        Trouble::CheckFails(check) => check_fails(check).to_owned(),
        Trouble::OpenFlue => {
            "Something here takes its air from the house, and how far this system may draw the house down is not known."
                .to_owned()
        }
        Trouble::DrawsDown { pa, most } => draws_down(pa, most),
    }
}

/// What tubes, fans and their sound are about; empty for any other trouble.
fn about_ducts(trouble: Trouble, place: &str) -> String {
    match trouble {
        Trouble::RunTakesMuch { pascal, limit } => format!(
            "{place}: the run takes {}, and {} is a lot.",
            format::text(pascal, Unit::Pascal),
            format::text(limit, Unit::Pascal)
        ),
        Trouble::Loud { level, decibel, limit } => format!(
            "{place}: at {} {} by the estimate, and {} is the most that is quiet.",
            label::level(level).to_ascii_lowercase(),
            format::text(decibel, Unit::DecibelA),
            format::text(limit, Unit::DecibelA)
        ),
        Trouble::VoiceHeard { decibel, limit } => format!(
            "{place}: a voice in another room comes through the tubes with {}, and {} is the most.",
            format::text(decibel, Unit::DecibelA),
            format::text(limit, Unit::DecibelA)
        ),
        Trouble::PointUnread { point } => format!("{place}: point {} cannot be read.", format::count(point)),
        Trouble::FewPoints => format!("{place} needs two points or more."),
        Trouble::CurveFalls(point) => {
            format!("{place}: at point {} the pressure is not higher than before it.", format::count(point))
        }
        Trouble::CurveRises { point } => {
            format!("{place}: at point {} the pressure is higher than before it.", format::count(point))
        }
        Trouble::UnitWeak { gives, needs } => format!(
            "{place}: at boost the unit gives {} outside itself, and the ducts take {}.",
            format::text(gives, Unit::Pascal),
            format::text(needs, Unit::Pascal)
        ),
        Trouble::LongerThanCoil { metres, coil } => format!(
            "{place}: a tube of {} is longer than a coil of {}.",
            format::text(metres, Unit::Metre),
            format::text(coil, Unit::Metre)
        ),
        _ => String::new(),
    }
}

/// What is wrong with what was typed into one field, and what would be accepted; empty for any other trouble.
pub fn about_typed(trouble: Trouble, field: &Typed) -> String {
    match trouble {
        Trouble::Unreadable(error) => typed::unreadable(error, field),
        Trouble::OutOfRange { min, max, unit } => typed::out_of_range((min, max, unit), field),
        Trouble::SeldomRight { min, max, unit } => typed::seldom_right((min, max, unit), field),
        Trouble::LongName { length, fits } => typed::long_name(length, fits, field),
        _ => String::new(),
    }
}

/// The same beside the field it is about, where the room need not be named.
pub fn beside(issue: &Issue, house: &House) -> String {
    let words = sentence(issue, house);
    let Place::Field(field) = issue.place else { return words };
    let rest = words.strip_prefix(&field_name(field, house)).map(str::to_owned);
    rest.map_or(words, |rest| [label::field(field).name, &rest].concat())
}

/// What an issue is about, as the first words of a sentence.
pub fn place(place: Place, house: &House) -> String {
    match place {
        Place::House => "The house".to_owned(),
        Place::Room(id) => typed::shortened(&room::name(house, id)),
        Place::Field(field) => field_name(field, house),
    }
}

fn field_name(field: Field, house: &House) -> String {
    let name = label::field(field).name;
    match field {
        Field::Room(id, _) => format!("{name} of {}", typed::shortened(&room::name(house, id))),
        Field::Price(part) => match book() {
            Some(book) => [name, ", ", book.part(part).name].concat(),
            None => name.to_owned(),
        },
        Field::RoomName(_) | Field::HouseName | Field::House(_) | Field::Given(_) | Field::Curve(_) => name.to_owned(),
    }
}

fn rooms_exceed_floor(rooms: f64, display: Display) -> String {
    let rooms = format::area(Area::from_m2(rooms), display);
    format!("The rooms together have {rooms}, more than the floor area typed for the house. One of them is wrong.")
}

fn between_rows(area: f64) -> String {
    let area = format::text(area, Unit::SquareFoot);
    format!(
        "{area} lies between two printed rows of the table. On the edge the smaller row counts, past it the larger."
    )
}

fn outside_equation(min: f64, max: f64, display: Display) -> String {
    let shown = |m2| format::area(Area::from_m2(m2), display);
    let (min, max) = (shown(min), shown(max));
    format!("The rule's equation holds for floor areas from {min} to {max}; the nearer end is used.")
}

fn run_time(min: f64) -> String {
    let min = format::text(min, Unit::Percent);
    format!("The rule allows no running time below {min}; the rate shown is for running all day.")
}

fn steps_raise_total(level: Level, by: f64, display: Display) -> String {
    let (level, by) = (label::level(level).to_ascii_lowercase(), format::flow(Flow::from_m3h(by), display));
    format!("At {level}, minimums and whole steps together make the total {by} more than the rule asks.")
}

fn above_most(total: f64, most: f64, display: Display) -> String {
    let shown = |m3h| format::flow(Flow::from_m3h(m3h), display);
    let (total, most) = (shown(total), shown(most));
    format!("At normal {total} are set, and the rule allows {most} at most.")
}

fn boost_falls_short(place: &str, gets: f64, needs: f64, display: Display) -> String {
    let shown = |m3h| format::flow(Flow::from_m3h(m3h), display);
    let (gets, needs) = (shown(gets), shown(needs));
    format!("{place}: with valves set at normal, boost brings {gets}, and the rule asks for {needs}.")
}

fn stuffy_night(place: &str, ppm: f64, limit: f64) -> String {
    let shown = |ppm| format::text(ppm, Unit::PartPerMillion);
    let (ppm, limit) = (shown(ppm), shown(limit));
    format!("{place}: CO₂ reaches {ppm} by morning with the door shut, more than {limit}.")
}

fn undercut_tall(place: &str, mm: f64, display: Display) -> String {
    let gap = format::small_length(Length::from_mm(mm), display);
    format!("{place}: the gap under the door would have to be {gap}, more than a door usually gives.")
}

fn draws_down(pa: f64, most: f64) -> String {
    let shown = |pa| format::text(pa, Unit::Pascal);
    let (pa, most) = (shown(pa), shown(most));
    format!("At worst the house is drawn to {pa} below outdoors; beside an open flue {most} is the most.")
}

/// The first line of a check's chapter. Without the book it is only said where to look.
fn check_fails(check: CheckRule) -> &'static str {
    let said = book().and_then(|book| book.check_lines(check, '-').next());
    said.unwrap_or("Something found on site is not as it must be: look at the steps.")
}

/// What a credit needs.
pub(crate) const fn missing(condition: Condition) -> &'static str {
    match condition {
        Condition::NotInEdition => "this edition prints none",
        Condition::LivingDiningKitchen => {
            "outdoor air must also be ducted to a living room, dining room or open kitchen"
        }
        Condition::Tightness => "it needs the air changes at 50 Pa",
        Condition::WeatherFactor => "it needs the weather and shielding factor",
        Condition::EnvelopeHeight => "it needs the height of the envelope",
        Condition::Volume => "it needs the volume of the house",
    }
}
