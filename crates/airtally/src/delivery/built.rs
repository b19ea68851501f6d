//! What comes out of the runs as they were pulled, while every throttle stays as it was planned.

use super::ducts::Ducts;
use crate::network::{Branch, End, Fan, Network};
use crate::quantity::{Flow, Length, Pressure};
use crate::runs::Run;

/// The flow of each run that was pulled in another way, and of no other. The unit holds its total.
pub(super) fn flows(ducts: &Ducts, planned: &[(&Run, Pressure)]) -> Vec<Option<Flow>> {
    let found = if planned.iter().any(|(run, _)| run.built.is_some()) { solved(ducts, planned) } else { None };
    let flow = |at: usize| found.as_ref().and_then(|flows| flows.get(at + 1)).copied();
    planned.iter().enumerate().map(|(at, (run, _))| run.built.and_then(|_| flow(at))).collect()
}

/// Length of each tube and their number, as pulled.
pub(super) fn pulled(ducts: &Ducts, run: &Run) -> (Length, u32) {
    let planned = run.legs.unwrap_or(ducts.length);
    run.built.map_or((planned, run.tubes.value), |built| (built.length.unwrap_or(planned), built.tubes))
}

fn solved(ducts: &Ducts, planned: &[(&Run, Pressure)]) -> Option<Vec<Flow>> {
    let total = planned.iter().fold(Flow::ZERO, |sum, (run, _)| sum + run.normal);
    let mut network = Network::default();
    let manifold = network.joint();
    let main = ducts.main(Length::from_m(1.0), 1.0, ducts.indoor).law();
    let fan = Some(Fan::Steady(total));
    network.branch(Branch { from: End::Open, to: End::At(manifold), law: main, fan }).ok()?;
    for (run, throttle) in planned {
        let (length, tubes) = pulled(ducts, run);
        let law = ducts.run(run, length, tubes.max(1)).throttle(*throttle, run.normal);
        network.branch(Branch { from: End::At(manifold), to: End::Open, law, fan: None }).ok()?;
    }
    let flowing = network.solve(None).ok()?;
    flowing.at_rest.then_some(flowing.flows)
}
