//! What to do, with this house's numbers worked in.

use crate::{format, label, room};
use airtally::house::{Display, House};
use airtally::quantity::{Unit, convert};
use airtally::rules::{Air, RuleSet};
use airtally::steps::{NumberName, Step, StepRule as R};

/// What to do.
///
/// ```
/// use airtally::{report::Report, steps::StepRule};
/// use airtally_words::{demo, step::title};
/// let report = Report::of(demo::larkfield());
/// let step = report.steps().iter().find(|step| step.key.rule == StepRule::DrillCores).unwrap();
/// let text = title(step, report.house(), report.house().choices.display);
/// assert_eq!(text, "Drill 2 cores of 230\u{a0}mm, falling 2\u{a0}% outward");
/// ```
pub fn title(step: &Step, house: &House, display: Display) -> String {
    let text = Text { step, house, display };
    match step.key.rule {
        rule if rule < R::DrillCores => text.setting_out(rule),
        rule if rule < R::SealJoints => text.rough(rule),
        rule if rule < R::WireUnit => text.finishing(rule),
        rule => text.commissioning(rule),
    }
}

/// The marks on the tubes of a run: `S1` alone, `S1a S1b` for several.
///
/// ```
/// use airtally::rules::Air;
/// use airtally_words::step::marks;
/// assert_eq!(marks(Air::Supply, 1, 1), "S1");
/// assert_eq!(marks(Air::Supply, 1, 2), "S1a S1b");
/// assert_eq!(marks(Air::Extract, 3, 6), "E3a to E3f");
/// ```
pub fn marks(air: Air, run: u32, tubes: u32) -> String {
    let letter = label::air_letter(air);
    let mark = |at: u32| match u8::try_from(at) {
        Ok(small) if small < ALPHABET => format!("{letter}{run}{}", char::from(b'a' + small)),
        _ => format!("{letter}{run}-{}", at.saturating_add(1)),
    };
    match tubes {
        0 | 1 => format!("{letter}{run}"),
        2..=FEW => (0..tubes).map(mark).collect::<Vec<_>>().join(" "),
        _ => format!("{} to {}", mark(0), mark(tubes - 1)),
    }
}

const ALPHABET: u8 = 26;
/// So many marks are listed one by one.
const FEW: u32 = 4;

struct Text<'a> {
    step: &'a Step,
    house: &'a House,
    display: Display,
}

