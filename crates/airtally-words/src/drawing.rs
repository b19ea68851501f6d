//! The words on drawings, and how their shapes are told to what draws them.

use crate::{format, label, room};
use airtally::drawing::{Anchor, Pen, Point, Rung, Said, Shape};
use airtally::house::{Display, House};
use airtally::quantity::Unit;
use airtally::rules::Air;

/// What stands on a drawing.
pub fn said(said: Said, house: &House, display: Display) -> String {
    match said {
        Said::Unit => "Unit".to_owned(),
        Said::Manifold(Air::Supply, ports) => ["Supply, ", &format::count(ports), " ports"].concat(),
        Said::Manifold(Air::Extract, ports) => ["Extract, ", &format::count(ports), " ports"].concat(),
        Said::Storey(storey) => label::storey(storey),
        Said::Run(air, mark, id) => {
            let name: String = room::name(house, id).chars().take(FITS).collect();
            [label::air_letter(air), &mark.to_string(), " ", &name].concat()
        }
        Said::Tubes(tubes, length, flow) => {
            let (length, flow) = (format::length(length, display).to_string(), format::flow(flow, display).to_string());
            [&format::count(tubes), " × ", &length, ", ", &flow].concat()
        }
        Said::Rung(rung) => self::rung(rung).to_owned(),
        Said::Flow(flow) => format::flow(flow, display).to_string(),
        Said::Fan => "Fan".to_owned(),
        Said::Duty(level, pressure) => {
            let pressure = format::in_display(pressure.as_pa(), Unit::Pascal, display).to_string();
            [label::level(level), ", ", &pressure].concat()
        }
        Said::Pressure(pressure) => format::in_display(pressure.as_pa(), Unit::Pascal, display).to_string(),
    }
}

const fn rung(rung: Rung) -> &'static str {
    match rung {
        Rung::Grille => "Grille outdoors",
        Rung::Outside => "Duct outdoors",
        Rung::Main => "Main with silencer",
        Rung::IndexRun => "The run that takes most",
        Rung::Whole => "Together",
    }
}

/// So many letters of a room's name fit beside its tubes.
const FITS: usize = 17;

/// A line or a box as the way of a path, and the class of its pen.
pub fn way(shape: Shape) -> Option<(String, &'static str)> {
    let (way, pen) = match shape {
        Shape::Line(from, to, pen) => (["M", &point(from), "L", &point(to)].concat(), pen),
        Shape::Box(from, to, pen) => {
            let [right, down] = [to.0, to.1].map(number);
            (["M", &point(from), "H", &right, "V", &down, "H", &number(from.0), "Z"].concat(), pen)
        }
        Shape::Words(..) => return None,
    };
    let class = match pen {
        Pen::Rule => "pen-rule",
        Pen::Ink => "pen-ink",
        Pen::Duct(Air::Supply) => "pen-supply",
        Pen::Duct(Air::Extract) => "pen-extract",
        Pen::Full => "pen-full",
    };
    Some((way, class))
}

/// The class of words.
pub const fn class(anchor: Anchor, said: Said) -> &'static str {
    match (anchor, said) {
        (Anchor::Start, Said::Run(..) | Said::Rung(_)) => "strong",
        (Anchor::End, Said::Run(..) | Said::Rung(_)) => "at-end strong",
        (Anchor::Start, _) => "",
        (Anchor::Middle, _) => "in-middle",
        (Anchor::End, _) => "at-end",
    }
}

/// A point of a way.
fn point((x, y): Point) -> String {
    [&number(x), " ", &number(y)].concat()
}

/// Whole units: finer would not be seen.
pub fn number(value: f64) -> String {
    (value as i32).to_string()
}
