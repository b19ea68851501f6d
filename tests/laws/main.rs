//! What must hold for every house, tried on many random ones. The seed is fixed, so that a run can be repeated;
//! `PROPTEST_CASES` asks for more houses.
#![cfg(not(target_family = "wasm"))]

mod commissioning;
mod delivery;
mod demand;
mod edits;
mod houses;
mod network;
mod sharing;
mod text;
mod trees;

use proptest::test_runner::{Config, RngSeed};

/// Enough houses to meet every rule set and choice several times, and still seconds.
fn config() -> Config {
    few(400)
}

/// Fewer, for laws about large houses full of long texts.
fn few(usual: u32) -> Config {
    let cases = std::env::var("PROPTEST_CASES").ok().and_then(|cases| cases.parse().ok()).unwrap_or(usual);
    let max_global_rejects = 1024 + cases;
    Config {
        cases,
        max_global_rejects,
        rng_seed: RngSeed::Fixed(0x0A17_7A11),
        failure_persistence: None,
        ..Config::default()
    }
}
