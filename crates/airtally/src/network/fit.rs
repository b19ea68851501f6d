//! What the runs of a manifold really take, from the flows that were read at their ends.

use super::law::{SECONDS_PER_HOUR, per_second};
use super::{Branch, End, Fan, Flowing, Law, Network};
use crate::quantity::{Flow, Pressure};

/// One round of readings.
#[derive(Clone, Debug)]
pub struct Readings {
    /// The fan as it ran.
    pub fan: Fan,
    /// What is known to stand in each tube beyond its law: a throttle that was closed for this round.
    pub added: Vec<Law>,
    /// What was read at each tube.
    pub flows: Vec<Flow>,
    /// Pressure of the manifold, where it was read too.
    pub pressure: Option<Pressure>,
}

/// How many times as much as was reckoned is really taken.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    /// By all between fan and manifold. Stays 1 where readings say nothing of it: with a fan held at a flow.
    pub path: f64,
    /// By each tube.
    pub tubes: Vec<f64>,
    /// What is left between readings and fit: the root of the mean square, as a part of each reading.
    pub off: f64,
}

/// The runs that fit the readings best.
///
/// * Equation: least squares of `(q − q_read)/q_read`, and of the manifold's pressure likewise, over the logarithms of what each
///   part takes more; Gauss and Newton with Marquardt's damping, slopes by the laws' own
/// * Valid range: as many readings in every round as tubes, all above nought. `None` where the readings do not tell the parts
///   apart: one round without a pressure, or rounds that differ by the speed of the fan alone, which says nothing new where
///   all grows with the square
/// * Errors: a part is known half as well as a flow was read, or worse
/// * Source: least squares; the network's own equations
///
/// ```
/// use airtally::network::{Fan, Law, Readings, fit};
/// use airtally::quantity::{Flow, Pressure};
/// let square = |pascal| Law::default().rated(Pressure::ZERO, Pressure::from_pa(pascal), Flow::from_m3h(1.0));
/// let round = |closed: f64, read: [f64; 4]| Readings {
///     fan: Fan::Formula { shut: 300.0, linear: 0.15, square: 0.0012 },
///     added: [closed, 0.0, 0.0, 0.0].map(square).to_vec(),
///     flows: read.map(Flow::from_m3h).to_vec(),
///     pressure: None,
/// };
/// // Worked numbers of a handbook: the second time a valve of 0.05·q² was closed. The parts are 0.006, 0.03, 0.06, 0.05, 0.025.
/// let rounds = [round(0.0, [47.4, 33.5, 36.7, 51.9]), round(0.05, [31.6, 36.5, 40.0, 56.6])];
/// let found = fit(&square(0.006), &[square(0.03), square(0.06), square(0.05), square(0.05)], &rounds).unwrap();
/// assert!((found.path - 1.0).abs() < 0.02 && (found.tubes[0] - 1.0).abs() < 0.02);
/// assert!((found.tubes[3] - 0.5).abs() < 0.01);
/// ```
pub fn fit(path: &Law, tubes: &[Law], rounds: &[Readings]) -> Option<Fit> {
    let sizes = |round: &Readings| round.added.len() == tubes.len() && round.flows.len() == tubes.len();
    let read = |round: &Readings| round.flows.iter().all(|flow| *flow > Flow::ZERO && flow.is_finite());
    if tubes.is_empty() || rounds.is_empty() || !rounds.iter().all(|round| sizes(round) && read(round)) {
        return None;
    }
    let (logs, found) = Site { path, tubes, rounds }.descend()?;
    found.tells_apart().then_some(())?;
    let mut times = logs.into_iter().map(libm::exp);
    Some(Fit { path: times.next()?, tubes: times.collect(), off: f64::sqrt(found.square / found.count) })
}

/// What was reckoned, and what was read.
struct Site<'a> {
    path: &'a Law,
    tubes: &'a [Law],
    rounds: &'a [Readings],
}

/// The normal equations at one guess: the path first, then the tubes.
struct Look {
    matrix: Vec<Vec<f64>>,
    right: Vec<f64>,
    square: f64,
    count: f64,
}

