//! The whole page: document and desk, what is done to the world outside, and the frame.

use crate::context::{Hands, Page, Shared};
use crate::desk::{Desk, Stage};
use crate::frame::dock::Dock;
use crate::frame::top::Top;
use crate::hooks::{kept, use_address, use_aim, use_keeping, use_wide};
use crate::platform::page;
use crate::sheet::Sheet;
use crate::stages::{air::Air, house::House, steps::Steps, tubes::Tubes};
use crate::state::Notebook;
use airtally_words::page as say;
use std::rc::Rc;
use yew::prelude::*;

/// The whole page.
#[component]
pub fn App() -> Html {
    let found = use_memo((), |()| kept());
    let document = use_reducer(|| Notebook::of(found.house.clone()));
    let desk = use_reducer(|| Desk::at(Stage::from_hash(&page::hash()).unwrap_or_default(), found.said.clone()));
    let hands = Hands::on(document.dispatcher(), desk.dispatcher());
    let house = Shared(Rc::clone(document.house()));
    let shown = use_memo(house.clone(), |house| Page::of(Rc::clone(&house.0)));
    let wide = use_wide();
    let open = Shared(use_memo((*desk).clone(), Desk::clone));

    use_address(desk.stage, &hands);
    use_keeping(Rc::clone(&house.0), &hands);
    use_aim(desk.aim.clone());
    use_effect_with((desk.stage, house.name.clone()), |(stage, name)| {
        page::set_title(&say::tab(say::stage(*stage as usize), name))
    });

    let beside = wide && !desk.sheet.is_empty();
    html! {
        <ContextProvider<Hands> context={hands.clone()}>
        <ContextProvider<Shared<Page>> context={Shared(shown)}>
        <ContextProvider<Shared<Desk>> context={open}>
            <div class={classes!("page", beside.then_some("has-sheet"))}>
                <a class="skip" href="#main" onclick={skip()}>{ say::SKIP }</a>
                <Top can_undo={document.can_undo()} can_redo={document.can_redo()} />
                <Dock />
                <main class="main" id="main" tabindex="-1">{ stage(desk.stage) }</main>
                <Sheet {wide} />
            </div>
        </ContextProvider<Shared<Desk>>>
        </ContextProvider<Shared<Page>>>
        </ContextProvider<Hands>>
    }
}

fn stage(stage: Stage) -> Html {
    match stage {
        Stage::House => html! { <House /> },
        Stage::Air => html! { <Air /> },
        Stage::Tubes => html! { <Tubes /> },
        Stage::Steps => html! { <Steps /> },
    }
}

/// The address keeps its stage.
fn skip() -> Callback<MouseEvent> {
    Callback::from(|event: MouseEvent| {
        event.prevent_default();
        page::focus(crate::desk::MAIN);
    })
}
