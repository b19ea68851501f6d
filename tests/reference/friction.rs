//! Friction of the wall beside `fluids`.

use super::{answers, off};
use airtally::duct::friction::friction;
use serde::Deserialize;

#[derive(Deserialize, Debug)]
struct Answer {
    reynolds: f64,
    roughness: f64,
    churchill: f64,
    colebrook: Option<f64>,
}

/// The same formula in another program: 10⁻⁹ is room for another order of operations.
#[test]
fn the_formula_is_churchills() {
    for answer in answers::<Answer>("friction") {
        let ours = friction(answer.reynolds, answer.roughness).factor;
        assert!(off(ours, answer.churchill) < 1e-9, "{ours} and {answer:?}");
    }
}

/// The handbook of physics, section 2, gives 3.1 % as the formula's worst against Colebrook's exact solution.
#[test]
fn the_formula_is_as_near_to_colebrook_as_it_says() {
    for answer in answers::<Answer>("friction") {
        let Some(exact) = answer.colebrook else { continue };
        let ours = friction(answer.reynolds, answer.roughness).factor;
        assert!(off(ours, exact) < 0.031, "{ours} and {answer:?}");
    }
}
