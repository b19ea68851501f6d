//! The pressure ladder: how what the unit gives is used up on the way through the run that takes most.

use super::{Anchor, Drawing, Pen, Said, Shape};
use crate::delivery::{Rung, Side};
use crate::quantity::Pressure;

/// One bar below the other, each beginning where the one above ends, and the whole at the foot.
///
/// ```
/// use airtally::{drawing::{ladder, Shape}, edit::Edit, house::{House, Field, RoomField, RoomKind}, quantity::Unit, report::Report};
/// let house = [RoomKind::Bedroom, RoomKind::Kitchen].into_iter().fold(House::new(), |house, kind| {
///     let house = Edit::AddRoom(kind).apply(&house);
///     let area = Field::Room(house.rooms.last().unwrap().id, RoomField::Area);
///     Edit::Set(area, "12".into(), Unit::SquareMetre).apply(&house)
/// });
/// let report = Report::of(house);
/// let drawing = ladder(&report.delivery().sides[0]);
/// assert_eq!(drawing.shapes.iter().filter(|shape| matches!(shape, Shape::Box(..))).count(), 5);
/// ```
pub fn ladder(side: &Side) -> Drawing {
    let whole = side.normal.value;
    let mut shapes = Vec::new();
    let mut used = Pressure::ZERO;
    for (at, (rung, pressure)) in side.ladder.iter().enumerate() {
        let from = if *rung == Rung::Whole { Pressure::ZERO } else { used };
        used += *pressure;
        let top = at as f64 * ROW;
        let place =
            |pressure: Pressure| if whole > Pressure::ZERO { WIDE * (pressure.as_pa() / whole.as_pa()) } else { 0.0 };
        let (left, right) = (place(from), place(from + *pressure));
        shapes.push(Shape::Words((0.0, top + WORDS), Anchor::Start, Said::Rung(*rung)));
        shapes.push(Shape::Words((WIDE, top + WORDS), Anchor::End, Said::Pressure(*pressure)));
        shapes.push(Shape::Line((0.0, top + FOOT), (WIDE, top + FOOT), Pen::Rule));
        let pen = if *rung == Rung::Whole { Pen::Full } else { Pen::Duct(side.air) };
        shapes.push(Shape::Box((left, top + BAR), (right.max(left + 1.0), top + FOOT), pen));
    }
    Drawing { size: (WIDE, side.ladder.len() as f64 * ROW), shapes }
}

const WIDE: f64 = 340.0;
const ROW: f64 = 40.0;
const WORDS: f64 = 15.0;
const BAR: f64 = 22.0;
const FOOT: f64 = 34.0;
