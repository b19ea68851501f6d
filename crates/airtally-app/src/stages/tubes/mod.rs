//! Tubes: how many to each room and why, and the ports of the manifolds.

mod run;

use super::air::nothing_yet;
use crate::context::{Page, View};
use crate::parts::choice::{choosing, options};
use crate::ui::figure::{Size, figure};
use crate::ui::part::part;
use crate::ui::select::select;
use crate::ui::tally::tally;
use airtally::house::TubeSize;
use airtally::quantity::Unit;
use airtally::rules::Air;
use airtally::runs::Runs;
use airtally::working::Traced;
use airtally_words::format::{self, Shown};
use airtally_words::{label, page as say};
use yew::prelude::*;

/// The screen.
pub fn tubes(view: &View) -> Html {
    let page = &view.page;
    let runs = page.report.runs();
    if runs.runs.is_empty() {
        return nothing_yet(say::ASK_TUBES);
    }
    let chosen = choosing(page, &view.hands, &TubeSize::ALL, |choices, tube| choices.tube = tube);
    html! {
        <div class="spread">
            <div class="leaf">
                { answer(page, runs) }
                { ports(view, runs) }
                <section class="part">
                    <h2>{ say::TUBE }</h2>
                    <div class="fields">
                        { select("tube".to_owned(), say::TUBE_USED, "", options(&TubeSize::ALL, runs.tube, label::tube), &chosen) }
                    </div>
                </section>
                <p><a class="button-main" href="#steps">{ say::NEXT_STEPS }</a></p>
            </div>
            <div class="leaf">{ for Air::BOTH.map(|air| side(view, runs, air)) }</div>
        </div>
    }
}

fn answer(page: &Page, runs: &Runs) -> Html {
    let all = runs.all_tubes();
    let bore = format::small_length(runs.bore, page.display()).to_string();
    html! {
        <header class="answer">
            <h1>{ say::ASK_TUBES }</h1>
            <p class="tallied">{ figure(&format::count(all), say::tubes_word(all), Size::Big) }{ tally(all, all, say::tubes(all)) }</p>
            <p class="answer-why">{ say::tube_note(&bore) }</p>
        </header>
    }
}

fn ports(view: &View, runs: &Runs) -> Html {
    let total = |name: &'static str, ports: Traced<u32>| {
        let shown = Shown { number: format::count(ports.value), unit: Unit::Count.symbol() };
        html! {
            <div class="total"><dt>{ name }</dt><dd>{ view.figure(name, &shown, Size::Row, ports.line) }</dd></div>
        }
    };
    html! {
        <>
            <dl class="totals">{ total(say::SUPPLY_PORTS, runs.supply_ports) }{ total(say::EXTRACT_PORTS, runs.extract_ports) }</dl>
            <p class="soft small">{ say::PORTS_NOTE }</p>
        </>
    }
}

fn side(view: &View, runs: &Runs, air: Air) -> Html {
    let count = say::tubes(runs.tubes(air));
    let aside = html! { <span class="soft">{ count }</span> };
    let rows = runs.side(air).map(|run| run::row(view, run));
    part(label::air(air), aside, html! { <ol class="ledger">{ for rows }</ol> })
}
