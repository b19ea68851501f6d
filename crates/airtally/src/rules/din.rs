//! Germany: DIN 1946-6, editions 2009-05 and 2019-12. Calculated in m³/h and m².
//!
//! Four levels: moisture protection and reduced ventilation when away, nominal every day, intensive at boost.

use super::brief::flow;
use super::{Air, Brief, Follows, Level};
use crate::formula::Formula;
use crate::given::GivenId;
use crate::house::RoomKind;
use crate::issue::Trouble;
use crate::quantity::Unit::{Count, CubicMetrePerHour as M3H, Ratio, SquareMetre};
use crate::source::Source;
use crate::working::{LineId, Origin, Term};

/// What differs between editions.
pub struct Edition {
    rate: Source,
    coefficients: Coefficients,
    moisture: GivenId,
}

enum Coefficients {
    /// Printed, seen twice.
    Printed([f64; 3]),
    /// From memory: the person can change them.
    Given([GivenId; 3]),
}

/// 2009-05.
pub static DIN_2009: Edition = Edition {
    rate: Source::published("DIN 1946-6", "2009-05", "table 5"),
    coefficients: Coefficients::Printed([-0.001, 1.15, 20.0]),
    moisture: GivenId::DinMoisture2009,
};

/// 2019-12.
pub static DIN_2019: Edition = Edition {
    rate: Source::memory("DIN 1946-6", "2019-12", "table 7, eq. (8)").doubted(),
    coefficients: Coefficients::Given([GivenId::DinSquare, GivenId::DinLinear, GivenId::DinConstant]),
    moisture: GivenId::DinMoisture2019,
};

/// What this edition asks of the house.
pub fn ask(brief: &mut Brief, edition: &'static Edition) {
    let (nominal, line) = nominal(brief, edition);
    brief.whole(Level::Normal, flow(nominal, M3H), line);
    by_persons(brief);
    for (id, level) in
        [(edition.moisture, Level::Away), (GivenId::DinReduced, Level::Away), (GivenId::DinIntensive, Level::Boost)]
    {
        share_of_nominal(brief, (nominal, line), id, level);
    }
    brief.demand.away = Follows::Share(GivenId::DinReduced);
    brief.demand.boost = Follows::Share(GivenId::DinIntensive);
    extract(brief);
    brief.split_supply_by_kind();
}

/// Range of the equation, m². Below it the lower end counts; above it the rate must be adapted to occupancy.
const RANGE: (f64, f64) = (30.0, 210.0);

/// q = a₂·A² + a₁·A + a₀ for the area held within 30 … 210 m².
fn nominal(brief: &mut Brief, edition: &'static Edition) -> (f64, LineId) {
    let (area, area_term) = brief.floor_area(SquareMetre);
    if area > RANGE.1 || (area < RANGE.0 && area > 0.0) {
        brief.say(Trouble::OutsideEquation { min: RANGE.0, max: RANGE.1 });
    }
    let counted = area.max(RANGE.0).min(RANGE.1);
    let symbols = ["a_2", "a_1", "a_0"];
    let (values, terms) = match edition.coefficients {
        Coefficients::Printed(values) => {
            let printed = Origin::Printed(&edition.rate);
            (values, [0, 1, 2].map(|at| Term::new(symbols[at], values[at], Ratio, printed)))
        }
        Coefficients::Given(ids) => {
            (ids.map(|id| brief.givens.value(id)), [0, 1, 2].map(|at| brief.givens.term(symbols[at], ids[at])))
        }
    };
    let rate = (values[0] * counted * counted + values[1] * counted + values[2]).max(0.0);
    let counted_term = if counted == area { area_term } else { Term::new("A", counted, SquareMetre, area_term.origin) };
    let terms = [terms[0], terms[1], terms[2], counted_term];
    (rate, brief.working.record(Formula::DinNominal, (rate, M3H), &edition.rate, &terms))
}

fn by_persons(brief: &mut Brief) {
    let persons = brief.facts.persons();
    let rate = brief.givens.get(GivenId::DinPerson);
    let total = persons * rate.value;
    let terms = [Term::new("P", persons, Count, Origin::Counted), brief.givens.term("q_P", GivenId::DinPerson)];
    let line = brief.working.record(Formula::PersonRate, (total, M3H), rate.source, &terms);
    brief.whole(Level::Normal, flow(total, M3H), line);
}

fn share_of_nominal(brief: &mut Brief, (nominal, nominal_line): (f64, LineId), id: GivenId, level: Level) {
    let share = brief.givens.get(id);
    let rate = share.value * nominal;
    let terms = [brief.givens.term("f", id), Term::new("q_NL", nominal, M3H, Origin::Line(nominal_line))];
    let line = brief.working.record(Formula::LevelShare, (rate, M3H), share.source, &terms);
    brief.whole(level, flow(rate, M3H), line);
}

fn extract(brief: &mut Brief) {
    for room in brief.facts.drawn() {
        brief.room_given((room.id, Air::Extract), Level::Normal, rate_of(room.kind));
    }
    let givens = brief.givens;
    brief.split_extract(givens.get(GivenId::DinBathroom).source, |room| givens.value(rate_of(room.kind)));
}

const fn rate_of(kind: RoomKind) -> GivenId {
    match kind {
        RoomKind::Kitchen | RoomKind::LivingKitchen => GivenId::DinKitchen,
        RoomKind::Bathroom => GivenId::DinBathroom,
        RoomKind::Wc => GivenId::DinWc,
        _ => GivenId::DinUtility,
    }
}
