//! What a file holds before it means anything: texts, numbers, lists and maps.
//!
//! One shape for both ways and for every version keeps the reader of a version to plain functions that know where they
//! are, and the page small: serde is asked for this one type only.

use serde::de::{DeserializeSeed, Deserializer, Error, MapAccess, SeqAccess, Visitor};
use serde::ser::{SerializeMap, SerializeSeq};
use serde::{Deserialize, Serialize, Serializer};
use std::fmt;

/// A value of a file.
#[derive(Clone, Debug, PartialEq)]
pub enum Tree {
    /// Nothing.
    Nothing,
    /// Yes or no.
    Flag(bool),
    /// A number; always finite.
    Number(f64),
    /// A text.
    Text(String),
    /// A list.
    List(Vec<Tree>),
    /// Values by name; every name once.
    Map(Vec<(String, Tree)>),
}

/// Deepest nesting that is read. A house needs five.
const DEEPEST: u8 = 16;

impl<'de> Deserialize<'de> for Tree {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        Level(DEEPEST).deserialize(from)
    }
}

/// How many levels may still follow.
struct Level(u8);

impl<'de> DeserializeSeed<'de> for Level {
    type Value = Tree;

    fn deserialize<D: Deserializer<'de>>(self, from: D) -> Result<Tree, D::Error> {
        from.deserialize_any(self)
    }
}

impl Level {
    fn below<E: Error>(&self) -> Result<u8, E> {
        self.0.checked_sub(1).ok_or(E::custom("nested too deeply"))
    }
}

impl<'de> Visitor<'de> for Level {
    type Value = Tree;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("JSON")
    }

    fn visit_unit<E: Error>(self) -> Result<Tree, E> {
        Ok(Tree::Nothing)
    }

    fn visit_bool<E: Error>(self, flag: bool) -> Result<Tree, E> {
        Ok(Tree::Flag(flag))
    }

    fn visit_i64<E: Error>(self, number: i64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }

    fn visit_u64<E: Error>(self, number: u64) -> Result<Tree, E> {
        Ok(Tree::Number(number as f64))
    }

    fn visit_f64<E: Error>(self, number: f64) -> Result<Tree, E> {
        if number.is_finite() { Ok(Tree::Number(number)) } else { Err(E::custom("a number without end")) }
    }

    fn visit_str<E: Error>(self, text: &str) -> Result<Tree, E> {
        Ok(Tree::Text(text.to_owned()))
    }

    fn visit_string<E: Error>(self, text: String) -> Result<Tree, E> {
        Ok(Tree::Text(text))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut from: A) -> Result<Tree, A::Error> {
        let below = self.below()?;
        let mut list = Vec::new();
        while let Some(item) = from.next_element_seed(Level(below))? {
            list.push(item);
        }
        Ok(Tree::List(list))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut from: A) -> Result<Tree, A::Error> {
        let below = self.below()?;
        let mut map: Vec<(String, Tree)> = Vec::new();
        while let Some(name) = from.next_key::<String>()? {
            if map.iter().any(|(known, _)| *known == name) {
                return Err(A::Error::custom(["duplicate field `", &name, "`"].concat()));
            }
            map.push((name, from.next_value_seed(Level(below))?));
        }
        Ok(Tree::Map(map))
    }
}

impl Serialize for Tree {
    fn serialize<S: Serializer>(&self, into: S) -> Result<S::Ok, S::Error> {
        match self {
            Self::Nothing => into.serialize_unit(),
            Self::Flag(flag) => into.serialize_bool(*flag),
            Self::Number(number) if *number == f64::trunc(*number) && number.abs() < WHOLE => {
                into.serialize_i64(*number as i64)
            }
            Self::Number(number) => into.serialize_f64(*number),
            Self::Text(text) => into.serialize_str(text),
            Self::List(list) => {
                let mut seq = into.serialize_seq(Some(list.len()))?;
                list.iter().try_for_each(|item| seq.serialize_element(item))?;
                seq.end()
            }
            Self::Map(map) => {
                let mut entries = into.serialize_map(Some(map.len()))?;
                map.iter().try_for_each(|(name, value)| entries.serialize_entry(name, value))?;
                entries.end()
            }
        }
    }
}

/// Below this every whole number is a number exactly: 2^53.
const WHOLE: f64 = 9_007_199_254_740_992.0;

impl From<&str> for Tree {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

impl From<f64> for Tree {
    fn from(number: f64) -> Self {
        Self::Number(number)
    }
}
