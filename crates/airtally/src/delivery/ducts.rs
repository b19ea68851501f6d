//! The ducts of a house, from its tubes, the registry and what was measured.

use crate::air::{self, Air};
use crate::duct::bend::{self, Bend};
use crate::duct::change::{INTO_BOX, INTO_TUBE};
use crate::duct::friction::friction;
use crate::duct::section::Section;
use crate::duct::terminal::PowerLaw;
use crate::given::{GivenId, Givens};
use crate::legs::Bends;
use crate::network::{Duct, Law};
use crate::quantity::{Area, Flow, Length, Pressure, Temperature, Velocity};
use crate::runs::Run;

/// Everything that is the same for all ducts of a house.
#[derive(Clone, Copy, Debug)]
pub(super) struct Ducts {
    /// Air indoors.
    pub indoor: Air,
    /// Air outdoors.
    pub outdoor: Air,
    /// Clear inside of the tubes.
    pub section: Section,
    /// Radius of their bends, in bores.
    radius: f64,
    bends: Bends,
    roughness: Length,
    /// A metre of tube as measured.
    pub tube: Option<PowerLaw>,
    /// Length of a tube where none is typed.
    pub length: Length,
    valve: Valve,
    /// Bore of the mains and outside ducts.
    pub main: Length,
    main_bends: Bends,
    main_roughness: Length,
}

/// What an open valve takes.
#[derive(Clone, Copy, Debug)]
pub(super) enum Valve {
    /// Pa at 30 m³/h: a room with more tubes has a valve that is as much wider.
    Rated(Pressure),
    /// As measured, at the whole flow of its room.
    Measured(PowerLaw),
}

/// What was measured in place of what is registered.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Measured {
    pub tube: Option<PowerLaw>,
    pub valve: Option<PowerLaw>,
}

/// One duct.
#[derive(Clone, Copy, Debug)]
pub(super) struct Path {
    pub section: Section,
    pub length: Length,
    pub roughness: Length,
    /// Radius of its bends, in bores.
    pub radius: f64,
    pub bends: Bends,
    /// Losses of ends and silencer.
    pub ends: f64,
    pub air: Air,
    /// What a metre takes, where it was measured.
    pub measured: Option<PowerLaw>,
}

/// What a duct takes at one flow.
#[derive(Clone, Copy, Debug)]
pub(super) struct Taken {
    pub pressure: Pressure,
    pub speed: Velocity,
    /// Friction of the wall.
    pub factor: f64,
    /// Losses of bends and ends together.
    pub losses: f64,
}

impl Ducts {
    /// `None` where the registry's air does not exist.
    pub fn of(givens: &Givens, section: Section, outside_mm: f64, measured: Measured) -> Option<Self> {
        let length = |id| Length::of(givens.measure(id));
        let temperature = |id| Temperature::of(givens.measure(id));
        let pressure = air::standard_pressure(length(GivenId::Altitude)?)?;
        let humidity = givens.value(GivenId::IndoorHumidity);
        let rated = Pressure::of(givens.measure(GivenId::ValvePressure))?;
        Some(Self {
            indoor: Air::at(temperature(GivenId::IndoorTemperature)?, humidity, pressure)?,
            outdoor: Air::at(temperature(GivenId::OutdoorTemperature)?, air::OUTDOOR_HUMIDITY, pressure)?,
            section,
            radius: givens.value(GivenId::BendRadius) * outside_mm / section.hydraulic_bore().as_mm(),
            bends: Bends::right(givens.value(GivenId::RunBends) as u32),
            roughness: length(GivenId::TubeRoughness)?,
            tube: measured.tube,
            length: length(GivenId::RunLength)?,
            valve: measured.valve.map_or(Valve::Rated(rated), Valve::Measured),
            main: length(GivenId::ColdDuct)?,
            main_bends: Bends::right(givens.value(GivenId::MainBends) as u32),
            main_roughness: length(GivenId::MainRoughness)?,
        })
    }

    /// One tube of this length with the usual bends.
    pub fn tube(&self, length: Length) -> Path {
        Path {
            section: self.section,
            length,
            roughness: self.roughness,
            radius: self.radius,
            bends: self.bends,
            ends: INTO_TUBE + INTO_BOX,
            air: self.indoor,
            measured: self.tube,
        }
    }

    /// One tube of a run, with its own bends.
    pub fn tube_of(&self, run: &Run, length: Length) -> Path {
        Path { bends: run.bends, ..self.tube(length) }
    }

