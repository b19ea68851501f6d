//! What several screens share and what knows of air: letters of the air, marks of a source, explained figures, fields of
//! the document.

pub mod air;
pub mod book;
pub mod choice;
pub mod choices;
pub mod defaults;
pub mod doubt;
pub mod entry;
pub mod fold;
pub mod opener;
pub mod source;
