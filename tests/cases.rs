//! Worked examples and printed tables, one file a topic in `tests/cases`.
#![cfg(not(target_family = "wasm"))]
#![allow(clippy::panic, reason = "a case that cannot be read must stop the run")]

mod runner;

use runner::check;

macro_rules! topics {
    ($($topic:ident),*) => {
        $(#[test] fn $topic() { check(stringify!($topic)); })*

        #[test]
        fn no_file_is_forgotten() {
            let mut known = [$(stringify!($topic)),*];
            known.sort_unstable();
            assert_eq!(runner::topics(), known);
        }
    };
}

topics!(
    adf,
    air,
    ashrae,
    ashrae_editions,
    bad_input,
    balance,
    canada,
    cold,
    co2,
    din,
    duct,
    en16798,
    fittings,
    france,
    imc,
    irc,
    ireland,
    nbc,
    network,
    netherlands,
    on_site,
    passive,
    second_opinions,
    shares,
    sound,
    transfer,
    tubes,
    washington
);
