//! US International Residential Code 2015, 2018, 2021 and 2024, and International Mechanical Code: table or equation,
//! run-time factors, 30 % credit.
//!
//! Calculated in ft² and cfm, the units of the print.

use super::brief::flow;
use super::local::{self, Kitchen, LocalExhaust};
use super::run_time::{self, Factors};
use super::table::row;
use super::{Brief, Level};
use crate::formula::Formula;
use crate::house::{Credit, KitchenDraw, RoomKind, Table};
use crate::issue::{Condition, Trouble};
use crate::quantity::Unit::{CubicFootPerMinute as CFM, Ratio, SquareFoot};
use crate::source::Source;
use crate::working::{LineId, Origin, Term};

/// What differs between editions.
pub struct Edition {
    table: Option<Source>,
    run_time: (Factors, Source),
    local: LocalExhaust,
    equation: Option<Source>,
    credit: Option<Source>,
}

static LOCAL_2015: Source = Source::published("IRC", "2015", "M1507.4");
static LOCAL_2018: Source = Source::published("IRC", "2018", "M1505.4.4");
static LOCAL_2021: Source = Source::published("IRC", "2021", "M1505.4.4");
static LOCAL_2024: Source = Source::published("IRC", "2024", "M1505.5");

/// Bathrooms and toilet rooms 20 or 50 cfm, kitchens 25 or 100 cfm: the same in every edition.
pub const fn printed_in(source: &'static Source) -> LocalExhaust {
    LocalExhaust {
        unit: CFM,
        bath: (20.0, 50.0),
        counts_wc: true,
        kitchen: Kitchen::Rates(25.0, 100.0),
        draw: KitchenDraw::System,
        baths: source,
        kitchens: source,
    }
}

/// 2015: the table alone, no credit.
pub static IRC_2015: Edition = Edition {
    table: Some(Source::published("IRC", "2015", "table M1507.3.3(1)")),
    run_time: (RUN_TIME, Source::published("IRC", "2015", "table M1507.3.3(2)")),
    local: printed_in(&LOCAL_2015),
    equation: None,
    credit: None,
};

/// 2018: table or equation, no credit.
pub static IRC_2018: Edition = Edition {
    table: Some(Source::published("IRC", "2018", "table M1505.4.3(1)")),
    run_time: (RUN_TIME, Source::published("IRC", "2018", "table M1505.4.3(2)")),
    local: printed_in(&LOCAL_2018),
    equation: Some(Source::published("IRC", "2018", "M1505.4.3, equation 15-1")),
    credit: None,
};

/// 2021: table or equation, 30 % credit.
pub static IRC_2021: Edition = Edition {
    table: Some(Source::published("IRC", "2021", "table M1505.4.3(1)")),
    run_time: (RUN_TIME, Source::published("IRC", "2021", "table M1505.4.3(2)")),
    local: printed_in(&LOCAL_2021),
    equation: Some(Source::published("IRC", "2021", "M1505.4.3, equation 15-1")),
    credit: Some(Source::published("IRC", "2021", "M1505.4.3, exception 1")),
};

/// 2024: as 2021, with local exhaust in M1505.5.
pub static IRC_2024: Edition = Edition {
    table: Some(Source::published("IRC", "2024", "table M1505.4.3(1)")),
    run_time: (RUN_TIME, Source::published("IRC", "2024", "table M1505.4.3(2)")),
    local: printed_in(&LOCAL_2024),
    equation: Some(Source::published("IRC", "2024", "M1505.4.3, equation 15-1")),
    credit: Some(Source::published("IRC", "2024", "M1505.4.3, exception")),
};

static LOCAL_IMC: Source = Source::published("IMC", "2021 and later", "table 403.3.2.3");

/// International Mechanical Code: the equation alone; it may cycle, at least 1 h in every 4 h with the same average.
pub static IMC: Edition = Edition {
    table: None,
    run_time: (
        Factors::SameAverage(25.0),
        Source::published("IMC", "2021 and later", "403.3.2, at least 1 h in every 4 h"),
    ),
    local: printed_in(&LOCAL_IMC),
    equation: Some(Source::published("IMC", "2021 and later", "403.3.2")),
    credit: Some(Source::published("IMC", "2021 and later; earlier editions not seen", "403.3.2, 30 % reduction")),
};

/// What this edition asks of the house.
pub fn ask(brief: &mut Brief, edition: &'static Edition) {
    let table = table_rate(brief, edition);
    let equation = equation_rate(brief, edition);
    let (chosen, other) = match (brief.facts.choices.table.unwrap_or(Table::Table), table, equation) {
        (Table::Equation, table, Some(equation)) | (_, table @ None, Some(equation)) => (equation, table),
        (_, Some(table), equation) => (table, equation),
        (_, None, None) => return,
    };
    if let Some(other) = other {
        brief.alternative(other.formula, flow(other.cfm, CFM), other.line);
    }
    let rate = credited(brief, edition, chosen);
    let rate = with_run_time(brief, edition, rate);
    brief.whole(Level::Normal, flow(rate.cfm, CFM), rate.line);
    local::ask(brief, &edition.local);
    brief.split_supply_by_kind();
    brief.say(Trouble::NoAwayRate);
}

