//! The house is kept on this device: soon after every change, and at once when the page goes out of sight.

use super::sent::{Sent, sent};
use crate::context::{Hands, Same};
use crate::desk::{Move, Said, Told};
use crate::platform::events::{after, listen};
use crate::platform::{clock, storage, store};
use crate::shelf;
use crate::state::{HouseId, Notebook, Seen};
use airtally::house::House;
use airtally_words::page as say;
use gloo::timers::callback::Timeout;
use gloo::utils::{document, window};
use std::cell::RefCell;
use std::rc::Rc;
use web_sys::EventTarget;
use yew::prelude::*;

const KEY: &str = "airtally.house";
/// Which house this tab opens, as the store wrote it.
const OPEN: &str = "airtally.open";
/// A text that could not be read is put aside under this and the time.
const ASIDE: &str = "airtally.aside.";
/// Longest time between a change and its being kept, in milliseconds.
const SOON: u32 = 250;

/// What was found on this device.
pub struct Kept {
    /// The house that was kept, or a new one.
    pub notebook: Notebook,
    /// What a person must know about it.
    pub said: Option<Said>,
    /// A text that could not be read still stands there, since there was no room to put it aside: nothing may be kept.
    pub stuck: bool,
    /// Where its quick copy stands.
    key: String,
    /// It came in this very file and was never changed here: no store can have it.
    fresh: bool,
}

/// Reads the quick copy. A text that cannot be read is moved aside, never overwritten, and reported.
pub fn kept() -> Kept {
    let sent = sent();
    let open = || storage::read_here(OPEN).unwrap_or_default();
    let digits = sent.as_ref().map_or_else(open, |sent| sent.id.clone());
    let id = HouseId::of(&digits);
    // The first house stands where it stood when there was only one.
    let key = if id == HouseId(0) { KEY.to_owned() } else { [KEY, ".", &digits].concat() };
    let text = storage::read(&key);
    let found = |house, seen, said, stuck| {
        let notebook = Notebook::of(id, house, seen);
        Kept { notebook, said, stuck, key: key.clone(), fresh: false }
    };
    let Some(text) = text else {
        if let Some(sent) = sent {
            let (house, said) = sent.opened();
            return Kept { fresh: true, ..found(house, Seen::Now, said, false) };
        }
        let seen = if id == HouseId(0) { Seen::Now } else { Seen::Opening };
        return found(House::new(), seen, None, false);
    };
    let refusal = match airtally_door::read_kept(&text) {
        Ok(house) => return found(house, Seen::Now, sent.map(|_| Sent::again()), false),
        Err(refusal) => refusal,
    };
    let aside = [ASIDE, &clock::now()].concat();
    let moved = storage::write(&aside, &text);
    if moved {
        storage::forget(&key);
    }
    let words = say::put_aside(moved.then_some(aside.as_str()), &refusal.path, &refusal.detail).into();
    found(House::new(), Seen::Now, Some(Said { words, undo: false }), !moved)
}

#[derive(Default)]
struct Keeper {
    id: HouseId,
    waiting: Option<Rc<House>>,
    timer: Option<Timeout>,
}

/// Keeps every version of the house, unless keeping is stuck, and does what the store tells.
#[hook]
pub fn use_keeping(notebook: &Notebook, found: &Rc<Kept>, hands: &Hands) {
    let (id, stuck) = (notebook.id, found.stuck);
    let keeper = use_mut_ref(|| Keeper { id, ..Keeper::default() });
    let first = use_mut_ref(|| true);
    use_effect_with(hands.clone(), {
        let (keeper, found) = (Rc::clone(&keeper), Rc::clone(found));
        move |hands| {
            let window = window();
            let keep_at = |target: &EventTarget, event| {
                let (keeper, found, hands) = (Rc::clone(&keeper), Rc::clone(&found), hands.clone());
                listen(target, event, move || keep(&keeper, &found, &hands))
            };
            let leaving = ["pagehide", "blur", store::FLUSH].map(|event| keep_at(&window, event));
            let hiding = keep_at(&document(), "visibilitychange");
            let told = {
                let (hands, found) = (hands.clone(), Rc::clone(&found));
                move || match store::told().as_str() {
                    "comes" => begin(id, &found, &hands),
                    told => shelf::take(&hands, told),
                }
            };
            if store::is_there() {
                told();
            }
            let tells = listen(&window, store::TELLS, told);
            || drop((leaving, hiding, tells))
        }
    });
    let found = Rc::clone(found);
    let house = Same(Rc::clone(notebook.house()));
    use_effect_with((id, house, notebook.is_own(), hands.clone()), move |(id, house, own, hands)| {
        if first.replace(false) || stuck {
            return;
        }
        if keeper.borrow().id != *id {
            keep(&keeper, &found, hands);
            keeper.borrow_mut().id = *id;
            if *own {
                store::ask("open", *id, "new");
            }
        }
        if *own {
            wait(&keeper, &found, house, hands);
        }
    });
}

/// The store has come, or does not come: then the quick copy is all there is.
fn begin(id: HouseId, found: &Kept, hands: &Hands) {
    let how = if found.fresh { "new" } else { "start" };
    if !found.stuck && !store::ask("open", id, how) {
        hands.see(Seen::Now);
    }
}

fn wait(keeper: &Rc<RefCell<Keeper>>, found: &Rc<Kept>, house: &Same<House>, hands: &Hands) {
    let again = (Rc::clone(keeper), Rc::clone(found), hands.clone());
    let mut keeper = keeper.borrow_mut();
    keeper.waiting = Some(Rc::clone(&house.0));
    if keeper.timer.is_none() {
        keeper.timer = Some(after(SOON, move || keep(&again.0, &again.1, &again.2)));
    }
}

/// Hands what waits to the store. Before that has come, and where it does not come, it is kept as a quick copy.
fn keep(keeper: &RefCell<Keeper>, found: &Kept, hands: &Hands) {
    let (id, waiting) = {
        let mut keeper = keeper.borrow_mut();
        keeper.timer = None;
        (keeper.id, keeper.waiting.take())
    };
    let Some(text) = waiting.and_then(|house| airtally_door::write(&house).ok()) else { return };
    if !store::ask("put", id, &text) && !storage::write(&found.key, &text) {
        hands.make(Move::Shelf(Told::Kept, "Nothing".into()));
    }
}
