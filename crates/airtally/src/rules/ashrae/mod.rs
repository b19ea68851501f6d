//! ASHRAE 62.2 in three forms (2010; 2013; 2016 to 2022): total rate, infiltration credit, local exhaust.
//!
//! The inch-pound and SI prints are not exact conversions of each other; the person chooses which is used.

mod infiltration;
mod print;

use super::brief::flow;
use super::table::row;
use super::{Brief, Level, local};
use crate::formula::Formula;
use crate::house::{Print, Table};
use crate::issue::Trouble;
use crate::quantity::Unit;
use crate::source::Source;
use crate::working::{LineId, Origin, Term};
use infiltration::fan_rate;
use print::{IP_2010, IP_2013, Printed, SI_2010, SI_2013};

/// What differs between editions.
pub struct Edition {
    inch_pound: Form,
    si: Form,
    credit: Option<Credited>,
}

/// One print of an edition, and how sure its total rate is.
struct Form {
    print: &'static Printed,
    total: Source,
}

struct Credited {
    leakage: Leakage,
    source: Source,
}

/// How the infiltration of a house is worked out.
#[derive(Clone, Copy, PartialEq)]
enum Leakage {
    /// From the normalised leakage: 2013.
    Normalised,
    /// From the blower-door flow: 2016 and later.
    BlowerDoor,
}

/// 2010: 0.01·A + 7.5·(N + 1). The default credit is already inside the equation.
pub static ASHRAE_2010: Edition = Edition {
    inch_pound: Form {
        print: &IP_2010, total: Source::published("ASHRAE 62.2", "2003–2010", "section 4, total rate")
    },
    si: Form {
        print: &SI_2010, total: Source::memory("ASHRAE 62.2", "2003–2010", "section 4, total rate, SI print")
    },
    credit: None,
};

/// 2013: 0.03·A + 7.5·(N + 1), credit by normalised leakage.
pub static ASHRAE_2013: Edition = Edition {
    inch_pound: Form { print: &IP_2013, total: Source::published("ASHRAE 62.2", "2013", "section 4, total rate") },
    si: Form { print: &SI_2013, total: Source::published("ASHRAE 62.2", "2013", "section 4, total rate") },
    credit: Some(Credited {
        leakage: Leakage::Normalised,
        source: Source::published("ASHRAE 62.2", "2013", "section 4, infiltration credit"),
    }),
};

/// 2016 to 2022: as 2013, credit by blower-door flow, in full for a balanced system.
pub static ASHRAE_2016: Edition = Edition {
    inch_pound: Form {
        print: &IP_2013, total: Source::published("ASHRAE 62.2", "2016–2022", "section 4, total rate")
    },
    si: Form { print: &SI_2013, total: Source::published("ASHRAE 62.2", "2016–2022", "section 4, total rate") },
    credit: Some(Credited {
        leakage: Leakage::BlowerDoor,
        source: Source::published("ASHRAE 62.2", "2016–2022", "section 4, infiltration credit"),
    }),
};

static PEOPLE: Source = Source::memory("ASHRAE 62.2", "", "section 4, more people than bedrooms + 1");

/// What this edition asks of the house.
pub fn ask(brief: &mut Brief, edition: &'static Edition) {
    let Form { print, total } = match brief.facts.choices.print {
        Print::InchPound => &edition.inch_pound,
        Print::Si => &edition.si,
    };
    let total = total_rate(brief, total, print);
    let (total, line) = with_people(brief, print, total);
    let (rate, line) = fan_rate(brief, edition, print, (total, line));
    brief.whole(Level::Normal, flow(rate, print.rate), line);
    local::ask(brief, &print.local);
    brief.split_supply_by_kind();
    brief.say(Trouble::NoAwayRate);
}

fn total_rate(brief: &mut Brief, source: &'static Source, print: &'static Printed) -> (f64, LineId) {
    let (area, area_term) = brief.floor_area(print.area);
    let (bedrooms, bedrooms_term) = brief.bedrooms();
    let rate = print.per_area * area + print.per_person * (bedrooms + 1.0);
    let printed = Origin::Printed(source);
    let terms = [
        Term::new("a", print.per_area, Unit::Ratio, printed),
        Term::new("b", print.per_person, Unit::Ratio, printed),
        area_term,
        bedrooms_term,
    ];
    let equation = (rate, brief.working.record(Formula::AshraeTotal, (rate, print.rate), source, &terms));
    let Some(grid) = &print.grid else { return equation };
    let cells = grid.cells.get(row(area, grid.rows));
    let Some(&cell) = cells.and_then(|cells| cells.get(row(bedrooms, grid.columns))) else { return equation };
    let terms = [area_term, bedrooms_term];
    let table = (cell, brief.working.record(Formula::AshraeTable, (cell, print.rate), grid.source, &terms));
    let (formula, chosen, other) = match brief.facts.choices.table.unwrap_or(Table::Equation) {
        Table::Equation => (Formula::AshraeTable, equation, table),
        Table::Table => (Formula::AshraeTotal, table, equation),
    };
    brief.alternative(formula, flow(other.0, print.rate), other.1);
    chosen
}

/// More people than bedrooms + 1 add one person's rate each.
fn with_people(brief: &mut Brief, print: &'static Printed, (total, line): (f64, LineId)) -> (f64, LineId) {
    let extra = brief.facts.persons() - (brief.bedrooms().0 + 1.0);
    if extra <= 0.0 {
        return (total, line);
    }
    let rate = total + print.per_person * extra;
    let terms = [
        Term::new("Q_tot", total, print.rate, Origin::Line(line)),
        Term::new("b", print.per_person, Unit::Ratio, Origin::Printed(&PEOPLE)),
        Term::new("P_extra", extra, Unit::Count, Origin::Counted),
    ];
    (rate, brief.working.record(Formula::AshraePeople, (rate, print.rate), &PEOPLE, &terms))
}
