//! The ducts of a house, from its tubes and the registry.

use crate::air::{self, Air};
use crate::duct::bend::{self, Bend};
use crate::duct::change::{INTO_BOX, INTO_TUBE};
use crate::duct::friction::friction;
use crate::duct::section::Section;
use crate::given::{GivenId, Givens};
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
    /// Bore of the tubes.
    pub bore: Length,
    bend: Bend,
    bends: u32,
    roughness: Length,
    /// Length of a tube where none is typed.
    pub length: Length,
    /// Pressure of an open valve at 30 m³/h.
    pub valve: Pressure,
    /// Bore of the mains and outside ducts.
    pub main: Length,
    main_bends: u32,
    main_roughness: Length,
}

/// One duct with its flow.
#[derive(Clone, Copy, Debug)]
pub(super) struct Path {
    pub bore: Length,
    pub length: Length,
    pub roughness: Length,
    pub bend: Bend,
    pub bends: u32,
    /// Losses of ends and silencer.
    pub ends: f64,
    pub air: Air,
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
    pub fn of(givens: &Givens, bore: Length, outside_mm: f64) -> Option<Self> {
        let length = |id| Length::of(givens.measure(id));
        let temperature = |id| Temperature::of(givens.measure(id));
        let pressure = air::standard_pressure(length(GivenId::Altitude)?)?;
        let humidity = givens.value(GivenId::IndoorHumidity);
        let radius = givens.value(GivenId::BendRadius) * outside_mm / bore.as_mm();
        Some(Self {
            indoor: Air::at(temperature(GivenId::IndoorTemperature)?, humidity, pressure)?,
            outdoor: Air::at(temperature(GivenId::OutdoorTemperature)?, OUTDOOR_HUMIDITY, pressure)?,
            bore,
            bend: Bend { angle: RIGHT_ANGLE, radius },
            bends: givens.value(GivenId::RunBends) as u32,
            roughness: length(GivenId::TubeRoughness)?,
            length: length(GivenId::RunLength)?,
            valve: Pressure::of(givens.measure(GivenId::ValvePressure))?,
            main: length(GivenId::ColdDuct)?,
            main_bends: givens.value(GivenId::MainBends) as u32,
            main_roughness: length(GivenId::MainRoughness)?,
        })
    }

    /// One tube of a run of this length.
    pub fn tube(&self, length: Length) -> Path {
        Path {
            bore: self.bore,
            length,
            roughness: self.roughness,
            bend: self.bend,
            bends: self.bends,
            ends: INTO_TUBE + INTO_BOX,
            air: self.indoor,
        }
    }

    /// A main or an outside duct with its losses beside friction and bends.
    pub fn main(&self, length: Length, ends: f64, air: Air) -> Path {
        let bend = Bend { angle: RIGHT_ANGLE, radius: MAIN_RADIUS };
        let (bore, roughness, bends) = (self.main, self.main_roughness, self.main_bends);
        Path { bore, length, roughness, bend, bends, ends, air }
    }

    /// A whole run: its tubes side by side, and a valve that is as much wider as there are planned tubes.
    pub fn run(&self, run: &Run, length: Length, tubes: u32) -> Law {
        let tube = self.tube(length).law().side_by_side(tubes);
        let planned = f64::from(run.tubes.value.max(1));
        tube.rated(Pressure::ZERO, self.valve_at(run.normal / planned), run.normal)
    }

    /// Pressure of an open valve at the flow of one tube. Equation: `p = p_30·(q/30)²`.
    pub fn valve_at(&self, flow: Flow) -> Pressure {
        let share = flow.as_m3h() / VALVE_FLOW;
        self.valve * (share * share)
    }
}

impl Path {
    /// The duct with its bends.
    pub fn law(&self) -> Law {
        let bends = vec![self.bend; self.bends as usize];
        Law::default().duct(Duct {
            section: Section::Round(self.bore),
            roughness: self.roughness,
            length: self.length,
            bends: &bends,
            fittings: self.ends,
            air: self.air,
        })
    }

    /// Speed at a flow.
    pub fn speed(&self, flow: Flow) -> Velocity {
        let section = self.bore.section();
        if section > Area::ZERO { flow / section } else { Velocity::ZERO }
    }

    /// What the duct takes at a flow, with what its law puts in.
    pub fn at(&self, flow: Flow) -> Taken {
        let speed = self.speed(flow);
        let reynolds = self.air.density() * speed.as_ms() * self.bore.as_m() / self.air.viscosity();
        let bend = bend::loss(self.bend).map_or(0.0, |bend| bend.shape * bend::slow(reynolds));
        let factor = friction(reynolds, self.roughness.as_m() / self.bore.as_m()).factor;
        let losses = bend * f64::from(self.bends) + self.ends;
        let head = self.air.density() * speed.as_ms() * speed.as_ms() / 2.0;
        let pressure = Pressure::from_pa((factor * self.length.as_m() / self.bore.as_m() + losses) * head);
        Taken { pressure, speed, factor, losses }
    }
}

/// Degrees.
const RIGHT_ANGLE: f64 = 90.0;
/// Pressed bends of steel duct: radius of the middle line 1 bore, common practice.
const MAIN_RADIUS: f64 = 1.0;
/// m³/h at which valves are compared here.
const VALVE_FLOW: f64 = 30.0;
/// Cold air holds so little vapour that it does not matter for its weight.
const OUTDOOR_HUMIDITY: f64 = 0.8;
