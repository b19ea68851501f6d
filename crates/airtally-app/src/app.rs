//! The whole page: document and desk, what is done to the world outside, and the frame.

use crate::context::{Hands, Page, Same, View};
use crate::desk::{Desk, MAIN, Move, Stage};
use crate::frame::dock::dock;
use crate::frame::top::{State, top};
use crate::hooks::{
    kept, use_address, use_aim, use_book, use_browser, use_hush, use_keeping, use_look, use_title, use_wide,
};
use crate::platform::page;
use crate::sheet::{sheet, use_dialog};
use crate::stages::{air::air, house::house, parts::parts, steps::steps, tubes::tubes};
use crate::state::Notebook;
use crate::ui::el::{tag, text};
use crate::ui::field::on_key;
use airtally_words::page as say;
use std::rc::Rc;
use yew::prelude::*;
use yew::virtual_dom::ListenerKind;

/// The whole page. The one component: everything below it is drawn by plain functions from one [`View`], so that the
/// program stays small; a change draws the screen in sight again, which costs less than the calculation behind it.
#[component]
pub fn App() -> Html {
    let found = use_memo((), |()| kept());
    let document = use_reducer(|| Notebook::of(found.house.clone()));
    let desk = use_reducer(|| Desk::at(Stage::from_hash(&page::hash()).unwrap_or_default(), found.said.clone()));
    let hands = Hands::on(document.dispatcher(), desk.dispatcher());
    let house = Rc::clone(document.house());
    let page = use_memo(Same(Rc::clone(&house)), |house| Page::of(Rc::clone(&house.0)));
    let view = View { page, desk: Rc::new((*desk).clone()), hands, wide: use_wide(), under: None };
    let look = use_look();
    let dialog = use_node_ref();

    use_browser(&view.hands);
    use_address(desk.stage);
    use_title(desk.stage, &house.name);
    use_keeping(house, &found, &view.hands);
    use_hush(desk.said.clone(), &view.hands);
    use_dialog(&dialog, desk.sheet.last().copied(), view.wide);
    use_aim(desk.aim.clone());
    use_book(desk.book, &view.hands);

    let beside = view.wide && !desk.sheet.is_empty();
    let state = State { look, can_undo: document.can_undo(), can_redo: document.can_redo() };
    let skip = tag("a", "skip").attr("href", "#main").on(|| ListenerKind::onclick, skip()).around([text(say::SKIP)]);
    let main = tag("main", "main").attr("id", MAIN).attr("tabindex", "-1").around([stage(&view)]);
    let class = if beside { "page has-sheet" } else { "page" };
    let page = tag("div", class).on(|| ListenerKind::onkeydown, escape(&view.hands));
    page.around([skip, top(&view, &state), dock(&view), main, sheet(&view, &dialog)])
}

fn stage(view: &View) -> Html {
    match view.desk.stage {
        Stage::House => house(view),
        Stage::Air => air(view),
        Stage::Tubes => tubes(view),
        Stage::Parts => parts(view),
        Stage::Steps => steps(view),
    }
}

/// Puts the sheet away, wherever the focus is.
fn escape(hands: &Hands) -> Callback<Event> {
    on_key("Escape", hands.doing(|hands| hands.make(Move::CloseSheet)))
}

/// The address keeps its stage.
fn skip() -> Callback<Event> {
    Callback::from(|event: Event| {
        event.prevent_default();
        page::focus(MAIN);
    })
}
