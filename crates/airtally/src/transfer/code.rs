//! What the chosen rule set has at an inner door, and the pressure across the door if no more than that is there.

use super::{Doorway, free_area};
use crate::formula::Formula;
use crate::given::GivenId;
use crate::quantity::{Area, Flow, Length, Pressure, Unit};
use crate::rules::RuleSet;
use crate::source::Source;
use crate::working::{LineId, Origin, Term, Traced};

/// How a rule set speaks of inner doors.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DoorRule {
    /// One free area for every door, and a gap above the bare floor while its finish is missing.
    Area(GivenId, GivenId),
    /// A free area for the flow, and a largest pressure.
    ForFlow(GivenId, GivenId),
    /// A largest pressure.
    Pressure(GivenId),
}

impl DoorRule {
    /// How a rule set speaks of inner doors; `None` where no opening of its own is known.
    pub const fn of(rules: RuleSet) -> Option<Self> {
        match rules {
            RuleSet::Adf2021 => Some(Self::Area(GivenId::DoorEngland, GivenId::DoorEnglandBare)),
            RuleSet::Din2009 | RuleSet::Din2019 => {
                Some(Self::ForFlow(GivenId::DoorGermany, GivenId::DoorPressureGermany))
            }
            rules if rules.is_american() => Some(Self::Pressure(GivenId::DoorPressureAmerica)),
            _ => None,
        }
    }
}

/// A door with no more than the rule set's own opening, at boost.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ByCode {
    /// Height of the gap that makes the opening.
    pub gap: Traced<Length>,
    /// Pressure across the door.
    pub pressure: Traced<Pressure>,
    /// Whether the rule set's own limit is kept; an opening without a limit is enough by itself.
    pub enough: bool,
    /// Whether the pressure is within the registered one, which the gap of [`Opening`](super::Opening) is for.
    pub gentle: bool,
}

static ORIFICE_LAW: Source = Source::memory("orifice practice", "", "Δp = ρ/2·(q/(C_d·A))²");

/// Pressure across an opening that passes a flow; `None` where there is nothing to pass through.
///
/// * Equation: `Δp = ρ/2·(q / (C_d·A))²`
/// * Units: q m³/h, A m², ρ kg/m³, Δp Pa
/// * Valid range: a sharp slot, C_d 0.6 … 0.65; A > 0
/// * Source: orifice practice, from memory; example from the residential handbook table: 7 600 mm² pass 5.9 L/s at 1 Pa
///
/// ```
/// use airtally::{quantity::{Area, Flow}, transfer::pressure_across};
/// let pressure = pressure_across(Flow::from_ls(5.9), Area::from_mm2(7600.0), 0.6, 1.2).unwrap();
/// assert!((pressure.as_pa() - 1.0).abs() < 0.02);
/// ```
pub fn pressure_across(flow: Flow, area: Area, discharge: f64, density: f64) -> Option<Pressure> {
    let free = discharge * area.as_m2();
    let speed = flow.as_m3h() / 3600.0 / free;
    (free > 0.0 && speed.is_finite()).then(|| Pressure::from_pa(density / 2.0 * speed * speed))
}

/// The door with the rule set's own opening; `None` where it has none.
pub fn by_code(rules: RuleSet, door: &mut Doorway) -> Option<ByCode> {
    let rule = DoorRule::of(rules)?;
    let (area, area_from) = opening(rule, door);
    let pressure = pressure_across(door.flow, area, door.value(GivenId::TransferDischarge), door.density())?;
    let gap = door.undercut(area, area_from);
    let terms = [
        door.flow_term(),
        door.givens.term("C_d", GivenId::TransferDischarge),
        door.givens.term("ρ", GivenId::TransferDensity),
        Term::new("A", area.as_cm2(), Unit::SquareCentimetre, area_from),
    ];
    let line = door.record(Formula::DoorPressure, (pressure.as_pa(), Unit::Pascal), &ORIFICE_LAW, &terms);
    let within = |id| pressure.as_pa() <= door.value(id) * (1.0 + ROUNDING);
    let enough = match rule {
        DoorRule::Area(..) => true,
        DoorRule::ForFlow(_, limit) | DoorRule::Pressure(limit) => within(limit),
    };
    let gentle = within(GivenId::TransferPressure);
    Some(ByCode { gap, pressure: Traced { value: pressure, line }, enough, gentle })
}

/// An opening made for a pressure is there and back again within this.
const ROUNDING: f64 = 1e-9;

fn opening(rule: DoorRule, door: &mut Doorway) -> (Area, Origin) {
    match rule {
        DoorRule::Area(id, _) => (Area::of(door.givens.measure(id)).unwrap_or(Area::ZERO), Origin::Given(id)),
        DoorRule::ForFlow(id, _) => {
            let area = door.value(id) * door.flow.as_m3h();
            let terms = [door.givens.term("a", id), door.flow_term()];
            let source = door.givens.get(id).source;
            let line = door.record(Formula::AreaForFlow, (area, Unit::SquareCentimetre), source, &terms);
            (Area::from_cm2(area), Origin::Line(line))
        }
        DoorRule::Pressure(id) => {
            let (area, line) = for_pressure(door, id);
            (area, Origin::Line(line))
        }
    }
}

/// The free area for a registered pressure.
pub fn for_pressure(door: &mut Doorway, id: GivenId) -> (Area, LineId) {
    let pressure = Pressure::from_pa(door.value(id));
    let area = free_area(door.flow, pressure, door.value(GivenId::TransferDischarge), door.density());
    let terms = [
        door.flow_term(),
        door.givens.term("C_d", GivenId::TransferDischarge),
        door.givens.term("Δp", id),
        door.givens.term("ρ", GivenId::TransferDensity),
    ];
    let value = (area.as_cm2(), Unit::SquareCentimetre);
    (area, door.record(Formula::TransferArea, value, &super::ORIFICE_LAW, &terms))
}
