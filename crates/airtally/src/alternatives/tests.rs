use super::*;
use crate::house::{RoomField, RoomKind};
use crate::quantity::Unit;
use crate::report::Report;

fn house() -> House {
    let rooms = [
        (RoomKind::Bedroom, "12", "8", 1),
        (RoomKind::Living, "28", "6", 0),
        (RoomKind::Kitchen, "14", "5", 0),
        (RoomKind::Bathroom, "7", "11", 1),
    ];
    rooms.into_iter().fold(House::new(), |house, (kind, area, legs, storey)| {
        let house = Edit::AddRoom(kind).apply(&house);
        let id = house.rooms.last().unwrap().id;
        let run = if kind.role().takes_supply() { RoomField::SupplyRun } else { RoomField::ExtractRun };
        let house = Edit::SetStorey(id, storey).apply(&house);
        let house = Edit::Set(Field::Room(id, RoomField::Area), area.into(), Unit::SquareMetre).apply(&house);
        Edit::Set(Field::Room(id, run), legs.into(), Unit::Metre).apply(&house)
    })
}

#[test]
fn each_way_comes_to_what_the_house_made_so_comes_to() {
    let house = house();
    let report = Report::of(house.clone());
    for ways in Ways::ALL {
        let all = report.alternatives(ways);
        assert_eq!(all.iter().filter(|own| own.taken).count(), 1, "{ways:?}");
        assert_eq!(all.iter().filter(|own| own.advised).count(), 1, "{ways:?}");
        for own in all {
            let made = Report::of(own.way.edit(&house).apply(&house));
            let unit = made.delivery().sides.iter().fold(Pressure::ZERO, |most, side| most.max(side.boost.value));
            assert_eq!((own.unit, own.tubes), (unit, made.runs().all_tubes()), "{:?}", own.way);
            assert_eq!(own.price, made.quotation().total);
            let again = made.alternatives(ways).into_iter().find(|other| other.way == own.way).unwrap();
            assert!(again.taken);
        }
    }
}

#[test]
fn wider_tubes_need_fewer_and_wider_mains_take_less() {
    let report = Report::of(house());
    let round = |own: &&Alternative| own.way != Way::Tube(TubeSize::Oval);
    let tubes = report.alternatives(Ways::Tube);
    let tubes: Vec<_> = tubes.iter().filter(round).collect();
    assert!(tubes.windows(2).all(|pair| pair[1].tubes <= pair[0].tubes));
    let mains = report.alternatives(Ways::Main);
    assert!(mains.windows(2).all(|pair| pair[1].unit < pair[0].unit));
    let twice = report.alternatives(Ways::Tubes);
    assert!(twice[1].most < twice[0].most && twice[1].tubes > twice[0].tubes);
}

#[test]
fn what_speaks_against_a_way_is_said() {
    let house = house();
    let long = house.rooms.iter().fold(house.clone(), |house, room| {
        let run = if room.kind.role().takes_supply() { RoomField::SupplyRun } else { RoomField::ExtractRun };
        Edit::Set(Field::Room(room.id, run), "60".into(), Unit::Metre).apply(&house)
    });
    assert_eq!(Report::of(long).alternatives(Ways::Tube)[0].against, Against::Pressure);
    let far = Field::Room(house.rooms[0].id, RoomField::SupplyRun);
    let uneven = Edit::Set(far, "19".into(), Unit::Metre).apply(&house);
    let manifolds = Report::of(uneven).alternatives(Ways::Manifolds);
    assert_eq!(manifolds[0].against, Against::Uneven);
    assert!(Report::of(House::new()).alternatives(Ways::Manifolds).is_empty());
    // Site handbook, section 1: 150 mm carry 159 m³/h at 2.5 m/s; with every main too fast the widest is advised.
    let narrow = Report::of(house).alternatives(Ways::Main);
    assert!(narrow.iter().all(|own| own.against != Against::Pressure));
}
