//! Words of the page of parts.

/// The question.
pub const ASK_PARTS: &str = "What does it take, and cost?";
/// Below the total.
pub const PARTS_NOTE: &str = "In the currency of your prices. Counted from this house; check it before you order.";
/// Over the sums.
pub const SUMS: &str = "What it comes to";
/// A sum.
pub const SUM_PARTS: &str = "Parts";
/// A sum.
pub const SUM_MARGIN: &str = "Added on parts";
/// A sum.
pub const SUM_WORK: &str = "Work";
/// A sum.
pub const SUM_NET: &str = "Before tax";
/// A sum.
pub const SUM_TAX: &str = "Tax";
/// A sum.
pub const SUM_TOTAL: &str = "To pay";
/// Over the sheet of paper.
pub const QUOTATION: &str = "Quotation";
/// A column of it.
pub const QUOTED_WHAT: &str = "What";
/// A column of it.
pub const QUOTED_QUANTITY: &str = "Quantity";
/// A column of it.
pub const QUOTED_PRICE: &str = "Price";
/// A column of it.
pub const QUOTED_AMOUNT: &str = "Amount";
/// Over the list's file.
pub const PRICES: &str = "Your prices";
/// Below it.
pub const PRICES_NOTE: &str = "They stay on this device and go along into a new house. A spreadsheet opens the list; write prices into it and open it here.";
/// Saves it.
pub const SAVE_PRICES: &str = "Save the list";
/// Opens one.
pub const OPEN_PRICES: &str = "Open a list";
/// Name of the file.
pub const PRICES_FILE: &str = "prices.csv";
/// It was too long.
pub const PRICES_LONG: &str = "This file is too long for a price list. Nothing was changed.";
/// Its first line does not say what is what.
pub const PRICES_HEADS: &str = "The first line must name the columns “part” and “price”. Nothing was changed.";
/// None of its lines is ours.
pub const PRICES_STRANGE: &str =
    "No line of this list names a part of ours: save the list here and fill that in. Nothing was changed.";
/// Over the coils.
pub const COILS: &str = "Cut from coils";
/// Below it.
pub const COILS_NOTE: &str = "Every tube in one piece, the longest first.";
/// To the next screen.
pub const NEXT_PARTS: &str = "Next: the parts";

/// A list was taken in, but for lines that name no part of ours.
pub fn prices_taken(unknown: usize) -> String {
    let strange = match unknown {
        0 => String::new(),
        1 => " 1 line names no part of ours and was left out.".to_owned(),
        count => [" ", &count.to_string(), " lines name no part of ours and were left out."].concat(),
    };
    ["The prices of the list are in.", &strange].concat()
}

/// Lines without a price.
pub fn unpriced(count: usize) -> String {
    match count {
        1 => "1 line has no price yet: the total is without it.".to_owned(),
        count => [&count.to_string(), " lines have no price yet: the total is without them."].concat(),
    }
}

/// The name of a coil: `Coil 2 · 4.3 m left`.
pub fn coil(number: usize, left: &str) -> String {
    ["Coil ", &number.to_string(), " · ", left, " left"].concat()
}

/// `12 kinds of things`, before there is a price.
pub fn kinds(count: usize) -> (String, &'static str) {
    (count.to_string(), if count == 1 { "line" } else { "lines" })
}
