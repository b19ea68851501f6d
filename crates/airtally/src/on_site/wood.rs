//! Holes and notches in timber.

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
    libm::floor((clear + between).as_mm() / (outside + between).as_mm()) as u32
}

/// What is left between two tubes.
const BETWEEN_MM: f64 = 10.0;
