//! An open row: the length of its run, to see and to change, and everything that follows from it.

use crate::context::View;
use crate::parts::entry::entry;
use crate::ui::el::{el, maybe, nodes, nothing, text};
use crate::ui::figure::Size;
use crate::ui::gauge::gauge;
use crate::ui::part::soft;
use airtally::delivery::Drop;
use airtally::house::{Field, RoomField};
use airtally::money::Money;
use airtally::quantity::{Length, Pressure, Unit, Velocity};
use airtally::rules::{Air, Level};
use airtally::runs::Run;
use airtally::working::{LineId, Traced};
use airtally_words::format::{self, Shown};
use airtally_words::parts::money;
use airtally_words::{label, page as say, room};
use yew::prelude::*;

/// The length comes first: the rest follows from it.
pub fn open_run(view: &View, run: &Run, name: &str) -> Html {
    let of = Of { view, run, name };
    let facts = [of.count(), of.cut(), of.speeds(), of.pressure(), of.sound(), of.blown()];
    nodes([entry(view, Field::Room(run.room, RoomField::legs(run.air)), None), of.side(), el("dl", "facts", facts)])
}

/// A run with the name of its room.
struct Of<'a> {
    view: &'a View,
    run: &'a Run,
    name: &'a str,
}

impl Of<'_> {
    /// What the length does to the whole: the run that takes most of this side, and the price.
    ///
    /// On paper it would stand below every run.
    fn side(&self) -> Html {
        if self.view.desk.paper {
            return nothing();
        }
        let report = &self.view.page.report;
        let runs = report.delivery().side(self.run.air).map_or(&[] as &[Drop], |side| side.runs.as_slice());
        let Some(index) = runs.iter().find(|drop| drop.index) else { return nothing() };
        let most = room::name(&self.view.page.house, index.room);
        let total = report.quotation().total;
        let price = (total != Money::ZERO).then(|| money(total));
        let words = say::side_follows(&most, &self.pascal(index.normal.value).to_string(), price.as_deref());
        el("p", "soft small", [text(words)])
    }

    fn count(&self) -> Html {
        fact(say::WHY, soft(say::why_tubes(label::why(self.run.why))))
    }

    fn cut(&self) -> Html {
        maybe(self.run.cut.map(|cut| {
            let shown = format::length(cut.value, self.view.page.display());
            fact(say::CUT, nodes([self.figure(&say::cut_for(self.name), &shown, cut.line), soft(say::CUT_EACH)]))
        }))
    }

    fn speeds(&self) -> Html {
        let run = self.run;
        let boost = match run.boost == run.normal {
            true => nothing(),
            false => self.speed(Level::Boost, run.speed_boost, run.limit_boost),
        };
        nodes([self.speed(Level::Normal, run.speed_normal, run.limit_normal), boost])
    }

    fn speed(&self, level: Level, speed: Traced<Velocity>, limit: Velocity) -> Html {
        let (run, display) = (self.run, self.view.page.display());
        let end = run.limit_boost.max(run.limit_normal).max(run.speed_boost.value).max(run.speed_normal.value);
        let spoken = say::speed_at(label::level(level), self.name);
        let told = [
            self.figure(&spoken, &format::velocity(speed.value, display), speed.line),
            soft(say::limit(&format::velocity(limit, display).to_string())),
            gauge(speed.value.as_ms(), limit.as_ms(), end.as_ms()),
        ];
        fact(say::speed_name(level), nodes(told))
    }

    /// What the run takes, and what it must be throttled by.
    fn pressure(&self) -> Html {
        let Some(drop) = self.view.page.report.delivery().drop(self.run.air, self.run.room) else { return nothing() };
        let own = self.figure(&say::pressure_of(self.name), &self.pascal(drop.normal.value), drop.normal.line);
        let likely = maybe(drop.likely.map(|likely| {
            let (low, high) = (self.pascal(likely.low).number, self.pascal(likely.high).to_string());
            soft([say::LIKELY, " ", &say::likely(&low, &high, likely.jumps)].concat())
        }));
        let built = maybe(drop.built.map(|flow| {
            let shown = format::flow(flow.value, self.view.page.display());
            fact(say::AS_PULLED, self.figure(&say::built_of(self.name), &shown, flow.line))
        }));
        nodes([fact(say::RUN_TAKES, nodes([own, likely])), fact(say::THROTTLE, self.throttle(drop)), built])
    }

    /// What is added, by its pressure, by a setting of the valve and by a hole.
    fn throttle(&self, drop: &Drop) -> Html {
        if drop.index {
            return soft(say::INDEX_RUN);
        }
        let throttle = drop.throttle;
        let setting = maybe(drop.setting.map(|setting| {
            let shown = format::value(setting.value, Unit::Ratio);
            nodes([soft(say::SETTING), self.figure(&say::setting_of(self.name), &shown, setting.line)])
        }));
        let hole = maybe(drop.hole.map(|hole| {
            let shown = format::small_length(hole.value, self.view.page.display());
            nodes([soft(say::HOLE), self.figure(&say::hole_of(self.name), &shown, hole.line)])
        }));
        let own = self.figure(&say::throttle_of(self.name), &self.pascal(throttle.value), throttle.line);
        nodes([own, setting, hole])
    }

    /// What the room hears of it.
    fn sound(&self) -> Html {
        let mut all = self.view.page.report.heard().iter();
        let own = all.find(|heard| heard.air == self.run.air && heard.room == self.run.room);
        let Some(heard) = own else { return nothing() };
        let limit = self.view.page.report.givens().value(heard.limit);
        let limit = || soft(say::limit(&format::text(limit, Unit::DecibelA)));
        let at = |level: Level, sound: Traced<f64>, nc: f64| {
            let shown = format::value(sound.value, Unit::DecibelA);
            let figure = self.figure(&say::sound_at(label::level(level), self.name), &shown, sound.line);
            fact(say::heard_name(level), nodes([figure, soft(say::nc(nc)), limit()]))
        };
        let boost = match heard.boost.value > heard.normal.value {
            true => at(Level::Boost, heard.boost, heard.nc_boost),
            false => nothing(),
        };
        let voice = maybe(heard.voice.filter(|voice| voice.level.value > AUDIBLE).map(|voice| {
            let from = room::name(&self.view.page.house, voice.from);
            let shown = format::value(voice.level.value, Unit::DecibelA);
            fact(say::voice(&from), self.figure(&say::voice_in(self.name), &shown, voice.level.line))
        }));
        nodes([at(Level::Normal, heard.normal, heard.nc), boost, voice])
    }

    /// How far its valve blows, and whether that is felt.
    fn blown(&self) -> Html {
        let mut all = self.view.page.report.blown().iter();
        let own = all.find(|blown| self.run.air == Air::Supply && blown.room == self.run.room);
        let Some(blown) = own else { return nothing() };
        let figure = |throw: Traced<Length>| {
            let shown = format::length(throw.value, self.view.page.display());
            self.figure(&say::throw_of(self.name), &shown, throw.line)
        };
        let felt = maybe(blown.felt.map(|felt| soft(say::felt(felt))));
        fact(say::BLOWS, nodes([figure(blown.throw.low), soft(say::TO), figure(blown.throw.high), felt]))
    }

    fn figure(&self, spoken: &str, shown: &Shown, line: LineId) -> Html {
        self.view.figure(spoken, shown, Size::Mid, line)
    }

    fn pascal(&self, pressure: Pressure) -> Shown {
        format::in_display(pressure.as_pa(), Unit::Pascal, self.view.page.display())
    }
}

/// dB(A): nobody hears less.
const AUDIBLE: f64 = 0.0;

/// A fact by its name.
fn fact(name: impl Into<AttrValue>, told: Html) -> Html {
    nodes([el("dt", "soft small", [text(name)]), el("dd", "", [told])])
}
