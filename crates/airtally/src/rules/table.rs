//! Looking a value up in printed rows. One function for every table.

/// How far past a row's upper edge a value may lie and still count as on it: a millionth, far below anything that can
/// be typed or measured, far above what converting 139.35456 m² to 1 500 ft² loses.
pub const EDGE: f64 = 1e-6;

/// The row of `value` among rows with these upper edges; `edges.len()` when it lies above the last.
///
/// ```text
/// row(1500.0, &[1500.0, 3000.0]) = 0      row(1500.1, …) = 1      row(9000.0, …) = 2
/// ```
pub fn row(value: f64, edges: &[f64]) -> usize {
    edges.iter().position(|edge| value <= edge * (1.0 + EDGE)).unwrap_or(edges.len())
}

/// Value between the points of a printed table by straight lines; `None` outside it.
pub fn between(x: f64, points: &[(f64, f64)]) -> Option<f64> {
    points.windows(2).find_map(|pair| match *pair {
        [(x0, y0), (x1, y1)] if x >= x0 && x <= x1 => Some(y0 + (y1 - y0) * (x - x0) / (x1 - x0)),
        _ => None,
    })
}

#[cfg(test)]
mod tests {
    use super::{between, row};

    #[test]
    fn an_edge_belongs_to_the_row_below_it() {
        for (value, expect) in [(0.0, 0), (1500.0, 0), (1500.0000000002, 0), (1500.1, 1), (3000.0, 1), (3001.0, 2)] {
            assert_eq!(row(value, &[1500.0, 3000.0]), expect, "{value}");
        }
    }

    #[test]
    fn nothing_is_extrapolated() {
        let points = [(25.0, 4.0), (50.0, 2.0)];
        assert_eq!(between(25.0, &points), Some(4.0));
        assert_eq!(between(50.0, &points), Some(2.0));
        assert_eq!(between(24.9, &points), None);
        assert_eq!(between(50.1, &points), None);
    }
}