impl Site<'_> {
    /// The lowest point, with what is seen there.
    fn descend(&self) -> Option<(Vec<f64>, Look)> {
        let mut logs = vec![0.0; self.tubes.len() + 1];
        let mut now = self.look(&logs)?;
        let mut damping = LIGHTLY;
        for _ in 0..MOST_LOOKS {
            let step = now.step(damping)?;
            let tried: Vec<f64> = logs.iter().zip(&step).map(|(log, step)| log + step.clamp(-1.0, 1.0)).collect();
            let Some(then) = self.look(&tried).filter(|then| then.square <= now.square) else {
                damping *= 10.0;
                continue;
            };
            (logs, now) = (tried, then);
            damping = (damping * 0.1).max(TINY);
            if step.iter().all(|step| step.abs() < REST) {
                break;
            }
        }
        Some((logs, now))
    }

    fn look(&self, logs: &[f64]) -> Option<Look> {
        let size = logs.len();
        let (matrix, right) = (vec![vec![0.0; size]; size], vec![0.0; size]);
        let mut look = Look { matrix, right, square: 0.0, count: 0.0 };
        let times: Vec<f64> = logs.iter().map(|log| libm::exp(*log)).collect();
        for round in self.rounds {
            self.add(&mut look, &times, round)?;
        }
        look.square.is_finite().then_some(look)
    }

    fn add(&self, look: &mut Look, times: &[f64], round: &Readings) -> Option<()> {
        let (first, rest) = times.split_first()?;
        let own: Vec<Law> = self.tubes.iter().zip(rest).map(|(law, times)| law.clone().times(*times)).collect();
        let path = self.path.clone().times(*first);
        let (flowing, manifold) = solved(&path, &own, round)?;
        let q = |at: usize| flowing.flows.get(at).map_or(f64::NAN, |flow| flow.as_m3h() / SECONDS_PER_HOUR);
        // How the manifold's pressure answers to each part, and each tube to the manifold and to itself.
        let whole = path.at(q(0));
        let steep =
            if round.fan.steady().is_some() { f64::INFINITY } else { whole.slope - round.fan.drive(q(0)).slope };
        let tubes: Vec<(f64, f64)> = (own.iter().zip(&round.added).enumerate())
            .map(|(at, (own, added))| {
                let taken = own.at(q(at + 1));
                (1.0 / (taken.slope + added.at(q(at + 1)).slope), taken.pressure)
            })
            .collect();
        let ease: f64 = tubes.iter().map(|(ease, _)| ease).sum();
        let answer = 1.0 / (1.0 / steep + ease);
        let by_path = if steep.is_finite() { -whole.pressure / (1.0 + steep * ease) } else { 0.0 };
        let manifold_moves: Vec<f64> =
            std::iter::once(by_path).chain(tubes.iter().map(|(ease, own)| answer * ease * own)).collect();
        for (at, ((ease, own), read)) in tubes.iter().zip(&round.flows).enumerate() {
            let read = per_second(*read);
            let mut row: Vec<f64> = manifold_moves.iter().map(|moves| moves * ease / read).collect();
            row[at + 1] -= own * ease / read;
            look.row(&row, q(at + 1) / read - 1.0);
        }
        if let Some(read) = round.pressure.filter(|read| *read > Pressure::ZERO) {
            let row: Vec<f64> = manifold_moves.iter().map(|moves| moves / read.as_pa()).collect();
            look.row(&row, manifold / read.as_pa() - 1.0);
        }
        Some(())
    }
}

/// The flows of a guess: path, then tubes; and the pressure of the manifold, Pa.
fn solved(path: &Law, tubes: &[Law], round: &Readings) -> Option<(Flowing, f64)> {
    let mut network = Network::default();
    let manifold = network.joint();
    let (law, fan) = (path.clone(), Some(round.fan.clone()));
    network.branch(Branch { from: End::Open, to: End::At(manifold), law, fan }).ok()?;
    for (tube, added) in tubes.iter().zip(&round.added) {
        let law = tube.clone().and(added.clone());
        network.branch(Branch { from: End::At(manifold), to: End::Open, law, fan: None }).ok()?;
    }
    let flowing = network.solve(None).ok().filter(|flowing| flowing.at_rest)?;
    let pressure = flowing.pressure(manifold)?.as_pa();
    Some((flowing, pressure))
}

impl Look {
    fn row(&mut self, row: &[f64], off: f64) {
        for (at, own) in row.iter().enumerate() {
            self.right[at] -= own * off;
            for (sum, other) in self.matrix[at].iter_mut().zip(row) {
                *sum += own * other;
            }
        }
        self.square += off * off;
        self.count += 1.0;
    }

