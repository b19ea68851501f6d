//! Native = wasm, to the last bit.
//!
//! Both runs work through the same numbers and boil every bit of the results down to one digest. The native run
//! says its digest; the workshop hands it to the build of the wasm run, which compares. Nothing is committed.

use airtally::house::House;
use airtally::report::Report;
use airtally::rules::RuleSet;
use airtally_tests::invented;

#[cfg(not(target_family = "wasm"))]
#[test]
fn native_says_its_digest() {
    println!("parity digest: {}", digest());
}

#[cfg(target_family = "wasm")]
mod in_browser {
    use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

    wasm_bindgen_test_configure!(run_in_browser);

    #[wasm_bindgen_test]
    fn wasm_agrees_with_native() {
        let native = option_env!("AIRTALLY_NATIVE_DIGEST").unwrap_or("none: run this through `cargo xtask test`");
        assert_eq!(super::digest(), native);
    }
}

/// One digest for each part, so that a difference says where it is.
fn digest() -> String {
    let chains = RuleSet::ALL.map(|rules| format!("{}={}", rules.id(), boiled_down(|bits| houses(rules, bits))));
    format!("elementary={},{}", boiled_down(elementary), chains.join(","))
}

/// Houses of each rule set.
const HOUSES: u64 = 24;

fn houses(rules: RuleSet, bits: &mut Bits) {
    for seed in 0..HOUSES {
        whole_chain(&invented::house(rules, seed), bits);
    }
}

/// Every part of the report and every line of its working. Rust writes an `f64` with as many digits as tell it apart from every other one, so
/// that the text of the parts holds every bit of their numbers.
fn whole_chain(house: &House, bits: &mut Bits) {
    let report = Report::of(house.clone());
    let parts = [
        format!("{:?}", report.demand()),
        format!("{:?}", report.shares()),
        format!("{:?}", report.runs()),
        format!("{:?}", report.openings()),
        format!("{:?}", report.nights()),
        format!("{:?}", report.steps()),
        format!("{:?}", report.codes()),
        format!("{:?}", report.issues()),
    ];
    parts.iter().for_each(|part| bits.text(part));
    for id in report.lines() {
        bits.text(&format!("{:?} {:?}", report.line(id), report.terms(id)));
    }
}

/// The elementary functions that the calculation is allowed, over the range of numbers it meets.
fn elementary(bits: &mut Bits) {
    for step in 1..=2_000_u32 {
        let x = f64::from(step) * 0.013_7;
        for y in [libm::exp(-x), libm::log(x), libm::log10(x), libm::pow(x, 0.65), libm::cbrt(x), libm::sqrt(x)] {
            bits.number(y);
        }
    }
}

fn boiled_down(work: impl Fn(&mut Bits)) -> String {
    let mut bits = Bits(0xcbf2_9ce4_8422_2325);
    work(&mut bits);
    format!("{:016x}", bits.0)
}

/// Bytes boiled down to one number (64-bit FNV-1a).
struct Bits(u64);

impl Bits {
    fn number(&mut self, number: f64) {
        self.bytes(&number.to_bits().to_le_bytes());
    }

    fn text(&mut self, text: &str) {
        self.bytes(text.as_bytes());
    }

    fn bytes(&mut self, bytes: &[u8]) {
        for byte in bytes {
            self.0 = (self.0 ^ u64::from(*byte)).wrapping_mul(0x0100_0000_01b3);
        }
    }
}
