//! What is wrong or doubtful, where, and how bad. Collected, never thrown.

mod code;
mod severity;

pub use severity::Severity;

use crate::id::{CheckRule, Field, Level, RoomId};
use crate::quantity::{ParseError, Unit};

/// What an issue is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Place {
    /// The house as a whole.
    House,
    /// One room.
    Room(RoomId),
    /// One field, which shows the message beside itself.
    Field(Field),
}

/// One thing that is wrong or doubtful.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Issue {
    /// What it is about.
    pub place: Place,
    /// What is the matter, with its numbers.
    pub trouble: Trouble,
}

impl Issue {
    /// An issue at a place.
    pub const fn new(place: Place, trouble: Trouble) -> Self {
        Self { place, trouble }
    }

    /// How bad it is.
    pub const fn severity(&self) -> Severity {
        self.trouble.severity()
    }

    /// A stable code for other programs.
    pub const fn code(&self) -> &'static str {
        self.trouble.code()
    }
}

/// Everything that can be the matter. The numbers are those the sentence needs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Trouble {
    /// The text of a field cannot be read as a value.
    Unreadable(ParseError),
    /// A value outside what can be calculated with; it is left out.
    OutOfRange {
        /// Smallest value that is accepted.
        min: f64,
        /// Largest value that is accepted.
        max: f64,
        /// Unit of both.
        unit: Unit,
    },
    /// A value that is seldom right; it is used as typed.
    SeldomRight {
        /// From here on it is usual.
        min: f64,
        /// Up to here it is usual.
        max: f64,
        /// Unit of both.
        unit: Unit,
    },
    /// A name of more characters than fit on a label; kept as typed.
    LongName {
        /// Number of characters.
        length: u32,
        /// Number that fits.
        fits: u32,
    },
    /// No room has been entered.
    NoRooms,
    /// No bedroom has been entered; the rate counts one.
    NoBedrooms,
    /// No room takes supply air.
    NoSupplyRoom,
    /// No room is drawn from.
    NoExtractRoom,
    /// More rooms than one dwelling is likely to have.
    ManyRooms {
        /// Rooms entered.
        count: u32,
    },
    /// A room without a floor area: totals that need it are too low.
    AreaMissing,
    /// Both an area and length × width were typed and differ; the area is used.
    AreaTwice,
    /// The floor area typed for the house is less than its rooms together.
    RoomsExceedFloor {
        /// The rooms together, m².
        rooms: f64,
    },
    /// This kind of room must never be served.
    NeverServed,
    /// Exactly 1 500 (3 000 …) ft² lies between two printed rows; the lower row is used.
    BetweenRows {
        /// The area in ft².
        area: f64,
    },
    /// The area is outside the range of the rule's equation.
    OutsideEquation {
        /// Smallest area of the equation, m².
        min: f64,
        /// Largest area of the equation, m².
        max: f64,
    },
    /// More bedrooms than the rule's table has: another method applies.
    BeyondTable {
        /// Most bedrooms the table has.
        most: u32,
    },
    /// A share of running time that the rule does not allow.
    RunTimeNotAllowed {
        /// Smallest share allowed, %.
        min: f64,
    },
    /// A credit was claimed but a condition is not met; it is not given.
    CreditRefused(Condition),
    /// The rule does not allow a continuous rate for an open kitchen.
    OpenKitchenContinuous,
    /// The rule names no lower rate for an empty house.
    NoAwayRate,
    /// Minimums and whole steps together need more than the requirement.
    StepsRaiseTotal {
        /// The level.
        level: Level,
        /// How much more, m³/h.
        by: f64,
    },
    /// More air at normal than the rule allows.
    AboveMost {
        /// What is set, m³/h.
        total: f64,
        /// The most the rule allows, m³/h.
        most: f64,
    },
    /// With valves set at normal this room stays below its minimum at boost.
    BoostFallsShort {
        /// What it gets, m³/h.
        gets: f64,
        /// What it needs, m³/h.
        needs: f64,
    },
    /// More tubes to one room than is sensible.
    ManyTubes {
        /// Tubes.
        count: u32,
    },
    /// A run takes more pressure than is sensible.
    RunTakesMuch {
        /// Pa at normal.
        pascal: f64,
        /// Pa.
        limit: f64,
    },
    /// A room hears more than it should, by the estimate.
    Loud {
        /// The lowest level at which it does.
        level: Level,
        /// dB(A) at that level.
        decibel: f64,
        /// dB(A).
        limit: f64,
    },
    /// A voice in another room is heard through the tubes, by the estimate.
    VoiceHeard {
        /// dB(A).
        decibel: f64,
        /// dB(A).
        limit: f64,
    },
    /// A point of a curve cannot be read.
    PointUnread {
        /// Its number, from 1.
        point: u32,
    },
    /// A curve of fewer than two points.
    FewPoints,
    /// A fan that gives more pressure for more flow (it could run at more than one), or a valve that takes more when it is opened.
    CurveRises {
        /// The point that is higher than the one before, from 1.
        point: u32,
    },
    /// The curve of a tube or a valve does not rise: the first point that is not higher than the one before it, from 1.
    CurveFalls(u32),
    /// The unit cannot give what the tubes take at boost.
    UnitWeak {
        /// Pressure it gives at that flow, Pa.
        gives: f64,
        /// Pressure that is needed, Pa.
        needs: f64,
    },
    /// A tube is longer than a coil: it cannot be cut in one piece.
    LongerThanCoil {
        /// Length to cut.
        metres: f64,
        /// Length of a coil.
        coil: f64,
    },
    /// Overnight CO2 above the level called unacceptable or noticeable.
    StuffyNight {
        /// At the end of the night, ppm.
        ppm: f64,
        /// The limit that is passed, ppm.
        limit: f64,
    },
    /// Something on site is not as the rule asks.
    CheckFails(CheckRule),
    /// Something takes its air from the house, and how far the house may be drawn down is not known.
    OpenFlue,
    /// In the worst case the house is drawn down further than is safe beside an open flue.
    DrawsDown {
        /// Worst pressure, Pa.
        pa: f64,
        /// The most that is allowed, Pa.
        most: f64,
    },
    /// The undercut at 1 Pa is taller than a door can give.
    UndercutTall {
        /// Height of the gap, mm.
        mm: f64,
    },
}

/// A condition of a credit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Condition {
    /// The edition prints no such credit.
    NotInEdition,
    /// Outdoor air must be ducted to at least one of living room, dining room, kitchen; every bedroom has it already.
    LivingDiningKitchen,
    /// A measured tightness is needed.
    Tightness,
    /// The weather and shielding factor is needed.
    WeatherFactor,
    /// The height of the envelope is needed.
    EnvelopeHeight,
    /// The volume is needed.
    Volume,
}
