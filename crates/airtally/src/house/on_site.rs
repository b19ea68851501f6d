//! What is found on site: the house's structure, what burns in it, and how the outside terminals and the unit are made.

/// What the joists are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Joist {
    /// Solid timber.
    Solid,
    /// I-joists, LVL, glued timber.
    Engineered,
    /// Trusses.
    Truss,
    /// Steel.
    Steel,
    /// No joists: concrete.
    Concrete,
}

impl Joist {
    /// All of them.
    pub const ALL: [Self; 5] = [Self::Solid, Self::Engineered, Self::Truss, Self::Steel, Self::Concrete];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Solid => "solid",
            Self::Engineered => "engineered",
            Self::Truss => "truss",
            Self::Steel => "steel",
            Self::Concrete => "concrete",
        }
    }
}

/// What the studs are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stud {
    /// In an outside wall, or one that bears load.
    Bearing,
    /// The same doubled, no more than two of them beside each other.
    Doubled,
    /// In a wall that bears nothing.
    Partition,
}

impl Stud {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Bearing, Self::Doubled, Self::Partition];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Bearing => "bearing",
            Self::Doubled => "doubled",
            Self::Partition => "partition",
        }
    }
}

/// What burns fuel inside the air barrier.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fuel {
    /// Nothing.
    Nothing,
    /// Only appliances that take their air from outdoors.
    Sealed,
    /// A gas or oil appliance with an open flue.
    Gas,
    /// A stove or open fire that takes its air from the room.
    Solid,
}

impl Fuel {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Nothing, Self::Sealed, Self::Gas, Self::Solid];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Nothing => "nothing",
            Self::Sealed => "sealed",
            Self::Gas => "gas",
            Self::Solid => "solid",
        }
    }
}

/// Whether the house is being built.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Building {
    /// New.
    #[default]
    New,
    /// People live in it.
    Old,
}

impl Building {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::New, Self::Old];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::New => "new",
            Self::Old => "old",
        }
    }
}

/// How the outside terminals are made.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Outlets {
    /// Two terminals.
    #[default]
    Apart,
    /// One factory-built combined terminal.
    Combined,
    /// Two terminals on different sides of the house.
    Sides,
}

impl Outlets {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Apart, Self::Combined, Self::Sides];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Apart => "apart",
            Self::Combined => "combined",
            Self::Sides => "sides",
        }
    }
}

/// What the unit does when one fan fails or defrosts.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Failing {
    /// Not known: taken as if extract went on alone.
    #[default]
    NotKnown,
    /// Both fans stop together.
    BothStop,
}

impl Failing {
    /// All of them.
    pub const ALL: [Self; 2] = [Self::NotKnown, Self::BothStop];

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        match self {
            Self::NotKnown => "not-known",
            Self::BothStop => "both-stop",
        }
    }
}
