//! The screens, in working order.

/// One screen of the job.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Stage {
    /// The rooms and what is known of the house.
    #[default]
    House,
    /// How much air, where.
    Air,
    /// How many tubes, and ports.
    Tubes,
    /// What is ordered and done, and what it costs.
    Parts,
    /// The checklist.
    Steps,
}

impl Stage {
    /// All of them, in working order.
    pub const ALL: [Self; 5] = [Self::House, Self::Air, Self::Tubes, Self::Parts, Self::Steps];

    /// Its name in the address, after the `#`.
    pub const fn id(self) -> &'static str {
        match self {
            Self::House => "house",
            Self::Air => "air",
            Self::Tubes => "tubes",
            Self::Parts => "parts",
            Self::Steps => "steps",
        }
    }

    /// The stage of an address; `None` for any other text.
    pub fn from_hash(hash: &str) -> Option<Self> {
        let id = hash.strip_prefix('#')?;
        Self::ALL.into_iter().find(|stage| stage.id() == id)
    }
}
