//! The save door: frozen, typed versions of the file; old ones are upgraded, newer ones refused untouched.

pub mod v1;

use crate::house::House;
use serde::de::Error;
use serde::{Deserialize, Deserializer, Serialize};

/// The newest version this program writes.
pub const VERSION: u32 = 1;

/// A house as a file: `{"airtally": 1, "house": {…}}`.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct File {
    airtally: u32,
    house: v1::House,
}

impl File {
    /// The file of a house.
    pub fn of(house: &House) -> Self {
        Self { airtally: VERSION, house: v1::House::from(house) }
    }
}

/// Reads a file of any version up to [`VERSION`].
///
/// # Errors
/// The deserializer's own error, with a sentence that says where and why: not an airtally file, written by a newer
/// program, an id used twice, an unknown kind, unit or rule set.
pub fn read<'de, D: Deserializer<'de>>(from: D) -> Result<House, D::Error> {
    let Envelope { airtally, house } = Envelope::deserialize(from)?;
    match (airtally, house) {
        (1, Some(house)) => house.open().map_err(D::Error::custom),
        (1, None) => Err(D::Error::custom("the file has no house")),
        (0, _) => Err(D::Error::custom("version 0 was never written")),
        (newer, _) => Err(D::Error::custom(format_args!(
            "the file is of version {newer}, written by a newer airtally; this one reads up to version {VERSION}"
        ))),
    }
}

#[derive(Deserialize)]
struct Envelope {
    airtally: u32,
    #[serde(default)]
    house: Option<v1::House>,
}
