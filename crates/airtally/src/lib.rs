//! Sizing, sharing and checking the air of a house with balanced ventilation and home-run tubes.
//!
//! The chain, one function from values to values after another:
//!
//! `House` (what was typed) → `Facts` (what it means) → `Demand` (what the rules ask) → `Shares` (whole steps, supply =
//! extract) → `Runs` (tubes) → `Step`s (the checklist). [`report::Report`] calculates each when it is asked for.
//!
//! This crate knows nothing of the web, of sentences, of clocks or of files. It never panics on a house, never gives a
//! number that is not finite, and collects all issues instead of stopping at the first.

pub mod air;
pub mod alternatives;
pub mod blown;
pub mod by_room;
pub mod co2;
pub mod cold;
pub mod curve;
pub mod delivery;
pub mod draught;
pub mod drawing;
pub mod duct;
pub mod edit;
pub mod entry;
pub mod facts;
pub mod formula;
pub mod given;
pub mod house;
pub mod id;
pub mod issue;
pub mod legs;
pub mod money;
pub mod network;
pub mod on_site;
pub mod parts;
pub mod pocket;
mod power;
pub mod quantity;
pub mod report;
pub mod rules;
pub mod runs;
pub mod save;
pub mod shares;
pub mod sound;
pub mod source;
pub mod steps;
pub mod transfer;
pub mod working;
