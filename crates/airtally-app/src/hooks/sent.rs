//! The house that came in this very file, where it was sent in one.

use crate::desk::Said;
use crate::platform::page;
use airtally::house::House;
use airtally_words::page as say;

/// A house that was sent.
pub struct Sent {
    /// Where its changes are kept, apart from the person's own houses.
    pub id: String,
    text: String,
}

/// The house of this file; `None` on the page itself.
pub fn sent() -> Option<Sent> {
    page::sent().map(|(id, text)| Sent { id, text })
}

impl Sent {
    /// The house as it was sent, and what a person must know about it.
    pub fn opened(&self) -> (House, Option<Said>) {
        match airtally_door::read(&self.text) {
            Ok(house) => (house, Some(remark(say::COPY_OPENED.to_owned()))),
            Err(refusal) => (House::new(), Some(remark(say::file_refused(&refusal.path, &refusal.detail)))),
        }
    }

    /// What a person must know when it was changed here before.
    pub fn again() -> Said {
        remark(say::COPY_KEPT.to_owned())
    }
}

fn remark(words: String) -> Said {
    Said { words: words.into(), undo: false }
}