#[derive(Clone, Copy)]
struct Rate {
    cfm: f64,
    formula: Formula,
    line: LineId,
}

impl Rate {
    fn term(self) -> Term {
        Term::new("Q", self.cfm, CFM, Origin::Line(self.line))
    }
}

/// Upper edges of the table's rows, ft².
pub const ROWS: [f64; 5] = [1500.0, 3000.0, 4500.0, 6000.0, 7500.0];
/// Upper edges of its columns, bedrooms.
pub const COLUMNS: [f64; 4] = [1.0, 3.0, 5.0, 7.0];
/// The table in cfm.
pub const TABLE: [[f64; 5]; 6] = [
    [30.0, 45.0, 60.0, 75.0, 90.0],
    [45.0, 60.0, 75.0, 90.0, 105.0],
    [60.0, 75.0, 90.0, 105.0, 120.0],
    [75.0, 90.0, 105.0, 120.0, 135.0],
    [90.0, 105.0, 120.0, 135.0, 150.0],
    [105.0, 120.0, 135.0, 150.0, 165.0],
];

fn table_rate(brief: &mut Brief, edition: &'static Edition) -> Option<Rate> {
    let source = edition.table.as_ref()?;
    let (area, area_term) = brief.floor_area(SquareFoot);
    let (bedrooms, bedrooms_term) = brief.bedrooms();
    let at = row(area, &ROWS);
    let cfm = TABLE[at][row(bedrooms, &COLUMNS)];
    let printed_gap = ROWS.iter().any(|edge| area > *edge && area < edge + 1.0);
    if printed_gap || (at == 0 && area > ROWS[0] - 1.0 / 1024.0) {
        brief.say(Trouble::BetweenRows { area });
    }
    let terms = [area_term, bedrooms_term];
    let line = brief.working.record(Formula::IrcTable, (cfm, CFM), source, &terms);
    Some(Rate { cfm, formula: Formula::IrcTable, line })
}

fn equation_rate(brief: &mut Brief, edition: &'static Edition) -> Option<Rate> {
    let source = edition.equation.as_ref()?;
    let (area, area_term) = brief.floor_area(SquareFoot);
    let (bedrooms, bedrooms_term) = brief.bedrooms();
    let (per_area, per_person) = (0.01, 7.5);
    let cfm = per_area * area + per_person * (bedrooms + 1.0);
    let printed = Origin::Printed(source);
    let terms = [
        Term::new("a", per_area, Ratio, printed),
        Term::new("b", per_person, Ratio, printed),
        area_term,
        bedrooms_term,
    ];
    let line = brief.working.record(Formula::IrcEquation, (cfm, CFM), source, &terms);
    Some(Rate { cfm, formula: Formula::IrcEquation, line })
}

/// The share left by the 30 % credit.
const CREDIT: f64 = 0.70;

fn credited(brief: &mut Brief, edition: &'static Edition, rate: Rate) -> Rate {
    let claimed = brief.facts.choices.credit == Credit::Claimed;
    let credit = match credit_source(brief, edition) {
        Ok(source) => source,
        Err(condition) => {
            if claimed {
                brief.say(Trouble::CreditRefused(condition));
            }
            return rate;
        }
    };
    let cfm = CREDIT * rate.cfm;
    let terms = [rate.term(), Term::new("c", CREDIT, Ratio, Origin::Printed(credit))];
    let line = brief.working.record(Formula::IrcCredit, (cfm, CFM), credit, &terms);
    if claimed {
        return Rate { cfm, formula: Formula::IrcCredit, line };
    }
    brief.alternative(Formula::IrcCredit, flow(cfm, CFM), line);
    rate
}

/// The credit needs air ducted to every bedroom and to one of living room, dining room, kitchen, and a balanced
/// system. Here supply equals extract and every bedroom is supplied by construction.
fn credit_source(brief: &Brief, edition: &'static Edition) -> Result<&'static Source, Condition> {
    let shared_room = |kind| matches!(kind, RoomKind::Living | RoomKind::Dining | RoomKind::LivingKitchen);
    let source = edition.credit.as_ref().ok_or(Condition::NotInEdition)?;
    let served = brief.facts.supplied().any(|room| shared_room(room.kind));
    if served { Ok(source) } else { Err(Condition::LivingDiningKitchen) }
}

/// Run-time share in %, factor. Straight lines between, nothing outside.
const RUN_TIME: Factors =
    Factors::Printed(&[(25.0, 4.0), (33.0, 3.0), (50.0, 2.0), (66.0, 1.5), (75.0, 1.3), (100.0, 1.0)]);

fn with_run_time(brief: &mut Brief, edition: &'static Edition, rate: Rate) -> Rate {
    let (factors, source) = &edition.run_time;
    let running = run_time::while_running(brief, (*factors, source), (rate.cfm, rate.line));
    running.map_or(rate, |(cfm, line)| Rate { cfm, formula: Formula::IrcRunTime, line })
}
