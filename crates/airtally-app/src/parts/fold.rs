//! A part that opens when it is asked for, and is not worked out before.

use crate::context::View;
use crate::desk::{Fold, Move};
use crate::ui::el::{button, el, nothing, text};
use crate::ui::icon::{Icon, icon};
use yew::prelude::*;

/// The part under its heading. On paper it stands open.
pub fn fold(view: &View, fold: Fold, heading: &'static str, note: &'static str, body: impl FnOnce() -> Html) -> Html {
    let is_open = view.desk.folds.is_open(fold) || view.desk.paper;
    let turned = view.hands.doing(move |hands| hands.make(Move::Fold(fold)));
    let turn = button("fold", turned).attr("aria-expanded", if is_open { "true" } else { "false" });
    let turn = turn.around([text(heading), icon(Icon::Down)]);
    let note = if is_open || note.is_empty() { nothing() } else { el("p", "soft small", [text(note)]) };
    let body = if is_open { body() } else { nothing() };
    el("section", "part", [el("div", "part-head", [el("h2", "", [turn])]), note, body])
}
