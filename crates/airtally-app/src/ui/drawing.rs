//! Shapes as a drawing that scales with its column.

use super::el::{tag, text};
use airtally::drawing::{Drawing, Said, Shape};
use airtally_words::drawing::{class, number, way};
use yew::prelude::*;

/// Draws it. `described` is read out in its place, `say` puts its words.
pub fn drawing(drawing: &Drawing, described: &'static str, say: impl Fn(Said) -> String) -> Html {
    let (wide, high) = drawing.size;
    let view = ["0 0 ", &number(wide), " ", &number(high)].concat();
    let svg = tag("svg", "drawing").attr("viewBox", view).attr("role", "img").attr("aria-label", described);
    svg.around([drawing.shapes.iter().map(|shape| one(*shape, &say)).collect()])
}

fn one(shape: Shape, say: &impl Fn(Said) -> String) -> Html {
    if let Shape::Words((x, y), anchor, said) = shape {
        let words = tag("text", class(anchor, said)).attr("x", number(x)).attr("y", number(y));
        return words.around([text(say(said))]);
    }
    way(shape).map_or_else(Html::default, |(way, class)| tag("path", class).attr("d", way).html())
}
