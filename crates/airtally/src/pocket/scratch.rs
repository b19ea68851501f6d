//! What is typed into the pocket.

use super::Slot;
use crate::entry::Entry;
use crate::issue::Trouble;
use crate::quantity::{Measure, Unit};

/// The texts of the pocket, exactly as typed, with the units their chips show.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Scratch {
    entries: Vec<(Slot, Entry)>,
}

impl Scratch {
    /// What stands in a field; `None` where it was never touched.
    pub fn entry(&self, slot: Slot) -> Option<&Entry> {
        self.entries.iter().find(|(own, _)| *own == slot).map(|(_, entry)| entry)
    }

    /// Puts a text into a field.
    pub fn set(&mut self, slot: Slot, text: String, unit: Unit) {
        self.entries.retain(|(own, _)| *own != slot);
        self.entries.push((slot, Entry::new(text, unit)));
    }

    /// What a field means; `None` while it is empty.
    ///
    /// # Errors
    /// As [`Entry::read`]: the text stays as it is.
    pub fn read(&self, slot: Slot) -> Result<Option<Measure>, Trouble> {
        match self.entry(slot).filter(|entry| !entry.text.is_empty()) {
            Some(entry) => entry.read(slot.limit()).map(Some),
            None => Ok(None),
        }
    }
}
