//! The letter: a finished report of a house that needs no program to be read, and the one file that carries it.

mod enclose;
mod paper;

#[cfg(test)]
mod tests;

pub use enclose::{Letter, enclose};

use crate::book::Book;
use crate::{format, issue, label, page as say, room, step};
use airtally::delivery::Drop;
use airtally::facts::RoomFacts;
use airtally::quantity::{Flow, Pressure, Unit};
use airtally::report::Report;
use airtally::rules::{Air, Level};
use airtally::runs::Run;
use airtally::steps::{Status, Step};
use paper::Paper;

/// The report as markup: rooms, airflows, tubes, what the unit must give, steps. Whatever was typed stays text in it.
///
/// ```
/// use airtally::report::Report;
/// use airtally_words::{book::book, demo, letter::letter};
/// let words = letter(&Report::of(demo::larkfield()), book().unwrap(), "2026-03-10");
/// assert!(words.starts_with("<main class=\"letter\"><h1>Larkfield</h1>"));
/// assert!(words.contains("Drill 2 cores of 230\u{a0}mm, falling 2\u{a0}% outward"));
/// ```
pub fn letter(report: &Report, book: &Book, day: &str) -> String {
    let mut sheet = Sheet { report, book, paper: Paper::default() };
    sheet.paper.open("main class=\"letter\"");
    sheet.head(day);
    sheet.issues();
    sheet.air();
    sheet.rooms();
    sheet.tubes();
    sheet.unit();
    sheet.steps();
    sheet.paper.put("p", say::STEPS_DEFER);
    sheet.paper.close("main");
    sheet.paper.markup
}

struct Sheet<'a> {
    report: &'a Report,
    book: &'a Book,
    paper: Paper,
}

