//! A word over a page that is only to look at, and the ways to a house that can be changed.

use crate::context::{Hands, View};
use crate::platform::store;
use crate::shelf;
use crate::state::{Action, HouseId, Seen};
use crate::ui::el::{button, el, nothing, tag, text};
use airtally_words::book::of_houses;
use airtally_words::page as say;
use yew::prelude::*;

/// Its id.
pub const BANNER: &str = "banner";

/// The word, if there is need of one.
pub fn banner(view: &View) -> Html {
    let (hands, id) = (&view.hands, view.notebook.id);
    let (words, buttons) = match &view.notebook.seen {
        Seen::Now => return nothing(),
        Seen::Opening => (say::OPENING.into(), nothing()),
        Seen::Elsewhere => {
            let take = asking(hands, "button-main", say::TAKE_OVER, ("open", id, "take"));
            let copy = asking(hands, "button", say::COPY_HOUSE, ("copy", id, say::COPY));
            (say::ELSEWHERE.to_owned(), el("div", "buttons", [take, copy]))
        }
        Seen::Past(house, when) => {
            let house = house.clone();
            let load = hands.doing(move |hands| {
                hands.act(Action::Load((*house).clone()));
                shelf::say(hands, "BroughtBack", true);
            });
            let leave = hands.doing(|hands| hands.act(Action::See(Seen::Now)));
            let load = button("button-main", load).around([text(of_houses("BringThisBack"))]);
            let leave = button("button", leave).around([text(of_houses("BackToNow"))]);
            (say::as_it_was(when), el("div", "buttons", [load, leave]))
        }
    };
    let strip = tag("div", "banner").attr("id", BANNER).attr("tabindex", "-1").attr("role", "status");
    strip.around([el("p", "", [text(words)]), buttons])
}

/// A button that asks something of the store.
pub fn asking(
    hands: &Hands,
    class: &'static str,
    words: impl Into<AttrValue>,
    (word, id, about): (&'static str, HouseId, &str),
) -> Html {
    let about = about.to_owned();
    let ask = hands.doing(move |_| {
        store::ask(word, id, &about);
    });
    button(class, ask).around([text(words)])
}
