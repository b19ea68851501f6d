//! The empty start that teaches.

use crate::context::Hands;
use crate::desk::Move;
use crate::parts::air::{air_tag, outdoor_tag};
use crate::shelf;
use crate::ui::el::{button, el, tag, text};
use crate::ui::icon::stroke;
use airtally::rules::Air;
use airtally_words::{demo, page as say};
use yew::prelude::*;

/// The start.
pub fn start(hands: &Hands) -> Html {
    let line = |sign: Html, name: &'static str, words: &'static str| {
        el("li", "", [sign, el("span", "", [el("b", "", [text(name)]), text(" "), text(words)])])
    };
    let mine = button("button-main", hands.doing(|hands| hands.make(Move::Begin)));
    let example = button("button", hands.doing(|hands| shelf::begin(hands, demo::larkfield(), say::EXAMPLE_OPENED)));
    let start = el(
        "div",
        "start",
        [
            el("h1", "", [text(say::START_TITLE)]),
            sketch(),
            el(
                "ol",
                "start-lines",
                [
                    line(outdoor_tag(), say::OUTDOOR, say::START_OUTDOOR),
                    line(air_tag(Air::Supply), say::SUPPLY, say::START_SUPPLY),
                    line(air_tag(Air::Extract), say::EXTRACT, say::START_EXTRACT),
                ],
            ),
            el("div", "buttons", [mine.around([text(say::START_MINE)]), example.around([text(say::START_EXAMPLE)])]),
            el("p", "soft small", [text(say::START_PRIVATE)]),
        ],
    );
    el("div", "spread", [el("div", "leaf", [start])])
}

/// A house cut open: the four airs and the unit between them.
fn sketch() -> Html {
    let words = |x: &'static str, y: &'static str, words: &'static str| {
        tag("text", "").attr("x", x).attr("y", y).around([text(words)])
    };
    let sketch = tag("svg", "start-sketch").attr("viewBox", "0 0 400 236").attr("role", "img");
    sketch.attr("aria-label", say::START_SKETCH).around([
        stroke("faint", "M4 222h392"),
        stroke("", "M62 222V96L200 22l138 74v126M62 150h276M200 96v54M200 150v72"),
        stroke("faint", "M86 136v-14h52v14M86 122v-8h14v8M296 136h24v-10h-24z"),
        stroke("", "M222 176h64v36h-64z"),
        stroke("faint", "M222 176l64 36M286 176l-64 36"),
        stroke("path-outdoor", "M392 204H292M302 197l-10 7 10 7"),
        stroke("path-exhaust", "M292 184h100M382 177l10 7-10 7"),
        stroke("path-supply", "M222 194H180V112h-26M164 105l-10 7 10 7"),
        stroke("path-extract-edge", EXTRACT),
        stroke("path-extract", EXTRACT),
        words("80", "106", say::SKETCH_BEDROOM),
        words("276", "102", say::SKETCH_BATH),
    ])
}

const EXTRACT: &str = "M302 112h-48v58M247 160l7 10 7-10";
