//! The letter: a finished report of a house that needs no program to be read, and the one file that carries it.

mod drawn;
mod enclose;
mod paper;
mod parts;

#[cfg(test)]
mod tests;

pub use enclose::{Letter, enclose, enclosed};

use crate::book::{Book, Word};
use crate::{format, issue, label, page as say, room, step};
use airtally::house::Display;
use airtally::quantity::{Flow, Unit};
use airtally::report::Report;
use airtally::rules::{Air, Level};
use airtally::runs::Run;
use airtally::steps::{Status, Step};
use paper::Paper;

/// The report as markup: rooms, airflows, tubes with their riser, what the unit must give, parts and how they are cut, steps. Whatever was typed stays text in it.
///
/// ```
/// use airtally::report::Report;
/// use airtally_words::{book::book, demo, letter::letter};
/// let words = letter(&Report::of(demo::larkfield()), book().unwrap(), "2026-03-10");
/// assert!(words.starts_with("<main class=\"letter\"><h1>Larkfield</h1>"));
/// assert!(words.contains("Drill 2 cores of 230\u{a0}mm, falling 2\u{a0}% outward"));
/// ```
pub fn letter(report: &Report, book: &'static Book, day: &str) -> String {
    let mut sheet = Sheet { report, book, paper: Paper::default() };
    sheet.paper.open("main class=\"letter\"");
    sheet.head(day);
    sheet.issues();
    sheet.air();
    sheet.rooms();
    sheet.tubes();
    sheet.unit();
    sheet.parts();
    sheet.steps();
    sheet.paper.put("p", say::STEPS_DEFER);
    sheet.paper.close("main");
    sheet.paper.markup
}

struct Sheet<'a> {
    report: &'a Report,
    book: &'static Book,
    paper: Paper,
}

