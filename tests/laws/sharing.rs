//! Shares, levels and tubes.

use super::{config, houses};
use airtally::edit::Edit;
use airtally::house::{Choices, TubeSize};
use airtally::report::Report;
use airtally::rules::{Air, Demand, Level, Scope};
use airtally::shares::{LevelShares, Share};
use proptest::prelude::*;

/// Of a step: what arithmetic may lose.
const NOISE: f64 = 1e-9;

proptest! {
    #![proptest_config(config())]

    /// What comes in goes out, at every level, step for step.
    #[test]
    fn supply_equals_extract(house in houses::house()) {
        let report = Report::of(house);
        for level in report.shares().levels() {
            prop_assert_eq!(level.steps(Air::Supply), level.steps(Air::Extract));
            let total = report.shares().step.as_m3h() * f64::from(level.steps(Air::Supply));
            prop_assert!((total - level.total.as_m3h()).abs() <= NOISE * (1.0 + total));
        }
    }

    /// Rounding to whole steps never takes a room below what the rule asks for it.
    #[test]
    fn no_share_is_below_its_minimum(house in houses::house()) {
        let report = Report::of(house);
        for share in report.shares().levels().flat_map(|level| level.supply.iter().chain(&level.extract)) {
            prop_assert!(share.flow.as_m3h() >= share.minimum.as_m3h() - NOISE, "{:?}", share);
            prop_assert!(share.steps >= 1, "a terminal without air: {:?}", share);
        }
    }

    /// The stated minimums of rooms reach the shares: at normal, and at boost the larger of both.
    #[test]
    fn every_stated_minimum_is_a_minimum(house in houses::house()) {
        let report = Report::of(house);
        let demand = report.demand();
        for (level, counted) in [(Level::Normal, &[Level::Normal][..]), (Level::Boost, &[Level::Normal, Level::Boost][..])] {
            let shares = report.shares().at(level);
            for air in Air::BOTH {
                for share in shares.side(air) {
                    let stated = stated(demand, Scope::Room(share.room, air), counted);
                    prop_assert!(share.flow.as_m3h() >= stated - NOISE, "{:?} {:?}: {:?} of {}", level, air, share, stated);
                }
            }
        }
    }

    #[test]
    fn away_normal_and_boost_rise(house in houses::house()) {
        let report = Report::of(house);
        let [away, normal, boost] = Level::ALL.map(|level| report.shares().at(level).total);
        prop_assert!(away <= normal && normal <= boost, "{:?} {:?} {:?}", away, normal, boost);
    }

    /// What is set is what is asked, and less than a step more, unless the rooms' own minimums in whole steps need it.
    #[test]
    fn the_total_meets_the_requirement_and_wastes_no_step(house in houses::house()) {
        let report = Report::of(house);
        let step = report.shares().step.as_m3h();
        for level in report.shares().levels().filter(|level| !level.supply.is_empty()) {
            let (total, required) = (level.total.as_m3h(), level.required.value.as_m3h());
            prop_assert!(total >= required - NOISE * (1.0 + required), "{:?}", level);
            let forced = forced(level, step);
            prop_assert!(total - required < step || total <= forced + NOISE * forced, "{} {} {}", total, required, forced);
        }
    }

    /// Every ask is met, and the largest governs.
    #[test]
    fn the_largest_ask_governs(house in houses::house()) {
        let report = Report::of(house);
        for level in report.shares().levels() {
            let required = level.required.value;
            prop_assert!(level.asked.iter().all(|asked| asked.flow <= required));
            prop_assert!(level.margin().is_none_or(|(first, below)| first.flow == required && below.is_none_or(|gap| gap.as_m3h() >= 0.0)));
        }
    }

    /// A larger tube never needs more tubes.
    #[test]
    fn a_bigger_bore_never_needs_more_tubes(house in houses::house()) {
        let counts = TubeSize::ALL.map(|tube| {
            let choices = Choices { tube, ..house.choices };
            let report = Report::of(Edit::Choose(choices).apply(&house));
            report.runs().runs.iter().map(|run| run.tubes.value).collect::<Vec<_>>()
        });
        let [small, medium, large, oval] = &counts;
        prop_assert!(small.iter().zip(medium).all(|(small, medium)| small >= medium));
        prop_assert!(medium.iter().zip(large).all(|(medium, large)| medium >= large));
        prop_assert!(large.iter().zip(oval).all(|(large, oval)| large >= oval), "130 × 45 mm is more than 76 mm");
    }

    /// Tubes stay within the speed limits, but for the slack the count is allowed, and ports hold every tube.
    #[test]
    fn tubes_keep_their_speed_limits(house in houses::house()) {
        let report = Report::of(house);
        for run in &report.runs().runs {
            for (speed, limit) in [(run.speed_normal, run.limit_normal), (run.speed_boost, run.limit_boost)] {
                let slack = 1.0 + 0.05 / f64::from(run.tubes.value);
                prop_assert!(speed.value.as_ms() <= limit.as_ms() * slack + NOISE, "{:?}", run);
            }
        }
        prop_assert!(report.runs().supply_ports.value >= report.runs().tubes(Air::Supply));
        prop_assert!(report.runs().extract_ports.value >= report.runs().tubes(Air::Extract));
    }
}

/// The largest flow that is stated for a room and direction at any of the levels, m³/h.
fn stated(demand: &Demand, scope: Scope, levels: &[Level]) -> f64 {
    let stated = demand.requirements.iter().filter(|asked| asked.scope == scope && levels.contains(&asked.level));
    stated.fold(0.0, |most, asked| asked.flow.as_m3h().max(most))
}

/// The larger side's minimums, each rounded up to whole steps and one at least.
fn forced(level: &LevelShares, step: f64) -> f64 {
    let least = |share: &Share| (share.minimum.as_m3h() / step * (1.0 - NOISE)).ceil().max(1.0);
    let side = |shares: &[Share]| shares.iter().map(least).sum::<f64>() * step;
    side(&level.supply).max(side(&level.extract))
}
