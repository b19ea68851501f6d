//! Sentences with places to fill in.

/// The sentence with every `{place}` filled in; `None` when one of them has nothing.
///
/// A place is a name, and after a space or a question mark the two forms to choose between.
pub fn fill(line: &str, filling: &dyn Fn(Slot) -> Option<String>) -> Option<String> {
    let mut text = String::with_capacity(line.len());
    let mut rest = line;
    while let Some((before, after)) = rest.split_once('{') {
        let (slot, after) = after.split_once('}')?;
        text.push_str(before);
        text.push_str(&filling(Slot::of(slot))?);
        rest = after;
    }
    text.push_str(rest);
    Some(text)
}

/// A place to fill in.
#[derive(Clone, Copy)]
pub struct Slot<'a> {
    /// What goes in.
    pub name: &'a str,
    /// Whether only a form goes in, without what it depends on.
    pub silent: bool,
    /// The form for one or for supply, and the other.
    pub forms: Option<(&'a str, &'a str)>,
}

impl<'a> Slot<'a> {
    fn of(slot: &'a str) -> Self {
        let (name, forms) = slot.split_once([' ', '?']).unwrap_or((slot, ""));
        Self { name, silent: slot.contains('?'), forms: forms.split_once('|') }
    }

    /// One form or the other; nothing where there are none.
    pub fn form(self, first: bool) -> &'a str {
        self.forms.map_or("", |(one, other)| if first { one } else { other })
    }
}
