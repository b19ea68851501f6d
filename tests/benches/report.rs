//! How long a whole report takes: facts, demand, shares, tubes, gaps, nights, checklist and the comparison of rule
//! sets, from typed text. The same houses native (`cargo bench`) and as WebAssembly under Node, so that the two times
//! can be set side by side.

use airtally::house::House;
use airtally::report::Report;
use airtally_tests::invented;
use std::hint::black_box;
use std::rc::Rc;

/// Rooms of a usual house, of a large one, and far beyond, to see that time grows no faster than rooms.
const ROOMS: [u32; 4] = [12, 60, 250, 1000];

/// Everything the page asks of a house after a keystroke.
fn whole_report(house: &Rc<House>) -> usize {
    let report = Report::of(Rc::clone(house));
    report.issues().len() + report.steps().len() + report.runs().runs.len() + report.codes().len()
}

#[cfg(not(target_family = "wasm"))]
fn main() {
    use criterion::{BenchmarkId, Criterion, Throughput};
    let mut criterion = Criterion::default().configure_from_args();
    let mut group = criterion.benchmark_group("report");
    for rooms in ROOMS {
        let house = Rc::new(invented::house_of(rooms));
        group.throughput(Throughput::Elements(u64::from(rooms)));
        group.bench_with_input(BenchmarkId::from_parameter(rooms), &house, |bench, house| {
            bench.iter(|| whole_report(black_box(house)));
        });
    }
    group.finish();
    criterion.final_summary();
}

#[cfg(target_family = "wasm")]
mod page;

#[cfg(target_family = "wasm")]
fn main() {}

#[cfg(target_family = "wasm")]
mod in_node {
    use super::{ROOMS, Rc, black_box, invented, whole_report};
    use wasm_bindgen_test::{Criterion, wasm_bindgen_bench};

    #[wasm_bindgen_bench]
    fn report(criterion: &mut Criterion) {
        for rooms in ROOMS {
            let house = Rc::new(invented::house_of(rooms));
            criterion.bench_function(&format!("report/{rooms}"), |bench| {
                bench.iter(|| whole_report(black_box(&house)));
            });
        }
    }
}
