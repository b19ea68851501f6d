//! One room's run: its tubes, its mark, and what one must know of it at a glance.

use super::open_run::open_run;
use crate::context::View;
use crate::desk::Move;
use crate::parts::air::air_tag;
use crate::ui::el::{button, el, nothing, tag, text};
use crate::ui::figure::Size;
use crate::ui::tally::tally;
use airtally::quantity::Unit;
use airtally::rules::Air;
use airtally::runs::Run;
use airtally_words::format::{self, Shown};
use airtally_words::{label, page as say, room};
use yew::prelude::*;

/// The row; its length and what follows from it, when it is open.
pub fn row(view: &View, run: &Run) -> Html {
    let name = room::name(&view.page.house, run.room);
    let count = run.tubes.value;
    let shown = Shown { number: format::count(count), unit: "" };
    let spoken = say::tubes_to(&name, run.air == Air::Supply);
    let figure = view.figure(&spoken, &shown, Size::Row, run.tubes.line);
    let figure = el("span", "row-tally", [tally(count, count, say::tubes(count)), figure]);
    let key = (run.air, run.room);
    let open = view.desk.run == Some(key);
    let turn = view.hands.doing(move |hands| hands.make(Move::Run((!open).then_some(key))));
    let opener = button("row-open", turn).attr("aria-expanded", open.to_string()).around([text(name.clone())]);
    let main = [el("h3", "row-name", [opener]), el("p", "row-note", [text(note(view, run))])];
    let seen = open || view.desk.paper;
    tag("li", if open { "row row-run is-open" } else { "row row-run" }).around([
        el("span", "row-mark", [air_tag(run.air)]),
        el("div", "row-main", main),
        el("div", "row-figure row-turn", [figure]),
        if seen { el("div", "row-under", [open_run(view, run, &name)]) } else { nothing() },
    ])
}

/// The mark with what one must know of the run at a glance.
fn note(view: &View, run: &Run) -> String {
    let display = view.page.display();
    let mark = [label::air_letter(run.air), &run.mark.to_string()].concat();
    let drop = view.page.report.delivery().drop(run.air, run.room);
    let takes = drop.map(|drop| format::in_display(drop.normal.value.as_pa(), Unit::Pascal, display).to_string());
    let index = drop.is_some_and(|drop| drop.index);
    let length = format::length(run.length(view.page.report.givens()), display).to_string();
    say::run_glance(&mark, &length, takes.as_deref(), index)
}
