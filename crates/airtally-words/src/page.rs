//! The words of the page itself: questions, buttons, remarks. Everything about air stands in the other modules.

mod air;
mod frame;
mod house;
mod houses;
mod letter;
mod link;
mod parts;
mod pocket;
mod sheet;
mod steps;
mod trial;
mod tubes;
mod ways;

pub use air::*;
pub use frame::*;
pub use house::*;
pub use houses::*;
pub use letter::*;
pub use link::*;
pub use parts::*;
pub use pocket::*;
pub use sheet::*;
pub use steps::*;
pub use trial::*;
pub use tubes::*;
pub use ways::*;

/// `1 room`, `2 rooms`: English has two forms.
fn counted(count: usize, one: &str, many: &str) -> String {
    [count.to_string().as_str(), " ", if count == 1 { one } else { many }].concat()
}

/// A sentence's start inside another sentence.
fn lower(words: &str) -> String {
    let mut words = words.to_owned();
    if let Some(first) = words.get_mut(..1) {
        first.make_ascii_lowercase();
    }
    words
}
