//! Links: made while somebody looks at the way to another device and for paper, read when one is followed.

use crate::context::{Hands, Same};
use crate::desk::{Desk, Link, Move, Said, Stage, Topic};
use crate::platform::events::{after, listen};
use crate::platform::{link, page};
use airtally::house::House;
use airtally_words::page as say;
use gloo::utils::window;
use std::rc::Rc;
use yew::platform::spawn_local;
use yew::prelude::*;

/// How long a house must lie still before its link is made, in milliseconds.
const STILL: u32 = 200;
/// The same where nobody waits for it: the browser's own menu prints at once, and the code stands on its paper too.
const QUIET: u32 = 3_000;

/// Makes the link of the house while it is asked for, or once it lies still, and reads those that are followed.
#[hook]
pub fn use_link(desk: &Desk, house: &Rc<House>, hands: &Hands) {
    let still = match desk.sheet.last() {
        Some(Topic::Send) => Some((STILL, "pack")),
        Some(Topic::Came) => None,
        _ => (!house.rooms.is_empty()).then_some((QUIET, "quiet")),
    };
    use_effect_with((still, Same(Rc::clone(house)), hands.clone()), |(still, house, hands)| {
        let (house, hands) = (Rc::clone(&house.0), hands.clone());
        let timer = still.map(|(time, word)| after(time, move || spawn_local(make_link(hands, house, word))));
        || drop(timer)
    });
    use_effect_with((desk.stage, hands.clone()), |(stage, hands)| {
        let (stage, hands) = (*stage, hands.clone());
        let follow = move || {
            if is_link(&page::hash()) {
                spawn_local(follow_link(hands.clone(), stage));
            }
        };
        follow();
        let listener = listen(&window(), "hashchange", follow);
        || drop(listener)
    });
}

/// Makes the link of a house: `pack` it in any case, `quiet` where that asks nothing of a network.
pub async fn make_link(hands: Hands, house: Rc<House>, word: &str) {
    let said = match airtally_door::write(&house) {
        Ok(text) => link::ask(word, &text).await,
        Err(_) => None,
    };
    if said.is_some() || word == "pack" {
        hands.make(Move::Link(Link::Made(house, said.unwrap_or_default().into(), "")));
    }
}

/// `#h` and a version. No stage is called so.
fn is_link(hash: &str) -> bool {
    hash.strip_prefix("#h").is_some_and(|rest| rest.starts_with(|letter: char| letter.is_ascii_digit()))
}

/// Shows what a link brings, or says what is wrong with it. The house on the desk is not touched.
async fn follow_link(hands: Hands, stage: Stage) {
    let answer = link::ask("open", &page::hash()).await;
    if answer.is_some() {
        page::replace_hash(stage.id());
    }
    let words = match answer.as_deref().map(|text| (text, airtally_door::read(text))) {
        Some((_, Ok(house))) => {
            hands.make(Move::Link(Link::Came(Rc::new(house))));
            return hands.make(Move::Explain(Topic::Came));
        }
        Some((text, Err(refusal))) if text.starts_with('{') => say::link_strange(&refusal.path, &refusal.detail),
        Some((word, Err(_))) => say::link_refused(word).to_owned(),
        None => say::link_refused("").to_owned(),
    };
    hands.make(Move::CloseSheet);
    hands.make(Move::Say(Said { words: words.into(), undo: false }));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_stage_is_never_taken_for_a_link() {
        for stage in Stage::ALL {
            assert!(!is_link(&["#", stage.id()].concat()));
        }
        assert!(is_link("#h1.AAAA") && is_link("#h2.") && !is_link("") && !is_link("#h"));
    }
}
