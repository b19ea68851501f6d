//! What benchmarks print, set side by side.

use crate::tally;

/// A benchmark and its usual time.
#[derive(Debug, PartialEq)]
pub struct Timed {
    /// `network/40`, for a peer with its own name behind it: `network/40 scipy`.
    name: String,
    microseconds: f64,
}

/// The lines `name   time:   [least unit  usual unit  most unit]` of a text, with or without colours.
pub fn read(text: &str) -> Vec<Timed> {
    text.lines().filter_map(line).collect()
}

fn line(line: &str) -> Option<Timed> {
    let plain = without_colours(line);
    let (name, rest) = plain.split_once(" time:")?;
    let mut words = rest.trim().strip_prefix('[')?.strip_suffix(']')?.split_whitespace().skip(2);
    let number: f64 = words.next()?.parse().ok()?;
    let unit = match words.next()? {
        "ns" => 1e-3,
        "µs" => 1.0,
        "ms" => 1e3,
        "s" => 1e6,
        _ => return None,
    };
    Some(Timed { name: name.trim().to_owned(), microseconds: number * unit })
}

fn without_colours(line: &str) -> String {
    let mut parts = line.split('\x1b');
    let first = parts.next().unwrap_or_default().to_owned();
    parts.fold(first, |text, part| text + part.split_once('m').map_or(part, |(_, rest)| rest))
}

/// A row for each name; peers follow their network.
pub fn side_by_side(columns: &[(&str, Vec<Timed>); 3]) -> String {
    let [(_, native), (_, wasm), (_, peers)] = columns;
    let mut rows =
        vec![["", "native", "wasm", "wasm ÷ native", "best peer", "best peer ÷ native"].map(str::to_owned).to_vec()];
    for Timed { name, microseconds } in native {
        let wasm = wasm.iter().find(|timed| timed.name == *name).map(|timed| timed.microseconds);
        let own = peers.iter().filter(|peer| peer.name.split(' ').next() == Some(name));
        let peer = own.min_by(|one, other| one.microseconds.total_cmp(&other.microseconds));
        let times = |time: Option<f64>| time.map_or_else(String::new, |time| format!("{:.1}", time / microseconds));
        rows.push(vec![
            name.clone(),
            spoken(*microseconds),
            wasm.map_or_else(String::new, spoken),
            times(wasm),
            peer.map_or_else(String::new, |peer| format!("{} {}", spoken(peer.microseconds), peer_name(peer))),
            times(peer.map(|peer| peer.microseconds)),
        ]);
    }
    tally::table(&rows)
}

fn peer_name(peer: &Timed) -> &str {
    peer.name.split_once(' ').map_or("", |(_, name)| name)
}

fn spoken(microseconds: f64) -> String {
    if microseconds < 1e3 { format!("{microseconds:.1} µs") } else { format!("{:.2} ms", microseconds / 1e3) }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn lines_of_benchmarks_are_read() {
        let native = "network/40              time:   [26.726 µs 27.048 µs 27.391 µs]\n    thrpt:  [1.8 Melem/s 1.9 Melem/s 2.0 Melem/s]";
        assert_eq!(read(native), [Timed { name: "network/40".into(), microseconds: 27.048 }]);
        let wasm =
            "\x1b[32mnetwork/4000\x1b[0m   time:   [\x1b[2m2.09 ms\x1b[0m \x1b[1m2.15 ms\x1b[0m \x1b[2m2.2 ms\x1b[0m]";
        assert_eq!(read(wasm), [Timed { name: "network/4000".into(), microseconds: 2150.0 }]);
    }

    #[test]
    fn the_best_peer_stands_beside_us() {
        let of = |name: &str, microseconds| Timed { name: name.into(), microseconds };
        let peers = vec![of("network/40 slow", 9000.0), of("network/40 quick", 5000.0), of("network/400 quick", 1.0)];
        let columns =
            [("native", vec![of("network/40", 20.0)]), ("wasm", vec![of("network/40", 40.0)]), ("peers", peers)];
        let table = side_by_side(&columns);
        assert!(table.ends_with("network/40  20.0 µs  40.0 µs  2.0            5.00 ms quick  250.0\n"), "{table}");
    }
}
