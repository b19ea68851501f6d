//! A design that is throttled as it says delivers what was shared out.

use super::{few, houses};
use airtally::delivery::{Mishap, Trial};
use airtally::edit::Edit;
use airtally::house::{Field, House, RoomField};
use airtally::quantity::Unit;
use airtally::report::Report;
use airtally::rules::Air;
use airtally_words::demo::DEMOS;
use proptest::prelude::*;
use proptest::sample::select;

/// The house with every run pulled exactly as planned, which makes the solver say what comes out of each.
fn pulled_as_planned(house: House) -> House {
    let report = Report::of(house.clone());
    report.runs().runs.iter().fold(house, |house, run| {
        let field = if run.air == Air::Supply { RoomField::SupplyTubes } else { RoomField::ExtractTubes };
        Edit::Set(Field::Room(run.room, field), run.tubes.value.to_string(), Unit::Count).apply(&house)
    })
}

/// A tenth of a per cent, for every run of every example house, with mixed lengths.
#[test]
fn the_throttled_design_delivers_the_shares() {
    for demo in &DEMOS {
        let house = (demo.house)();
        let lengths = house.rooms.clone().into_iter().enumerate().fold(house, |house, (at, room)| {
            let text = (3 + 2 * at).to_string();
            let house = Edit::Set(Field::Room(room.id, RoomField::SupplyRun), text.clone(), Unit::Metre).apply(&house);
            Edit::Set(Field::Room(room.id, RoomField::ExtractRun), text, Unit::Metre).apply(&house)
        });
        let report = Report::of(pulled_as_planned(lengths));
        let mut seen = 0;
        for side in &report.delivery().sides {
            for drop in &side.runs {
                let run = report.runs().side(side.air).find(|run| run.room == drop.room).expect("its run");
                let built = drop.built.expect("a run that was pulled").value.as_m3h();
                let planned = run.normal.as_m3h();
                assert!((built / planned - 1.0).abs() < 1e-3, "{}: {built} and {planned} m³/h", demo.title);
                seen += 1;
            }
        }
        assert_eq!(seen, report.runs().runs.len());
    }
}

proptest! {
    #![proptest_config(few(200))]

    /// Whatever the unit holds and wherever manifolds stand: with nothing wrong every room gets its share to a tenth of a per
    /// cent, unless the unit whose curve was typed is too weak for it.
    #[test]
    fn with_nothing_wrong_the_plan_comes_back(house in houses::house()) {
        let report = Report::of(house);
        for side in report.tried(&Trial::default()).sides.iter().filter(|side| !side.weak) {
            for came in &side.runs {
                prop_assert!(came.change().abs() < 0.1, "{:?}: {:?}", side.air, came);
            }
        }
    }

    /// A fault takes air from its own room, or none where it has none to lose, and never gives it more.
    #[test]
    fn a_fault_never_gives_its_room_more(house in houses::house(), which in any::<prop::sample::Index>(), mishap in select(&Mishap::ALL[..])) {
        let report = Report::of(house);
        let rooms: Vec<_> = report.runs().runs.iter().map(|run| run.room).collect();
        prop_assume!(!rooms.is_empty());
        let room = *which.get(&rooms);
        let outcome = report.tried(&Trial { mishap: Some((room, mishap)), ..Trial::default() });
        for came in outcome.sides.iter().filter(|side| !side.weak).flat_map(|side| &side.runs).filter(|came| came.room == room) {
            prop_assert!(came.change() < 0.1, "{:?}: {:?}", mishap, came);
        }
    }
}
