//! Washington State's amendment of the IRC 2021. Calculated in ft² and cfm.

use super::brief::flow;
use super::local::{self, Kitchen, LocalExhaust};
use super::run_time::{self, Factors};
use super::{Brief, Level};
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::KitchenDraw;
use crate::issue::Trouble;
use crate::quantity::Unit::{CubicFootPerMinute as CFM, Ratio, SquareFoot};
use crate::source::Source;
use crate::working::{Origin, Term};

static RATE: Source =
    Source::published("IRC 2021, Washington State amendment", "WAC 51-51", "M1505.4.3, equation 15-1");
static QUALITY: Source =
    Source::published("IRC 2021, Washington State amendment", "WAC 51-51", "M1505.4.3, coefficient");
static LOCAL: Source = Source::published("IRC 2021, Washington State amendment", "WAC 51-51", "M1505.4.4");

static RUNNING: Source =
    Source::published("IRC 2021, Washington State amendment", "WAC 51-51", "M1505.4.3, at least 2 h in each 4 h");

const RUN_TIME: Factors = Factors::Printed(&[(50.0, 2.0), (66.0, 1.5), (75.0, 1.3), (100.0, 1.0)]);

/// Never less than this, cfm.
const LEAST: f64 = 30.0;
static LOCAL_EXHAUST: LocalExhaust = LocalExhaust {
    unit: CFM,
    bath: (20.0, 50.0),
    counts_wc: true,
    kitchen: Kitchen::AirChanges(5.0, 300.0),
    draw: KitchenDraw::Hood,
    baths: &LOCAL,
    kitchens: &LOCAL,
};

/// What the amendment asks of the house.
pub fn ask(brief: &mut Brief) {
    let (area, area_term) = brief.floor_area(SquareFoot);
    let (bedrooms, bedrooms_term) = brief.bedrooms();
    let (per_area, per_person) = (0.01, 7.5);
    let rate = (per_area * area + per_person * (bedrooms + 1.0)).max(LEAST);
    let printed = Origin::Printed(&RATE);
    let terms = [
        Term::new("a", per_area, Ratio, printed),
        Term::new("b", per_person, Ratio, printed),
        area_term,
        bedrooms_term,
        Term::new("least", LEAST, CFM, printed),
    ];
    let line = brief.working.record(Formula::WashingtonRate, (rate, CFM), &RATE, &terms);
    let coefficient = brief.givens.value(GivenId::WashingtonQuality);
    let whole = coefficient * rate;
    let terms = [brief.givens.term("C", GivenId::WashingtonQuality), Term::new("Q_r", rate, CFM, Origin::Line(line))];
    let line = brief.working.record(Formula::WashingtonQuality, (whole, CFM), &QUALITY, &terms);
    let running = run_time::while_running(brief, (RUN_TIME, &RUNNING), (whole, line));
    let (whole, line) = running.unwrap_or((whole, line));
    brief.whole(Level::Normal, flow(whole, CFM), line);
    local::ask(brief, &LOCAL_EXHAUST);
    brief.split_supply_by_kind();
    brief.say(Trouble::NoAwayRate);
}
