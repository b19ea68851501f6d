//! Parts with their sizes, and money.

use crate::format::{self, Shown};
use airtally::house::Display;
use airtally::money::Money;
use airtally::parts::Size;
use airtally::quantity::{Length, Unit};

/// A size in words; empty where the name says it all.
pub fn size(size: Size, display: Display) -> String {
    match size {
        Size::Plain => String::new(),
        Size::Tube(tube) => format::small_length(Length::from_mm(tube.outside_mm()), display).to_string(),
        Size::Ports(ports) => [&format::count(ports), " ports"].concat(),
        Size::Bore(bore) => format::small_length(bore, display).to_string(),
        Size::Long(length) => [&format::small_length(length, display).to_string(), " long"].concat(),
        Size::Duty(flow, pressure) => {
            let flow = format::flow(flow, display).to_string();
            [&flow, " at ", &format::text(pressure.as_pa(), Unit::Pascal)].concat()
        }
    }
}

/// How much of a line, to the hundredth that its amount counts.
pub fn quantity(quantity: f64, unit: Unit, display: Display) -> Shown {
    match unit {
        Unit::Hour => Shown { number: format::number(quantity, 2), unit: unit.symbol() },
        unit => format::in_display(quantity, unit, display),
    }
}

/// An amount with its hundredths: `12 345.60`.
///
/// ```
/// use airtally::money::Money;
/// assert_eq!(airtally_words::parts::money(Money::of_hundredths(1_234_560)), "12\u{202f}345.60");
/// assert_eq!(airtally_words::parts::money(Money::of_hundredths(-5)), "−0.05");
/// ```
pub fn money(money: Money) -> String {
    let plain = money.to_string();
    match plain.strip_prefix('-') {
        Some(owed) => ["−", &format::grouped(owed)].concat(),
        None => format::grouped(&plain),
    }
}
