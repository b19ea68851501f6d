//! What a duct takes from the air that goes through it.
//!
//! Every loss but that of a [`tee`] is an odd, strictly increasing function of the flow: that is what lets [`crate::network`]
//! find the flows of any house. A tee can take less than nothing, so its loss is told beside the network and not solved in it.

pub mod band;
pub mod bend;
pub mod change;
pub mod corrugated;
pub mod friction;
pub mod leak;
pub mod restrictor;
pub mod roughness;
pub mod section;
pub mod tee;
pub mod terminal;
