//! Sizing, sharing and checking the air of a house with balanced ventilation and home-run tubes.

pub mod quantity;
