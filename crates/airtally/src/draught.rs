//! How far a supply opening blows, what is felt of it, and where it may be.

use crate::quantity::{Area, Length, Velocity};
use crate::source::{PRACTICE, Source};

/// Air that leaves an opening at the temperature of the room.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Jet {
    /// Speed in the free opening.
    pub speed: Velocity,
    /// Free area.
    pub opening: Area,
    /// Whether it clings to a smooth ceiling.
    pub attached: bool,
}

/// A figure between the weakest and the strongest jet that is published.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Between<T> {
    /// For a jet that spreads quickly.
    pub low: T,
    /// For a jet that holds together.
    pub high: T,
}

/// Whether a draught is felt.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Felt {
    /// Not even from the strongest jet.
    No,
    /// Perhaps: the data of the valve must say.
    Perhaps,
    /// Even from the weakest jet.
    Yes,
}

impl Jet {
    /// Fastest speed at a distance along the jet.
    ///
    /// * Equation: `v = K·v₀·√A₀/x`, K 5 to 7, 1.4 times that along a ceiling; nearer than `K·√A₀` the speed is still v₀
    /// * Valid range: speed, area and distance above nought; `None` otherwise. Air as warm as the room: colder air falls out of the
    ///   jet earlier
    /// * Errors: the range of K; data of the valve replace it
    /// * Source: [`JET`]
    ///
    /// ```
    /// use airtally::{draught::Jet, quantity::{Area, Length, Velocity}};
    /// // By hand: √0.01 m² is 0.1 m; 5·2·0.1/4 is 0.25 m/s, 7·2·0.1/4 is 0.35 m/s.
    /// let jet = Jet { speed: Velocity::from_ms(2.0), opening: Area::from_m2(0.01), attached: false };
    /// let felt = jet.speed_at(Length::from_m(4.0)).unwrap();
    /// assert!((felt.low.as_ms() - 0.25).abs() < 1e-12 && (felt.high.as_ms() - 0.35).abs() < 1e-12);
    /// ```
    pub fn speed_at(self, distance: Length) -> Option<Between<Velocity>> {
        let flows = self.reach().filter(|_| distance > Length::ZERO && distance.is_finite())?;
        let at = |core: Length| self.speed * (core / distance).min(1.0);
        Some(Between { low: at(flows.low), high: at(flows.high) })
    }

    /// Distance at which the fastest speed has fallen to this one.
    ///
    /// * Equation: `x = K·v₀·√A₀/v`
    /// * Valid range: as [`Jet::speed_at`], and a speed below that of the opening
    /// * Source: [`JET`]
    ///
    /// ```
    /// use airtally::{draught::{Jet, THROWN}, quantity::{Area, Velocity}};
    /// // By hand, along a ceiling: 1.4·5·2·0.1/0.25 is 5.6 m, 1.4·7·2·0.1/0.25 is 7.84 m.
    /// let jet = Jet { speed: Velocity::from_ms(2.0), opening: Area::from_m2(0.01), attached: true };
    /// let throw = jet.throw(THROWN).unwrap();
    /// assert!((throw.low.as_m() - 5.6).abs() < 1e-12 && (throw.high.as_m() - 7.84).abs() < 1e-12);
    /// ```
    pub fn throw(self, slowed: Velocity) -> Option<Between<Length>> {
        let core = self.reach().filter(|_| slowed > Velocity::ZERO && slowed <= self.speed)?;
        let times = self.speed / slowed;
        Some(Between { low: core.low * times, high: core.high * times })
    }

    /// Whether more than this is felt where the jet comes down among people.
    ///
    /// * Equation: [`Jet::speed_at`] after the depth of the room and the way down its far wall to [`HEAD`]
    /// * Valid range: as [`Jet::speed_at`]; an opening no lower than head height
    /// * Errors: the turn at the wall is not taken off, which is on the safe side
    /// * Source: [`JET`], [`ZONE`]
    ///
    /// ```
    /// use airtally::{draught::{Felt, Jet, QUIET}, quantity::{Area, Length, Velocity}};
    /// // By hand: 3.4 m and 0.6 m down are 4 m; 1 m/s gives 0.125 to 0.175 m/s there, 0.5 m/s half of that, 2 m/s twice.
    /// let felt = |ms| {
    ///     let jet = Jet { speed: Velocity::from_ms(ms), opening: Area::from_m2(0.01), attached: false };
    ///     jet.felt(Length::from_m(3.4), Length::from_m(2.4), QUIET).unwrap()
    /// };
    /// assert_eq!([felt(0.5), felt(1.0), felt(2.0)], [Felt::No, Felt::Perhaps, Felt::Yes]);
    /// ```
    pub fn felt(self, depth: Length, height: Length, most: Velocity) -> Option<Felt> {
        let down = height - HEAD;
        if !(depth > Length::ZERO && down >= Length::ZERO) {
            return None;
        }
        let speed = self.speed_at(depth + down)?;
        Some(match speed {
            Between { high, .. } if high <= most => Felt::No,
            Between { low, .. } if low > most => Felt::Yes,
            Between { .. } => Felt::Perhaps,
        })
    }

    /// `K·√A₀`: how far the jet keeps the speed of the opening.
    fn reach(self) -> Option<Between<Length>> {
        let (v, a) = (self.speed.as_ms(), self.opening.as_m2());
        let flows = v > 0.0 && v.is_finite() && a > 0.0 && a.is_finite();
        let cling = if self.attached { ATTACHED } else { 1.0 };
        let reach = |spread: f64| Length::from_m(spread * cling * f64::sqrt(a));
        flows.then(|| Between { low: reach(SPREAD[0]), high: reach(SPREAD[1]) })
    }
}

