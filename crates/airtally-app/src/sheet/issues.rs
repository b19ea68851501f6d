//! Everything that wants a look, worst first, each with the way to where it can be mended.

use super::{link, visiting};
use crate::context::{Page, View};
use crate::ui::icon::{Icon, icon};
use airtally::issue::{Issue, Place, Severity};
use airtally_words::{issue, label, page as say};
use yew::prelude::*;

/// The list.
pub fn issues(view: &View) -> Html {
    let page = &view.page;
    let visit = visiting(view);
    if page.issues.is_empty() {
        return html! { <p>{ say::ALL_CLEAR }</p> };
    }
    html! { <div id="problems">{ for Severity::WORST_FIRST.map(|severity| group(page, severity, &visit)) }</div> }
}

fn group(page: &Page, severity: Severity, visit: &Callback<Place>) -> Html {
    let issues: Vec<&Issue> = page.issues.iter().filter(|issue| issue.severity() == severity).collect();
    if issues.is_empty() {
        return html! {};
    }
    let bad = severity >= Severity::OutsideRule;
    html! {
        <section class={if bad { "part problems" } else { "part remarks" }}>
            <h3>{ label::severity(severity) }</h3>
            <ul>{ for issues.iter().map(|issue| item(page, issue, bad, visit)) }</ul>
        </section>
    }
}

fn item(page: &Page, issue: &Issue, bad: bool, visit: &Callback<Place>) -> Html {
    let words = issue::sentence(issue, &page.house);
    html! {
        <li>
            if bad { { icon(Icon::Caution) } }
            <div>
                { link(words, issue.place, visit) }
                if let Some(hint) = issue::hint(issue) { <p class="small soft">{ hint }</p> }
            </div>
        </li>
    }
}
