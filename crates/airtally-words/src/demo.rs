//! Invented houses to try things on.

mod build;

#[cfg(test)]
mod tests;

use airtally::given::GivenId;
use airtally::house::{Choices, Display, House, HouseField, KitchenDraw, RoomField, RoomKind};
use airtally::rules::RuleSet;
use build::Builder;

/// A house to try things on, by name.
pub struct Demo {
    /// What the button says.
    pub title: &'static str,
    /// What is special about it.
    pub hint: &'static str,
    /// The house.
    pub house: fn() -> House,
}

/// Those beside the first one. A page takes them from the book, by name: as code they would weigh on every first visit.
pub const OTHERS: [&str; 3] = ["Five bedrooms", "One-bedroom flat", "A hard case"];

/// All of them, hardest last.
pub static DEMOS: [Demo; 4] = [
    Demo { title: "Larkfield", hint: "Two storeys, three bedrooms, runs measured", house: larkfield },
    Demo { title: OTHERS[0], hint: "Three storeys, two bathrooms", house: five_bedrooms },
    Demo { title: OTHERS[1], hint: "Kitchen and living room in one", house: flat },
    Demo { title: OTHERS[2], hint: "Long runs, an open fire, feet and cfm", house: hard_case },
];

/// A timber-frame house on two storeys, 148 m², runs measured.
pub fn larkfield() -> House {
    let choices = Choices { rules: RuleSet::Adf2021, display: Display::CubicMetres, ..Choices::default() };
    Builder::new("Larkfield", choices)
        .house(HouseField::FloorArea, "148")
        .house(HouseField::Ceiling, "2.5")
        .house(HouseField::Ach50, "0.8")
        .room(RoomKind::Living, ("Living room", 0), "28", &[(RoomField::SupplyRun, "3.2 + 1.4 + 2.6, 3 bends")])
        .room(RoomKind::Kitchen, ("Kitchen-dining", 0), "22", &[(RoomField::ExtractRun, "2.4 + 1.2 + 1.8")])
        .room(RoomKind::Wc, ("WC", 0), "2.2", &[(RoomField::ExtractRun, "1.6 + 2.1")])
        .room(RoomKind::Utility, ("Utility", 0), "6", &[(RoomField::ExtractRun, "0.8 + 1.1")])
        .room(RoomKind::Hall, ("Hall", 0), "12", &[])
        .room(
            RoomKind::MainBedroom,
            ("Main bedroom", 1),
            "16",
            &[(RoomField::Sleepers, "2"), (RoomField::SupplyRun, "2.7 + 4.1 + 1.9")],
        )
        .room(RoomKind::Bedroom, ("Bedroom two", 1), "12", &[(RoomField::SupplyRun, "2.7 + 5.3 + 0.9, 4 bends")])
        .room(RoomKind::Bedroom, ("Bedroom three", 1), "10", &[(RoomField::SupplyRun, "2.7 + 3.4 + 2.2")])
        .room(RoomKind::Bathroom, ("Bathroom", 1), "7", &[(RoomField::ExtractRun, "2.7 + 2.5 + 0.6")])
        .room(RoomKind::Study, ("Study", 1), "9", &[(RoomField::SupplyRun, "2.7 + 2.9 + 1.3")])
        .room(RoomKind::Hall, ("Landing", 1), "10", &[])
        .done()
}

/// A small flat with one bedroom.
pub fn flat() -> House {
    let choices = Choices { rules: RuleSet::Adf2021, display: Display::CubicMetres, ..Choices::default() };
    Builder::new("One-bedroom flat", choices)
        .house(HouseField::FloorArea, "46")
        .house(HouseField::Ceiling, "2.4")
        .room(RoomKind::LivingKitchen, ("", 0), "24", &[])
        .room(RoomKind::MainBedroom, ("", 0), "12.5", &[])
        .room(RoomKind::Bathroom, ("", 0), "4.4", &[])
        .room(RoomKind::Hall, ("", 0), "4.2", &[])
        .done()
}

/// A house with five bedrooms on three storeys, in L/s under the German standard.
pub fn five_bedrooms() -> House {
    let choices = Choices { rules: RuleSet::Din2019, display: Display::Litres, ..Choices::default() };
    Builder::new("Five bedrooms", choices)
        .house(HouseField::Ceiling, "2.55")
        .room(RoomKind::Living, ("", 0), "34", &[])
        .room(RoomKind::Kitchen, ("", 0), "18", &[])
        .room(RoomKind::Dining, ("", 0), "16", &[])
        .room(RoomKind::Utility, ("", 0), "8", &[])
        .room(RoomKind::Wc, ("", 0), "2.4", &[])
        .room(RoomKind::Hall, ("", 0), "14", &[])
        .room(RoomKind::MainBedroom, ("", 1), "19", &[])
        .room(RoomKind::Bedroom, ("", 1), "14", &[])
        .room(RoomKind::Bedroom, ("", 1), "13", &[])
        .room(RoomKind::Bathroom, ("Family bathroom", 1), "9", &[])
        .room(RoomKind::Hall, ("Landing", 1), "11", &[])
        .room(RoomKind::Bedroom, ("", 2), "15", &[])
        .room(RoomKind::Bedroom, ("", 2), "12", &[])
        .room(RoomKind::Bathroom, ("Shower room", 2), "5", &[])
        .room(RoomKind::Hall, ("Top landing", 2), "6", &[])
        .done()
}

/// A mountain house with long runs and an open fire, in feet and cfm.
pub fn hard_case() -> House {
    let rules = RuleSet::Irc2021;
    let kitchen = Some(KitchenDraw::Hood);
    Builder::new("High ridge house", Choices { rules, display: Display::CubicFeet, kitchen, ..Choices::default() })
        .house(HouseField::FloorArea, "2 460")
        .house(HouseField::Ceiling, "9")
        .house(HouseField::Ach50, "1.6")
        .given(GivenId::Altitude, "1850")
        .room(RoomKind::Living, ("Great room", 0), "520", &[(RoomField::SupplyRun, "24 + 18 + 11 ft 6 in, 5 bends")])
        .room(RoomKind::Garage, ("Room with the open fire", 0), "260", &[])
        .room(RoomKind::Kitchen, ("", 0), "240", &[(RoomField::ExtractRun, "31 + 12")])
        .room(RoomKind::Bathroom, ("Lower bathroom", 0), "62", &[(RoomField::ExtractRun, "40 + 9 + 6")])
        .room(RoomKind::Hall, ("", 0), "170", &[])
        .room(RoomKind::MainBedroom, ("", 1), "290", &[(RoomField::SupplyRun, "10 + 36 + 12")])
        .room(RoomKind::Bedroom, ("", 1), "185", &[(RoomField::Sleepers, "2"), (RoomField::SupplyRun, "10 + 44 + 8")])
        .room(RoomKind::Bedroom, ("", 1), "170", &[(RoomField::SupplyRun, "10 + 52 + 6, 4 bends, 2 bends 45°")])
        .room(RoomKind::Study, ("", 1), "140", &[(RoomField::SupplyRun, "10 + 28 + 5")])
        .room(RoomKind::Bathroom, ("Upper bathroom", 1), "85", &[(RoomField::ExtractRun, "10 + 30 + 4")])
        .room(RoomKind::Basement, ("", -1), "300", &[(RoomField::SupplyRun, "9 + 16")])
        .done()
}
