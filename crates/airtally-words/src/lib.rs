//! Everything the calculation means, said in English.
//!
//! Ids and numbers come from `airtally`; here are the words for them and nothing else: no web, no calculation beyond
//! rounding a number that is about to be read. Every enum is matched in full, so a missing word does not compile.
//! Another language is another crate with these functions.

pub mod book;
pub mod demo;
pub mod drawing;
pub mod format;
pub mod formula;
pub mod given;
pub mod issue;
pub mod label;
pub mod letter;
pub mod page;
pub mod parts;
pub mod reading;
pub mod room;
pub mod standing;
pub mod step;

#[cfg(test)]
mod prose;
