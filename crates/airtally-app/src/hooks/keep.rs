//! The house is kept on this device: soon after every change, and at once when the page goes out of sight.

use super::sent::{Sent, sent};
use crate::context::{Hands, Same};
use crate::desk::{Move, Said};
use crate::platform::events::{after, listen};
use crate::platform::{clock, storage};
use crate::state::Action;
use airtally::house::House;
use airtally_words::page as say;
use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use gloo::utils::{document, window};
use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;

const KEY: &str = "airtally.house";
/// A text that could not be read is put aside under this and the time.
const ASIDE: &str = "airtally.aside.";
/// Longest time between a change and its being kept, in milliseconds.
const SOON: u32 = 250;

/// What was found on this device.
pub struct Kept {
    /// The house that was kept, or a new one.
    pub house: House,
    /// What a person must know about it.
    pub said: Option<Said>,
    /// A text that could not be read still stands there, since there was no room to put it aside: nothing may be kept.
    pub stuck: bool,
    /// Where it is kept.
    pub key: Rc<str>,
}

/// Reads what is kept. A text that cannot be read is moved aside, never overwritten, and reported.
pub fn kept() -> Kept {
    let sent = sent();
    let key: Rc<str> = sent.as_ref().map_or_else(|| KEY.to_owned(), |sent| sent.key(KEY)).into();
    let found = |house, said, stuck| Kept { house, said, stuck, key: Rc::clone(&key) };
    let Some(text) = storage::read(&key) else {
        let (house, said) = sent.map_or_else(|| (House::new(), None), |sent| sent.opened());
        return found(house, said, false);
    };
    let refusal = match airtally_door::read_kept(&text) {
        Ok(house) => return found(house, sent.map(|_| Sent::again()), false),
        Err(refusal) => refusal,
    };
    let aside = [ASIDE, &clock::now()].concat();
    let moved = storage::write(&aside, &text);
    if moved {
        storage::forget(&key);
    }
    let words = say::put_aside(moved.then_some(aside.as_str()), &refusal.path, &refusal.detail).into();
    found(House::new(), Some(Said { words, undo: false }), !moved)
}

struct Keeper {
    key: Rc<str>,
    waiting: Option<Rc<House>>,
    timer: Option<Timeout>,
    failed: bool,
}

/// Keeps every version of the house, unless keeping is `stuck`, and takes over what another tab has kept.
#[hook]
pub fn use_keeping(house: Rc<House>, found: &Kept, hands: &Hands) {
    let (stuck, key) = (found.stuck, Rc::clone(&found.key));
    let keeper = use_mut_ref(|| Keeper { key, waiting: None, timer: None, failed: false });
    let first = use_mut_ref(|| true);
    use_effect_with(hands.clone(), {
        let keeper = Rc::clone(&keeper);
        move |hands| {
            let elsewhere = take_over(Rc::clone(&keeper.borrow().key), hands.clone());
            let leaving = ["pagehide", "blur"].map(|event| {
                let (keeper, hands) = (Rc::clone(&keeper), hands.clone());
                listen(&window(), event, move || keep(&keeper, &hands))
            });
            let hiding = {
                let hands = hands.clone();
                listen(&document(), "visibilitychange", move || keep(&keeper, &hands))
            };
            || drop((leaving, hiding, elsewhere))
        }
    });
    use_effect_with((Same(house), hands.clone()), move |(house, hands)| {
        if !first.replace(false) && !stuck {
            wait(&keeper, house, hands);
        }
    });
}

fn wait(keeper: &Rc<RefCell<Keeper>>, house: &Same<House>, hands: &Hands) {
    let again = (Rc::clone(keeper), hands.clone());
    let mut keeper = keeper.borrow_mut();
    keeper.waiting = Some(Rc::clone(&house.0));
    if keeper.timer.is_none() {
        keeper.timer = Some(after(SOON, move || keep(&again.0, &again.1)));
    }
}

fn keep(keeper: &RefCell<Keeper>, hands: &Hands) {
    let mut keeper = keeper.borrow_mut();
    keeper.timer = None;
    let Some(house) = keeper.waiting.take() else { return };
    let done = airtally_door::write(&house).is_ok_and(|text| storage::write(&keeper.key, &text));
    if !done && !keeper.failed {
        hands.make(Move::Say(Said { words: say::NOT_KEPT.into(), undo: false }));
    }
    keeper.failed = !done;
}

/// Another tab kept a house: show that one here, so that the older tab never writes over the newer. Can be undone.
fn take_over(key: Rc<str>, hands: Hands) -> EventListener {
    listen(&window(), "storage", move || {
        let newer = storage::read(&key).and_then(|text| airtally_door::read_kept(&text).ok());
        if let Some(house) = newer {
            hands.act(Action::Load(house));
        }
    })
}
