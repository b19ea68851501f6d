//! The dock: in = out, how much wants a look, the stages, and a short remark above them.

use crate::context::{Hands, View};
use crate::desk::{Move, Said, Stage, Topic};
use crate::parts::air::air_tag;
use crate::state::Action;
use crate::ui::el::{button, el, maybe, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use airtally::quantity::Flow;
use airtally::rules::{Air, Level};
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The dock.
pub fn dock(view: &View) -> Html {
    let balance = if view.page.house.rooms.is_empty() { nothing() } else { balance(view) };
    let stages = Stage::ALL.map(|stage| link(stage, view.desk.stage));
    let stages = tag("nav", "stages").attr("aria-label", say::STAGES).around(stages);
    let toast = maybe(view.desk.said.clone().map(|said| toast(said, view)));
    el("div", "dock", [balance, stages, tag("div", "").attr("role", "status").around([toast])])
}

fn balance(view: &View) -> Html {
    let (page, desk) = (&view.page, &view.desk);
    let shares = page.report.shares().at(desk.level);
    let display = page.display();
    let [supply, extract] = Air::BOTH.map(|air| shares.flow(air));
    let off = shares.steps(Air::Supply) != shares.steps(Air::Extract);
    let [inward, outward] = [supply, extract].map(|flow| format::flow(flow, display));
    let sum = match shares.total > Flow::ZERO {
        true => el(
            "p",
            "balance-sum",
            [
                air_tag(Air::Supply),
                el("b", "", [text(inward.number)]),
                el(
                    "span",
                    "balance-equal",
                    [
                        tag("span", "").attr("aria-hidden", "true").around([text(if off { "≠" } else { "=" })]),
                        el("span", "aloud", [text(if off { say::IS_NOT } else { say::EQUALS })]),
                    ],
                ),
                el("b", "", [text(outward.number)]),
                air_tag(Air::Extract),
                el("small", "soft", [text(outward.unit)]),
                level(desk.level),
            ],
        ),
        false => el("p", "balance-sum", [text(say::NOTHING_TO_BALANCE)]),
    };
    let class = if off { "balance is-off" } else { "balance" };
    let strip = tag("section", class).attr("aria-label", say::BALANCE);
    strip.around([sum, to_look_at(page.issues.len(), &view.hands)])
}

fn level(level: Level) -> Html {
    match level {
        Level::Normal => nothing(),
        level => el("span", "soft", [text(label::level(level))]),
    }
}

fn to_look_at(count: usize, hands: &Hands) -> Html {
    let clear = count == 0;
    let pressed = hands.doing(|hands| hands.make(Move::Explain(Topic::Issues)));
    let class = if clear { "to-look-at is-clear" } else { "to-look-at" };
    let sign = icon(if clear { Icon::Fine } else { Icon::Caution });
    let words = el("span", "", [text(say::to_look_at(count))]);
    button(class, pressed).attr("aria-haspopup", "dialog").around([sign, words])
}

fn link(stage: Stage, shown: Stage) -> Html {
    let sign = match stage {
        Stage::House => Icon::House,
        Stage::Air => Icon::Air,
        Stage::Tubes => Icon::Tubes,
        Stage::Parts => Icon::Parts,
        Stage::Steps => Icon::Steps,
    };
    let link = tag("a", "stage").attr("href", ["#", stage.id()].concat());
    let link = link.attr_if("aria-current", (stage == shown).then_some("page"));
    link.around([icon(sign), el("span", "", [text(say::stage(stage as usize))])])
}

fn toast(said: Said, view: &View) -> Html {
    let undo = said.undo && view.notebook.can_undo();
    let (class, words) = if undo { ("toast", say::UNDO) } else { ("toast toast-stays", say::UNDERSTOOD) };
    let pressed = view.hands.doing(move |hands| {
        if undo {
            hands.act(Action::Undo);
        }
        hands.make(Move::Hush);
    });
    let button = button("button", pressed).around([text(words)]);
    el("div", class, [el("span", "", [text(said.words)]), button])
}
