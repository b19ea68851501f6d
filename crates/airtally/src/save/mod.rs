//! The save door: frozen, typed versions of the file; old ones are upgraded, newer ones refused untouched.

pub mod v1;

use crate::house::House;
use serde::de::{Error, IgnoredAny, MapAccess, Visitor};
use serde::{Deserializer, Serialize};
use std::fmt;

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
/// program, an id used twice, an unknown name, kind, unit or rule set.
pub fn read<'de, D: Deserializer<'de>>(from: D) -> Result<House, D::Error> {
    from.deserialize_map(Envelope)
}

/// Looks at the version first, so that a newer file is called newer, whatever is in it.
struct Envelope;

impl<'de> Visitor<'de> for Envelope {
    type Value = House;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("an airtally file")
    }

    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<House, A::Error> {
        let (mut version, mut house, mut stray) = (None, None, None);
        while let Some(name) = map.next_key::<String>()? {
            match name.as_str() {
                "airtally" if version.is_some() => return Err(A::Error::duplicate_field("airtally")),
                "airtally" => version = Some(map.next_value()?),
                "house" if house.is_some() => return Err(A::Error::duplicate_field("house")),
                "house" if version.is_none_or(|version| version == 1) => house = Some(map.next_value::<v1::House>()?),
                _ => {
                    map.next_value::<IgnoredAny>()?;
                    stray = stray.or(Some(name));
                }
            }
        }
        known_version(version)?;
        if let Some(name) = stray {
            return Err(A::Error::unknown_field(&name, &["airtally", "house"]));
        }
        house.ok_or(A::Error::custom("the file has no house"))?.open().map_err(A::Error::custom)
    }
}

fn known_version<E: Error>(version: Option<u32>) -> Result<(), E> {
    match version {
        Some(1) => Ok(()),
        None => Err(E::missing_field("airtally")),
        Some(0) => Err(E::custom("version 0 was never written")),
        Some(newer) => Err(E::custom(format_args!(
            "the file is of version {newer}, written by a newer airtally; this one reads up to version {VERSION}"
        ))),
    }
}
