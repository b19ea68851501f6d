//! What comes out of the runs as they were pulled, while every throttle stays as it was planned.

use super::plan::{Met, Plan};
use crate::network::Fan;
use crate::quantity::{Flow, Length, Pressure};
use crate::runs::Run;

/// The flow of each run that was pulled in another way, and of no other. The unit holds its total.
pub(super) fn flows(plan: &Plan) -> Vec<Option<Flow>> {
    let differs = plan.runs.iter().any(|(run, _)| run.built.is_some());
    let met = || Met { fan: Fan::Steady(plan.normal), filter: Pressure::ZERO, leak: None, pulled: true, upset: None };
    let found = if differs { plan.flows(&met()) } else { None };
    let flow = |at: usize| found.as_ref().and_then(|found| found.runs.get(at)).copied();
    plan.runs.iter().enumerate().map(|(at, (run, _))| run.built.and_then(|_| flow(at))).collect()
}

/// Length of each tube and their number, as pulled.
pub(super) fn pulled(usual: Length, run: &Run) -> (Length, u32) {
    let planned = run.legs.unwrap_or(usual);
    run.built.map_or((planned, run.tubes.value), |built| (built.length.unwrap_or(planned), built.tubes))
}
