//! What really flows: every tube of a house at once.
//!
//! A network is a tree of [`Joint`]s (unit, manifolds, boxes that join parallel tubes) with [`Branch`]es between them and
//! out into the open. Any number of branches may lie side by side. Every branch resists more, the more flows, so there is
//! one answer, and [`Network::solve`] finds it from any start.

mod balance;
mod fan;
mod fit;
mod law;
mod solve;
mod specific;

#[cfg(test)]
mod tests;

pub use balance::{Balance, balance};
pub use fan::Fan;
pub use fit::{Fit, Readings, fit};
pub use law::{Duct, Law};
pub use solve::{Flowing, Start};
pub use specific::SpecificPower;

use crate::quantity::Pressure;

/// A place where branches meet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Joint(usize);

/// One end of a branch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum End {
    /// The rooms and outdoors: pressure nought.
    Open,
    /// A joint.
    At(Joint),
}

/// A way from one end to the other; flow that way is above nought.
#[derive(Clone, Debug)]
pub struct Branch {
    /// Where its air comes from.
    pub from: End,
    /// Where it goes.
    pub to: End,
    /// What it takes.
    pub law: Law,
    /// What drives it.
    pub fan: Option<Fan>,
}

/// Why a network cannot be calculated, and where.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fault {
    /// A branch names a joint that is not there.
    Nowhere {
        /// Which branch, from 0.
        branch: usize,
    },
    /// A branch closes a loop: its ends are neither side by side with another branch nor parent and child.
    Loop {
        /// Which branch, from 0.
        branch: usize,
    },
    /// A branch takes nothing at all, or not a finite amount.
    NoResistance {
        /// Which branch, from 0.
        branch: usize,
    },
    /// The pressure of a fan grows with its flow somewhere.
    FanRises {
        /// Which branch, from 0.
        branch: usize,
    },
    /// Nothing leads away from a joint.
    DeadEnd {
        /// Which joint.
        joint: Joint,
    },
}

/// Joints and branches.
#[derive(Clone, Debug, Default)]
pub struct Network {
    /// The joint each joint hangs on, always an earlier one; none for a joint that is reached from the open.
    parents: Vec<Option<Joint>>,
    branches: Vec<Branch>,
}

impl Network {
    /// Adds a joint. Nothing hangs on it yet.
    pub fn joint(&mut self) -> Joint {
        self.parents.push(None);
        Joint(self.parents.len() - 1)
    }

    /// Adds a branch and gives back its number.
    ///
    /// * Errors: [`Fault`] when it does not fit: the network stays as it was
    pub fn branch(&mut self, branch: Branch) -> Result<usize, Fault> {
        let number = self.branches.len();
        let is_there = |end: End| !matches!(end, End::At(Joint(at)) if at >= self.parents.len());
        if !(is_there(branch.from) && is_there(branch.to)) || branch.from == branch.to {
            return Err(Fault::Nowhere { branch: number });
        }
        if !branch.law.resists() {
            return Err(Fault::NoResistance { branch: number });
        }
        if branch.fan.as_ref().is_some_and(|fan| !fan.falls()) {
            return Err(Fault::FanRises { branch: number });
        }
        self.hang(branch.from, branch.to).ok_or(Fault::Loop { branch: number })?;
        self.branches.push(branch);
        Ok(number)
    }

    /// The later of two joints hangs on the earlier one.
    fn hang(&mut self, from: End, to: End) -> Option<()> {
        let (End::At(from), End::At(to)) = (from, to) else { return Some(()) };
        let (parent, child) = (from.min(to), from.max(to));
        match self.parents.get(child.0)? {
            Some(known) if *known != parent => None,
            _ => {
                *self.parents.get_mut(child.0)? = Some(parent);
                Some(())
            }
        }
    }

    /// The branches, in the order they were added.
    pub fn branches(&self) -> &[Branch] {
        &self.branches
    }

    /// A branch to change, for another setting of the same house.
    pub fn law_mut(&mut self, branch: usize) -> Option<&mut Law> {
        self.branches.get_mut(branch).map(|branch| &mut branch.law)
    }

    /// The first joint that nothing leads away from, if there is one.
    fn dead_end(&self) -> Option<Joint> {
        let mut ends = vec![0_u8; self.parents.len()];
        for end in self.branches.iter().flat_map(|branch| [branch.from, branch.to]) {
            if let End::At(Joint(at)) = end {
                ends[at] = ends[at].saturating_add(1);
            }
        }
        ends.iter().position(|ends| *ends < 2).map(Joint)
    }
}

impl Flowing {
    /// Pressure of a joint against the rooms and outdoors.
    pub fn pressure(&self, joint: Joint) -> Option<Pressure> {
        self.pressures.get(joint.0).map(|pascal| Pressure::from_pa(*pascal))
    }
}
