//! One screen each.

pub mod air;
pub mod house;
pub mod parts;
pub mod steps;
pub mod tubes;
