//! The dock: in = out, how much wants a look, the stages, and a short remark above them.

use crate::context::{Hands, View};
use crate::desk::{Move, Said, Stage, Topic};
use crate::parts::air::air_tag;
use crate::state::Action;
use crate::ui::icon::{Icon, icon};
use airtally::quantity::Flow;
use airtally::rules::{Air, Level};
use airtally_words::{format, label, page as say};
use yew::prelude::*;

/// The dock.
pub fn dock(view: &View) -> Html {
    html! {
        <div class="dock">
            if !view.page.house.rooms.is_empty() { { balance(view) } }
            <nav class="stages" aria-label={say::STAGES}>{ for Stage::ALL.map(|stage| link(stage, view.desk.stage)) }</nav>
            <div role="status">if let Some(said) = view.desk.said.clone() { { toast(said, &view.hands) } }</div>
        </div>
    }
}

fn balance(view: &View) -> Html {
    let (page, desk) = (&view.page, &view.desk);
    let shares = page.report.shares().at(desk.level);
    let display = page.display();
    let [supply, extract] = Air::BOTH.map(|air| shares.flow(air));
    let off = shares.steps(Air::Supply) != shares.steps(Air::Extract);
    let [inward, outward] = [supply, extract].map(|flow| format::flow(flow, display));
    html! {
        <section class={classes!("balance", off.then_some("is-off"))} aria-label={say::BALANCE}>
            if shares.total > Flow::ZERO {
                <p class="balance-sum">
                    { air_tag(Air::Supply) }<b>{ inward.number }</b>
                    <span class="balance-equal">
                        <span aria-hidden="true">{ if off { "≠" } else { "=" } }</span>
                        <span class="aloud">{ if off { say::IS_NOT } else { say::EQUALS } }</span>
                    </span>
                    <b>{ outward.number }</b>{ air_tag(Air::Extract) }
                    <small class="soft">{ outward.unit }</small>
                    { level(desk.level) }
                </p>
            } else {
                <p class="balance-sum">{ say::NOTHING_TO_BALANCE }</p>
            }
            { to_look_at(page.issues.len(), &view.hands) }
        </section>
    }
}

fn level(level: Level) -> Html {
    match level {
        Level::Normal => html! {},
        level => html! { <span class="soft">{ label::level(level) }</span> },
    }
}

fn to_look_at(count: usize, hands: &Hands) -> Html {
    let clear = count == 0;
    let onclick = hands.doing(|hands| hands.make(Move::Explain(Topic::Issues)));
    html! {
        <button type="button" class={classes!("to-look-at", clear.then_some("is-clear"))} aria-haspopup="dialog" {onclick}>
            { icon(if clear { Icon::Fine } else { Icon::Caution }) }<span>{ say::to_look_at(count) }</span>
        </button>
    }
}

fn link(stage: Stage, shown: Stage) -> Html {
    let sign = match stage {
        Stage::House => Icon::House,
        Stage::Air => Icon::Air,
        Stage::Tubes => Icon::Tubes,
        Stage::Steps => Icon::Steps,
    };
    html! {
        <a class="stage" href={["#", stage.id()].concat()} aria-current={(stage == shown).then_some("page")}>
            { icon(sign) }<span>{ say::stage(stage as usize) }</span>
        </a>
    }
}

fn toast(said: Said, hands: &Hands) -> Html {
    html! {
        <div class="toast">
            <span>{ said.words }</span>
            if said.undo {
                <button type="button" class="button" onclick={hands.doing(|hands| {
                    hands.act(Action::Undo);
                    hands.make(Move::Hush);
                })}>{ say::UNDO }</button>
            } else {
                <button type="button" class="button" onclick={hands.doing(|hands| hands.make(Move::Hush))}>{ say::UNDERSTOOD }</button>
            }
        </div>
    }
}