// Every word goes through `cell` or `put`, by value: each of them is let go in one place, which takes a third of the code.
impl Sheet<'_> {
    fn head(&mut self, day: &str) {
        let house = self.report.house();
        let facts = self.report.facts();
        let area = house.choices.display.area();
        let people = format::value(facts.persons(), Unit::Count);
        let area = format::text(facts.rooms_area_in(area), area);
        self.paper.put("h1", named(&house.name));
        self.paper.put("p", &say::house_summary(facts.rooms.len(), &area, &people.number));
        self.paper.put("p", label::rules(house.choices.rules));
        self.paper.put("p class=\"soft\"", &[day, ". ", self.book.letter(Word::Note)].concat());
    }

    fn issues(&mut self) {
        self.heading(self.book.letter(Word::Issues));
        self.paper.open("ul");
        for issue in self.report.issues() {
            self.paper.put("li", &issue::sentence(&issue, self.report.house()));
        }
        self.paper.close("ul");
    }

    fn air(&mut self) {
        self.heading(say::stage(1));
        self.paper.columns(self.book.letter(Word::AirColumns));
        for shares in self.report.shares().levels() {
            self.row(label::level(shares.level).to_owned());
            self.flow(shares.required.value);
            Air::BOTH.into_iter().for_each(|air| self.flow(shares.flow(air)));
        }
        self.paper.close("table");
    }

    fn rooms(&mut self) {
        let report = self.report;
        self.heading(self.book.letter(Word::Rooms));
        let unit = self.display().flow().symbol();
        self.paper.put("p class=\"soft\"", &[self.book.letter(Word::Flows), "\u{a0}", unit].concat());
        self.paper.columns(self.book.letter(Word::RoomColumns));
        for facts in &report.facts().rooms {
            self.row(room::name(report.house(), facts.id));
            match facts.area {
                Some(area) => self.shown(area.value(), area.unit()),
                None => self.paper.cell("td", String::new()),
            }
            for air in Air::BOTH {
                let at = |level| report.shares().at(level).share(facts.id, air).map(|share| share.flow);
                self.both(at(Level::Normal), at(Level::Boost));
            }
        }
        self.row(self.book.letter(Word::Sum).to_owned());
        self.paper.cell("td", String::new());
        for air in Air::BOTH {
            let at = |level| Some(report.shares().at(level).flow(air));
            self.both(at(Level::Normal), at(Level::Boost));
        }
        self.paper.close("table");
    }

    fn tubes(&mut self) {
        let runs = self.report.runs();
        self.heading(say::stage(2));
        self.paper.columns(self.book.letter(Word::TubeColumns));
        for run in &runs.runs {
            self.run(run);
        }
        self.paper.close("table");
        self.heard();
        self.riser();
    }

    fn run(&mut self, run: &Run) {
        self.row(self.run_name(run));
        self.paper.cell("td", format::count(run.tubes.value));
        self.shown(run.to_cut(self.report.givens()).as_m(), Unit::Metre);
        if let Some(drop) = self.report.delivery().drop(run.air, run.room) {
            self.shown(drop.normal.value.as_pa(), Unit::Pascal);
            self.shown(drop.throttle.value.as_pa(), Unit::Pascal);
        }
    }

    /// In a table of its own: that of the tubes is as wide as a phone.
    fn heard(&mut self) {
        let report = self.report;
        self.paper.columns(self.book.letter(Word::HeardColumns));
        for run in &report.runs().runs {
            let heard = report.heard().iter().find(|heard| heard.air == run.air && heard.room == run.room);
            let Some(heard) = heard else { continue };
            self.row(self.run_name(run));
            for level in [heard.normal, heard.boost] {
                self.shown(level.value, Unit::DecibelA);
            }
        }
        self.paper.close("table");
    }

    /// `S1 Living room`.
    fn run_name(&self, run: &Run) -> String {
        [label::air_letter(run.air), &run.mark.to_string(), " ", &room::name(self.report.house(), run.room)].concat()
    }

    fn unit(&mut self) {
        self.heading(say::DUTY);
        self.paper.open("table");
        for side in &self.report.delivery().sides {
            for (level, pressure) in [(Level::Normal, side.normal), (Level::Boost, side.boost)] {
                let flow = self.report.shares().at(level).total;
                let flow = format::flow(flow, self.display()).to_string();
                self.row(say::duty_at(side.air, level, &flow));
                self.shown(pressure.value.as_pa(), Unit::Pascal);
            }
        }
        self.paper.close("table");
        self.paper.put("p class=\"soft\"", say::DUTY_NOTE);
    }

    fn steps(&mut self) {
        self.heading(say::stage(4));
        let mut phase = None;
        for step in self.report.steps() {
            let next = step.key.rule.phase();
            if phase != Some(next) {
                self.paper.put("h3", step::phase(next));
                phase = Some(next);
            }
            self.step(step);
        }
    }

    /// What to do, its rule of thumb and its caution.
    fn step(&mut self, step: &Step) {
        let done = if step.status == Status::Done { "☑ " } else { "☐ " };
        let title = self.book.title(step, self.report.house(), self.display());
        self.paper.put("p class=\"task\"", &[done, &title].concat());
        self.paper.put("p class=\"soft\"", self.book.rule(step.key.rule));
        if let Some(caution) = self.book.caution(step.key.rule) {
            self.paper.put("p class=\"bad\"", caution);
        }
    }

    fn heading(&mut self, words: &str) {
        self.paper.put("h2", words);
    }

    /// Begins a row by what it is about; the row before ends by itself.
    fn row(&mut self, words: String) {
        self.paper.open("tr");
        self.paper.cell("th scope=\"row\"", words);
    }

    /// `30 / 45`.
    fn both(&mut self, normal: Option<Flow>, boost: Option<Flow>) {
        let words = match (normal, boost) {
            (Some(normal), Some(boost)) => {
                let [normal, boost] = [normal, boost].map(|flow| format::flow(flow, self.display()).number);
                [&normal, " / ", &boost].concat()
            }
            _ => String::new(),
        };
        self.paper.cell("td", words);
    }

    fn flow(&mut self, flow: Flow) {
        self.shown(flow.as_m3h(), Unit::CubicMetrePerHour);
    }

    #[inline(never)]
    fn shown(&mut self, amount: f64, unit: Unit) {
        self.paper.cell("td", format::in_display(amount, unit, self.display()).to_string());
    }

    fn display(&self) -> Display {
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
