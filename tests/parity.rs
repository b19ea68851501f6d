//! Native = wasm, to the last bit.
//!
//! Both runs work through the same numbers and boil every bit of the results down to one digest. The native run
//! says its digest; the workshop hands it to the build of the wasm run, which compares. Nothing is committed.

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

fn digest() -> String {
    let mut bits = Bits::default();
    elementary(&mut bits);
    bits.digest()
}

/// The elementary functions that the calculation is allowed, over the range of numbers it meets.
fn elementary(bits: &mut Bits) {
    for step in 1..=2_000_u32 {
        let x = f64::from(step) * 0.013_7;
        for y in [libm::exp(-x), libm::log(x), libm::log10(x), libm::pow(x, 0.65), libm::cbrt(x), libm::sqrt(x)] {
            bits.take(y);
        }
    }
}

/// Numbers boiled down bit by bit (64-bit FNV-1a).
struct Bits(u64);

impl Default for Bits {
    fn default() -> Self {
        Self(0xcbf2_9ce4_8422_2325)
    }
}

impl Bits {
    fn take(&mut self, number: f64) {
        for byte in number.to_bits().to_le_bytes() {
            self.0 = (self.0 ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        }
    }

    fn digest(&self) -> String {
        format!("{:016x}", self.0)
    }
}
