//! A value of the browser's own JSON, handed to serde, with the place of whatever is wrong.
//!
//! Only what the file format uses: maps, lists, texts, whole numbers, yes and no, and nothing. A general reader brings
//! numbers of every sort, and printing them for its messages, which doubles its weight.

use js_sys::{Array, Object, Reflect};
use serde::de::Visitor;
use serde::de::value::StringDeserializer;
use serde::de::{DeserializeSeed, Deserializer, Error, Expected, IntoDeserializer, MapAccess, SeqAccess, Unexpected};
use serde::forward_to_deserialize_any;
use std::fmt;
use wasm_bindgen::{JsCast, JsValue};

/// What is wrong, and where.
#[derive(Debug)]
pub struct Fault {
    /// From the inside out: `name`, `[3]`, `rooms`.
    place: Vec<String>,
    words: String,
}

impl Fault {
    fn within(mut self, place: String) -> Self {
        self.place.push(place);
        self
    }

    /// Where it is: `house.rooms[3].name`; empty for the whole text.
    pub fn path(&self) -> String {
        let mut path = String::new();
        for step in self.place.iter().rev() {
            if !path.is_empty() && !step.starts_with('[') {
                path.push('.');
            }
            path.push_str(step);
        }
        path
    }
}

impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.words)
    }
}

impl std::error::Error for Fault {}

impl Error for Fault {
    fn custom<T: fmt::Display>(words: T) -> Self {
        Self { place: Vec::new(), words: words.to_string() }
    }

    fn invalid_type(_: Unexpected<'_>, expected: &dyn Expected) -> Self {
        Self::custom(format_args!("this must be {expected}"))
    }

    fn invalid_value(_: Unexpected<'_>, expected: &dyn Expected) -> Self {
        Self::custom(format_args!("this must be {expected}"))
    }
}

/// A value on its way to serde. Serde always says what it wants, and only that is tried: so the shipped program holds one
/// way to read each thing.
pub struct Reader(pub JsValue);

impl Reader {
    fn whole<'de, V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        match self.0.as_f64().and_then(whole) {
            Some(number) => visitor.visit_i64(number),
            None => Err(not(&visitor)),
        }
    }

    fn text<'de, V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        match self.0.as_string() {
            Some(text) => visitor.visit_string(text),
            None => Err(not(&visitor)),
        }
    }

    fn object<'de, V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        match self.0.dyn_ref::<Object>().filter(|object| !Array::is_array(object)) {
            Some(object) => visitor.visit_map(Fields { object, keys: Object::keys(object), at: 0 }),
            None => Err(not(&visitor)),
        }
    }
}

#[inline(never)]
fn not(expected: &dyn Expected) -> Fault {
    Fault::invalid_type(Unexpected::Unit, expected)
}

impl<'de> Deserializer<'de> for Reader {
    type Error = Fault;

    /// Nothing of the format asks for this.
    fn deserialize_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        Err(not(&visitor))
    }

    fn deserialize_bool<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        match self.0.as_bool() {
            Some(yes) => visitor.visit_bool(yes),
            None => Err(not(&visitor)),
        }
    }

    fn deserialize_i8<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_u32<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.whole(visitor)
    }

    fn deserialize_str<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.text(visitor)
    }

    fn deserialize_string<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.text(visitor)
    }

    fn deserialize_option<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        if self.0.is_null() { visitor.visit_none() } else { visitor.visit_some(self) }
    }

    fn deserialize_seq<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        match self.0.dyn_ref::<Array>() {
            Some(list) => visitor.visit_seq(Items { list, at: 0 }),
            None => Err(not(&visitor)),
        }
    }

    fn deserialize_map<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        self.object(visitor)
    }

    fn deserialize_struct<V: Visitor<'de>>(
        self,
        _: &'static str,
        _: &'static [&'static str],
        visitor: V,
    ) -> Result<V::Value, Fault> {
        self.object(visitor)
    }

    fn deserialize_ignored_any<V: Visitor<'de>>(self, visitor: V) -> Result<V::Value, Fault> {
        visitor.visit_unit()
    }

    forward_to_deserialize_any! {
        i16 i32 i64 i128 u8 u16 u64 u128 f32 f64 char bytes byte_buf unit unit_struct newtype_struct tuple tuple_struct
        enum identifier
    }
}

/// A number without decimals that serde can hand on without loss.
fn whole(number: f64) -> Option<i64> {
    const LAST_SAFE: f64 = 9_007_199_254_740_991.0;
    (number.trunc() == number && number.abs() <= LAST_SAFE).then_some(number as i64)
}

struct Items<'a> {
    list: &'a Array,
    at: u32,
}

impl<'de> SeqAccess<'de> for Items<'_> {
    type Error = Fault;

    fn next_element_seed<T: DeserializeSeed<'de>>(&mut self, seed: T) -> Result<Option<T::Value>, Fault> {
        if self.at >= self.list.length() {
            return Ok(None);
        }
        let at = self.at;
        self.at += 1;
        let value = seed.deserialize(Reader(self.list.get(at)));
        value.map(Some).map_err(|fault| fault.within(["[", &at.to_string(), "]"].concat()))
    }
}

struct Fields<'a> {
    object: &'a Object,
    keys: Array,
    at: u32,
}

impl<'de> MapAccess<'de> for Fields<'_> {
    type Error = Fault;

    fn next_key_seed<K: DeserializeSeed<'de>>(&mut self, seed: K) -> Result<Option<K::Value>, Fault> {
        match self.keys.get(self.at).as_string() {
            Some(key) => seed.deserialize::<StringDeserializer<Fault>>(key.into_deserializer()).map(Some),
            None => Ok(None),
        }
    }

    fn next_value_seed<V: DeserializeSeed<'de>>(&mut self, seed: V) -> Result<V::Value, Fault> {
        let key = self.keys.get(self.at);
        self.at += 1;
        let value = Reflect::get(self.object, &key).unwrap_or(JsValue::NULL);
        seed.deserialize(Reader(value)).map_err(|fault| fault.within(key.as_string().unwrap_or_default()))
    }
}
