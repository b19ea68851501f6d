//! Short names between program and script.
//!
//! What the program imports is called by long names with a fingerprint each (`__wbg_addEventListener_f2d27251d333a631`),
//! in the program and in the script, 3 kB of every first visit. For a release both get the same short ones.

use crate::Outcome;
use std::collections::HashMap;

const IMPORTS: u8 = 2;
const FUNCTION: u8 = 0;

/// Gives the imported functions short names, in the program and in the script.
pub fn shorten(program: &[u8], script: &str) -> Outcome<(Vec<u8>, String)> {
    let mut names = HashMap::new();
    let mut short = program.get(..8).ok_or("This is no wasm.")?.to_vec();
    let mut reader = Reader { bytes: program, at: 8 };
    while reader.at < program.len() {
        let (id, body) = (reader.byte()?, reader.run()?);
        let body = if id == IMPORTS { renamed(body, &mut names)? } else { body.to_vec() };
        short.push(id);
        put_run(&mut short, &body);
    }
    let script = replaced(script, &names);
    Ok((short, script))
}

fn renamed(section: &[u8], names: &mut HashMap<String, String>) -> Outcome<Vec<u8>> {
    let mut reader = Reader { bytes: section, at: 0 };
    let count = reader.number()?;
    let mut short = Vec::new();
    put_number(&mut short, count);
    for at in 0..count {
        put_run(&mut short, reader.run()?);
        let long = String::from_utf8_lossy(reader.run()?).into_owned();
        let name = names.entry(long).or_insert_with(|| short_name(at));
        put_run(&mut short, name.as_bytes());
        if reader.byte()? != FUNCTION {
            return Err("The program imports something that is no function.".to_owned());
        }
        short.push(FUNCTION);
        put_number(&mut short, reader.number()?);
    }
    Ok(short)
}

/// `a` to `z`, then `a1` …
fn short_name(at: usize) -> String {
    let letter = char::from(b'a' + (at % 26) as u8);
    if at < 26 { letter.to_string() } else { format!("{letter}{}", at / 26) }
}

/// The script with every whole word that has a short name called by it.
fn replaced(script: &str, names: &HashMap<String, String>) -> String {
    let mut short = String::with_capacity(script.len());
    let mut rest = script;
    while !rest.is_empty() {
        let word = rest.find(|letter: char| !is_word(letter)).unwrap_or(rest.len());
        let gap = rest[word..].find(is_word).map_or(rest.len(), |gap| word + gap);
        short.push_str(names.get(&rest[..word]).map_or(&rest[..word], String::as_str));
        short.push_str(&rest[word..gap]);
        rest = &rest[gap..];
    }
    short
}

fn is_word(letter: char) -> bool {
    letter.is_alphanumeric() || matches!(letter, '_' | '$')
}

/// Reads the binary format of WebAssembly (core specification 2.0, section 5).
struct Reader<'a> {
    bytes: &'a [u8],
    at: usize,
}

impl<'a> Reader<'a> {
    fn byte(&mut self) -> Outcome<u8> {
        let byte = self.bytes.get(self.at).copied().ok_or("The program ends too soon.")?;
        self.at += 1;
        Ok(byte)
    }

    /// An unsigned number of variable length (LEB128).
    fn number(&mut self) -> Outcome<usize> {
        let mut number = 0;
        for place in 0..5 {
            let byte = self.byte()?;
            number |= usize::from(byte & 0x7f) << (7 * place);
            if byte < 0x80 {
                return Ok(number);
            }
        }
        Err("A number in the program never ends.".to_owned())
    }

    /// Bytes with their number in front.
    fn run(&mut self) -> Outcome<&'a [u8]> {
        let length = self.number()?;
        let run = self.bytes.get(self.at..self.at + length).ok_or("The program ends too soon.")?;
        self.at += length;
        Ok(run)
    }
}

fn put_number(bytes: &mut Vec<u8>, mut number: usize) {
    while number >= 0x80 {
        bytes.push((number & 0x7f) as u8 | 0x80);
        number >>= 7;
    }
    bytes.push(number as u8);
}

fn put_run(bytes: &mut Vec<u8>, run: &[u8]) {
    put_number(bytes, run.len());
    bytes.extend_from_slice(run);
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One import `./m.js` `__wbg_long_0123` of type 0, and a section that must stay.
    fn program() -> Vec<u8> {
        let mut imports = vec![1];
        put_run(&mut imports, b"./m.js");
        put_run(&mut imports, b"__wbg_long_0123");
        imports.extend([FUNCTION, 0]);
        let mut bytes = b"\0asm\x01\0\0\0".to_vec();
        bytes.push(IMPORTS);
        put_run(&mut bytes, &imports);
        bytes.push(10);
        put_run(&mut bytes, &[0; 200]);
        bytes
    }

    #[test]
    fn both_sides_get_the_same_short_name() {
        let script = "return{__wbg_long_0123:function(){},__wbg_long_01234:1}";
        let (short, script) = shorten(&program(), script).unwrap();
        assert_eq!(script, "return{a:function(){},__wbg_long_01234:1}");
        assert_eq!(short.len(), program().len() - "__wbg_long_0123".len() + 1);
        assert!(short.ends_with(&[0; 200]));
    }

    #[test]
    fn what_is_cut_short_is_refused() {
        let whole = program();
        for length in [0, 7, 9, 20, whole.len() - 1] {
            assert!(shorten(&whole[..length], "").is_err(), "{length}");
        }
    }

    #[test]
    fn names_do_not_repeat() {
        let mut names: Vec<String> = (0..200).map(short_name).collect();
        names.sort();
        names.dedup();
        assert_eq!(names.len(), 200);
    }
}
