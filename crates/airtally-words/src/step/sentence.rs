//! The sentences of one step of one house.

use super::fill::{Slot, fill};
use crate::book::Book;
use crate::{format, label, room};
use airtally::house::{Display, House};
use airtally::on_site::Verdict;
use airtally::quantity::{Unit, convert};
use airtally::rules::Air;
use airtally::steps::{Check, Home, Number, NumberName, Status, Step, StepKey, StepRule};

impl Book {
    /// What to do, with this house's numbers worked in.
    ///
    /// ```
    /// use airtally::{report::Report, steps::StepRule};
    /// use airtally_words::{book::book, demo};
    /// let report = Report::of(demo::larkfield());
    /// let step = report.steps().iter().find(|step| step.key.rule == StepRule::DrillCores).unwrap();
    /// let text = book().unwrap().title(step, report.house(), report.house().choices.display);
    /// assert_eq!(text, "Drill 2 cores of 230\u{a0}mm, falling 2\u{a0}% outward");
    /// ```
    pub fn title(&self, step: &Step, house: &House, display: Display) -> String {
        let here = Home::of(house.choices.rules);
        let lines = self.step(step.key.rule, '-').filter_map(|line| at_home(line, here));
        let filling = |slot: Slot| {
            let marks = || step_marks(step, slot);
            place(&step.numbers, slot, display).or_else(marks).or_else(|| common(&step.key, house, slot))
        };
        lines.map(|line| fill(line, &filling)).find_map(|text| text).unwrap_or_default()
    }

    /// What keeps a step locked; `None` when nothing does.
    pub fn lock(&self, step: &Step, house: &House) -> Option<String> {
        let Status::LockedBy(key) = step.status else { return None };
        let done = fill(self.step(key.rule, '>').next()?, &|slot| common(&key, house, slot))?;
        Some(["Locked until ", &done, "."].concat())
    }

    /// The rule of thumb of a step.
    pub fn rule(&self, rule: StepRule) -> &str {
        self.step(rule, ':').next().unwrap_or_default()
    }

    /// The caution of a step; `None` where there is no particular danger.
    pub fn caution(&self, rule: StepRule) -> Option<&str> {
        self.step(rule, '!').next()
    }

    /// What a check comes to.
    pub fn check(&self, check: &Check, display: Display) -> String {
        let lines = self.check_lines(check.rule, verdict_mark(check.verdict));
        let filling = |slot: Slot| place(&check.numbers, slot, display);
        lines.map(|line| fill(line, &filling)).find_map(|text| text).unwrap_or_default()
    }
}

/// What begins the lines of a verdict.
const fn verdict_mark(verdict: Verdict) -> char {
    match verdict {
        Verdict::Holds => '+',
        Verdict::Excepted => '~',
        Verdict::Fails => 'x',
        Verdict::Unknown => '?',
        Verdict::Designer => '*',
    }
}

/// The line without its `@place`; `None` when it is for another place.
fn at_home(line: &str, here: Home) -> Option<&str> {
    match line.strip_prefix('@') {
        Some(line) => line.split_once(' ').filter(|(place, _)| *place == here.id()).map(|(_, line)| line),
        None => Some(line),
    }
}

/// The marks on the tubes of a run.
fn step_marks(step: &Step, slot: Slot) -> Option<String> {
    let (air, run) = step.mark.filter(|_| slot.name == "marks")?;
    let tubes = step.numbers.first()?.value?;
    Some(marks(air, run, tubes as u32))
}

/// A number, or the things it counts.
fn place(numbers: &[Number], slot: Slot, display: Display) -> Option<String> {
    let at = slot.name.bytes().next().filter(u8::is_ascii_digit)?;
    let number = numbers.get(usize::from(at - b'0'))?;
    let value = number.value?;
    let form = slot.form((value - 1.0).abs() < f64::EPSILON);
    match (slot.silent, slot.forms) {
        (true, _) => Some(form.to_owned()),
        (false, Some(_)) => Some([&format::number(value, 0), " ", form].concat()),
        (false, None) => Some(shown(number, value, display)),
    }
}

/// The room, or a form by the side it is on.
fn common(key: &StepKey, house: &House, slot: Slot) -> Option<String> {
    match slot.name {
        "room" => key.room.map(|id| room::name(house, id)),
        "air" => key.air.map(|air| slot.form(air == Air::Supply).to_owned()),
        _ => None,
    }
}

/// A number in the unit the page shows.
fn shown(number: &Number, value: f64, display: Display) -> String {
    let (value, unit) = match (number.unit, number.name) {
        (Unit::Ratio, _) => (convert(value, Unit::Ratio, Unit::Percent).unwrap_or(value), Unit::Percent),
        // At least so much: whole millimetres upward.
        (unit, NumberName::TrapDrop | NumberName::JoistDepth) => (value.ceil(), unit),
        (unit, _) => (value, unit),
    };
    format::in_display(value, unit, display).to_string()
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
    let mark = |at: u32| mark(air, run, (at, tubes));
    match tubes {
        0 | 1 => mark(0),
        2..=FEW => (0..tubes).map(mark).collect::<Vec<_>>().join(" "),
        _ => [&mark(0), " to ", &mark(tubes - 1)].concat(),
    }
}

/// The mark of one tube, the how manieth of so many: `S1`, `S1b`.
pub fn mark(air: Air, run: u32, (at, tubes): (u32, u32)) -> String {
    let run = [label::air_letter(air), &run.to_string()].concat();
    match u8::try_from(at) {
        _ if tubes <= 1 => run,
        Ok(small) if small < ALPHABET => [run.as_str(), char::from(b'a' + small).encode_utf8(&mut [0; 4])].concat(),
        _ => [&run, "-", &at.saturating_add(1).to_string()].concat(),
    }
}

const ALPHABET: u8 = 26;
/// So many marks are listed one by one.
const FEW: u32 = 4;
