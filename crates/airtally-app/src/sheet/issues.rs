//! Everything that wants a look, worst first, each with the way to where it can be mended.

use super::{link, visiting};
use crate::context::{Page, View};
use crate::ui::el::{el, els, maybe, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use airtally::house::{Field, HouseField};
use airtally::issue::{Issue, Place, Severity, Trouble};
use airtally_words::{issue, label, page as say};
use yew::prelude::*;

/// The list.
pub fn issues(view: &View) -> Html {
    let page = &view.page;
    let visit = visiting(view);
    if page.issues.is_empty() {
        return el("p", "", [text(say::ALL_CLEAR)]);
    }
    let groups = Severity::WORST_FIRST.map(|severity| group(page, severity, &visit));
    tag("div", "").attr("id", "problems").around(groups)
}

fn group(page: &Page, severity: Severity, visit: &Callback<Place>) -> Html {
    let issues: Vec<&Issue> = page.issues.iter().filter(|issue| issue.severity() == severity).collect();
    if issues.is_empty() {
        return nothing();
    }
    let bad = severity >= Severity::OutsideRule;
    let list = els("ul", "", issues.iter().map(|issue| item(page, issue, bad, visit)));
    let class = if bad { "part problems" } else { "part remarks" };
    el("section", class, [el("h3", "", [text(label::severity(severity))]), list])
}

fn item(page: &Page, issue: &Issue, bad: bool, visit: &Callback<Place>) -> Html {
    let words = issue::sentence(issue, &page.house);
    let sign = if bad { icon(Icon::Caution) } else { nothing() };
    let hint = maybe(issue::hint(issue).map(|hint| el("p", "small soft", [text(hint)])));
    el("li", "", [sign, el("div", "", [link(words, place(issue), visit), hint])])
}

/// Where it can be mended: what threatens beside a flue, at the step that asks for it.
fn place(issue: &Issue) -> Place {
    match issue.trouble {
        Trouble::OpenFlue | Trouble::DrawsDown { .. } => Place::Field(Field::House(HouseField::OtherFans)),
        _ => issue.place,
    }
}
