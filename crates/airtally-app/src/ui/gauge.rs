//! A short rule with a notch: where a value stands from nought, and where its limit is.

use super::el::tag;
use super::icon::stroke;
use yew::prelude::*;

/// Draws a value and its limit. `end` is the value at the right-hand end.
pub fn gauge(value: f64, limit: f64, end: f64) -> Html {
    let (value, limit) = (place(value, end), place(limit, end));
    let ends = stroke("", "M4 17h292M4 12v10M296 12v10");
    let limit = stroke("gauge-limit", ["M", &limit, " 3v20"].concat());
    let value = stroke("gauge-value", ["M4 17H", &value].concat());
    let gauge = tag("svg", "gauge").attr("viewBox", "0 0 300 24").attr("preserveAspectRatio", "none");
    gauge.attr("aria-hidden", "true").around([ends, limit, value])
}

/// 4 … 296 of the 300 units, whole ones: finer would not be seen.
fn place(value: f64, end: f64) -> String {
    let share = if end > 0.0 { (value / end).clamp(0.0, 1.0) } else { 0.0 };
    (4 + (share * 292.0) as i32).to_string()
}
