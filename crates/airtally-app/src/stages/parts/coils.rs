//! Which tube is cut from which coil.

use crate::context::View;
use crate::ui::el::{el, els, nodes, nothing, text};
use crate::ui::part::{part, soft};
use airtally::parts::{Coil, Piece, TakeOff};
use airtally_words::step::mark;
use airtally_words::{format, page as say, room};
use yew::prelude::*;

/// The cutting list.
pub fn coils(view: &View, take_off: &TakeOff) -> Html {
    let coils = take_off.coils.iter().enumerate().map(|(at, coil)| one(view, at + 1, coil));
    let note = el("p", "", [soft(say::COILS_NOTE)]);
    part(say::COILS, nothing(), nodes([els("ol", "ledger coils", coils), note]))
}

fn one(view: &View, number: usize, coil: &Coil) -> Html {
    let left = format::length(coil.left, view.page.display()).to_string();
    let pieces = coil.pieces.iter().map(|piece| el("li", "", [text(said(view, piece))]));
    el("li", "coil", [el("h3", "row-name", [text(say::coil(number, &left))]), els("ul", "step-list", pieces)])
}

fn said(view: &View, piece: &Piece) -> String {
    let twins = view.page.report.runs().side(piece.air).find(|run| run.room == piece.room);
    let twins = twins.map_or(1, |run| run.tubes.value);
    let mark = mark(piece.air, piece.mark, (piece.twin, twins));
    let length = format::length(piece.length, view.page.display()).to_string();
    [&mark, " ", &room::name(&view.page.house, piece.room), ": ", &length].concat()
}
