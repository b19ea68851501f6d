//! The page. The only crate that knows the DOM.
//!
//! `state` and `desk` are plain values: the house with its history, and what lies open on the desk. `hooks` each do one
//! thing to the world outside, `platform` holds every call to the browser that is not an element, `ui` draws things and
//! knows nothing of air, `parts` knows of air and is used by several screens, `frame` is what every screen shares,
//! `shelf` is what is done with the houses of this device, `sheet` explains one number, and `stages` holds one screen each.

mod app;
mod context;
mod desk;
mod frame;
mod hooks;
mod parts;
mod platform;
mod sheet;
mod shelf;
mod stages;
mod state;
mod ui;

/// Puts the app in the place of the painted shell.
pub fn start() {
    if let Some(root) = platform::page::element("page") {
        yew::Renderer::<app::App>::with_root(root).render();
    }
}