impl Sheet<'_> {
    fn head(&mut self, day: &str) {
        let house = self.report.house();
        let facts = self.report.facts();
        let area = house.choices.display.area();
        let people = format::value(facts.persons(), Unit::Count);
        let about =
            say::house_summary(facts.rooms.len(), &format::text(facts.rooms_area_in(area), area), &people.number);
        self.paper.put("h1", named(&house.name));
        self.paper.put("p", &about);
        self.paper.put("p", label::rules(house.choices.rules));
        self.paper.put("p class=\"soft\"", &[&say::made_on(day), say::LETTER_NOTE].concat());
    }

    fn issues(&mut self) {
        let issues = self.report.issues();
        if issues.is_empty() {
            return;
        }
        self.paper.put("h2", say::LETTER_ISSUES);
        self.paper.open("ul");
        for issue in &issues {
            self.paper.put("li", &issue::sentence(issue, self.report.house()));
        }
        self.paper.close("ul");
    }

    fn air(&mut self) {
        self.paper.put("h2", say::stage(1));
        self.paper.table(&[say::LEVEL, say::REQUIRED, say::SET_SUPPLY, say::SET_EXTRACT]);
        for shares in self.report.shares().levels() {
            let [required, supply, extract] =
                [shares.required.value, shares.flow(Air::Supply), shares.flow(Air::Extract)]
                    .map(|flow| self.flow(flow));
            self.paper.row(&[label::level(shares.level), &required, &supply, &extract]);
        }
        self.paper.close("table");
    }

    fn rooms(&mut self) {
        let columns =
            [say::LETTER_ROOM, label::room_field(airtally::house::RoomField::Area).name, say::SUPPLY, say::EXTRACT];
        self.paper.put("h2", say::LETTER_ROOMS);
        self.paper.put("p class=\"soft\"", say::LETTER_FLOWS);
        self.paper.table(&columns);
        for facts in &self.report.facts().rooms {
            let [supply, extract] = Air::BOTH.map(|air| self.room_flow(facts, air));
            self.paper.row(&[&room::name(self.report.house(), facts.id), &self.area(facts), &supply, &extract]);
        }
        let [supply, extract] = Air::BOTH.map(|air| self.both(|level| Some(self.report.shares().at(level).flow(air))));
        self.paper.row(&[say::LETTER_SUM, "", &supply, &extract]);
        self.paper.close("table");
    }

    fn tubes(&mut self) {
        let runs = self.report.runs();
        self.paper.put("h2", say::stage(2));
        self.paper.put("p", &say::tube_note(&format::small_length(runs.bore, self.display()).to_string()));
        self.paper.table(&[say::LETTER_ROOM, say::stage(2), say::LETTER_CUT, say::LETTER_TAKES, say::LETTER_THROTTLE]);
        for run in &runs.runs {
            self.run(run);
        }
        self.paper.close("table");
    }

    fn run(&mut self, run: &Run) {
        let mark = [label::air_letter(run.air), &run.mark.to_string(), " "].concat();
        let name = [mark, room::name(self.report.house(), run.room)].concat();
        let cut = run.cut.map_or_else(|| run.to_cut(self.report.givens()), |cut| cut.value);
        let drop = self.report.delivery().drop(run.air, run.room);
        let pascal = |of: fn(&Drop) -> Pressure| drop.map_or_else(String::new, |drop| self.pascal(of(drop)));
        let takes = pascal(|drop| drop.normal.value);
        let throttle = match drop {
            Some(drop) if drop.index => format::DASH.to_owned(),
            _ => pascal(|drop| drop.throttle.value),
        };
        let cut = format::length(cut, self.display()).to_string();
        self.paper.row(&[&name, &format::count(run.tubes.value), &cut, &takes, &throttle]);
    }

    fn unit(&mut self) {
        let delivery = self.report.delivery();
        if delivery.sides.is_empty() {
            return;
        }
        self.paper.put("h2", say::DUTY);
        self.paper.table(&["", "Pa"]);
        for side in &delivery.sides {
            for (level, pressure) in [(Level::Normal, side.normal), (Level::Boost, side.boost)] {
                let flow = self.flow(self.report.shares().at(level).total);
                self.paper.row(&[&say::duty_at(side.air, level, &flow), &self.pascal(pressure.value)]);
            }
        }
        self.paper.close("table");
        self.paper.put("p class=\"soft\"", say::DUTY_NOTE);
    }

    fn steps(&mut self) {
        self.paper.put("h2", say::stage(4));
        let mut phase = None;
        for step in self.report.steps() {
            let next = step.key.rule.phase();
            if phase != Some(next) {
                if phase.is_some() {
                    self.paper.close("ul");
                }
                self.paper.put("h3", step::phase(next));
                self.paper.open("ul class=\"ticks\"");
                phase = Some(next);
            }
            self.step(step);
        }
        if phase.is_some() {
            self.paper.close("ul");
        }
    }

    /// What to do, its rule of thumb and its caution.
    fn step(&mut self, step: &Step) {
        let done = if step.status == Status::Done { "☑ " } else { "☐ " };
        let title = self.book.title(step, self.report.house(), self.display());
        self.paper.open("li");
        self.paper.put("b", &[done, &title].concat());
        self.paper.put("p", self.book.rule(step.key.rule));
        if let Some(caution) = self.book.caution(step.key.rule) {
            self.paper.put("p class=\"bad\"", caution);
        }
        self.paper.close("li");
    }

    fn room_flow(&self, facts: &RoomFacts, air: Air) -> String {
        self.both(|level| self.report.shares().at(level).share(facts.id, air).map(|share| share.flow))
    }

    /// `30 / 45 m³/h`.
    fn both(&self, at: impl Fn(Level) -> Option<Flow>) -> String {
        let Some((normal, boost)) = at(Level::Normal).zip(at(Level::Boost)) else { return String::new() };
        [&format::flow(normal, self.display()).number, " / ", &self.flow(boost)].concat()
    }

    fn area(&self, facts: &RoomFacts) -> String {
        let shown = |area: airtally::quantity::Measure| format::in_display(area.value(), area.unit(), self.display());
        facts.area.map_or_else(String::new, |area| shown(area).to_string())
    }

    fn flow(&self, flow: Flow) -> String {
        format::flow(flow, self.display()).to_string()
    }

    fn pascal(&self, pressure: Pressure) -> String {
        format::in_display(pressure.as_pa(), Unit::Pascal, self.display()).to_string()
    }

    fn display(&self) -> airtally::house::Display {
        self.report.house().choices.display
    }
}

/// What a house is called, where it may have no name.
fn named(name: &str) -> &str {
    match name.trim() {
        "" => say::NO_NAME,
        name => name,
    }
}
