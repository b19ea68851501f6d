//! A figure that can say where it comes from.

use crate::context::{Hands, Page, Shared};
use crate::ui::figure::{Size, figure_button};
use airtally::working::LineId;
use airtally_words::format::Shown;
use yew::prelude::*;

/// What a figure needs to open its working.
#[derive(Clone, PartialEq)]
pub struct Explainer {
    /// The page the lines belong to.
    pub page: Shared<Page>,
    /// The way to the sheet.
    pub hands: Hands,
}

impl Explainer {
    /// A figure with the working of a line behind it. `name` is read out in front of it.
    pub fn figure(&self, name: &str, shown: &Shown, size: Size, line: LineId) -> Html {
        let onclick = self.hands.explaining(&self.page, line, false);
        figure_button(name, &shown.number, shown.unit, size, onclick)
    }
}

/// An explainer for the component that asks.
#[hook]
pub fn use_explainer() -> Explainer {
    Explainer { page: crate::context::use_page(), hands: crate::context::use_hands() }
}
