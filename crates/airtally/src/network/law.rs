//! What a branch takes from the air, as a function of its flow with its slope.

use crate::air::Air;
use crate::duct::bend::{self, Bend, BendLoss};
use crate::duct::friction::{friction_with, thin};
use crate::duct::section::Section;
use crate::duct::terminal::PowerLaw;
use crate::power::power;
use crate::quantity::{Flow, Length, Pressure};

/// A straight or bent length of duct with its fittings.
#[derive(Clone, Copy, Debug)]
pub struct Duct<'a> {
    /// Its clear inside.
    pub section: Section,
    /// Roughness of its wall.
    pub roughness: Length,
    /// Length of its middle line, bends included.
    pub length: Length,
    /// Its bends; their arcs are in the length.
    pub bends: &'a [Bend],
    /// Losses of fittings on its own speed, together.
    pub fittings: f64,
    /// The air in it.
    pub air: Air,
}

/// Everything in series along one branch.
///
/// * Equation: `Δp = Σ (f·L/d + ΣK + k_Re·ΣK_bends)·ρ·v²/2 + a·q + b·q² + c·qⁿ`, odd in q
/// * Units: m³/s and Pa inside
#[derive(Clone, Debug, Default)]
pub struct Law {
    pieces: Vec<Piece>,
    linear: f64,
    square: f64,
    powers: Vec<(f64, f64)>,
}

/// What a duct takes, in numbers that do not change with the flow.
#[derive(Clone, Copy, Debug)]
struct Piece {
    /// Reynolds number at 1 m³/s.
    reynolds: f64,
    /// What friction makes of it.
    thin: f64,
    /// Dynamic pressure at 1 m³/s.
    head: f64,
    /// Roughness in bores.
    roughness: f64,
    /// Length in bores.
    length: f64,
    /// Losses that do not change.
    fixed: f64,
    /// Losses of bends, before they grow for slow flow.
    bends: f64,
}

/// Pressure and slope.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Slope {
    pub pressure: f64,
    pub slope: f64,
}

impl Law {
    /// Adds a duct. A section that is not open adds a resistance that is not finite: [`super::Network::branch`] refuses it.
    pub fn duct(mut self, duct: Duct) -> Self {
        let bore = duct.section.hydraulic_bore().as_m();
        let area = duct.section.area().as_m2();
        let bends = duct.bends.iter().map(|bend| bend::loss(*bend).map_or(f64::NAN, |BendLoss { shape, .. }| shape));
        let open = if duct.section.is_open() { 1.0 } else { f64::NAN };
        let reynolds = duct.air.density() * bore / (duct.air.viscosity() * area);
        self.pieces.push(Piece {
            reynolds,
            thin: thin(reynolds),
            head: open * duct.air.density() / (2.0 * area * area),
            roughness: duct.roughness.as_m() / bore,
            length: duct.length.as_m() / bore,
            fixed: duct.fittings,
            bends: bends.sum(),
        });
        self
    }

    /// The same ducts so many times side by side: each takes its part of the flow. What is added later is not divided.
    pub fn side_by_side(mut self, count: u32) -> Self {
        let share = 1.0 / f64::from(count.max(1));
        for piece in &mut self.pieces {
            piece.reynolds *= share;
            piece.thin = thin(piece.reynolds);
            piece.head *= share * share;
        }
        self
    }

    /// Adds everything of another, one behind the other.
    pub fn and(mut self, other: Self) -> Self {
        self.pieces.extend(other.pieces);
        self.powers.extend(other.powers);
        self.linear += other.linear;
        self.square += other.square;
        self
    }

    /// Adds a part that is rated as `a·q + b·q²`: a filter, a core, a silencer. Pa at the rated flow for each.
    pub fn rated(mut self, linear: Pressure, square: Pressure, at: Flow) -> Self {
        let q = per_second(at);
        self.linear += linear.as_pa() / q;
        self.square += square.as_pa() / (q * q);
        self
    }

