//! Curves that a person reads off a sheet or has measured, by name.

/// A curve of points: a flow, and what belongs to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Curve {
    /// Pressure of a fan of the unit outside it, at full speed.
    Fan,
    /// Pressure of a metre of tube.
    Tube,
    /// Pressure of an open valve.
    Valve,
    /// Pressure of a valve at 30 m³/h by its setting: mm or turns.
    Setting,
}

impl Curve {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Fan, Self::Tube, Self::Valve, Self::Setting];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Fan => "fan",
            Self::Tube => "tube",
            Self::Valve => "valve",
            Self::Setting => "setting",
        }
    }
}
