//! One screen each.

pub mod air;
pub mod house;
pub mod steps;
pub mod tubes;
