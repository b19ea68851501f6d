//! Things that are drawn. Knows nothing of air: text and numbers come in ready, callbacks go out.

pub mod chips;
pub mod drawing;
pub mod el;
pub mod field;
pub mod figure;
pub mod gauge;
pub mod icon;
pub mod mark;
pub mod part;
pub mod select;
pub mod tally;
