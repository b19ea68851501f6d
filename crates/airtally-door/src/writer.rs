//! A house as JSON text. Only what the file format uses; see the reader.

use serde::ser::{Error, Impossible, Serialize, SerializeSeq, SerializeStruct, Serializer};
use std::fmt;

/// A value that the file format has no form for.
#[derive(Debug)]
pub struct NoForm;

impl fmt::Display for NoForm {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("the file has no form for such a value")
    }
}

impl std::error::Error for NoForm {}

impl Error for NoForm {
    fn custom<T: fmt::Display>(_: T) -> Self {
        Self
    }
}

/// The JSON text of a value.
///
/// # Errors
/// [`NoForm`] for decimals, maps with keys of their own, and enums with contents.
pub fn json<T: Serialize>(value: &T) -> Result<String, NoForm> {
    let mut text = String::new();
    value.serialize(Writer { text: &mut text })?;
    Ok(text)
}

struct Writer<'a> {
    text: &'a mut String,
}

type None = Impossible<(), NoForm>;

impl<'a> Serializer for Writer<'a> {
    type Ok = ();
    type Error = NoForm;
    type SerializeSeq = Open<'a>;
    type SerializeTuple = None;
    type SerializeTupleStruct = None;
    type SerializeTupleVariant = None;
    type SerializeMap = None;
    type SerializeStruct = Open<'a>;
    type SerializeStructVariant = None;

    fn serialize_bool(self, yes: bool) -> Result<(), NoForm> {
        self.text.push_str(if yes { "true" } else { "false" });
        Ok(())
    }

    fn serialize_i64(self, number: i64) -> Result<(), NoForm> {
        self.text.push_str(&number.to_string());
        Ok(())
    }

    fn serialize_i8(self, number: i8) -> Result<(), NoForm> {
        self.serialize_i64(number.into())
    }

    fn serialize_i16(self, number: i16) -> Result<(), NoForm> {
        self.serialize_i64(number.into())
    }

    fn serialize_i32(self, number: i32) -> Result<(), NoForm> {
        self.serialize_i64(number.into())
    }

    fn serialize_u8(self, number: u8) -> Result<(), NoForm> {
        self.serialize_i64(number.into())
    }

    fn serialize_u16(self, number: u16) -> Result<(), NoForm> {
        self.serialize_i64(number.into())
    }

    fn serialize_u32(self, number: u32) -> Result<(), NoForm> {
        self.serialize_i64(number.into())
    }

    fn serialize_u64(self, number: u64) -> Result<(), NoForm> {
        self.serialize_i64(number.try_into().map_err(|_| NoForm)?)
    }

    fn serialize_f32(self, _: f32) -> Result<(), NoForm> {
        Err(NoForm)
    }

    fn serialize_f64(self, _: f64) -> Result<(), NoForm> {
        Err(NoForm)
    }

    fn serialize_char(self, letter: char) -> Result<(), NoForm> {
        self.serialize_str(letter.encode_utf8(&mut [0; 4]))
    }

    fn serialize_str(self, text: &str) -> Result<(), NoForm> {
        quote(self.text, text);
        Ok(())
    }

    fn serialize_bytes(self, _: &[u8]) -> Result<(), NoForm> {
        Err(NoForm)
    }

    fn serialize_none(self) -> Result<(), NoForm> {
        self.serialize_unit()
    }

    fn serialize_some<T: Serialize + ?Sized>(self, value: &T) -> Result<(), NoForm> {
        value.serialize(self)
    }

    fn serialize_unit(self) -> Result<(), NoForm> {
        self.text.push_str("null");
        Ok(())
    }

    fn serialize_unit_struct(self, _: &'static str) -> Result<(), NoForm> {
        self.serialize_unit()
    }

    fn serialize_unit_variant(self, _: &'static str, _: u32, variant: &'static str) -> Result<(), NoForm> {
        self.serialize_str(variant)
    }

    fn serialize_newtype_struct<T: Serialize + ?Sized>(self, _: &'static str, value: &T) -> Result<(), NoForm> {
        value.serialize(self)
    }

    fn serialize_newtype_variant<T: Serialize + ?Sized>(
        self,
        _: &'static str,
        _: u32,
        _: &'static str,
        _: &T,
    ) -> Result<(), NoForm> {
        Err(NoForm)
    }

    fn serialize_seq(self, _: Option<usize>) -> Result<Open<'a>, NoForm> {
        Ok(Open::new(self.text, '[', ']'))
    }

    fn serialize_tuple(self, _: usize) -> Result<None, NoForm> {
        Err(NoForm)
    }

    fn serialize_tuple_struct(self, _: &'static str, _: usize) -> Result<None, NoForm> {
        Err(NoForm)
    }

    fn serialize_tuple_variant(self, _: &'static str, _: u32, _: &'static str, _: usize) -> Result<None, NoForm> {
        Err(NoForm)
    }

    fn serialize_map(self, _: Option<usize>) -> Result<None, NoForm> {
        Err(NoForm)
    }

    fn serialize_struct(self, _: &'static str, _: usize) -> Result<Open<'a>, NoForm> {
        Ok(Open::new(self.text, '{', '}'))
    }

    fn serialize_struct_variant(self, _: &'static str, _: u32, _: &'static str, _: usize) -> Result<None, NoForm> {
        Err(NoForm)
    }
}

/// A list or a struct that is being written.
struct Open<'a> {
    text: &'a mut String,
    close: char,
    first: bool,
}

impl<'a> Open<'a> {
    fn new(text: &'a mut String, open: char, close: char) -> Self {
        text.push(open);
        Self { text, close, first: true }
    }

    fn next(&mut self) {
        if !std::mem::take(&mut self.first) {
            self.text.push(',');
        }
    }
}

impl SerializeSeq for Open<'_> {
    type Ok = ();
    type Error = NoForm;

    fn serialize_element<T: Serialize + ?Sized>(&mut self, value: &T) -> Result<(), NoForm> {
        self.next();
        value.serialize(Writer { text: self.text })
    }

    fn end(self) -> Result<(), NoForm> {
        self.text.push(self.close);
        Ok(())
    }
}

impl SerializeStruct for Open<'_> {
    type Ok = ();
    type Error = NoForm;

    fn serialize_field<T: Serialize + ?Sized>(&mut self, key: &'static str, value: &T) -> Result<(), NoForm> {
        self.next();
        quote(self.text, key);
        self.text.push(':');
        value.serialize(Writer { text: self.text })
    }

    fn end(self) -> Result<(), NoForm> {
        self.text.push(self.close);
        Ok(())
    }
}

/// RFC 8259, section 7: quotes, backslashes and control characters are escaped, everything else stands as it is.
fn quote(text: &mut String, plain: &str) {
    const HEX: [char; 16] = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'];
    text.push('"');
    for letter in plain.chars() {
        match letter {
            '"' | '\\' => text.extend(['\\', letter]),
            '\0'..='\x1f' => {
                text.push_str("\\u00");
                text.extend([HEX[letter as usize >> 4], HEX[letter as usize & 15]]);
            }
            _ => text.push(letter),
        }
    }
    text.push('"');
}
