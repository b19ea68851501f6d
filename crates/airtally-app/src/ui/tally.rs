//! The mark of the house: four strokes and a slash. One stroke is one thing counted.

use super::el::{nothing, tag};
use super::icon::{drawing, stroke};
use yew::prelude::*;

/// Draws `done` strokes in ink and the rest up to `total` faint; `label` says the same in words.
pub fn tally(done: u32, total: u32, label: String) -> Html {
    tag("span", "tally").attr("role", "img").attr("aria-label", label).around([groups(done, total).collect()])
}

/// One full group without words, for a heading that has its own.
pub fn tally_mark() -> Html {
    tag("span", "top-mark tally").attr("aria-hidden", "true").around([group(5, 5)])
}

/// More strokes than this are no longer read at a glance: the number beside them says it.
const MOST_GROUPS: u32 = 24;

fn groups(done: u32, total: u32) -> impl Iterator<Item = Html> {
    let count = total.div_ceil(5).min(MOST_GROUPS);
    (0..count).map(move |at| {
        let before = at * 5;
        group(done.saturating_sub(before).min(5) as usize, (total - before).min(5) as usize)
    })
}

const STROKES: [&str; 5] =
    ["M4 4L3.4 20", "M10 3.6L9.6 20.2", "M15.8 4.2L16 20", "M21.8 3.8L21.4 20.2", "M0 17.5L26 6.5"];
const BOXES: [&str; 6] = ["0 0 8 24", "0 0 8 24", "0 0 14 24", "0 0 20 24", "0 0 26 24", "0 0 27 24"];

fn group(done: usize, total: usize) -> Html {
    let rest = if done < total { stroke("tally-rest", STROKES[done..total].concat()) } else { nothing() };
    drawing("", BOXES[total.min(5)], [rest, stroke("", STROKES[..done].concat())])
}
