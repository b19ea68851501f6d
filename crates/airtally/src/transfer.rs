//! Gaps under doors: the way air takes from the rooms it enters to the rooms it leaves.

mod code;

pub use code::{ByCode, DoorRule, pressure_across};

use crate::by_room::ByRoom;
use crate::facts::Facts;
use crate::formula::Formula;
use crate::given::{GivenId, Givens};
use crate::house::RoomId;
use crate::issue::{Issue, Place, Trouble};
use crate::quantity::{Area, Flow, Length, Pressure, Unit};
use crate::rules::{Air, Level, RuleSet};
use crate::shares::{Share, Shares};
use crate::source::{ARITHMETIC, Source};
use crate::working::{LineId, Origin, Term, Traced, Working};

/// The opening one room needs while its door is closed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Opening {
    /// The room.
    pub room: RoomId,
    /// Which way air passes: [`Air::Supply`] rooms let it out, [`Air::Extract`] rooms let it in.
    pub air: Air,
    /// Flow through the opening at boost.
    pub flow: Flow,
    /// Free area.
    pub area: Traced<Area>,
    /// Height of a gap of that area under the door.
    pub undercut: Traced<Length>,
    /// The same door with no more than the chosen rule set's own opening, where it has one.
    pub code: Option<ByCode>,
}

pub(crate) static ORIFICE_LAW: Source = Source::memory("orifice practice", "", "q = C_d·A·√(2Δp/ρ)");

/// Free area of an opening that passes a flow at a pressure.
///
/// * Equation: `A = q / (C_d·√(2·Δp/ρ))`
/// * Units: q m³/h, Δp Pa, ρ kg/m³, A m²
/// * Valid range: a sharp slot, C_d 0.6 … 0.65; Δp > 0; zero for a Δp, ρ or C_d that is not positive
/// * Source: orifice practice, from memory; example from the residential handbook table: 20 m³/h at 1 Pa is 71.7 cm²
///
/// ```
/// use airtally::{quantity::{Flow, Pressure}, transfer::free_area};
/// let area = free_area(Flow::from_m3h(20.0), Pressure::from_pa(1.0), 0.6, 1.2);
/// assert!((area.as_cm2() - 71.7).abs() < 0.05);
/// ```
pub fn free_area(flow: Flow, pressure: Pressure, discharge: f64, density: f64) -> Area {
    if pressure <= Pressure::ZERO || density <= 0.0 || discharge <= 0.0 {
        return Area::ZERO;
    }
    let speed = f64::sqrt(2.0 * pressure.as_pa() / density);
    Area::from_m2(flow.as_m3h() / 3600.0 / (discharge * speed))
}

/// Height of the gap under a door.
///
/// * Equation: `h = A / b`, A from [`free_area`]; with C_d 0.6, 1.2 kg/m³ and 1 Pa that is 359·q / b
/// * Units: q m³/h, Δp Pa, ρ kg/m³, b and h m
/// * Valid range: as [`free_area`]; zero for a width that is not positive
/// * Source: arithmetic; example: 359 × 30 / 800 is 13.5 mm (site handbook, pocket figures)
///
/// ```
/// use airtally::{quantity::{Flow, Length, Pressure}, transfer::{free_area, gap_height}};
/// let (flow, pressure) = (Flow::from_m3h(30.0), Pressure::from_pa(1.0));
/// let gap = gap_height(free_area(flow, pressure, 0.6, 1.2), Length::from_mm(800.0));
/// assert!((gap.as_mm() - 359.0 * 30.0 / 800.0).abs() < 0.02);
/// ```
pub fn gap_height(area: Area, width: Length) -> Length {
    if width > Length::ZERO { area / width } else { Length::ZERO }
}

/// The openings of a house, at boost, in the order of the rooms. Rooms without a door flow are left out.
pub fn openings(
    facts: &Facts,
    shares: &Shares,
    givens: &Givens,
    working: &mut Working,
    issues: &mut Vec<Issue>,
) -> Vec<Opening> {
    let boost = shares.at(Level::Boost);
    let (supply, extract) = (boost.by_room(Air::Supply), boost.by_room(Air::Extract));
    let mut found = Vec::with_capacity(facts.rooms.len());
    for room in &facts.rooms {
        let flow = |side: &ByRoom<Share>| side.get(room.id).map_or(Flow::ZERO, |share| share.flow);
        let (supply, extract) = (flow(&supply), flow(&extract));
        let (air, flow) =
            if supply >= extract { (Air::Supply, supply - extract) } else { (Air::Extract, extract - supply) };
        if flow > Flow::ZERO {
            let mut door = Doorway { room: room.id, flow, givens, working };
            found.push(opening(air, facts.choices.rules, &mut door));
        }
    }
    let tall = givens.value(GivenId::UndercutTall);
    for opening in &found {
        let mm = opening.undercut.value.as_mm();
        if mm > tall {
            issues.push(Issue::new(Place::Room(opening.room), Trouble::UndercutTall { mm }));
        }
    }
    found
}

/// A door with what passes it, and the page to calculate on.
struct Doorway<'a> {
    room: RoomId,
    flow: Flow,
    givens: &'a Givens,
    working: &'a mut Working,
}

impl Doorway<'_> {
    fn value(&self, id: GivenId) -> f64 {
        self.givens.value(id)
    }

    fn density(&self) -> f64 {
        self.value(GivenId::TransferDensity)
    }

    fn flow_term(&self) -> Term {
        Term::new("q", self.flow.as_m3h(), Unit::CubicMetrePerHour, Origin::Counted)
    }

    /// The gap of this area under the door.
    fn undercut(&mut self, area: Area, from: Origin) -> Traced<Length> {
        let gap = gap_height(area, self.givens.length(GivenId::DoorWidth));
        let terms =
            [Term::new("A", area.as_cm2(), Unit::SquareCentimetre, from), self.givens.term("b", GivenId::DoorWidth)];
        let line = self.record(Formula::Undercut, (gap.as_mm(), Unit::Millimetre), &ARITHMETIC, &terms);
        Traced { value: gap, line }
    }

    fn record(&mut self, formula: Formula, value: (f64, Unit), source: &'static Source, terms: &[Term]) -> LineId {
        self.working.record_for(Some(self.room), formula, value, source, terms)
    }
}

fn opening(air: Air, rules: RuleSet, door: &mut Doorway) -> Opening {
    let (area, line) = code::for_pressure(door, GivenId::TransferPressure);
    let undercut = door.undercut(area, Origin::Line(line));
    let code = code::by_code(rules, door);
    Opening { room: door.room, air, flow: door.flow, area: Traced { value: area, line }, undercut, code }
}
