//! What a duct takes from the air that goes through it.
//!
//! Every loss is an odd, strictly increasing function of the flow: that is what lets [`crate::network`] find the flows of
//! any house.

pub mod bend;
pub mod change;
pub mod friction;
pub mod leak;
pub mod restrictor;
pub mod roughness;
pub mod section;
pub mod terminal;
