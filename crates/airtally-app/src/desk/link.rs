//! A house on its way to another device, or from one.

use airtally::house::House;
use std::rc::Rc;
use yew::AttrValue;

/// What is known of it.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Link {
    /// Nothing.
    #[default]
    None,
    /// What was said when the link of this house was to be made, see [`Made`], and how a copy of it went.
    Made(Rc<House>, AttrValue, &'static str),
    /// The house of a link that was followed. It lies nowhere yet.
    Came(Rc<House>),
}

/// A link that could be made.
#[derive(Clone, Copy)]
pub struct Made<'a> {
    /// The whole address.
    pub address: &'a str,
    /// Side and path of its code, unless the address is too long for one.
    pub code: Option<(&'a str, &'a str)>,
    /// The device can hand it on.
    pub can_share: bool,
    /// How a copy of it went.
    pub remark: &'static str,
}

impl Link {
    /// The link of exactly this house: none yet, or a word for why there is none.
    pub fn of(&self, house: &Rc<House>) -> Option<Result<Made<'_>, &str>> {
        let Self::Made(whose, said, remark) = self else { return None };
        if !Rc::ptr_eq(whose, house) {
            return None;
        }
        let mut lines = said.split('\n');
        let address = lines.next().unwrap_or_default();
        let Some(code) = lines.next() else { return Some(Err(address)) };
        Some(Ok(Made { address, code: code.split_once(' '), can_share: lines.next() == Some("share"), remark }))
    }
}
