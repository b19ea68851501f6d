//! What is laid: tubes, manifolds, and what the unit holds.

/// A tube by its outside diameter.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum TubeSize {
    /// 63 mm outside.
    Od63,
    /// 75 mm outside.
    #[default]
    Od75,
    /// 90 mm outside.
    Od90,
    /// A flat oval: as much air as 90 mm in half the height.
    Oval,
}

impl TubeSize {
    /// All sizes, smallest first.
    pub const ALL: [TubeSize; 4] = [TubeSize::Od63, TubeSize::Od75, TubeSize::Od90, TubeSize::Oval];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Od63 => "od63",
            Self::Od75 => "od75",
            Self::Od90 => "od90",
            Self::Oval => "oval",
        }
    }

    /// Outside diameter in millimetres, which names the tube; of an oval its longer side.
    pub const fn outside_mm(self) -> f64 {
        match self {
            Self::Od63 => 63.0,
            Self::Od75 => 75.0,
            Self::Od90 => 90.0,
            Self::Oval => 138.0,
        }
    }

    /// Height in millimetres where it lies flat.
    pub const fn flat_mm(self) -> f64 {
        match self {
            Self::Oval => 52.0,
            _ => self.outside_mm(),
        }
    }
}

/// What a unit holds while its resistance changes: filters clog, doors shut, valves are turned.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Fans {
    /// Its flow.
    #[default]
    Flow,
    /// The speed of its fans.
    Speed,
}

impl Fans {
    /// Both.
    pub const ALL: [Self; 2] = [Self::Flow, Self::Speed];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Flow => "flow",
            Self::Speed => "speed",
        }
    }
}

/// Where the manifolds stand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Manifolds {
    /// One for each air, beside the unit.
    #[default]
    One,
    /// One for each air on every storey that has rooms on it.
    Storeys,
}

impl Manifolds {
    /// Both.
    pub const ALL: [Self; 2] = [Self::One, Self::Storeys];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::One => "one",
            Self::Storeys => "storeys",
        }
    }
}