/// Behind the law of a jet.
pub static JET: Source = Source::memory("ASHRAE Fundamentals", "", "space air diffusion");
/// Behind the zone in which people are.
pub static ZONE: Source = Source::memory("ASHRAE 55", "", "occupied zone");

/// `K` of a jet that spreads quickly and of one that holds together. Source: [`JET`].
const SPREAD: [f64; 2] = [5.0, 7.0];
/// How much further a jet gets along a ceiling. Source: [`JET`].
const ATTACHED: f64 = 1.4;

/// People are below this. Source: [`ZONE`].
pub const HEAD: Length = Length::from_m(1.8);
/// The speed at which a throw ends. Common practice, no source.
pub const THROWN: Velocity = Velocity::from_ms(0.25);
/// The most that is good in bedrooms. Common practice, no source.
pub const QUIET: Velocity = Velocity::from_ms(0.15);

/// What a throw should be, in depths of the room. Common practice, no source.
pub const GOOD_THROW: Between<f64> = Between { low: 0.6, high: 0.8 };

/// A place that a terminal is held to.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Spot {
    /// A wall nozzle below a smooth ceiling.
    NozzleBelowCeiling,
    /// Anything in front of a supply opening.
    ClearBefore,
    /// A round supply valve from walls.
    ValveFromWall,
    /// A supply opening from the head of a bed.
    SupplyFromBed,
    /// An extract opening below the ceiling, hoods excepted.
    ExtractBelowCeiling,
    /// An extract opening of a kitchen below its ceiling.
    KitchenBelowCeiling,
    /// An extract opening beside a shower, not above it.
    ExtractFromShower,
    /// An extract opening from the hob.
    ExtractFromHob,
}

/// How near and how far that place may be.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Placing {
    /// Which place.
    pub spot: Spot,
    /// At least so far, where that is said.
    pub least: Option<Length>,
    /// At most so far, where that is said.
    pub most: Option<Length>,
    /// Who says so.
    pub source: &'static Source,
}

static ADF: Source = Source::published("Approved Document F", "2021 volume 1; seen at second hand", "");

/// Every distance at a terminal, in m.
pub static PLACINGS: [Placing; 8] = [
    Placing { most: Some(Length::from_m(0.2)), ..from(Spot::NozzleBelowCeiling, 0.1) },
    from(Spot::ClearBefore, 1.0),
    from(Spot::ValveFromWall, 0.6),
    from(Spot::SupplyFromBed, 1.0),
    to(Spot::ExtractBelowCeiling, 0.4, &ADF),
    to(Spot::KitchenBelowCeiling, 0.3, &PRACTICE),
    from(Spot::ExtractFromShower, 0.6),
    from(Spot::ExtractFromHob, 1.2),
];

const fn from(spot: Spot, least: f64) -> Placing {
    Placing { spot, least: Some(Length::from_m(least)), most: None, source: &PRACTICE }
}

const fn to(spot: Spot, most: f64, source: &'static Source) -> Placing {
    Placing { spot, least: None, most: Some(Length::from_m(most)), source }
}

#[cfg(test)]
mod tests {
    use super::*;

    const JET_OF_A_VALVE: Jet = Jet { speed: Velocity::from_ms(2.0), opening: Area::from_m2(0.01), attached: false };

    #[test]
    fn the_speed_never_exceeds_that_of_the_opening() {
        let near = JET_OF_A_VALVE.speed_at(Length::from_mm(100.0)).unwrap();
        assert_eq!((near.low, near.high), (JET_OF_A_VALVE.speed, JET_OF_A_VALVE.speed));
    }

    #[test]
    fn a_throw_ends_where_its_speed_is_met() {
        for attached in [false, true] {
            let jet = Jet { attached, ..JET_OF_A_VALVE };
            let throw = jet.throw(THROWN).unwrap();
            let speed = [jet.speed_at(throw.low).unwrap().low, jet.speed_at(throw.high).unwrap().high];
            assert!(speed.into_iter().all(|speed| (speed.as_ms() - 0.25).abs() < 1e-12), "{speed:?}");
        }
    }

    #[test]
    fn what_cannot_be_is_not_answered() {
        let room = Length::from_m(4.0);
        for jet in [
            Jet { speed: Velocity::ZERO, ..JET_OF_A_VALVE },
            Jet { speed: Velocity::from_ms(f64::NAN), ..JET_OF_A_VALVE },
            Jet { opening: Area::from_m2(-0.01), ..JET_OF_A_VALVE },
        ] {
            assert_eq!((jet.speed_at(room), jet.throw(THROWN)), (None, None), "{jet:?}");
            assert_eq!(jet.felt(room, Length::from_m(2.4), QUIET), None, "{jet:?}");
        }
        assert_eq!(JET_OF_A_VALVE.throw(Velocity::from_ms(3.0)), None);
        assert_eq!(JET_OF_A_VALVE.speed_at(Length::ZERO), None);
        assert_eq!(JET_OF_A_VALVE.felt(room, Length::from_m(1.5), QUIET), None);
    }

    #[test]
    fn every_placing_says_something_and_by_whom() {
        for placing in &PLACINGS {
            assert!(placing.least.is_some() || placing.most.is_some(), "{placing:?}");
            assert!(placing.least.zip(placing.most).is_none_or(|(least, most)| least < most), "{placing:?}");
        }
    }
}
