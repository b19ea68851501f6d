//! The workshop.
fn main() {}
