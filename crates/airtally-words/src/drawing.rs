//! The words on drawings.

use crate::{format, label, room};
use airtally::drawing::{Rung, Said};
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
