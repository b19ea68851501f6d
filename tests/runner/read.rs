//! Where a value stands in a report, in words with `/` between them:
//!
//! ```text
//! whole/normal                      the governing whole-dwelling requirement
//! stated/away/2                     the second whole-dwelling requirement of a level, in the order of the rule set
//! required/boost  total/boost       the total before and after rounding to whole steps
//! governs/normal                    what asks for it
//! supply/living/normal              a share in whole steps; extract likewise
//! ideal/supply/living/normal        the same before rounding
//! minimum/extract/kitchen/boost     the least it may be
//! line/IrcTable  line/IrcTable/room the latest line of the working with this formula
//! cites/IrcTable                    its source
//! mark/IrcTable                     how sure that source is
//! alternative/IrcEquation           another legal reading
//! tubes/extract/kitchen  why/…  cut/…        a run
//! speed/extract/kitchen/boost  limit/…       its speed and the largest allowed
//! ports/supply
//! gap-area/kitchen  gap-height/kitchen  gap-air/kitchen
//! door-gap/kitchen  door-pressure/kitchen      with the rule set's own opening
//! door-rule/kitchen  door-gentle/kitchen       whether that is enough for the rule set, for the registered pressure
//! night/bedroom  per-sleeper/bedroom  air-change/bedroom  verdict/bedroom
//! codes/irc-2021/normal             another rule set's total
//! ```

use super::build::{Built, by_id};
use airtally::house::RoomId;
use airtally::quantity::{Flow, Measure, Unit};
use airtally::report::Report;
use airtally::rules::{Air, Level, RuleSet, Scope};
use airtally::runs::Run;
use airtally::shares::Share;
use airtally::working::{Line, Origin};

/// What stands there.
#[derive(Debug)]
pub enum Found {
    Number(Measure),
    Text(String),
    Nothing,
}

pub fn read(built: &Built, path: &str) -> Found {
    let report = &built.report;
    let parts: Vec<&str> = path.split('/').collect();
    match parts.as_slice() {
        ["whole", at] => flow(report.demand().whole(level(at)).map(|whole| whole.flow)),
        ["stated", at, nth] => stated(report, level(at), nth),
        ["required", at] => flow(Some(report.shares().at(level(at)).required.value)),
        ["total", at] => flow(Some(report.shares().at(level(at)).total)),
        ["governs", at] => word(report.shares().at(level(at)).margin().map(|(first, _)| first.by)),
        [side @ ("supply" | "extract"), room, at] => flow(share(built, side, room, at).map(|share| share.flow)),
        ["ideal", side, room, at] => ideal(report, share(built, side, room, at)),
        ["minimum", side, room, at] => flow(share(built, side, room, at).map(|share| share.minimum)),
        ["line", formula] => value(line(report, formula, None)),
        ["line", formula, room] => value(line(report, formula, Some(built.room(room)))),
        ["cites", formula] => line(report, formula, None).map_or(Found::Nothing, |line| {
            let source = line.source;
            Found::Text(format!("{} {} {}", source.document, source.edition, source.clause))
        }),
        ["mark", formula] => word(line(report, formula, None).map(|line| line.source.standing)),
        ["alternative", formula] => {
            let alternatives = report.demand().alternatives.iter();
            flow(alternatives.clone().find(|other| format!("{:?}", other.formula) == *formula).map(|other| other.flow))
        }
        ["codes", rules, at] => {
            let rules = by_id(RuleSet::ALL, RuleSet::id, rules);
            let codes = report.codes().iter().find(|codes| codes.rules == rules);
            flow(codes.map(|codes| codes.required[level(at) as usize]))
        }
        ["ports", side] => {
            let runs = report.runs();
            let ports = if air(side) == Air::Supply { runs.supply_ports } else { runs.extract_ports };
            number(f64::from(ports.value), Unit::Count)
        }
        [what, side @ ("supply" | "extract"), rest @ ..] => of_run(built, what, air(side), rest),
        [what, room] => of_room(built, what, room),
        _ => panic!("nothing stands at \"{path}\""),
    }
}

fn stated(report: &Report, at: Level, nth: &str) -> Found {
    let nth: usize = nth.parse().expect("a number");
    let mut whole =
        report.demand().requirements.iter().filter(|asked| asked.scope == Scope::Whole && asked.level == at);
    flow(whole.nth(nth - 1).map(|asked| asked.flow))
}

