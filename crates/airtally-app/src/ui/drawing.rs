//! Shapes as a drawing that scales with its column.

use super::el::{tag, text};
use airtally::drawing::{Anchor, Drawing, Pen, Point, Said, Shape};
use airtally::rules::Air;
use yew::prelude::*;

/// Draws it. `described` is read out in its place, `say` puts its words.
pub fn drawing(drawing: &Drawing, described: &'static str, say: impl Fn(Said) -> String) -> Html {
    let (wide, high) = drawing.size;
    let view = ["0 0 ", &number(wide), " ", &number(high)].concat();
    let svg = tag("svg", "drawing").attr("viewBox", view).attr("role", "img").attr("aria-label", described);
    svg.around([drawing.shapes.iter().map(|shape| one(*shape, &say)).collect()])
}

fn one(shape: Shape, say: &impl Fn(Said) -> String) -> Html {
    match shape {
        Shape::Line(from, to, pen) => path(["M", &point(from), "L", &point(to)].concat(), pen),
        Shape::Box(from, to, pen) => {
            let [right, down] = [to.0, to.1].map(number);
            path(["M", &point(from), "H", &right, "V", &down, "H", &number(from.0), "Z"].concat(), pen)
        }
        Shape::Words((x, y), anchor, said) => {
            let class = match (anchor, said) {
                (Anchor::Start, Said::Run(..) | Said::Rung(_)) => "strong",
                (Anchor::End, Said::Run(..) | Said::Rung(_)) => "at-end strong",
                (Anchor::Start, _) => "",
                (Anchor::Middle, _) => "in-middle",
                (Anchor::End, _) => "at-end",
            };
            tag("text", class).attr("x", number(x)).attr("y", number(y)).around([text(say(said))])
        }
    }
}

fn path(way: String, pen: Pen) -> Html {
    let class = match pen {
        Pen::Rule => "pen-rule",
        Pen::Ink => "pen-ink",
        Pen::Duct(Air::Supply) => "pen-supply",
        Pen::Duct(Air::Extract) => "pen-extract",
        Pen::Full => "pen-full",
    };
    tag("path", class).attr("d", way).html()
}

fn point((x, y): Point) -> String {
    [&number(x), " ", &number(y)].concat()
}

/// Whole units: finer would not be seen.
fn number(value: f64) -> String {
    (value as i32).to_string()
}
