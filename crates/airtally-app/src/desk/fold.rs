//! Parts of a screen that open when they are asked for.

/// One of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fold {
    /// The unit: its fans and their curve.
    Unit,
    /// What comes when something is not as planned.
    Trial,
    /// The house made in other ways.
    Ways,
    /// What is laid where nothing is typed.
    Layout,
    /// The drawing of all of it.
    Riser,
}

/// Those that are open.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Folds(u8);

impl Folds {
    /// Whether one is open.
    pub const fn is_open(self, fold: Fold) -> bool {
        self.0 & bit(fold) != 0
    }

    /// The same with one opened or closed.
    pub const fn turned(self, fold: Fold) -> Self {
        Self(self.0 ^ bit(fold))
    }

    /// The same with one open.
    pub const fn with(self, fold: Fold) -> Self {
        Self(self.0 | bit(fold))
    }
}

const fn bit(fold: Fold) -> u8 {
    1 << fold as u8
}
