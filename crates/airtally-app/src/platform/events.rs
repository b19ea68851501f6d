//! What the browser tells, and waiting.

use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use web_sys::EventTarget;

/// Listens for as long as the listener lives.
pub fn listen(target: &EventTarget, event: &'static str, told: impl Fn() + 'static) -> EventListener {
    boxed(target, event, Box::new(told))
}

/// Compiled once for all events.
fn boxed(target: &EventTarget, event: &'static str, told: Box<dyn Fn()>) -> EventListener {
    EventListener::new(target, event, move |_| told())
}

/// Does something so many milliseconds later, unless the timer is dropped before.
pub fn after(milliseconds: u32, what: impl FnOnce() + 'static) -> Timeout {
    boxed_after(milliseconds, Box::new(what))
}

fn boxed_after(milliseconds: u32, what: Box<dyn FnOnce()>) -> Timeout {
    Timeout::new(milliseconds, what)
}