fn share(built: &Built, side: &str, room: &str, at: &str) -> Option<Share> {
    built.report.shares().at(level(at)).share(built.room(room), air(side))
}

/// The share in whole steps comes from the ideal one: the first number put into its line.
fn ideal(report: &Report, share: Option<Share>) -> Found {
    let terms = share.map(|share| report.terms(share.line)).unwrap_or_default();
    match terms.first().map(|term| term.origin) {
        Some(Origin::Line(line)) => value(report.line(line)),
        _ => Found::Nothing,
    }
}

fn line(report: &Report, formula: &str, room: Option<RoomId>) -> Option<Line> {
    report.issues();
    let lines: Vec<Line> = report.lines().into_iter().filter_map(|id| report.line(id)).collect();
    let fits = |line: &Line| format!("{:?}", line.formula) == formula && (room.is_none() || line.room == room);
    lines.into_iter().rev().find(fits)
}

fn of_run(built: &Built, what: &str, air: Air, rest: &[&str]) -> Found {
    let run = |room: &str| {
        let room = built.room(room);
        built.report.runs().side(air).find(|run| run.room == room).copied()
    };
    let at = |run: Option<Run>, level: Level, pick: fn(Run) -> [airtally::quantity::Velocity; 2]| {
        let number = run.map(|run| pick(run)[usize::from(level == Level::Boost)]);
        number.map_or(Found::Nothing, |speed| Found::Number(speed.into()))
    };
    match (what, rest) {
        ("tubes", [room]) => run(room).map_or(Found::Nothing, |run| number(f64::from(run.tubes.value), Unit::Count)),
        ("why", [room]) => word(run(room).map(|run| run.why)),
        ("cut", [room]) => {
            run(room).and_then(|run| run.cut).map_or(Found::Nothing, |cut| Found::Number(cut.value.into()))
        }
        ("speed", [room, level_]) => {
            at(run(room), level(level_), |run| [run.speed_normal.value, run.speed_boost.value])
        }
        ("limit", [room, level_]) => at(run(room), level(level_), |run| [run.limit_normal, run.limit_boost]),
        _ => panic!("nothing stands at \"{what}\" of a run"),
    }
}

fn of_room(built: &Built, what: &str, room: &str) -> Found {
    let (report, room) = (&built.report, built.room(room));
    let gap = || report.openings().iter().find(|opening| opening.room == room).copied();
    let by_code = || gap().and_then(|gap| gap.code);
    let answer = |yes: Option<bool>| {
        yes.map_or(Found::Nothing, |yes| Found::Text(if yes { "enough" } else { "not enough" }.to_owned()))
    };
    let night = || report.nights().iter().find(|night| night.room == room).copied();
    let measure = |found: Option<Measure>| found.map_or(Found::Nothing, Found::Number);
    match what {
        "gap-area" => measure(gap().map(|gap| gap.area.value.into())),
        "gap-height" => measure(gap().map(|gap| gap.undercut.value.into())),
        "gap-air" => word(gap().map(|gap| gap.air)),
        "door-gap" => measure(by_code().map(|code| code.gap.value.into())),
        "door-pressure" => measure(by_code().map(|code| code.pressure.value.into())),
        "door-rule" => answer(by_code().map(|code| code.enough)),
        "door-gentle" => answer(by_code().map(|code| code.gentle)),
        "night" => measure(night().map(|night| night.morning.value.into())),
        "per-sleeper" => measure(night().map(|night| night.per_sleeper.value.into())),
        "air-change" => measure(night().map(|night| night.air_change.value.into())),
        "verdict" => word(night().map(|night| night.verdict)),
        _ => panic!("nothing stands at \"{what}\" of a room"),
    }
}

fn level(word: &str) -> Level {
    match word {
        "away" => Level::Away,
        "normal" => Level::Normal,
        "boost" => Level::Boost,
        _ => panic!("no level is called \"{word}\""),
    }
}

fn air(word: &str) -> Air {
    by_id(Air::BOTH, Air::id, word)
}

fn number(value: f64, unit: Unit) -> Found {
    Found::Number(Measure::new(value, unit))
}

fn flow(flow: Option<Flow>) -> Found {
    flow.map_or(Found::Nothing, |flow| Found::Number(flow.into()))
}

fn value(line: Option<Line>) -> Found {
    line.map_or(Found::Nothing, |line| number(line.value, line.unit))
}

fn word(word: Option<impl std::fmt::Debug>) -> Found {
    word.map_or(Found::Nothing, |word| Found::Text(format!("{word:?}")))
}
