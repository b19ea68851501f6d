//! What several proofs share: invented houses, the same on every machine.

pub mod invented;
