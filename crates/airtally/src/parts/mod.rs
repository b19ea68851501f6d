//! What is ordered and done for a house, and what it costs: take-off, coils, quotation.

mod coils;
mod quotation;
mod take_off;

#[cfg(test)]
mod tests;

pub use crate::id::{Group, Part};
pub use coils::{Coil, Piece};
pub use quotation::{Quotation, Quoted};
pub use take_off::{Line, Size, TakeOff};
