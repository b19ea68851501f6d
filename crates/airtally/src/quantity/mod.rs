//! Quantities, their units, and what people type for them.
//!
//! Inside the calculation a quantity has one unit and a name ([`Flow`], [`Pressure`] …); at the edge a [`Measure`] keeps
//! the number in the unit it was typed in. [`parse`] reads text, [`convert`] changes units.
//!
//! ```
//! use airtally::quantity::{Flow, Kind, Unit, parse};
//!
//! let typed = parse("12 L/s", Kind::Flow, Unit::CubicMetrePerHour)?;
//! assert_eq!(Flow::of(typed), Some(Flow::from_m3h(43.2)));
//! # Ok::<(), airtally::quantity::ParseError>(())
//! ```

mod air_change;
mod area;
mod concentration;
mod cut;
mod duration;
mod facts;
mod flow;
mod length;
mod measure;
mod newtype;
mod number;
mod parse;
mod pressure;
mod products;
mod spelling;
mod temperature;
mod unit;
mod velocity;
mod volume;

pub use air_change::AirChange;
pub use area::Area;
pub use concentration::Concentration;
pub use duration::Duration;
pub use flow::Flow;
pub use length::Length;
pub use measure::Measure;
pub use parse::{LONGEST_TEXT, ParseError, parse};
pub use pressure::Pressure;
pub use temperature::Temperature;
pub use unit::{Kind, Unit, convert};
pub use velocity::Velocity;
pub use volume::Volume;
