//! Points of a curve, as they are typed: `100: 250; 200: 210; 300: 120`.

use crate::entry::Entry;
use crate::id::Curve;
use crate::issue::Trouble;
use crate::quantity::{Flow, Kind, Pressure, Unit, parse};

/// Points by rising flow in m³/h or, for the settings of a valve, by rising setting; pressures in Pa.
pub type Points = Vec<(f64, f64)>;

/// Reads the points of a curve: a flow (or a setting), a colon (or a tab), a pressure; points are apart by semicolons or lines.
///
/// * Valid range: 2 to 20 points, in any order; flows from 0 (valve and tube: above 0) to 5 000 m³/h, settings from 0 to
///   5 000 in whatever the valve shows, pressures from 0 (but for a fan: above 0) to 5 000 Pa
/// * Errors: [`Trouble::PointUnread`] with the number of the first point that is wrong, [`Trouble::FewPoints`],
///   [`Trouble::CurveRises`] where a fan gives more for more flow (it could run at three flows), or a valve takes more when
///   it is opened, [`Trouble::CurveFalls`] where a tube or a valve does not take more for more flow
///
/// ```
/// use airtally::{curve::points, entry::Entry, id::Curve, quantity::Unit};
/// let entry = Entry::new("20: 4.1; 30: 9; 40 m³/h: 15.8 Pa", Unit::CubicMetrePerHour);
/// assert_eq!(points(Curve::Valve, &entry), Ok(vec![(20.0, 4.1), (30.0, 9.0), (40.0, 15.8)]));
/// ```
pub fn points(curve: Curve, entry: &Entry) -> Result<Points, Trouble> {
    let texts = entry.text.split([';', '\n']).filter(|text| !text.trim().is_empty());
    let mut points = Points::new();
    for (at, text) in texts.enumerate() {
        let unread = Trouble::PointUnread { point: at as u32 + 1 };
        let point = point(curve, text, entry.unit).filter(|point| fits(curve, *point)).ok_or(unread)?;
        if at >= MOST || points.iter().any(|(x, _)| *x == point.0) {
            return Err(unread);
        }
        let place = points.iter().position(|(x, _)| *x > point.0).unwrap_or(points.len());
        points.insert(place, point);
    }
    if points.len() < 2 {
        return Err(Trouble::FewPoints);
    }
    let rises = |pair: &[(f64, f64)]| pair[1].1 > pair[0].1;
    let falls = matches!(curve, Curve::Fan | Curve::Setting);
    let wrong = points.windows(2).position(|pair| rises(pair) == falls);
    let Some(point) = wrong.map(|at| at as u32 + 2) else { return Ok(points) };
    Err(if falls { Trouble::CurveRises { point } } else { Trouble::CurveFalls(point) })
}

/// The points of a curve over flow.
pub fn over_flow(points: &Points) -> Vec<(Flow, Pressure)> {
    points.iter().map(|(q, p)| (Flow::from_m3h(*q), Pressure::from_pa(*p))).collect()
}

/// The setting at which a valve takes this pressure at 30 m³/h: straight between points on logarithmic paper. Wide open
/// where it should take less than that; `None` where it cannot be shut so far.
///
/// ```
/// use airtally::curve::setting;
/// // Halfway between 9 and 36 Pa on logarithmic paper lie 18.
/// assert!((setting(&vec![(4.0, 36.0), (8.0, 9.0)], 18.0).unwrap() - 6.0).abs() < 1e-12);
/// assert_eq!(setting(&vec![(4.0, 36.0), (8.0, 9.0)], 3.0), Some(8.0));
/// assert_eq!(setting(&vec![(4.0, 36.0), (8.0, 9.0)], 40.0), None);
/// ```
pub fn setting(points: &Points, pascal: f64) -> Option<f64> {
    let (widest, least) = *points.last()?;
    if pascal <= least {
        return Some(widest);
    }
    let pair = points.windows(2).find(|pair| pair[0].1 >= pascal && pascal >= pair[1].1)?;
    let [(tight, high), (wide, low)] = [pair[0], pair[1]];
    let share = libm::log(high / pascal) / libm::log(high / low);
    Some(tight + (wide - tight) * share)
}

fn point(curve: Curve, text: &str, unit: Unit) -> Option<(f64, f64)> {
    let (x, pressure) = text.split_once([':', '\t', '=']).or_else(|| text.trim().split_once(' '))?;
    let x = match curve {
        Curve::Setting => parse(x, Kind::Ratio, Unit::Ratio).ok()?.value_in(Unit::Ratio)?,
        _ => Flow::of(parse(x, Kind::Flow, unit).ok()?)?.as_m3h(),
    };
    Some((x, Pressure::of(parse(pressure, Kind::Pressure, Unit::Pascal).ok()?)?.as_pa()))
}

fn fits(curve: Curve, (x, pressure): (f64, f64)) -> bool {
    let least = match curve {
        Curve::Fan => x >= 0.0 && pressure >= 0.0,
        Curve::Setting => x >= 0.0 && pressure > 0.0,
        Curve::Tube | Curve::Valve => x > 0.0 && pressure > 0.0,
    };
    least && x <= LARGEST && pressure <= LARGEST
}

/// Ours: nobody types more.
const MOST: usize = 20;
/// m³/h, settings and Pa. Ours: far beyond a house.
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
            assert_eq!(points, [(100.0, 250.0), (200.0, 210.0), (300.0, 90.0)], "{text}");
        }
        let litres = points(Curve::Fan, &Entry::new("10: 250; 50: 100", Unit::LitrePerSecond)).unwrap();
        assert!((litres[1].0 - 180.0).abs() < 1e-9);
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
        assert_eq!(read(Curve::Setting, "4: 9; 8: 36"), Err(Trouble::CurveRises { point: 2 }));
        assert_eq!(read(Curve::Setting, "4 m³/h: 36; 8: 9"), point(1));
        assert_eq!(read(Curve::Fan, "100: 250; 200: 260; 300: 90"), Err(Trouble::CurveRises { point: 2 }));
        assert_eq!(read(Curve::Tube, "20: 4; 40: 1"), Err(Trouble::CurveFalls(2)));
        assert_eq!(read(Curve::Valve, "20: 4; 30: 9; 40: 9"), Err(Trouble::CurveFalls(3)));
    }
}
