//! Points of a curve, as they are typed: `100: 250; 200: 210; 300: 120`.

use crate::entry::Entry;
use crate::id::Curve;
use crate::issue::Trouble;
use crate::quantity::{Flow, Kind, Pressure, Unit, parse};

/// A flow and what belongs to it, by rising flow.
pub type Points = Vec<(Flow, Pressure)>;

/// Reads the points of a curve: a flow, a colon (or a tab), a pressure; points are apart by semicolons or lines.
///
/// * Valid range: 2 to 20 points, in any order; flows from 0 (valve and tube: above 0) to 5 000 m³/h, pressures from 0
///   (valve and tube: above 0) to 5 000 Pa
/// * Errors: [`Trouble::PointUnread`] with the number of the first point that is wrong, [`Trouble::FewPoints`],
///   [`Trouble::FanRises`] where a fan gives more for more flow: such a fan can run at three flows; [`Trouble::CurveFalls`]
///   where a tube or a valve does not take more for more flow
///
/// ```
/// use airtally::{curve::points, entry::Entry, id::Curve, quantity::Unit};
/// let entry = Entry::new("20: 4.1; 30: 9; 40 m³/h: 15.8 Pa", Unit::CubicMetrePerHour);
/// let read = points(Curve::Valve, &entry).unwrap();
/// assert_eq!(read.len(), 3);
/// assert_eq!(read[1].1.as_pa(), 9.0);
/// ```
pub fn points(curve: Curve, entry: &Entry) -> Result<Points, Trouble> {
    let texts = entry.text.split([';', '\n']).filter(|text| !text.trim().is_empty());
    let mut points = Points::new();
    for (at, text) in texts.enumerate() {
        let unread = Trouble::PointUnread { point: at as u32 + 1 };
        let point = point(text, entry.unit).filter(|point| fits(curve, *point)).ok_or(unread)?;
        if at >= MOST || points.iter().any(|(flow, _)| *flow == point.0) {
            return Err(unread);
        }
        let place = points.iter().position(|(flow, _)| *flow > point.0).unwrap_or(points.len());
        points.insert(place, point);
    }
    if points.len() < 2 {
        return Err(Trouble::FewPoints);
    }
    let rises = |pair: &[(Flow, Pressure)]| pair[1].1 > pair[0].1;
    let wrong = match curve {
        Curve::Fan => points.windows(2).position(rises),
        Curve::Tube | Curve::Valve => points.windows(2).position(|pair| !rises(pair)),
    };
    let Some(point) = wrong.map(|at| at as u32 + 2) else { return Ok(points) };
    Err(if curve == Curve::Fan { Trouble::FanRises { point } } else { Trouble::CurveFalls(point) })
}

fn point(text: &str, unit: Unit) -> Option<(Flow, Pressure)> {
    let (flow, pressure) = text.split_once([':', '\t', '=']).or_else(|| text.trim().split_once(' '))?;
    let flow = Flow::of(parse(flow, Kind::Flow, unit).ok()?)?;
    Some((flow, Pressure::of(parse(pressure, Kind::Pressure, Unit::Pascal).ok()?)?))
}

fn fits(curve: Curve, (flow, pressure): (Flow, Pressure)) -> bool {
    let (q, p) = (flow.as_m3h(), pressure.as_pa());
    let least = match curve {
        Curve::Fan => q >= 0.0 && p >= 0.0,
        Curve::Tube | Curve::Valve => q > 0.0 && p > 0.0,
    };
    least && q <= LARGEST && p <= LARGEST
}

/// Ours: nobody types more.
const MOST: usize = 20;
/// m³/h and Pa. Ours: far beyond a house.
const LARGEST: f64 = 5000.0;

#[cfg(test)]
mod tests {
    use super::*;

    fn read(curve: Curve, text: &str) -> Result<Points, Trouble> {
        points(curve, &Entry::new(text, Unit::CubicMetrePerHour))
    }

    #[test]
    fn points_are_read_in_the_ways_people_write_them() {
        for text in [
            "100: 250; 300: 90; 200: 210",
            "100\t250\n200\t210\n300\t90\n",
            "100 250; 200 210; 300 90",
            "100 m³/h: 250 Pa; 200=210;300:90;",
        ] {
            let points = read(Curve::Fan, text).unwrap();
            let plain: Vec<_> = points.iter().map(|(q, p)| (q.as_m3h(), p.as_pa())).collect();
            assert_eq!(plain, [(100.0, 250.0), (200.0, 210.0), (300.0, 90.0)], "{text}");
        }
        let litres = points(Curve::Fan, &Entry::new("10: 250; 50: 100", Unit::LitrePerSecond)).unwrap();
        assert!((litres[1].0.as_m3h() - 180.0).abs() < 1e-9);
    }

    #[test]
    fn what_is_wrong_is_said_with_its_point() {
        let point = |point| Err(Trouble::PointUnread { point });
        assert_eq!(read(Curve::Fan, "100: 250; 200"), point(2));
        assert_eq!(read(Curve::Fan, "100: 250; 100: 200"), point(2));
        assert_eq!(read(Curve::Fan, "100: 250; 200: -3"), point(2));
        assert_eq!(read(Curve::Fan, "1e9: 250; 200: 3"), point(1));
        assert_eq!(read(Curve::Valve, "0: 0; 30: 9"), point(1));
        assert_eq!(read(Curve::Tube, "30 m: 2; 40: 3"), point(1));
        assert_eq!(read(Curve::Fan, "100: 250"), Err(Trouble::FewPoints));
        assert_eq!(read(Curve::Fan, "100: 250; 200: 260; 300: 90"), Err(Trouble::FanRises { point: 2 }));
        assert_eq!(read(Curve::Tube, "20: 4; 40: 1"), Err(Trouble::CurveFalls(2)));
        assert_eq!(read(Curve::Valve, "20: 4; 30: 9; 40: 9"), Err(Trouble::CurveFalls(3)));
    }
}
