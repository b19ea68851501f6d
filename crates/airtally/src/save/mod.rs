//! The save door: frozen versions of the file; old ones are upgraded, newer ones refused untouched.

mod fields;
mod tree;
mod v1;

pub use fields::Refusal;
pub use tree::Tree;

use crate::house::House;
use fields::Fields;
use serde::de::Error;
use serde::{Deserialize, Deserializer, Serialize, Serializer};

/// The newest version this program writes.
pub const VERSION: u32 = 1;

/// A house as a file: `{"airtally": 1, "house": {…}}`.
#[derive(Clone, Debug, PartialEq)]
pub struct File(Tree);

impl File {
    /// The file of a house.
    pub fn of(house: &House) -> Self {
        let version = ("airtally".to_owned(), Tree::Number(f64::from(VERSION)));
        Self(Tree::Map(vec![version, ("house".to_owned(), v1::write(house))]))
    }

    /// What it holds.
    pub const fn tree(&self) -> &Tree {
        &self.0
    }
}

impl Serialize for File {
    fn serialize<S: Serializer>(&self, into: S) -> Result<S::Ok, S::Error> {
        self.0.serialize(into)
    }
}

/// Reads a file of any version up to [`VERSION`].
///
/// # Errors
/// The deserializer's own error, or a [`Refusal`] as its words.
pub fn read<'de, D: Deserializer<'de>>(from: D) -> Result<House, D::Error> {
    open(Tree::deserialize(from)?).map_err(D::Error::custom)
}

/// The house of a file of any version up to [`VERSION`]. The version comes first, so that a newer file is called newer,
/// whatever is in it.
///
/// # Errors
/// A [`Refusal`] that says where and why: not an airtally file, written by a newer program, an id used twice, an unknown
/// name, kind, unit or rule set.
pub fn open(file: Tree) -> Result<House, Refusal> {
    if !matches!(file, Tree::Map(_)) {
        return Err(Refusal::new("this is no airtally file"));
    }
    let mut fields = Fields::of(file);
    match fields.whole("airtally", (0, i64::from(u32::MAX))) {
        1 => {}
        0 => fields.refuse(Refusal::new("version 0 was never written")),
        newer => {
            return Err(Refusal::new(format!(
                "the file is of version {newer}, written by a newer airtally; this one reads up to version {VERSION}"
            )));
        }
    }
    let house = fields.take("house");
    let house = fields.end(house)?;
    if house == Tree::Nothing {
        return Err(Refusal::new("the file has no house"));
    }
    v1::open(house).map_err(|why| why.within("house"))
}
