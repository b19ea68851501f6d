//! Words of the pocket.

use crate::format;
use crate::formula::title;
use crate::label::Label;
use airtally::formula::Formula;
use airtally::house::Display;
use airtally::pocket::figures::METRE_RANGE;
use airtally::pocket::{Ask, Slot};
use airtally::quantity::Unit;
use airtally::working::{Line, Term};

/// Opens it, and stands over it.
pub const POCKET: &str = "Pocket";
/// Puts it away.
pub const CLOSE_POCKET: &str = "Put the pocket away";
/// The row of questions.
pub const POCKET_ASKS: &str = "What to work out";
/// Opens the working of the figures.
pub const POCKET_WORKING: &str = "How it is worked out";
/// Before anything can be worked out.
pub const POCKET_NOTHING: &str = "Type what you know; the answer stands here.";
/// No main is wide enough.
pub const POCKET_TOO_WIDE: &str = "Even 200 mm is too narrow at 3 m/s. Share the air between two mains.";
/// Over the table of mains.
pub const POCKET_MAINS: &str = "Most air in a main";
/// A column of it.
pub const POCKET_BORE: &str = "Bore";

/// A question in one word.
pub const fn pocket_short(ask: Ask) -> &'static str {
    match ask {
        Ask::Tube => "Speed",
        Ask::Door => "Door gap",
        Ask::Valve => "Valve",
        Ask::Main => "Main",
        Ask::Boost => "Boost",
        Ask::Joist => "Joist",
        Ask::Convert => "Units",
    }
}

/// The question in full.
pub const fn pocket_ask(ask: Ask) -> &'static str {
    match ask {
        Ask::Tube => "How fast is the air in this tube or duct?",
        Ask::Door => "How high a gap does this door need?",
        Ask::Valve => "How much air does this valve pass?",
        Ask::Main => "How wide must the main be?",
        Ask::Boost => "What pressure will boost take?",
        Ask::Joist => "How large a hole does this joist bear?",
        Ask::Convert => "What is this flow in other units?",
    }
}

/// A field.
pub const fn pocket_field(slot: Slot) -> Label {
    let (name, hint) = match slot {
        Slot::TubeFlow => ("Air in the tube", ""),
        Slot::TubeBore => ("Bore", "Inside, not outside; empty: your usual tube"),
        Slot::DoorFlow => ("Air past the closed door", ""),
        Slot::DoorWidth => ("Width of the door", "Empty: the registered width"),
        Slot::ValveFactor => ("k of the valve", "From its data sheet, for the opening it stands at"),
        Slot::ValvePressure => ("Pressure at its tap", ""),
        Slot::MainFlow => ("Air in the main", ""),
        Slot::NormalPressure => ("Pressure at normal", ""),
        Slot::NormalFlow => ("Air at normal", ""),
        Slot::BoostFlow => ("Air at boost", ""),
        Slot::JoistDepth => ("Depth of the joist", "As it is, not as it is sold: a 2×10 is 9.25 in"),
        Slot::JoistSpan => ("Span of the joist", "From bearing to bearing; empty: no zone is given"),
        Slot::JoistClear => ("Clear between two joists", "Empty: no tubes are counted"),
        Slot::AnyFlow => ("Air flow", ""),
    };
    Label { name, hint }
}

/// What limits an answer.
pub fn pocket_note(ask: Ask, display: Display) -> String {
    match ask {
        Ask::Tube => {
            let [from, to] = METRE_RANGE.map(|flow| format::flow(flow, display));
            let range = [&from.number, " to ", &to.to_string()].concat();
            ["The pressure of a metre is known here for bores of 52, 63 and 76 mm and ", &range, ", straight tube."]
                .concat()
        }
        Ask::Door => "At 1 Pa across the door, unless you set another pressure.".to_owned(),
        Ask::Valve => "Each opening has its own k. Let the reading settle first.".to_owned(),
        Ask::Main => "Up to 2.5 m/s is quiet; 3 m/s is the most that is usual.".to_owned(),
        Ask::Boost => {
            "Twice the flow takes about four times the pressure: look at the unit's fan curve and at the speed in each tube."
                .to_owned()
        }
        Ask::Joist => {
            "Solid timber alone. In America 2 in of wood stay at both edges and to the next hole; in Britain holes lie on \
             the middle of the depth, three diameters apart. Trusses, I-joists, LVL, glued timber and steel are cut only \
             as their maker or designer allows; the local code decides."
                .to_owned()
        }
        Ask::Convert => String::new(),
    }
}

/// What a figure is, told apart from its like.
pub fn pocket_line(line: &Line, terms: &[Term]) -> String {
    let name = title(line.formula);
    let apart = match line.formula {
        Formula::HoleLimit => {
            let american = terms.iter().any(|term| term.symbol == "e" && term.value > 0.0);
            return [name, if american { ", America" } else { ", Britain" }].concat();
        }
        Formula::HoleZone => ", at ",
        Formula::MainBore | Formula::TubesBeside => ", at most ",
        Formula::BoostPressure => ", exponent ",
        _ => return name.to_owned(),
    };
    let symbols = match line.formula {
        Formula::TubesBeside => ["v_max", ""],
        Formula::HoleZone => ["s", ""],
        _ => ["v", "n"],
    };
    let term = terms.iter().find(|term| symbols.contains(&term.symbol));
    let value = term.map(|term| format::text(term.value, term.unit));
    [name, apart, &value.unwrap_or_default()].concat()
}

/// A column of the table of mains.
pub fn pocket_at(speed: f64) -> String {
    ["at ", &format::text(speed, Unit::MetrePerSecond)].concat()
}
