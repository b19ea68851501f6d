//! The sheet: where one number comes from, one registered value, everything that wants a look, or the pocket. One dialog
//! for all.

mod given;
mod houses;
mod issues;
mod line;
pub mod link;
mod other;
mod pocket;
pub mod put_in;

use crate::context::{Page, View};
use crate::desk::{Book, Move, Topic};
use crate::parts::book::no_book;
use crate::platform::{dialog, page as window};
use crate::ui::el::{button, el, nodes, nothing, tag, text};
use crate::ui::icon::{Icon, icon};
use airtally::issue::Place;
use airtally_words::{formula, given as registered, page as say, room};

use web_sys::{HtmlDialogElement, HtmlElement};
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The sheet. `node` is its dialog, which [`use_dialog`] opens and closes.
pub fn sheet(view: &View, node: &NodeRef) -> Html {
    let hands = &view.hands;
    let topic = view.desk.sheet.last().copied();
    let close = hands.doing::<()>(|hands| hands.make(Move::CloseSheet));
    let deeper = view.desk.sheet.len() > 1;
    let inside = match topic {
        Some(topic) => nodes([
            head(view, topic, deeper, &close),
            el("div", "sheet-body", [wordless(view, topic), body(view, topic)]),
        ]),
        None => nothing(),
    };
    let dialog = tag("dialog", "sheet").attr("id", "sheet").attr("aria-labelledby", TITLE).handle(node);
    let dialog = dialog.on(|| ListenerKind::oncancel, cancel(&close));
    dialog.on(|| ListenerKind::onclick, outside(node, close)).around([inside])
}

const TITLE: &str = "sheet-title";

fn head(view: &View, topic: Topic, deeper: bool, close: &Callback<()>) -> Html {
    let icon_button = |name: &'static str, sign: Icon, pressed: Callback<Event>| {
        button("button-icon", pressed).attr("aria-label", name).around([icon(sign)])
    };
    let back = view.hands.doing(|hands| hands.make(Move::Back));
    let back = if deeper { icon_button(say::BACK, Icon::Back, back) } else { nothing() };
    let title = tag("h2", "").attr("id", TITLE).attr("tabindex", "-1").around([text(title(&view.page, topic))]);
    let name = match topic {
        Topic::Pocket => say::CLOSE_POCKET,
        Topic::Houses | Topic::Kept(_) => say::CLOSE_HOUSES,
        Topic::Send | Topic::Came => say::CLOSE_LINK,
        _ => say::CLOSE_SHEET,
    };
    let close = icon_button(name, Icon::Close, close.reform(|_: Event| ()));
    el("div", "sheet-top", [back, title, close])
}

fn title(page: &Page, topic: Topic) -> String {
    match topic {
        Topic::Line(address) | Topic::Under(_, address) => {
            let title = formula::title(address.formula);
            address.room.map_or_else(|| title.to_owned(), |id| say::of_room(title, &room::name(&page.house, id)))
        }
        Topic::Given(id) => registered::name(id).to_owned(),
        Topic::Issues => say::to_look_at(page.issues.len()),
        Topic::Pocket => say::POCKET.to_owned(),
        Topic::Houses | Topic::Kept(_) => say::HOUSES.to_owned(),
        Topic::Send => say::SEND.to_owned(),
        Topic::Came => say::CAME.to_owned(),
    }
}

/// Where the names are, while what is explained has none.
fn wordless(view: &View, topic: Topic) -> Html {
    match topic {
        Topic::Issues | Topic::Houses | Topic::Kept(_) | Topic::Send | Topic::Came => nothing(),
        Topic::Line(_) | Topic::Under(..) | Topic::Given(_) | Topic::Pocket => no_book(view),
    }
}

fn body(view: &View, topic: Topic) -> Html {
    match topic {
        Topic::Line(address) => line::working(view, address),
        Topic::Under(rules, address) => other::working(view, rules, address),
        Topic::Given(id) => given::registered(view, id),
        Topic::Issues => issues::issues(view),
        Topic::Pocket if view.desk.book == Book::Open => pocket::pocket(view),
        Topic::Pocket => nothing(),
        Topic::Houses => houses::houses(view),
        Topic::Kept(id) => houses::kept(view, id),
        Topic::Send => link::send(view),
        Topic::Came => link::came(view),
    }
}

/// Opens and closes the native dialog, puts the focus on the heading of what is explained, and gives it back at the end.
#[hook]
pub fn use_dialog(dialog: &NodeRef, topic: Option<Topic>, wide: bool) {
    let opener = use_mut_ref(|| None::<HtmlElement>);
    let node = dialog.clone();
    use_effect_with((topic.is_some(), wide), move |(open, wide)| {
        let Some(element) = node.cast::<HtmlDialogElement>() else { return };
        if *open {
            if !element.open() {
                *opener.borrow_mut() = window::focused();
            }
            dialog::open(&element, !*wide);
        } else if element.open() {
            dialog::close(&element);
            if let Some(opener) = opener.take().filter(window::is_there) {
                opener.focus().ok();
            }
        }
    });
    let node = dialog.clone();
    use_effect_with(topic, move |topic| {
        if let (Some(_), Some(element)) = (topic, node.cast::<HtmlElement>()) {
            window::focus(TITLE);
            element.set_scroll_top(0);
        }
    });
}

/// The browser's own way out of a dialog goes through the desk too.
fn cancel(close: &Callback<()>) -> Callback<Event> {
    let close = close.clone();
    Callback::from(move |event: Event| {
        event.prevent_default();
        close.emit(());
    })
}

/// A press beside the sheet puts it away: there the dialog itself is what was pressed.
fn outside(dialog: &NodeRef, close: Callback<()>) -> Callback<Event> {
    let dialog = dialog.clone();
    Callback::from(move |event: Event| {
        let pressed = event.target_dyn_into::<HtmlElement>();
        if pressed.is_some() && pressed == dialog.cast::<HtmlElement>() {
            close.emit(());
        }
    })
}

/// A way from the sheet to a place on the page; a sheet in front of the page is put away first.
pub fn visiting(view: &View) -> Callback<Place> {
    let (hands, wide) = (view.hands.clone(), view.wide);
    Callback::from(move |place: Place| {
        let stays = wide || matches!(place, Place::Field(airtally::house::Field::Given(_)));
        if !stays {
            hands.make(Move::CloseSheet);
        }
        hands.make(Move::Visit(place));
    })
}

/// Words that lead to a place on the page.
fn link(words: impl Into<AttrValue>, place: Place, visit: &Callback<Place>) -> Html {
    button("as-link", visit.reform(move |_: Event| place)).around([text(words)])
}
