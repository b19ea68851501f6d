//! How long a network takes to solve, from rest: the houses of the reference answers, and one ten times as large.

#[path = "../reference/house.rs"]
#[cfg(not(target_family = "wasm"))]
mod house;

#[cfg(not(target_family = "wasm"))]
fn main() {
    use airtally::network::Network;
    use criterion::{BenchmarkId, Criterion, Throughput};
    use std::hint::black_box;

    let lines = include_str!("../reference/answers.jsonl").lines();
    let kept = lines.filter(|line| line.starts_with("{\"kind\": \"network\""));
    let mut houses: Vec<(usize, Network)> = kept
        .map(|line| serde_json::from_str::<house::Answer>(line).expect("a network"))
        .filter(|answer| [40, 400].contains(&answer.tubes))
        .map(|answer| (answer.flows.len(), answer.network()))
        .collect();
    houses.push((4000, house::manifolds(100, 40)));
    let mut criterion = Criterion::default().configure_from_args();
    let mut group = criterion.benchmark_group("network");
    for (branches, network) in &houses {
        group.throughput(Throughput::Elements(*branches as u64));
        group.bench_with_input(BenchmarkId::from_parameter(branches), network, |bench, network| {
            bench.iter(|| black_box(network).solve(None).map(|flowing| flowing.steps));
        });
    }
    group.finish();
    criterion.final_summary();
}

#[cfg(target_family = "wasm")]
fn main() {}
