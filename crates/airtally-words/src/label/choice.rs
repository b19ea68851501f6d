//! What can be chosen.

use airtally::house::WetRooms;
use airtally::house::{
    Building, Credit, Display, Failing, Fans, Fuel, Joist, KitchenDraw, Manifolds, Outlets, Print, Stud, Table,
    TubeSize,
};
use airtally::rules::RuleSet;

/// A rule set with its country.
pub const fn rules(rules: RuleSet) -> &'static str {
    match rules {
        RuleSet::Adf2021 => "England · Approved Document F 2021",
        RuleSet::Din2019 => "Germany · DIN 1946-6, 2019",
        RuleSet::Din2009 => "Germany · DIN 1946-6, 2009",
        RuleSet::Ashrae2016 => "USA · ASHRAE 62.2, 2016 to 2022",
        RuleSet::Irc2024 => "USA · IRC 2024",
        RuleSet::Irc2021 => "USA · IRC 2021",
        RuleSet::Irc2018 => "USA · IRC 2018",
        RuleSet::Irc2015 => "USA · IRC 2015",
        RuleSet::Canada => "Canada · CAN/CSA-F326 room count",
        RuleSet::Ireland2019 => "Ireland · TGD F 2019",
        RuleSet::Netherlands2012 => "Netherlands · Bouwbesluit 2012",
        RuleSet::France1982 => "France · order of 24 March 1982",
        RuleSet::En16798 => "Europe · EN 16798-1:2019",
        RuleSet::PassiveHouse => "Passive house criteria",
        RuleSet::Ashrae2013 => "USA · ASHRAE 62.2, 2013",
        RuleSet::Ashrae2010 => "USA · ASHRAE 62.2, 2010",
        RuleSet::Washington2021 => "USA · Washington State 2021",
        RuleSet::Imc => "USA · IMC",
        RuleSet::CanadaNbc => "Canada · NBC bedroom table",
    }
}

/// Units of display.
pub const fn display(display: Display) -> &'static str {
    match display {
        Display::CubicMetres => "m³/h and metres",
        Display::Litres => "L/s and metres",
        Display::CubicFeet => "cfm and feet",
    }
}

/// How wet rooms get their exhaust.
pub const fn wet_rooms(wet: WetRooms) -> &'static str {
    match wet {
        WetRooms::Continuous => "A steady rate all day",
        WetRooms::OnDemand => "A higher rate on demand",
    }
}

/// Who exhausts the kitchen.
pub const fn kitchen_draw(draw: KitchenDraw) -> &'static str {
    match draw {
        KitchenDraw::System => "This system",
        KitchenDraw::Hood => "A hood of its own to outdoors",
    }
}

/// Whether a credit is claimed.
pub const fn credit(credit: Credit) -> &'static str {
    match credit {
        Credit::Without => "No credit",
        Credit::Claimed => "Claim the credit, if its conditions are met",
    }
}

/// Printed table or equation.
pub const fn table(table: Table) -> &'static str {
    match table {
        Table::Table => "The printed table",
        Table::Equation => "The equation",
    }
}

/// When nothing is chosen.
pub const fn rule_default() -> &'static str {
    "As the rule set has it"
}

/// When nobody has looked or asked yet.
pub const fn not_known() -> &'static str {
    "Not known yet"
}

/// Printed coefficients.
pub const fn print(print: Print) -> &'static str {
    match print {
        Print::InchPound => "The inch-pound print",
        Print::Si => "The SI print",
    }
}

/// A tube by its outside diameter.
pub const fn tube(tube: TubeSize) -> &'static str {
    match tube {
        TubeSize::Od63 => "63 mm tube",
        TubeSize::Od75 => "75 mm tube",
        TubeSize::Od90 => "90 mm tube",
        TubeSize::Oval => "flat oval tube, 138 × 52 mm",
    }
}

/// What the joists are.
pub const fn joist(joist: Joist) -> &'static str {
    match joist {
        Joist::Solid => "Solid timber",
        Joist::Engineered => "I-joists, LVL or glued timber",
        Joist::Truss => "Trusses",
        Joist::Steel => "Steel",
        Joist::Concrete => "Concrete, no joists",
    }
}

/// What the studs are.
pub const fn stud(stud: Stud) -> &'static str {
    match stud {
        Stud::Bearing => "Bearing, or in an outside wall",
        Stud::Doubled => "The same, doubled: two in a row at most",
        Stud::Partition => "Bearing nothing",
    }
}

/// What burns fuel.
pub const fn fuel(fuel: Fuel) -> &'static str {
    match fuel {
        Fuel::Nothing => "Nothing",
        Fuel::Sealed => "Only what takes its air from outdoors",
        Fuel::Gas => "Gas or oil with an open flue",
        Fuel::Solid => "A stove or an open fire",
    }
}

/// New or lived in.
pub const fn building(building: Building) -> &'static str {
    match building {
        Building::New => "New, or gutted",
        Building::Old => "Lived in",
    }
}

/// The outside terminals.
pub const fn outlets(outlets: Outlets) -> &'static str {
    match outlets {
        Outlets::Apart => "Two, apart",
        Outlets::Combined => "One combined terminal, factory-built",
        Outlets::Sides => "Two, on different sides of the house",
    }
}

/// What the unit holds.
pub const fn fans(fans: Fans) -> &'static str {
    match fans {
        Fans::Flow => "Its flow",
        Fans::Speed => "The speed of its fans",
    }
}

/// Where the manifolds stand.
pub const fn manifolds(manifolds: Manifolds) -> &'static str {
    match manifolds {
        Manifolds::One => "One for each air, beside the unit",
        Manifolds::Storeys => "One for each air on every storey",
    }
}

/// When one fan fails.
pub const fn failing(failing: Failing) -> &'static str {
    match failing {
        Failing::NotKnown => "Not known: the other may run on",
        Failing::BothStop => "Both fans stop",
    }
}
