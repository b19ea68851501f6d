//! One thing done to the world outside each.

mod address;
mod aim;
mod book;
mod browser;
mod hush;
mod keep;
mod link;
mod look;
mod sent;
mod wide;

pub use address::{use_address, use_title};
pub use aim::use_aim;
pub use book::use_book;
pub use browser::use_browser;
pub use hush::use_hush;
pub use keep::{kept, use_keeping};
pub use link::{make_link, use_link};
pub use look::{Look, use_look};
pub use wide::use_wide;
