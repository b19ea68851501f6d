//! A person's price list as CSV (RFC 4180): out for a spreadsheet, and in again.
//!
//! Columns `part`, `description`, `unit`, `price`; only `part` and `price` are read. A price goes in as it is written. On the
//! way out a text that a spreadsheet would take for a formula gets an apostrophe in front, which is taken off on the way in.

use crate::MOST_TEXT;
use airtally::parts::Part;
use csv_core::{ReadFieldResult, Reader, ReaderBuilder};

/// Why a list was not taken in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refused {
    /// Longer than [`MOST_TEXT`].
    TooLong,
    /// No columns `part` and `price` in its first line.
    NoColumns,
    /// None of its lines names a part of ours.
    NoPart,
}

/// What was read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Prices {
    /// Part and price as written, in the order of the list; a later line of the same part wins.
    pub prices: Vec<(Part, String)>,
    /// Lines that name no part of ours.
    pub unknown: usize,
}

/// Writes a list: part, what it is called, what it is counted in, price as typed.
pub fn write_prices(rows: impl Iterator<Item = (Part, String, &'static str, String)>) -> String {
    let mut text = "part,description,unit,price\r\n".to_owned();
    for (part, description, unit, price) in rows {
        let cells = [part.id(), &description, unit, &price].map(cell);
        text.push_str(&cells.join(","));
        text.push_str("\r\n");
    }
    text
}

/// One cell: harmless, and quoted where it must be.
fn cell(text: &str) -> String {
    let armed = text.starts_with(['=', '+', '-', '@', '\t', '\r']);
    let text = if armed { ["'", text].concat() } else { text.to_owned() };
    match text.contains([',', ';', '"', '\n', '\r']) {
        true => ["\"", &text.replace('"', "\"\""), "\""].concat(),
        false => text,
    }
}

/// Reads a list, parted by commas, semicolons or tabs: whichever its first line has.
///
/// # Errors
/// [`Refused`]; nothing is half read.
pub fn read_prices(text: &str) -> Result<Prices, Refused> {
    if text.len() > MOST_TEXT {
        return Err(Refused::TooLong);
    }
    let text = text.trim_start_matches('\u{feff}');
    let first = text.lines().next().unwrap_or_default();
    let parted = [b',', b';', b'\t'].into_iter().max_by_key(|mark| first.bytes().filter(|byte| byte == mark).count());
    let mut rows = rows(text, parted.unwrap_or(b',')).into_iter();
    let heads = rows.next().unwrap_or_default();
    let column = |name: &str| heads.iter().position(|head| head.trim().eq_ignore_ascii_case(name));
    let (Some(part_at), Some(price_at)) = (column("part"), column("price")) else { return Err(Refused::NoColumns) };
    let mut read = Prices { prices: Vec::new(), unknown: 0 };
    for row in rows.filter(|row| row.iter().any(|cell| !cell.trim().is_empty())) {
        let Some(part) = row.get(part_at).and_then(|id| Part::from_id(id.trim())) else {
            read.unknown += 1;
            continue;
        };
        let price = row.get(price_at).map_or("", |price| price.trim());
        let price = price.strip_prefix('\'').unwrap_or(price).to_owned();
        read.prices.retain(|(known, _)| *known != part);
        read.prices.push((part, price));
    }
    if read.prices.is_empty() { Err(Refused::NoPart) } else { Ok(read) }
}

fn rows(text: &str, parted: u8) -> Vec<Vec<String>> {
    let mut reader: Reader = ReaderBuilder::new().delimiter(parted).build();
    let (mut rows, mut row, mut cell) = (Vec::new(), Vec::new(), Vec::new());
    let (mut left, mut piece) = (text.as_bytes(), [0_u8; 256]);
    loop {
        let (result, taken, written) = reader.read_field(left, &mut piece);
        left = left.get(taken..).unwrap_or_default();
        cell.extend_from_slice(piece.get(..written).unwrap_or_default());
        match result {
            // An empty input tells the reader that nothing comes after.
            ReadFieldResult::InputEmpty | ReadFieldResult::OutputFull => {}
            ReadFieldResult::Field { record_end } => {
                row.push(String::from_utf8_lossy(&std::mem::take(&mut cell)).into_owned());
                if record_end {
                    rows.push(std::mem::take(&mut row));
                }
            }
            ReadFieldResult::End => return rows,
        }
    }
}
