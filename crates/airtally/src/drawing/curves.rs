//! Fan and system: the fan at both speeds, what the ducts take, and where both meet.

use super::{Anchor, Drawing, Pen, Point, Said, Shape};
use crate::delivery::Side;
use crate::network::Fan;
use crate::power::power;
use crate::quantity::{Flow, Pressure};
use crate::rules::Level;

/// Pressure over flow. The line of the ducts goes through both duties; nothing where a duty is nought.
///
/// ```
/// use airtally::{drawing::{curves, Said, Shape}, edit::Edit, house::{House, Field, RoomField, RoomKind}};
/// use airtally::{quantity::Unit, report::Report, rules::Level};
/// let house = [RoomKind::Bedroom, RoomKind::Kitchen].into_iter().fold(House::new(), |house, kind| {
///     let house = Edit::AddRoom(kind).apply(&house);
///     let area = Field::Room(house.rooms.last().unwrap().id, RoomField::Area);
///     Edit::Set(area, "12".into(), Unit::SquareMetre).apply(&house)
/// });
/// let report = Report::of(house);
/// let flows = [Level::Normal, Level::Boost].map(|level| report.shares().at(level).total);
/// let drawing = curves(&report.delivery().sides[0], flows).unwrap();
/// assert!(drawing.shapes.iter().any(|shape| matches!(shape, Shape::Words(_, _, Said::Duty(Level::Normal, ..)))));
/// ```
pub fn curves(side: &Side, [normal, boost]: [Flow; 2]) -> Option<Drawing> {
    let (low, high) = (side.normal.value, side.boost.value);
    if normal <= Flow::ZERO || boost <= Flow::ZERO || low <= Pressure::ZERO {
        return None;
    }
    let blower = &side.blower;
    let fans = [blower.normal, blower.boost].map(|speed| blower.turning(speed.unwrap_or(1.0)));
    let shut = fans[1].pressure(Flow::ZERO).unwrap_or(high).max(high);
    let sheet = Sheet { widest: boost * BEYOND, highest: shut * BEYOND };
    let mut shapes = sheet.frame();
    let steepness = steepness((normal, low), (boost, high));
    let ducts = |flow: Flow| low * power(flow / normal, steepness);
    sheet.line(&mut shapes, Pen::Duct(side.air), ducts);
    for fan in fans.iter().take(if boost > normal { 2 } else { 1 }) {
        sheet.line(&mut shapes, Pen::Ink, |flow| gives(fan, flow));
    }
    let duties = [(Level::Normal, normal, low), (Level::Boost, boost, high)];
    for (level, flow, pressure) in duties.into_iter().take(if boost > normal { 2 } else { 1 }) {
        let (x, y) = sheet.point(flow, pressure);
        shapes.push(Shape::Box((x - DOT, y - DOT), (x + DOT, y + DOT), Pen::Full));
        shapes.push(Shape::Words((x - BETWEEN.0, y + BETWEEN.1), Anchor::End, Said::Duty(level, pressure)));
    }
    shapes.push(Shape::Words((LEFT + GAP, sheet.point(Flow::ZERO, shut).1 - GAP), Anchor::Start, Said::Fan));
    Some(Drawing { size: (WIDE, HIGH), shapes })
}

/// How steeply the ducts' pressure rises, from both duties.
fn steepness(normal: (Flow, Pressure), boost: (Flow, Pressure)) -> f64 {
    let (flows, pressures) = (boost.0 / normal.0, boost.1 / normal.1);
    if flows > 1.0 && pressures > 1.0 { libm::log(pressures) / libm::log(flows) } else { USUAL }
}

fn gives(fan: &Fan, flow: Flow) -> Pressure {
    fan.pressure(flow).unwrap_or(Pressure::ZERO)
}

struct Sheet {
    widest: Flow,
    highest: Pressure,
}

impl Sheet {
    fn frame(&self) -> Vec<Shape> {
        let foot = HIGH - FOOT;
        vec![
            Shape::Line((LEFT, foot), (WIDE, foot), Pen::Rule),
            Shape::Line((LEFT, 0.0), (LEFT, foot), Pen::Rule),
            Shape::Words((WIDE, HIGH - GAP), Anchor::End, Said::Flow(self.widest)),
            Shape::Words((LEFT, HIGH - GAP), Anchor::Start, Said::Flow(Flow::ZERO)),
        ]
    }

    fn point(&self, flow: Flow, pressure: Pressure) -> Point {
        let (across, up) = (flow / self.widest, pressure / self.highest);
        (LEFT + across * (WIDE - LEFT), (HIGH - FOOT) * (1.0 - up.clamp(0.0, 1.0)))
    }

    /// A curve, in straight pieces, as far as it stays on the sheet.
    fn line(&self, shapes: &mut Vec<Shape>, pen: Pen, at: impl Fn(Flow) -> Pressure) {
        let flows = (0..=PIECES).map(|piece| self.widest * (f64::from(piece) / f64::from(PIECES)));
        let on_sheet = |pressure: Pressure| pressure >= Pressure::ZERO && pressure <= self.highest;
        let mut before = None;
        for flow in flows {
            let pressure = at(flow);
            let here = on_sheet(pressure).then(|| self.point(flow, pressure));
            if let (Some(from), Some(to)) = (before, here) {
                shapes.push(Shape::Line(from, to, pen));
            }
            before = here;
        }
    }
}

const WIDE: f64 = 340.0;
const HIGH: f64 = 200.0;
const LEFT: f64 = 4.0;
const FOOT: f64 = 24.0;
const GAP: f64 = 5.0;
/// From a mark to the foot of its words: below the fan's line, beside the ducts'.
const BETWEEN: (f64, f64) = (30.0, 14.0);
/// Half a mark of a duty.
const DOT: f64 = 4.0;
const PIECES: u32 = 24;
/// The sheet goes on beyond the largest duty and the highest pressure.
const BEYOND: f64 = 1.2;
/// Where both duties are the same.
const USUAL: f64 = 1.9;
