use super::ducts::Ducts;
use super::{Against, wisest};
use crate::edit::Edit;
use crate::given::Givens;
use crate::house::{Field, House, RoomField, RoomKind, TubeSize};
use crate::quantity::{Flow, Length, Unit};
use crate::report::Report;
use crate::rules::Air;

fn house() -> House {
    let rooms = [
        (RoomKind::Bedroom, "12", "8"),
        (RoomKind::Bedroom, "10", "14"),
        (RoomKind::Living, "28", "6"),
        (RoomKind::Kitchen, "14", "5"),
        (RoomKind::Bathroom, "7", "11"),
    ];
    let mut house = House::new();
    for (kind, area, legs) in rooms {
        house = Edit::AddRoom(kind).apply(&house);
        let id = house.rooms.last().unwrap().id;
        let supplied = matches!(kind, RoomKind::Bedroom | RoomKind::Living);
        let run = if supplied { RoomField::SupplyRun } else { RoomField::ExtractRun };
        for (field, text, unit) in [(RoomField::Area, area, Unit::SquareMetre), (run, legs, Unit::Metre)] {
            house = Edit::Set(Field::Room(id, field), text.into(), unit).apply(&house);
        }
    }
    house
}

/// Site handbook, section 2: a run of 63 mm without its terminal, within what its round numbers and the ends allow.
#[test]
fn a_run_takes_what_the_handbook_says() {
    let ducts = Ducts::of(&Givens::registered(), Length::from_mm(63.0), 75.0).unwrap();
    let pressure = |flow: f64, metres: f64, bends: u32| {
        let mut path = ducts.tube(Length::from_m(metres));
        path.bends = bends;
        path.law().pressure(Flow::from_m3h(flow)).as_pa()
    };
    for (flow, metres, bends, pascal) in [(30.0, 15.0, 3, 44.0), (30.0, 20.0, 4, 57.0), (35.0, 20.0, 4, 76.0)] {
        let ours = pressure(flow, metres, bends);
        assert!((ours / pascal - 1.0).abs() < 0.05, "{flow} m³/h, {metres} m: {ours} and not {pascal}");
    }
}

#[test]
fn one_run_stays_open_and_the_others_are_throttled_to_it() {
    let report = Report::of(house());
    for air in Air::BOTH {
        let side = report.delivery().side(air).unwrap();
        let index: Vec<_> = side.runs.iter().filter(|drop| drop.index).collect();
        assert_eq!(index.len(), 1);
        assert_eq!(index[0].throttle.value.as_pa(), 0.0);
        for drop in &side.runs {
            let together = drop.normal.value + drop.throttle.value;
            assert!((together - index[0].normal.value).abs().as_pa() < 1e-9);
            assert!(drop.boost.value >= drop.normal.value);
            assert_eq!(drop.hole.is_some(), !drop.index);
            assert!(drop.built.is_none());
        }
        assert!(side.normal.value > index[0].normal.value && side.boost.value >= side.normal.value);
    }
}

/// The throttled design, solved as it is built, gives the shares back; a longer run gets less and the others more.
#[test]
fn what_was_pulled_as_planned_gets_what_was_planned() {
    let house = house();
    let (near, far) = (house.rooms[0].id, house.rooms[1].id);
    let with = |house: &House, id, text: &str| {
        Edit::Set(Field::Room(id, RoomField::SupplyBuilt), text.into(), Unit::Metre).apply(house)
    };
    let flow = |house: House, id| {
        let report = Report::of(house);
        let plan = report.runs().side(Air::Supply).find(|run| run.room == id).unwrap().normal;
        report.delivery().drop(Air::Supply, id).unwrap().built.unwrap().value / plan
    };
    let same = with(&with(&house, near, "8"), far, "14");
    assert!((flow(same.clone(), near) - 1.0).abs() < 1e-6);
    assert!((flow(same.clone(), far) - 1.0).abs() < 1e-6);
    let longer = with(&same, far, "20");
    assert!(flow(longer.clone(), far) < 0.97);
    assert!(flow(longer, near) > 1.001);
}

/// The working shows one sum, the network solves another: they are the same law.
#[test]
fn the_sum_that_is_shown_is_the_law_that_is_solved() {
    let ducts = Ducts::of(&Givens::registered(), Length::from_mm(63.0), 75.0).unwrap();
    for litres in [0.5, 2.0, 5.0, 9.0, 20.0] {
        let (path, flow) = (ducts.tube(Length::from_m(12.0)), Flow::from_ls(litres));
        let (shown, solved) = (path.at(flow).pressure.as_pa(), path.law().pressure(flow).as_pa());
        assert!((shown / solved - 1.0).abs() < 1e-12, "{litres} L/s: {shown} and {solved}");
    }
}

#[test]
fn a_wider_tube_needs_fewer_and_takes_less_or_the_same() {
    let report = Report::of(house());
    let sizes = report.sizes();
    assert_eq!(sizes.len(), TubeSize::ALL.len());
    let chosen = sizes.iter().find(|size| size.tube == report.runs().tube).unwrap();
    assert_eq!(chosen.tubes, report.runs().all_tubes());
    assert!(sizes.windows(2).all(|pair| pair[1].tubes <= pair[0].tubes));
    let fine = sizes.iter().find(|size| size.against == Against::Nothing).map(|size| size.tube);
    assert!(fine.is_none() || wisest(&sizes) == fine);
    let long = house().rooms.iter().fold(house(), |house, room| {
        let run = if room.kind.role().takes_supply() { RoomField::SupplyRun } else { RoomField::ExtractRun };
        Edit::Set(Field::Room(room.id, run), "60".into(), Unit::Metre).apply(&house)
    });
    let long = Report::of(long).sizes();
    assert_eq!(long[0].against, Against::Pressure);
}
