//! Quantities that multiply and divide into other quantities.
//!
//! Units: each answer is in its own unit; the 3600 s of an hour is the only factor.
//!
//! Valid range: every finite number. Dividing by nought gives a quantity that is not finite: whoever divides looks first.

use std::ops::{Div, Mul};

use super::{AirChange, Area, Duration, Flow, Length, Velocity, Volume};

/// Seconds in an hour: exact (SI).
const SECONDS_PER_HOUR: f64 = 3600.0;

impl Length {
    /// Section of a round tube or duct of this bore. Equation: `A = π·d² / 4`.
    ///
    /// ```
    /// use airtally::quantity::Length;
    /// // A bore of 2 m has the section π m².
    /// assert!((Length::from_m(2.0).section().as_m2() - std::f64::consts::PI).abs() < 1e-12);
    /// ```
    pub fn section(self) -> Area {
        self * self * (std::f64::consts::PI / 4.0)
    }
}

/// Speed in a section. Equation: `v = q / (3600 · A)`, in m/s from m³/h and m².
///
/// ```
/// use airtally::quantity::{Area, Flow, Velocity};
///
/// let speed = Flow::from_m3h(36.0) / Area::from_m2(0.005);
/// assert_eq!(speed, Velocity::from_ms(2.0));
/// assert_eq!(speed * Area::from_m2(0.005), Flow::from_m3h(36.0));
/// assert_eq!(Flow::from_m3h(36.0) / speed, Area::from_m2(0.005));
/// ```
impl Div<Area> for Flow {
    type Output = Velocity;
    fn div(self, section: Area) -> Velocity {
        Velocity::from_ms(self.as_m3h() / (SECONDS_PER_HOUR * section.as_m2()))
    }
}

/// Section for a speed. Equation: `A = q / (3600 · v)`.
impl Div<Velocity> for Flow {
    type Output = Area;
    fn div(self, speed: Velocity) -> Area {
        Area::from_m2(self.as_m3h() / (SECONDS_PER_HOUR * speed.as_ms()))
    }
}

/// Flow through a section. Equation: `q = 3600 · v · A`.
impl Mul<Area> for Velocity {
    type Output = Flow;
    fn mul(self, section: Area) -> Flow {
        Flow::from_m3h(SECONDS_PER_HOUR * self.as_ms() * section.as_m2())
    }
}

/// Air change of a volume. Equation: `n = q / V`.
///
/// ```
/// use airtally::quantity::{AirChange, Flow, Volume};
///
/// let change = Flow::from_m3h(150.0) / Volume::from_m3(300.0);
/// assert_eq!(change, AirChange::from_per_hour(0.5));
/// assert_eq!(change * Volume::from_m3(300.0), Flow::from_m3h(150.0));
/// ```
impl Div<Volume> for Flow {
    type Output = AirChange;
    fn div(self, volume: Volume) -> AirChange {
        AirChange::from_per_hour(self.as_m3h() / volume.as_m3())
    }
}

/// Flow of an air change. Equation: `q = n · V`.
impl Mul<Volume> for AirChange {
    type Output = Flow;
    fn mul(self, volume: Volume) -> Flow {
        Flow::from_m3h(self.as_per_hour() * volume.as_m3())
    }
}

/// Air that has passed. Equation: `V = q · t`.
///
/// ```
/// use airtally::quantity::{Duration, Flow, Volume};
///
/// assert_eq!(Flow::from_m3h(30.0) * Duration::from_hours(8.0), Volume::from_m3(240.0));
/// ```
impl Mul<Duration> for Flow {
    type Output = Volume;
    fn mul(self, time: Duration) -> Volume {
        Volume::from_m3(self.as_m3h() * time.as_hours())
    }
}

/// Area of a rectangle. Equation: `A = a · b`.
///
/// ```
/// use airtally::quantity::{Area, Length, Volume};
///
/// let floor = Length::from_m(4.0) * Length::from_m(3.0);
/// assert_eq!(floor, Area::from_m2(12.0));
/// assert_eq!(floor * Length::from_m(2.5), Volume::from_m3(30.0));
/// assert_eq!(floor / Length::from_m(3.0), Length::from_m(4.0));
/// ```
impl Mul for Length {
    type Output = Area;
    fn mul(self, other: Length) -> Area {
        Area::from_m2(self.as_m() * other.as_m())
    }
}

/// Volume under a height. Equation: `V = A · h`.
impl Mul<Length> for Area {
    type Output = Volume;
    fn mul(self, height: Length) -> Volume {
        Volume::from_m3(self.as_m2() * height.as_m())
    }
}

/// The other side of a rectangle. Equation: `b = A / a`.
impl Div<Length> for Area {
    type Output = Length;
    fn div(self, side: Length) -> Length {
        Length::from_m(self.as_m2() / side.as_m())
    }
}
