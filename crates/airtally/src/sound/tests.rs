use super::*;
use crate::quantity::{Flow, Length, Pressure, Velocity, Volume};

fn near(ours: f64, handbook: f64, by: f64) {
    assert!((ours - handbook).abs() < by, "{ours} and {handbook}");
}

/// Handbook of physics, section 12: straight ducts.
#[test]
fn straight_ducts_are_as_loud_as_the_handbook_says() {
    for (v, mm, weighted) in [(3.0, 63.0, -11.38), (4.0, 160.0, 5.074), (5.0, 125.0, 9.323)] {
        let sound = straight(Velocity::from_ms(v), Length::from_mm(mm));
        near(sound.a_weighted(), weighted, 0.02);
    }
}

/// Handbook of physics, section 12: bends, octave by octave.
#[test]
fn bends_are_as_loud_as_the_handbook_says() {
    let cases = [
        (3.0, 160.0, [18.9, 14.6, 9.49, 3.75, -2.51, -9.21, -16.3, -23.8]),
        (5.0, 125.0, [33.6, 30.5, 26.2, 21.2, 15.5, 9.26, 2.59, -4.47]),
    ];
    for (v, mm, bands) in cases {
        let sound = bend(Velocity::from_ms(v), Length::from_mm(mm));
        for (ours, handbook) in sound.0.into_iter().zip(bands) {
            near(ours, handbook, 0.06);
        }
    }
}

/// Handbook of physics, section 12: from a fan to an ear at 250 Hz.
#[test]
fn a_chain_is_as_loud_as_the_handbook_says() {
    let fan = fan(Flow::from_m3h(200.0), Pressure::from_pa(150.0)) - 8.0;
    let split = split(Flow::from_m3h(200.0), Flow::from_m3h(20.0));
    let end = end_reflection(Length::from_mm(63.0))[2];
    let heard = fan - 20.0 - split - 6.0 - 2.0 - end + room(Volume::from_m3(30.0), 0.5, Length::from_m(1.5));
    near(heard, 4.879, 0.01);
}

#[test]
fn curves_end_at_both_ends() {
    assert_eq!(Spectrum::SILENT.nc(), 15.0);
    assert_eq!(Spectrum::flat(120.0).nc(), 45.0);
    assert_eq!(Spectrum([47.0, 36.0, 33.0, 22.0, 17.0, 14.0, 12.0, 11.0]).nc(), 20.0);
}

mod of_a_house {
    use crate::edit::Edit;
    use crate::given::GivenId;
    use crate::house::{Choices, Field, House, RoomField, RoomKind};
    use crate::issue::{Issue, Place, Severity, Trouble};
    use crate::quantity::Unit;
    use crate::report::Report;
    use crate::rules::{Level, RuleSet};

    fn house() -> House {
        let rooms = [(RoomKind::Living, "24"), (RoomKind::MainBedroom, "14"), (RoomKind::Kitchen, "12")];
        rooms.into_iter().fold(House::new(), |house, (kind, area)| {
            let house = Edit::AddRoom(kind).apply(&house);
            let id = house.rooms.last().unwrap().id;
            Edit::Set(Field::Room(id, RoomField::Area), area.into(), Unit::SquareMetre).apply(&house)
        })
    }

    fn set(house: &House, id: GivenId, text: &str) -> House {
        Edit::Set(Field::Given(id), text.into(), id.given().unit).apply(house)
    }

    fn loudest(house: House) -> f64 {
        Report::of(house).heard().iter().map(|heard| heard.normal.value).fold(f64::MIN, f64::max)
    }

    #[test]
    fn what_makes_it_quieter_makes_it_quieter() {
        let plain = loudest(house());
        for (id, text) in [
            (GivenId::SilencerLength, "1500"),
            (GivenId::BoxDamping, "8"),
            (GivenId::TubeDamping, "1"),
            (GivenId::Reverberation, "0.3"),
            (GivenId::ValveBore, "60"),
            (GivenId::UnitInside, "20"),
            (GivenId::UnitSound, "35"),
        ] {
            assert!(loudest(set(&house(), id, text)) < plain, "{}", id.given().key);
        }
        let loud = set(&set(&house(), GivenId::UnitSound, "95"), GivenId::SilencerLength, "300");
        assert!(Report::of(loud).issues().iter().any(|issue| issue.code() == "loud"));
    }

    #[test]
    fn boost_is_not_quieter_and_a_measured_unit_scales_with_its_speed() {
        let house = set(&house(), GivenId::UnitSound, "50");
        for heard in Report::of(house).heard() {
            assert!(heard.boost.value >= heard.normal.value, "{heard:?}");
        }
    }

    #[test]
    fn a_room_is_loud_at_the_lowest_level_that_passes_its_limit() {
        let said = |limit: f64| {
            // Its boost is 130 % of normal.
            let rules = Choices { rules: RuleSet::PassiveHouse, ..house().choices };
            let house = set(&Edit::Choose(rules).apply(&house()), GivenId::QuietLiving, &limit.to_string());
            let house = set(&house, GivenId::UnitSound, "70");
            let report = Report::of(house);
            let heard = *report.heard().iter().find(|heard| heard.limit == GivenId::QuietLiving).unwrap();
            let of = |issue: &&Issue| issue.place == Place::Room(heard.room) && issue.code() == "loud";
            let issue = report.issues().iter().find(of).copied();
            (heard.normal.value, heard.boost.value, issue.map(|issue| (issue.trouble, issue.severity())))
        };
        let (normal, boost, _) = said(35.0);
        assert!(boost > normal + 1.0, "{normal} {boost}");
        let level = |limit: f64| match said(limit).2 {
            Some((Trouble::Loud { level, .. }, severity)) => Some((level, severity)),
            _ => None,
        };
        assert_eq!(level(normal - 0.5), Some((Level::Normal, Severity::Unusual)));
        assert_eq!(level(normal + 0.5), Some((Level::Boost, Severity::Note)));
        assert_eq!(level(boost + 0.5), None);
    }

    /// Rayleigh: a sound and an ear may change places. Two rooms with one tube each hear one another alike, each as large as it is.
    #[test]
    fn two_rooms_hear_one_another_alike() {
        let house =
            [(RoomKind::Bedroom, "12"), (RoomKind::Bedroom, "13")].into_iter().fold(House::new(), |house, own| {
                let house = Edit::AddRoom(own.0).apply(&house);
                let id = house.rooms.last().unwrap().id;
                Edit::Set(Field::Room(id, RoomField::Area), own.1.into(), Unit::SquareMetre).apply(&house)
            });
        let report = Report::of(Edit::AddRoom(RoomKind::Bathroom).apply(&house));
        let tubes: Vec<u32> = report.runs().runs.iter().take(2).map(|run| run.tubes.value).collect();
        let heard: Vec<f64> =
            report.heard().iter().filter_map(|heard| heard.voice).map(|own| own.level.value).collect();
        assert_eq!((tubes[0], heard.len()), (tubes[1], 2));
        assert!((heard[0] - heard[1]).abs() < 1e-9, "{heard:?}");
    }
}
