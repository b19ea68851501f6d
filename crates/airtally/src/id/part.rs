//! What a house is built of, by name: what prices hang on.

use crate::quantity::Unit;

/// A part, or hours of work. Descriptions are generic; sizes come with the take-off.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Part {
    /// The heat recovery unit.
    Unit,
    /// A set of filters to keep beside it.
    Filters,
    /// A silencer.
    Silencer,
    /// The trap of the condensate.
    Trap,
    /// The drain pipe, by the metre.
    Drain,
    /// Tube, by the metre.
    Tube,
    /// The manifold of the supply tubes.
    SupplyManifold,
    /// The manifold of the extract tubes.
    ExtractManifold,
    /// A cap on a spare port.
    PortCap,
    /// A sealing ring with its lock, at each end of a tube.
    SealRing,
    /// A plate with a hole that throttles a tube.
    Restrictor,
    /// A strap that holds a tube.
    Strap,
    /// The box that joins a room's tubes behind its valve.
    ValveBox,
    /// A supply valve.
    SupplyValve,
    /// An extract valve.
    ExtractValve,
    /// The grease filter of a kitchen's valve.
    GreaseFilter,
    /// Mains between unit and manifolds, by the metre.
    Main,
    /// Ducts between unit and outdoors, by the metre.
    OutsideDuct,
    /// A right-angle bend of these.
    Bend,
    /// Closed-cell insulation of the outside ducts, by the metre.
    Insulation,
    /// The intake outdoors.
    Intake,
    /// The exhaust outdoors.
    Exhaust,
    /// A sleeve through the outside wall.
    Sleeve,
    /// A bracket that holds a main or an outside duct.
    Bracket,
    /// Sealing tape or mastic of a joint.
    Joint,
    /// A boost switch with its cable.
    BoostSwitch,
    /// A humidity sensor with its cable.
    HumiditySensor,
    /// The control panel with its cable.
    Panel,
    /// The isolator with its supply.
    Isolator,
    /// Hours of setting out and drilling.
    SettingOut,
    /// Hours of pulling tubes.
    Pulling,
    /// Hours of fixing boxes and valves.
    Fixing,
    /// Hours of hanging the unit, manifolds and mains.
    Hanging,
    /// Hours of the outside ducts and the drain.
    Outside,
    /// Hours of testing, measuring and handing over.
    Measuring,
}

/// Parts that stand together on a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Group {
    /// The unit with what belongs to it.
    Unit,
    /// Tubes and manifolds.
    Tubes,
    /// What is in the rooms.
    Rooms,
    /// Mains and the way outdoors.
    Mains,
    /// Switches, sensors, supply.
    Controls,
    /// Hours of work.
    Work,
}

impl Group {
    /// All of them, in the order of a list.
    pub const ALL: [Self; 6] = [Self::Unit, Self::Tubes, Self::Rooms, Self::Mains, Self::Controls, Self::Work];
}

/// Part, id in files, what it is counted in, group.
type Row = (Part, &'static str, Unit, Group);

use Group as G;
use Part as P;

/// In the order of [`Part`].
static TABLE: [Row; 35] = [
    (P::Unit, "unit", Unit::Count, G::Unit),
    (P::Filters, "filters", Unit::Count, G::Unit),
    (P::Silencer, "silencer", Unit::Count, G::Unit),
    (P::Trap, "trap", Unit::Count, G::Unit),
    (P::Drain, "drain", Unit::Metre, G::Unit),
    (P::Tube, "tube", Unit::Metre, G::Tubes),
    (P::SupplyManifold, "supply-manifold", Unit::Count, G::Tubes),
    (P::ExtractManifold, "extract-manifold", Unit::Count, G::Tubes),
    (P::PortCap, "port-cap", Unit::Count, G::Tubes),
    (P::SealRing, "seal-ring", Unit::Count, G::Tubes),
    (P::Restrictor, "restrictor", Unit::Count, G::Tubes),
    (P::Strap, "strap", Unit::Count, G::Tubes),
    (P::ValveBox, "valve-box", Unit::Count, G::Rooms),
    (P::SupplyValve, "supply-valve", Unit::Count, G::Rooms),
    (P::ExtractValve, "extract-valve", Unit::Count, G::Rooms),
    (P::GreaseFilter, "grease-filter", Unit::Count, G::Rooms),
    (P::Main, "main", Unit::Metre, G::Mains),
    (P::OutsideDuct, "outside-duct", Unit::Metre, G::Mains),
    (P::Bend, "bend", Unit::Count, G::Mains),
    (P::Insulation, "insulation", Unit::Metre, G::Mains),
    (P::Intake, "intake", Unit::Count, G::Mains),
    (P::Exhaust, "exhaust", Unit::Count, G::Mains),
    (P::Sleeve, "sleeve", Unit::Count, G::Mains),
    (P::Bracket, "bracket", Unit::Count, G::Mains),
    (P::Joint, "joint", Unit::Count, G::Mains),
    (P::BoostSwitch, "boost-switch", Unit::Count, G::Controls),
    (P::HumiditySensor, "humidity-sensor", Unit::Count, G::Controls),
    (P::Panel, "panel", Unit::Count, G::Controls),
    (P::Isolator, "isolator", Unit::Count, G::Controls),
    (P::SettingOut, "setting-out", Unit::Hour, G::Work),
    (P::Pulling, "pulling", Unit::Hour, G::Work),
    (P::Fixing, "fixing", Unit::Hour, G::Work),
    (P::Hanging, "hanging", Unit::Hour, G::Work),
    (P::Outside, "outside", Unit::Hour, G::Work),
    (P::Measuring, "measuring", Unit::Hour, G::Work),
];

impl Part {
    /// All of them, in the order of a list.
    pub fn all() -> impl Iterator<Item = Self> {
        TABLE.iter().map(|row| row.0)
    }

    /// Id in files and price lists.
    pub fn id(self) -> &'static str {
        TABLE[self as usize].1
    }

    /// The part of an id.
    pub fn from_id(id: &str) -> Option<Self> {
        TABLE.iter().find(|row| row.1 == id).map(|row| row.0)
    }

    /// Pieces, metres or hours.
    pub fn unit(self) -> Unit {
        TABLE[self as usize].2
    }

    /// Where it stands on a list.
    pub fn group(self) -> Group {
        TABLE[self as usize].3
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_stands_in_the_order_of_the_parts() {
        assert!(TABLE.iter().enumerate().all(|(at, row)| row.0 as usize == at));
        assert!(Part::all().all(|part| Part::from_id(part.id()) == Some(part)));
        let groups: Vec<usize> = Part::all().map(|part| part.group() as usize).collect();
        assert!(groups.is_sorted());
    }
}
