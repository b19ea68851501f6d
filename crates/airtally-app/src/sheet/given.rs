//! One registered value: what it is, who says so, and a field for the person's own in its place.

use super::line::source_part;
use crate::context::View;
use crate::parts::entry::entry;
use crate::parts::source::source_line;
use crate::ui::el::{button, el, nodes, nothing, text};
use crate::ui::figure::{Size, figure};
use airtally::edit::Edit;
use airtally::given::GivenId;
use airtally::house::Field;
use airtally_words::{format, page as say};
use yew::prelude::*;

/// The value.
pub fn registered(view: &View, id: GivenId) -> Html {
    let (page, hands) = (&view.page, &view.hands);
    let given = id.given();
    let resolved = page.report.givens().get(id);
    let shown = format::value(resolved.value, given.unit);
    let field = Field::Given(id);
    let own = !page.house.text(field).is_empty();
    let back = Edit::Set(field, String::new(), given.unit);
    let registered = || {
        nodes([
            el("p", "small soft", [text(say::registered_as(&format::text(given.value, given.unit)))]),
            source_line(given.source),
            button("button", hands.editing(back)).around([text(say::TAKE_REGISTERED)]),
        ])
    };
    let heading = el("h3", "", [text(say::YOUR_OWN)]);
    let registered = if own { registered() } else { nothing() };
    nodes([
        el("p", "", [figure(&shown.number, shown.unit, Size::Big)]),
        source_part(resolved.source),
        el("section", "part", [heading, entry(view, field, None), registered]),
    ])
}
