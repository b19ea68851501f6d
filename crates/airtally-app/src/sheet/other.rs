//! A line of the same house under another rule set: to be looked at, and a way to choose that rule set.

use super::line;
use crate::context::View;
use crate::desk::{Move, Said};
use crate::ui::el::{button, el, nodes, nothing, text};
use airtally::edit::Edit;
use airtally::house::Choices;
use airtally::rules::RuleSet;
use airtally::working::Address;
use airtally_words::{label, page as say};
use yew::prelude::*;

/// The line, under whose name it stands, and the choice.
pub fn working(view: &View, rules: RuleSet, address: Address) -> Html {
    let own = view.page.house.choices;
    let choose = || {
        let choices = Choices { rules, ..own };
        let pressed = view.hands.doing(move |hands| {
            hands.edit(Edit::Choose(choices));
            hands.make(Move::CloseSheet);
            hands.make(Move::Say(Said { words: say::now_under(label::rules(rules)).into(), undo: true }));
        });
        let note = el("p", "small soft", [text(say::still_under(label::rules(own.rules)))]);
        el("section", "part", [note, button("button", pressed).around([text(say::CHOOSE_RULES)])])
    };
    let choose = if rules == own.rules { nothing() } else { choose() };
    let name = el("p", "small", [text(label::rules(rules))]);
    let looked_at = view.under(rules);
    // Lines are found once they are recorded.
    looked_at.page.report.shares();
    nodes([name, line::working(&looked_at, address), choose])
}