    /// Adds a valve or grille.
    pub fn terminal(mut self, law: PowerLaw) -> Self {
        self.powers.push((law.scale * power(SECONDS_PER_HOUR, law.exponent), law.exponent));
        self
    }

    /// Adds a throttle that takes this pressure at this flow, and grows with its square.
    pub fn throttle(self, pressure: Pressure, at: Flow) -> Self {
        self.rated(Pressure::ZERO, pressure, at)
    }

    /// Everything so far takes so many times as much.
    pub fn times(mut self, times: f64) -> Self {
        for piece in &mut self.pieces {
            piece.head *= times;
        }
        for (scale, _) in &mut self.powers {
            *scale *= times;
        }
        self.linear *= times;
        self.square *= times;
        self
    }

    /// What it takes at a flow.
    pub fn pressure(&self, flow: Flow) -> Pressure {
        Pressure::from_pa(self.at(per_second(flow)).pressure)
    }

    /// Whether it takes something, and a finite amount, at 1 L/s.
    pub(super) fn resists(&self) -> bool {
        let litre = self.at(1e-3);
        litre.pressure > 0.0 && litre.pressure.is_finite() && litre.slope > 0.0 && litre.slope.is_finite()
    }

    /// Pressure and slope at a flow in m³/s.
    pub(super) fn at(&self, flow: f64) -> Slope {
        let q = flow.abs();
        let mut sum =
            Slope { pressure: q * (self.linear + self.square * q), slope: self.linear + 2.0 * self.square * q };
        if self.pieces.is_empty() && self.powers.is_empty() {
            return sum.along(flow);
        }
        // One logarithm for all.
        let log = libm::log(q.max(LEAST));
        let thinner = libm::exp(-0.9 * log);
        for piece in &self.pieces {
            let own = piece.at(q, thinner);
            sum.pressure += own.pressure;
            sum.slope += own.slope;
        }
        for (scale, exponent) in &self.powers {
            let gentle = scale * libm::exp((exponent - 1.0) * log);
            sum.pressure += gentle * q;
            sum.slope += gentle * exponent;
        }
        sum.along(flow)
    }
}

impl Slope {
    /// The same for a flow that may go backwards.
    fn along(self, flow: f64) -> Self {
        Self { pressure: if flow < 0.0 { -self.pressure } else { self.pressure }, ..self }
    }
}

impl Piece {
    /// Pressure and slope at a flow of at least nought, and `q^−0.9`.
    fn at(&self, q: f64, thinner: f64) -> Slope {
        let reynolds = self.reynolds * q;
        if reynolds < STILL {
            // Creeping: straight through nought.
            let creep = 64.0 / self.reynolds * self.length * self.head;
            let fittings = (self.fixed + self.bends * bend::slow(0.0)) * self.head;
            return Slope { pressure: (creep + fittings * q) * q, slope: creep + 2.0 * fittings * q };
        }
        let wall = friction_with(reynolds, self.thin * thinner, self.roughness);
        let (slow, slow_slope) = if self.bends > 0.0 { bend::slow_and_slope(reynolds) } else { (0.0, 0.0) };
        let along = wall.factor * self.length;
        let loss = along + self.fixed + self.bends * slow;
        let grows = along * wall.exponent + self.bends * slow_slope * reynolds;
        let head = self.head * q;
        Slope { pressure: loss * head * q, slope: head * (2.0 * loss + grows) }
    }
}

pub(super) fn per_second(flow: Flow) -> f64 {
    flow.as_m3h() / SECONDS_PER_HOUR
}

pub(super) const SECONDS_PER_HOUR: f64 = 3600.0;

/// Reynolds number below which the friction formula is a straight line to the last bit.
const STILL: f64 = 1.0;

/// m³/s: a power law has no slope to hold on to at nought, so it is straight below this.
const LEAST: f64 = 1e-9;
