//! Drawings as plain shapes: where lines and words stand, and what they are about. The page gives them ink and language.

mod curves;
mod ladder;
mod riser;

#[cfg(test)]
mod tests;

pub use crate::delivery::Rung;
pub use curves::curves;
pub use ladder::ladder;
pub use riser::riser;

use crate::house::RoomId;
use crate::quantity::{Flow, Length, Pressure};
use crate::rules::{Air, Level};

/// A sheet of paper with shapes, in units of about a pixel on a phone.
#[derive(Clone, Debug, PartialEq)]
pub struct Drawing {
    /// Width and height.
    pub size: (f64, f64),
    /// In the order in which they are drawn.
    pub shapes: Vec<Shape>,
}

/// Something drawn.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Shape {
    /// A line from a point to a point.
    Line(Point, Point, Pen),
    /// A box from its upper left to its lower right corner.
    Box(Point, Point, Pen),
    /// Words at a point on their base line.
    Words(Point, Anchor, Said),
}

/// From the left and from above.
pub type Point = (f64, f64);

/// How a line or a box is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pen {
    /// A thin rule.
    Rule,
    /// Ink.
    Ink,
    /// A duct of this air.
    Duct(Air),
    /// Filled.
    Full,
}

/// Which end of the words stands at the point.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Anchor {
    /// Their start.
    Start,
    /// Their middle.
    Middle,
    /// Their end.
    End,
}

/// What words are about.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Said {
    /// The unit.
    Unit,
    /// A manifold with so many ports.
    Manifold(Air, u32),
    /// A storey.
    Storey(i8),
    /// The mark of a run, its room.
    Run(Air, u32, RoomId),
    /// So many tubes of a length, and their flow together.
    Tubes(u32, Length, Flow),
    /// A rung of the ladder.
    Rung(Rung),
    /// A pressure.
    Pressure(Pressure),
    /// A flow.
    Flow(Flow),
    /// The fan at its speeds.
    Fan,
    /// Where fan and ducts meet.
    Duty(Level, Pressure),
}
