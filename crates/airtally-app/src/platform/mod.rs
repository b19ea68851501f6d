//! Every call to the browser that is not an element of the page.

pub mod clock;
pub mod dialog;
pub mod events;
pub mod file;
pub mod link;
pub mod media;
pub mod page;
pub mod storage;
pub mod store;
