//! One registered value: what it is, who says so, and a field for the person's own in its place.

use crate::context::View;
use crate::parts::entry::entry;
use crate::parts::source::{document, source_line, source_mark};
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
    html! {
        <>
            <p>{ figure(&shown.number, shown.unit, Size::Big) }</p>
            <section class="source">
                <h3>{ say::SOURCE }</h3>
                { source_mark(resolved.source) }
                <cite>{ document(resolved.source) }</cite>
            </section>
            <section class="part">
                <h3>{ say::YOUR_OWN }</h3>
                { entry(view, field, None) }
                if own {
                    <p class="small soft">{ say::registered_as(&format::text(given.value, given.unit)) }</p>
                    { source_line(given.source) }
                    <button type="button" class="button" onclick={hands.editing(back)}>{ say::TAKE_REGISTERED }</button>
                }
            </section>
        </>
    }
}
