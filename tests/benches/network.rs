//! How long a network takes to solve, from rest: two houses of the reference answers, and one far beyond any house, to see
//! that time grows no faster than tubes. Native (`cargo bench`) and as WebAssembly under Node, so that the two times can be
//! set side by side, and beside those of other programs (`reference/pace.py`).

#[path = "../reference/house.rs"]
mod house;
#[cfg(target_family = "wasm")]
mod page;

use airtally::network::Network;
use std::hint::black_box;

/// Each network by its number of tubes.
fn networks() -> Vec<(usize, Network)> {
    let lines = include_str!("../reference/answers.jsonl").lines();
    let kept = lines.filter(|line| line.starts_with("{\"kind\": \"network\""));
    let mut networks: Vec<(usize, Network)> = kept
        .map(|line| serde_json::from_str::<house::Answer>(line).expect("a network"))
        .filter(|answer| [40, 400].contains(&answer.tubes))
        .map(|answer| (answer.tubes, answer.network()))
        .collect();
    networks.push((4000, house::manifolds(100, 40)));
    networks
}

/// How many steps it took.
fn solve(network: &Network) -> u32 {
    black_box(network).solve(None).map_or(0, |flowing| flowing.steps)
}

#[cfg(not(target_family = "wasm"))]
fn main() {
    use criterion::{BenchmarkId, Criterion, Throughput};
    let mut criterion = Criterion::default().configure_from_args();
    let mut group = criterion.benchmark_group("network");
    for (tubes, network) in &networks() {
        group.throughput(Throughput::Elements(*tubes as u64));
        group.bench_with_input(BenchmarkId::from_parameter(tubes), network, |bench, network| {
            bench.iter(|| solve(network));
        });
    }
    group.finish();
    criterion.final_summary();
}

#[cfg(target_family = "wasm")]
fn main() {}

#[cfg(target_family = "wasm")]
mod in_node {
    use super::{networks, solve};
    use wasm_bindgen_test::{Criterion, wasm_bindgen_bench};

    #[wasm_bindgen_bench]
    fn network(criterion: &mut Criterion) {
        for (tubes, network) in networks() {
            criterion.bench_function(&format!("network/{tubes}"), |bench| bench.iter(|| solve(&network)));
        }
    }
}
