//! Light, dark, sunlight, or as the device is; remembered.

use crate::platform::{page, storage};
use airtally_words::page as say;
use yew::prelude::*;

const KEY: &str = "airtally.look";

/// How the page looks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Look {
    /// As the device wishes.
    Device,
    /// Daylight.
    Light,
    /// Under a lamp.
    Dark,
    /// Glare and gloves.
    Sun,
}

impl Look {
    /// All of them.
    pub const ALL: [Self; 4] = [Self::Device, Self::Light, Self::Dark, Self::Sun];

    /// Its id, also in the styles.
    pub const fn id(self) -> &'static str {
        match self {
            Self::Device => "device",
            Self::Light => "light",
            Self::Dark => "dark",
            Self::Sun => "sun",
        }
    }

    /// What it is called.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Device => say::LOOK_DEVICE,
            Self::Light => say::LOOK_LIGHT,
            Self::Dark => say::LOOK_DARK,
            Self::Sun => say::LOOK_SUN,
        }
    }

    fn kept() -> Self {
        let id = storage::read(KEY);
        Self::ALL.into_iter().find(|look| Some(look.id()) == id.as_deref()).unwrap_or(Self::Device)
    }

    fn show(self) {
        page::set_look((self != Self::Device).then(|| self.id()));
    }
}

/// The look, and the way to change it by its place in [`Look::ALL`].
#[hook]
pub fn use_look() -> (Look, Callback<usize>) {
    let look = use_state_eq(Look::kept);
    use_effect_with(*look, |look| look.show());
    let choose = {
        let look = look.clone();
        Callback::from(move |at: usize| {
            let Some(chosen) = Look::ALL.get(at).copied() else { return };
            // Not kept is no loss here: the look still holds until the page is closed.
            let _kept = storage::write(KEY, chosen.id());
            look.set(chosen);
        })
    };
    (*look, choose)
}