    /// The step down, damped. A part that nothing was read of stays.
    fn step(&self, damping: f64) -> Option<Vec<f64>> {
        let (root, _) = self.root(damping);
        let size = self.right.len();
        let mut x = self.right.clone();
        for at in 0..size {
            let known: f64 = (0..at).map(|k| root[at][k] * x[k]).sum();
            x[at] = (x[at] - known) / root[at][at];
        }
        for at in (0..size).rev() {
            let known: f64 = (at + 1..size).map(|k| root[k][at] * x[k]).sum();
            x[at] = (x[at] - known) / root[at][at];
        }
        x.iter().all(|step| step.is_finite()).then_some(x)
    }

    fn tells_apart(&self) -> bool {
        self.root(0.0).1 > APART
    }

    /// Cholesky's root of the matrix, and the least of its pivots as a part of what stood there.
    fn root(&self, damping: f64) -> (Vec<Vec<f64>>, f64) {
        let size = self.right.len();
        let mut root = vec![vec![0.0; size]; size];
        let mut least = f64::INFINITY;
        for at in 0..size {
            for k in 0..=at {
                let known: f64 = (0..k).map(|j| root[at][j] * root[k][j]).sum();
                let own = self.matrix[at][k] - known;
                if k < at {
                    root[at][k] = own / root[k][k];
                    continue;
                }
                let whole = self.matrix[at][at];
                if whole <= 0.0 {
                    root[at][at] = 1.0;
                    continue;
                }
                least = least.min(own / whole);
                root[at][at] = f64::sqrt((own + damping * whole).max(TINY * whole));
            }
        }
        (root, least)
    }
}

/// Steps of logarithms below this change nothing.
const REST: f64 = 1e-10;
const LIGHTLY: f64 = 1e-3;
/// It takes about ten.
const MOST_LOOKS: u32 = 100;
/// Parts whose pivot is below this share cannot be told apart: readings are good to a few in a hundred.
const APART: f64 = 1e-6;
const TINY: f64 = 1e-14;

#[cfg(test)]
mod tests {
    use super::*;

    fn square(pascal: f64) -> Law {
        Law::default().rated(Pressure::ZERO, Pressure::from_pa(pascal), Flow::from_m3h(1.0))
    }

    fn round(speed: f64, closed: f64, read: [f64; 4]) -> Readings {
        let fan = Fan::Formula { shut: 300.0, linear: 0.15, square: 0.0012 };
        let (added, flows) = ([closed, 0.0, 0.0, 0.0].map(square).to_vec(), read.map(Flow::from_m3h).to_vec());
        Readings { fan: fan.at(speed, 1.2), added, flows, pressure: None }
    }

    /// The root of the largest by the least eigenvalue, by Jacobi's turns.
    fn condition(mut matrix: Vec<Vec<f64>>) -> f64 {
        let size = matrix.len();
        for _ in 0..50 {
            for p in 0..size {
                for q in p + 1..size {
                    let angle = 0.5 * f64::atan2(2.0 * matrix[p][q], matrix[q][q] - matrix[p][p]);
                    let (s, c) = angle.sin_cos();
                    for row in &mut matrix {
                        (row[p], row[q]) = (c * row[p] - s * row[q], s * row[p] + c * row[q]);
                    }
                    let (above, below) = matrix.split_at_mut(q);
                    for (a, b) in above[p].iter_mut().zip(&mut below[0]) {
                        (*a, *b) = (c * *a - s * *b, s * *a + c * *b);
                    }
                }
            }
        }
        let own = (0..size).map(|at| matrix[at][at]);
        f64::sqrt(own.clone().fold(f64::MIN, f64::max) / own.fold(f64::MAX, f64::min))
    }

    /// Handbook of physics, section 11, with scipy: the Jacobian of these three rounds has the condition 8.524. Readings are printed
    /// to one decimal, which moves their weights by up to 2 in a thousand.
    #[test]
    fn slopes_are_those_of_another_program() {
        let tubes = [0.03, 0.06, 0.05, 0.025].map(square);
        let rounds = [
            round(1.0, 0.0, [47.4, 33.5, 36.7, 51.9]),
            round(1.0, 0.05, [31.6, 36.5, 40.0, 56.6]),
            round(0.8, 0.0, [37.9, 26.8, 29.4, 41.6]),
        ];
        let look = Site { path: &square(0.006), tubes: &tubes, rounds: &rounds }.look(&[0.0; 5]).unwrap();
        let ours = condition(look.matrix);
        assert!((ours / 8.524 - 1.0).abs() < 0.002, "{ours}");
    }
}
