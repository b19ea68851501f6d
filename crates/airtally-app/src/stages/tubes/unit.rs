//! The unit: what it holds, its fan curve, and where fan and ducts meet.

use crate::context::View;
use crate::desk::Fold;
use crate::parts::choices::choice_fields;
use crate::parts::entry::entry;
use crate::parts::fold::fold;
use crate::ui::drawing::drawing;
use crate::ui::el::{el, nodes, nothing, text};
use crate::ui::part::soft;
use airtally::delivery::Side;
use airtally::drawing as draw;
use airtally::house::{Choice, Field};
use airtally::id::Curve;
use airtally::rules::Level;
use airtally_words::{drawing as words, page as say};
use yew::prelude::*;

/// The part.
pub fn unit(view: &View) -> Html {
    let sides = &view.page.report.delivery().sides;
    if sides.is_empty() {
        return nothing();
    }
    fold(view, Fold::Unit, say::UNIT, say::UNIT_NOTE, || {
        let holds = choice_fields(&view.page, &view.hands, &[Choice::Fans]).into_iter().collect();
        let fields = el("div", "fields", [holds, entry(view, Field::Curve(Curve::Fan), None)]);
        nodes([fields, sides.iter().map(|side| side_of(view, side)).collect()])
    })
}

fn side_of(view: &View, side: &Side) -> Html {
    let shares = view.page.report.shares();
    let flows = [Level::Normal, Level::Boost].map(|level| shares.at(level).total);
    let Some(curves) = draw::curves(side, flows) else { return nothing() };
    let said = |said| words::said(said, &view.page.house, view.page.display());
    let drawn = drawing(&curves, say::CURVES_DESCRIBED, said);
    let blower = &side.blower;
    let turns = match blower.typed {
        true => say::turns(blower.normal, blower.boost, blower.tight),
        false => say::CURVE_ASSUMED.to_owned(),
    };
    nodes([el("h3", "row-name", [text(say::curves_of(side.air))]), drawn, el("p", "", [soft(turns)])])
}
