//! Crossings, cables, and what was changed on site, in words.

use super::marks;
use crate::{format, label, room};
use airtally::house::{Display, House};
use airtally::quantity::Unit;
use airtally::steps::{Change, Item, Listed};

/// A thing on the list of a step: a crossing, or a cable with both ends.
pub fn listed(it: &Listed, house: &House) -> String {
    let room = || it.key.room.map(|room| room::name(house, room)).unwrap_or_default();
    match it.key.item {
        Some(Item::OutdoorDuct) => "Outdoor duct through the outside wall or roof: air barrier".to_owned(),
        Some(Item::ExhaustDuct) => "Exhaust duct through the outside wall or roof: air barrier".to_owned(),
        Some(Item::Floor(storey)) => {
            let storey = label::storey(storey).to_ascii_lowercase();
            format!("Floor under “{storey}”: {} to rooms above; a fire line?", format::tubes(it.tubes))
        }
        Some(Item::BoostSwitch) => ["Boost switch, ", &room(), ", to the unit"].concat(),
        Some(Item::HumiditySensor) => ["Humidity sensor, ", &room(), ", to the unit"].concat(),
        Some(Item::Panel) => "Control panel, where people pass, to the unit".to_owned(),
        Some(Item::Isolator) => {
            "Supply from the board to the isolator in sight of the unit: licensed electrician".to_owned()
        }
        None => String::new(),
    }
}

/// A run as planned and as pulled: `S2 Main bedroom: ran 12.1 m, 9.4 m planned`.
pub fn change(change: &Change, house: &House, display: Display) -> String {
    let metres = |length: Option<f64>| length.map(|m| format::in_display(m, Unit::Metre, display).to_string());
    let [planned, ran] = change.length.map(metres);
    let mut said = vec![];
    if let Some(ran) = ran {
        let planned = planned.map_or_else(|| "not measured before".to_owned(), |planned| format!("{planned} planned"));
        said.push(format!("ran {ran}, {planned}"));
    }
    let [planned, pulled] = change.tubes;
    if planned != pulled {
        said.push(format!("{} pulled, {} planned", format::tubes(pulled), format::count(planned)));
    }
    format!("{} {}: {}", marks(change.air, change.mark, 1), room::name(house, change.room), said.join("; "))
}

#[cfg(test)]
mod tests {
    use super::*;
    use airtally::rules::Air;

    #[test]
    fn a_change_says_what_was_planned() {
        let house = crate::demo::larkfield();
        let room = house.rooms[0].id;
        let longer = Change { room, air: Air::Supply, mark: 2, length: [Some(9.4), Some(12.1)], tubes: [2, 1] };
        let said = change(&longer, &house, Display::CubicMetres).replace('\u{a0}', " ");
        assert_eq!(said, "S2 Living room: ran 12.1 m, 9.4 m planned; 1 tube pulled, 2 planned");
    }
}
