//! Holes and notches in timber.

use super::at_least;
use crate::house::Stud;
use crate::quantity::Length;
use crate::source::Source;

/// A member of the frame, as the American residential code treats it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Member {
    /// A joist, rafter or beam of solid timber.
    Joist,
    /// A stud that bears load or stands in an outside wall.
    BearingStud,
    /// The same doubled, and no more than two of them beside each other.
    DoubledStud,
    /// A stud that bears nothing.
    PartitionStud,
}

impl Member {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Joist, Self::BearingStud, Self::DoubledStud, Self::PartitionStud];

    /// A stud of this kind.
    pub const fn of(stud: Stud) -> Self {
        match stud {
            Stud::Bearing => Self::BearingStud,
            Stud::Doubled => Self::DoubledStud,
            Stud::Partition => Self::PartitionStud,
        }
    }

    /// Who says so.
    pub const fn source(self) -> &'static Source {
        static JOIST: Source = Source::published("IRC", "2015–2024", "R502.8.1");
        static STUD: Source = Source::published("IRC", "2015–2024", "R602.6");
        match self {
            Self::Joist => &JOIST,
            Self::BearingStud | Self::DoubledStud | Self::PartitionStud => &STUD,
        }
    }

    /// Wood that must stay between a hole and each edge.
    pub fn edge(self) -> Length {
        match self {
            Self::Joist => Length::from_inch(2.0),
            Self::BearingStud | Self::DoubledStud | Self::PartitionStud => Length::from_inch(0.625),
        }
    }

    /// Largest hole as a share of the depth.
    pub const fn hole_share(self) -> f64 {
        match self {
            Self::Joist => 1.0 / 3.0,
            Self::BearingStud => 0.4,
            Self::DoubledStud | Self::PartitionStud => 0.6,
        }
    }

    /// Deepest notch as a share of the depth; of a joist outside the middle third of its span.
    pub const fn notch_share(self) -> f64 {
        match self {
            Self::Joist => 1.0 / 6.0,
            Self::BearingStud | Self::DoubledStud => 0.25,
            Self::PartitionStud => 0.4,
        }
    }

    /// The largest hole in a member of this depth.
    ///
    /// ```
    /// use airtally::{on_site::Member, quantity::Length};
    /// // A 2×10 is 9.25 in deep: 3.08 in, so that a tube of 75 mm is tight.
    /// assert!((Member::Joist.hole(Length::from_inch(9.25)).as_inch() - 3.083).abs() < 0.001);
    /// ```
    pub fn hole(self, depth: Length) -> Length {
        largest_hole(depth, self.hole_share(), self.edge())
    }

    /// The deepest notch in a member of this depth.
    pub fn notch(self, depth: Length) -> Length {
        depth * self.notch_share()
    }
}

/// The largest round hole that a member bears.
///
/// * Equation: `D = min(s·d, d − 2·e)`, not below zero
/// * Units: any, alike
/// * Valid range: solid timber; s from 0 to 1
/// * Source: IRC R502.8.1: a third of the depth, 2 in from both edges; a 2×8 of 7.25 in bears 2.42 in
///
/// ```
/// use airtally::{on_site::largest_hole, quantity::Length};
/// let hole = largest_hole(Length::from_inch(7.25), 1.0 / 3.0, Length::from_inch(2.0));
/// assert!((hole.as_inch() - 2.42).abs() < 0.005);
/// ```
pub fn largest_hole(depth: Length, share: f64, edge: Length) -> Length {
    let between = depth - edge * 2.0;
    let shared = depth * share;
    let hole = if between < shared { between } else { shared };
    if hole > Length::ZERO { hole } else { Length::ZERO }
}

/// Where a joist may be notched, and how deep.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct NotchRule {
    /// Share of the depth at the very end of the joist.
    pub end: f64,
    /// Share of the depth in the zone.
    pub share: f64,
    /// The zone, as shares of the span from the nearest bearing.
    pub zone: [f64; 2],
    /// Share of the depth that a notch may be long, where the rule has one.
    pub long: Option<f64>,
    /// Who says so.
    pub source: &'static Source,
}

/// A sixth of the depth outside the middle third of the span, a quarter at the ends, a third long.
pub static AMERICAN_NOTCH: NotchRule = NotchRule {
    end: 0.25,
    share: 1.0 / 6.0,
    zone: [0.0, 1.0 / 3.0],
    long: Some(1.0 / 3.0),
    source: &Source::published("IRC", "2015–2024", "R502.8.1"),
};

/// An eighth of the depth between 0.07 and a quarter of the span.
pub static BRITISH_NOTCH: NotchRule = NotchRule {
    end: 0.0,
    share: 0.125,
    zone: [0.07, 0.25],
    long: None,
    source: &Source::memory("British timber practice", "", "notch ≤ 0.125 d in 0.07 to 0.25 of the span"),
};

impl NotchRule {
    /// The share of the depth that may be notched at a distance from a bearing; nothing outside the zone.
    ///
    /// * Equation: `s` of the zone for `x/L` within it, with `x` from the nearer bearing; `s` of the end for `x = 0`
    /// * Units: both alike
    /// * Valid range: solid timber; a distance outside the span is nowhere
    /// * Source: IRC R502.8.1, and British timber practice
    ///
    /// ```
    /// use airtally::{on_site::AMERICAN_NOTCH, quantity::Length};
    /// let at = |ft| AMERICAN_NOTCH.share_at(Length::from_ft(ft), Length::from_ft(12.0));
    /// assert_eq!([at(0.0), at(3.0), at(6.0), at(9.0)], [0.25, 1.0 / 6.0, 0.0, 1.0 / 6.0]);
    /// ```
    pub fn share_at(&self, at: Length, span: Length) -> f64 {
        let nearer = if at > span - at { span - at } else { at };
        if nearer < Length::ZERO {
            return 0.0;
        }
        if nearer == Length::ZERO {
            return self.end;
        }
        let [from, to] = self.zone.map(|share| span * share);
        if at_least(nearer, from) && at_least(to, nearer) { self.share } else { 0.0 }
    }
}

/// Where British practice has holes, as shares of the span from a bearing.
pub const BRITISH_HOLES: [f64; 2] = [0.25, 0.4];
/// Who says so.
pub static BRITISH_ZONE: Source = Source::memory("British timber practice", "", "holes in 0.25 to 0.4 of the span");

/// Tubes that lie side by side between two joists.
///
/// * Equation: `n = floor((b + 10)/(OD + 10))`, with 10 mm between tubes
/// * Units: mm
/// * Valid range: b ≥ 0, OD > 0; none for an outside diameter that is not positive
/// * Source: site handbook, section 2
///
/// ```
/// use airtally::{on_site::tubes_in_bay, quantity::Length};
/// // 400 mm clear: (400 + 10)/(75 + 10) is 4.8.
/// assert_eq!(tubes_in_bay(Length::from_mm(400.0), Length::from_mm(75.0)), 4);
/// ```
pub fn tubes_in_bay(clear: Length, outside: Length) -> u32 {
    if outside <= Length::ZERO {
        return 0;
    }
    let between = Length::from_mm(BETWEEN_MM);
    f64::floor((clear + between).as_mm() / (outside + between).as_mm()) as u32
}

/// What is left between two tubes.
const BETWEEN_MM: f64 = 10.0;
