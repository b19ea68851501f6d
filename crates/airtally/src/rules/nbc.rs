//! Canada: National Building Code 9.32.3.3, principal system by bedrooms. Calculated in L/s.

use super::brief::flow;
use super::{Brief, Follows, Level, canada};
use crate::formula::Formula;
use crate::given::GivenId;
use crate::issue::Trouble;
use crate::quantity::Unit::LitrePerSecond as LS;

/// Least and most normal operating exhaust capacity for 1 to 5 bedrooms.
const TABLE: [(GivenId, GivenId); 5] = [
    (GivenId::NbcLeast1, GivenId::NbcMost1),
    (GivenId::NbcLeast2, GivenId::NbcMost2),
    (GivenId::NbcLeast3, GivenId::NbcMost3),
    (GivenId::NbcLeast4, GivenId::NbcMost4),
    (GivenId::NbcLeast5, GivenId::NbcMost5),
];

/// What the code asks of the house. With more bedrooms than its table the room count of CAN/CSA-F326 applies.
pub fn ask(brief: &mut Brief) {
    let (bedrooms, bedrooms_term) = brief.bedrooms();
    let Some((least, most)) = TABLE.get(bedrooms as usize - 1) else {
        brief.say(Trouble::BeyondTable { most: TABLE.len() as u32 });
        canada::ask(brief);
        brief.demand.away = Follows::Stated;
        return brief.say(Trouble::NoAwayRate);
    };
    let rate = brief.givens.get(*least);
    let terms = [bedrooms_term, brief.givens.term("q_min", *least), brief.givens.term("q_max", *most)];
    let line = brief.working.record(Formula::BedroomsTable, (rate.value, LS), rate.source, &terms);
    brief.whole(Level::Normal, flow(rate.value, LS), line);
    brief.demand.most = Some(flow(brief.givens.value(*most), LS));
    canada::local_exhaust(brief);
    brief.split_supply_by_kind();
    brief.say(Trouble::NoAwayRate);
}