    /// A main or an outside duct with its losses beside friction and bends.
    pub fn main(&self, length: Length, ends: f64, air: Air) -> Path {
        let (section, roughness, bends) = (Section::Round(self.main), self.main_roughness, self.main_bends);
        Path { section, length, roughness, radius: MAIN_RADIUS, bends, ends, air, measured: None }
    }

    /// A whole run: its tubes side by side and the valve of the planned tubes.
    pub fn run(&self, run: &Run, length: Length, tubes: u32) -> Law {
        self.tube_of(run, length).laws(tubes).and(self.valve_law(run))
    }

    /// The valve of the planned tubes alone.
    pub fn valve_law(&self, run: &Run) -> Law {
        match self.valve {
            Valve::Rated(_) => {
                Law::default().rated(Pressure::ZERO, self.valve_at(run.normal, run.tubes.value), run.normal)
            }
            Valve::Measured(curve) => Law::default().terminal(curve),
        }
    }

    /// Pressure of an open valve at the flow of a room with so many tubes. Equation: `p = p_30·(q/(30·n))²`, or as measured.
    pub fn valve_at(&self, flow: Flow, tubes: u32) -> Pressure {
        match self.valve {
            Valve::Rated(rated) => {
                let share = flow.as_m3h() / f64::from(tubes.max(1)) / VALVE_FLOW;
                rated * (share * share)
            }
            Valve::Measured(curve) => curve.pressure(flow),
        }
    }

    /// The valve as it was measured.
    pub fn measured_valve(&self) -> Option<PowerLaw> {
        match self.valve {
            Valve::Rated(_) => None,
            Valve::Measured(curve) => Some(curve),
        }
    }
}

impl Path {
    /// The duct with its bends.
    pub fn law(&self) -> Law {
        self.laws(1)
    }

    /// So many of it side by side.
    pub fn laws(&self, count: u32) -> Law {
        let right = Bend { angle: RIGHT_ANGLE, radius: self.radius };
        let other = Bend { angle: self.bends.angle, radius: self.radius };
        let mut bends = vec![right; self.bends.right as usize];
        bends.resize(self.bends.count() as usize, other);
        let length = if self.measured.is_some() { Length::ZERO } else { self.length };
        let law = Law::default().duct(Duct {
            section: self.section,
            roughness: self.roughness,
            length,
            bends: &bends,
            fittings: self.ends,
            air: self.air,
        });
        let law = law.side_by_side(count);
        match self.measured {
            Some(metre) => law.terminal(metre.shared_by(count).times(self.length.as_m())),
            None => law,
        }
    }

    /// Speed at a flow.
    pub fn speed(&self, flow: Flow) -> Velocity {
        let section = self.section.area();
        if section > Area::ZERO { flow / section } else { Velocity::ZERO }
    }

    /// Reynolds number at a flow.
    pub fn reynolds(&self, flow: Flow) -> f64 {
        self.air.density() * self.speed(flow).as_ms() * self.section.hydraulic_bore().as_m() / self.air.viscosity()
    }

    /// What the duct takes at a flow, with what its law puts in.
    pub fn at(&self, flow: Flow) -> Taken {
        let (speed, bore) = (self.speed(flow), self.section.hydraulic_bore().as_m());
        let reynolds = self.reynolds(flow);
        let shape = |angle| bend::loss(Bend { angle, radius: self.radius }).map_or(0.0, |bend| bend.shape);
        let mut bends = shape(RIGHT_ANGLE) * f64::from(self.bends.right);
        if self.bends.other > 0 {
            bends += shape(self.bends.angle) * f64::from(self.bends.other);
        }
        let losses = bends * bend::slow(reynolds) + self.ends;
        let head = self.air.density() * speed.as_ms() * speed.as_ms() / 2.0;
        let factor = match self.measured {
            Some(metre) if head > 0.0 => metre.pressure(flow).as_pa() * bore / head,
            Some(_) => 0.0,
            None => friction(reynolds, self.roughness.as_m() / bore).factor,
        };
        let pressure = Pressure::from_pa((factor * self.length.as_m() / bore + losses) * head);
        Taken { pressure, speed, factor, losses }
    }
}

/// Degrees.
const RIGHT_ANGLE: f64 = 90.0;
/// Pressed bends of steel duct: radius of the middle line 1 bore, common practice.
const MAIN_RADIUS: f64 = 1.0;
/// m³/h at which valves are compared here.
const VALVE_FLOW: f64 = 30.0;
