//! A short rule with a notch: where a value stands from nought, and where its limit is.

use yew::prelude::*;

/// Draws a value and its limit. `end` is the value at the right-hand end.
pub fn gauge(value: f64, limit: f64, end: f64) -> Html {
    let (value, limit) = (place(value, end), place(limit, end));
    html! {
        <svg class="gauge" viewBox="0 0 300 24" preserveAspectRatio="none" aria-hidden="true">
            <path d="M4 17h292M4 12v10M296 12v10" />
            <path class="gauge-limit" d={["M", &limit, " 3v20"].concat()} />
            <path class="gauge-value" d={["M4 17H", &value].concat()} />
        </svg>
    }
}

/// 4 … 296 of the 300 units, whole ones: finer would not be seen.
fn place(value: f64, end: f64) -> String {
    let share = if end > 0.0 { (value / end).clamp(0.0, 1.0) } else { 0.0 };
    (4 + (share * 292.0) as i32).to_string()
}
