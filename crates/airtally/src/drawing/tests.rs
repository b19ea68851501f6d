use super::*;
use crate::edit::Edit;
use crate::house::{Field, House, RoomField, RoomKind};
use crate::quantity::Unit;
use crate::report::Report;

/// An invented house on two storeys.
fn report(rooms: &[(RoomKind, i8)]) -> Report {
    Report::of(rooms.iter().fold(House::new(), |house, (kind, storey)| {
        let house = Edit::AddRoom(*kind).apply(&house);
        let id = house.rooms.last().unwrap().id;
        let house = Edit::Set(Field::Room(id, RoomField::Area), "12".into(), Unit::SquareMetre).apply(&house);
        Edit::SetStorey(id, *storey).apply(&house)
    }))
}

fn points(drawing: &Drawing) -> Vec<Point> {
    let of = |shape: &Shape| match *shape {
        Shape::Line(from, to, _) | Shape::Box(from, to, _) => vec![from, to],
        Shape::Words(at, ..) => vec![at],
    };
    drawing.shapes.iter().flat_map(of).collect()
}

fn inside(drawing: &Drawing) {
    let (wide, high) = drawing.size;
    for (x, y) in points(drawing) {
        assert!((0.0..=wide).contains(&x) && (0.0..=high).contains(&y), "({x}, {y}) on {wide} × {high}");
    }
}

#[test]
fn every_run_is_on_the_riser_once_and_on_the_paper() {
    let report =
        report(&[(RoomKind::Living, 0), (RoomKind::Kitchen, 0), (RoomKind::Bedroom, 1), (RoomKind::Bathroom, 1)]);
    let drawing = riser(report.facts(), report.runs(), report.givens()).unwrap();
    inside(&drawing);
    let words = |wanted: &dyn Fn(&Said) -> bool| {
        drawing.shapes.iter().filter(|shape| matches!(shape, Shape::Words(.., said) if wanted(said))).count()
    };
    assert_eq!(words(&|said| matches!(said, Said::Run(..))), report.runs().runs.len());
    assert_eq!(words(&|said| matches!(said, Said::Storey(_))), 2);
    assert_eq!(words(&|said| matches!(said, Said::Manifold(..))), 2);
    let empty = Report::of(House::new());
    assert_eq!(riser(empty.facts(), empty.runs(), empty.givens()), None);
}

#[test]
fn the_rungs_of_a_ladder_add_up_to_the_whole() {
    let report = report(&[(RoomKind::Bedroom, 0), (RoomKind::Kitchen, 0)]);
    for side in &report.delivery().sides {
        let drawing = ladder(side);
        inside(&drawing);
        let [grille, outside, main, index, whole] = side.ladder.map(|(_, pressure)| pressure.as_pa());
        assert!((grille + outside + main + index - whole).abs() < 1e-9);
        assert!((whole - side.normal.value.as_pa()).abs() < 1e-12);
        let ends: Vec<f64> = drawing
            .shapes
            .iter()
            .filter_map(
                |shape| if let Shape::Box((left, _), (right, _), _) = shape { Some((*left, *right)) } else { None },
            )
            .flat_map(|(left, right)| [left, right])
            .collect();
        for pair in ends[1..8].chunks_exact(2) {
            assert!((pair[0] - pair[1]).abs() < 1.01, "each begins where the one above ends");
        }
        assert!((ends[9] - drawing.size.0).abs() < 1e-9);
    }
}