impl Text<'_> {
    fn setting_out(&self, rule: R) -> String {
        let n = |at| self.shown(at);
        match rule {
            R::AskOpenFlues => self.flues(),
            R::LookForSuspectBoard => "Look for board, tiles and lagging that may hold asbestos".to_owned(),
            R::CheckStructure => {
                format!(
                    "Find out what the joists are: a tube needs a hole of {}, so solid timber of {} at least",
                    n(0),
                    n(1)
                )
            }
            R::ListCrossings => self.crossings(),
            R::KeepGarageClosed => {
                format!("Keep {} apart from this air", self.of(0, "garage or flue room", "garages or flue rooms"))
            }
            R::CheckUnitDuty => {
                format!("Check the unit: {} at normal, {} at boost, so {} or more at its most", n(0), n(1), n(2))
            }
            R::PlaceUnit => {
                format!("Place the unit: {} clear in front, ducts to outdoors no longer than {}", n(0), n(1))
            }
            R::PlaceIntake => self.intake(),
            R::PlaceBedroomValves => {
                format!("Mark {}, {} or more from a bed head", self.of(0, "bedroom valve", "bedroom valves"), n(1))
            }
            R::PlaceExtractValves => {
                format!("Mark {}, at most {} below the ceiling", self.of(0, "extract valve", "extract valves"), n(1))
            }
            R::PlaceKitchenValve => format!("Mark the kitchen valve, {} or more from the hob", n(0)),
            _ => format!(
                "Place the manifolds: {} clear on the throttle side, a hatch of {} or more each way",
                n(0),
                n(1)
            ),
        }
    }

    fn rough(&self, rule: R) -> String {
        let n = |at| self.shown(at);
        match rule {
            R::DrillCores => format!("Drill {} cores of {}, falling {} outward", n(0), n(1), n(2)),
            R::DrillTubeHoles => format!("Drill holes of {} for {}", n(1), self.of(0, "tube", "tubes")),
            R::BendWide => format!("Bend no tighter than a radius of {}, at most {} right angles a run", n(0), n(1)),
            R::PullTubes => self.pull(),
            R::SupportTubes => format!("Support the tubes every {} or closer", n(0)),
            R::RecordRoutes => format!("Photograph {} and write down what differs", self.of(0, "run", "runs")),
            R::HangUnit => "Hang the unit level".to_owned(),
            R::FixManifolds => {
                let side = |at, one, many| self.of(at, one, many);
                let supply = side(0, "supply port", "supply ports");
                let extract = side(1, "extract port", "extract ports");
                format!("Fix the manifolds: {supply} and {extract}, {} of each spare", n(2))
            }
            R::FixSilencers => format!("Fix the silencers, {} long and {} outside", n(0), n(1)),
            R::ConnectTubes => {
                let supply = self.of(0, "supply tube", "supply tubes");
                format!("Connect {supply} and {}, twins side by side", self.of(1, "extract tube", "extract tubes"))
            }
            _ => format!(
                "Connect the {} mains: {} at normal, {} at most; flexible pieces up to {}",
                n(3),
                n(0),
                n(1),
                n(2)
            ),
        }
    }

    fn finishing(&self, rule: R) -> String {
        let n = |at| self.shown(at);
        match rule {
            R::SealJoints => format!("Seal {} and all joints of the mains", self.of(0, "tube joint", "tube joints")),
            R::LayCables => "Lay the cables for switches, sensors and isolator".to_owned(),
            R::LeakTest => format!("Test each side at {}: at most {} may leak", n(0), n(1)),
            R::InsulateColdDucts => format!("Insulate the outdoor and exhaust ducts, {} or more", n(0)),
            R::FitTrap => format!("Fit a trap with a drop of {} and a seal of {}, for {} of suction", n(0), n(1), n(2)),
            R::FallDrain => format!("Lay the drain with a fall of {} or more", n(0)),
            R::CloseUp => "Close walls and ceilings".to_owned(),
            R::CapEnds => format!("Keep {} capped", self.of(0, "tube end", "tube ends")),
            R::DustGone => "Wait until the dust is gone".to_owned(),
            R::FitFilters => "Fit clean filters".to_owned(),
            R::FillTrap => format!("Fill the trap: {} of water", n(0)),
            R::OpenValves => format!("Take the caps off and open {}", self.of(0, "valve", "valves")),
            R::CutUndercut => format!("Leave {} under the door of {}, {} in all", n(0), self.room(), n(1)),
            R::ShutHouse => "Shut windows and doors, switch other fans off".to_owned(),
            R::CalmWeather => format!("Wait for wind of Beaufort {} or less and no frost", n(0)),
            _ => "Fit and test carbon monoxide alarms".to_owned(),
        }
    }

    fn commissioning(&self, rule: R) -> String {
        let n = |at| self.shown(at);
        match rule {
            R::WireUnit => "Have the unit wired by a licensed electrician".to_owned(),
            R::StartUnit => format!("Start the unit at {}", n(0)),
            R::LetSettle => format!("Let it run for {}", n(0)),
            R::ReadTerminals => self.read(),
            R::CompareTotals => format!("Compare the totals: {} each way, at most {} apart", n(0), n(1)),
            R::ReadBoost => format!("Read again at boost: {} each way", n(0)),
            R::TestSpillage => "Have every flue tested for spillage".to_owned(),
            R::LockValves => format!("Lock {} and mark where they stand", self.of(0, "valve", "valves")),
            R::NoteFilterDates => format!("Note when filters are looked at: every {}", self.of(0, "month", "months")),
            _ if self.step.numbers.is_empty() => "Hand over the papers and label the controls".to_owned(),
            _ => format!("Hand over the papers; building control gets the flows within {}", self.of(0, "day", "days")),
        }
    }

    fn flues(&self) -> String {
        let name = self.step.numbers.first().map(|number| number.name);
        match name {
            Some(NumberName::Pressure) => {
                format!("Ask what burns fuel: beside an open flue at most {} below outdoors", self.shown(0))
            }
            Some(_) => {
                format!("Ask what burns fuel: beside an open gas flue the kitchen draws at most {}", self.shown(0))
            }
            None => "Ask what burns fuel in the house".to_owned(),
        }
    }

    fn crossings(&self) -> String {
        let cores = self.of(0, "core", "cores");
        match self.value(1) {
            Some(floors) if floors > 0.0 => {
                format!("List every crossing: {cores} to outdoors, {}, every fire line", self.of(1, "floor", "floors"))
            }
            _ => format!("List every crossing: {cores} to outdoors, every fire line"),
        }
    }

    fn intake(&self) -> String {
        let own = match self.value(2) {
            Some(_) => format!("{} from the exhaust", self.shown(2)),
            None => "away from the exhaust".to_owned(),
        };
        let (clear, area) = (self.shown(0), self.shown(1));
        format!("Place the intake {clear} from bins, vents, chimneys and cars, {own}; {area} of free area")
    }

    fn pull(&self) -> String {
        let tubes = self.of(0, "tube", "tubes");
        let count = self.value(0).unwrap_or_default() as u32;
        let (way, marks) = match self.step.mark {
            Some((air, run)) => (if air == Air::Supply { "to" } else { "from" }, marks(air, run, count)),
            None => ("to", String::new()),
        };
        let room = self.room();
        match self.value(1) {
            Some(_) if count == 1 => format!("Pull {tubes}, {}, {way} {room}, mark {marks}", self.shown(1)),
            Some(_) => format!("Pull {tubes}, {} each, {way} {room}, mark {marks}", self.shown(1)),
            None => format!("Measure the route, then pull {tubes} {way} {room}, mark {marks}"),
        }
    }

    fn read(&self) -> String {
        let terminals = match self.step.key.air {
            Some(Air::Supply) => self.of(0, "supply terminal", "supply terminals"),
            _ => self.of(0, "extract terminal", "extract terminals"),
        };
        let total = self.shown(1);
        match self.house.choices.rules {
            RuleSet::Adf2021 => format!("Read {terminals}: {total} together, none below its design flow"),
            rules if rules.is_american() => {
                format!("Read {terminals}: {total} together or more, each close to its design")
            }
            _ => format!("Read {terminals}: {total} together, each within {} of its design", self.shown(2)),
        }
    }

    fn room(&self) -> String {
        self.step.key.room.map_or_else(String::new, |id| room::name(self.house, id))
    }

    fn value(&self, at: usize) -> Option<f64> {
        self.step.numbers.get(at).and_then(|number| number.value)
    }

    /// A number in the unit the page shows.
    fn shown(&self, at: usize) -> String {
        let Some(number) = self.step.numbers.get(at) else { return format::DASH.to_owned() };
        let Some(value) = number.value else { return format::DASH.to_owned() };
        match (number.unit, number.name) {
            (Unit::Ratio, _) => {
                format::text(convert(value, Unit::Ratio, Unit::Percent).unwrap_or(value), Unit::Percent)
            }
            // At least so much: whole millimetres upward.
            (unit, NumberName::TrapDrop | NumberName::JoistDepth) => {
                format::in_display(value.ceil(), unit, self.display).to_string()
            }
            (unit, _) => format::in_display(value, unit, self.display).to_string(),
        }
    }

    /// So many things.
    fn of(&self, at: usize, one: &str, many: &str) -> String {
        let value = self.value(at).unwrap_or_default();
        let things = if (value - 1.0).abs() < f64::EPSILON { one } else { many };
        format!("{} {things}", format::number(value, 0))
    }
}
