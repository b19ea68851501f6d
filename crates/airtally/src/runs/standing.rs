//! Which manifold a run begins at.

use super::{Manifold, Run};
use crate::given::{GivenId, Givens};
use crate::house::Manifolds;
use crate::quantity::{Flow, Length};

/// The manifolds that stand so far.
pub(super) struct Standing {
    pub(super) storeys: Manifolds,
    pub(super) manifolds: Vec<Manifold>,
}

impl Standing {
    /// Puts a run on the manifold of its air and, where each storey has one, of its storey.
    pub(super) fn take(&mut self, run: &Run, storey: i8) -> usize {
        let storey = (self.storeys == Manifolds::Storeys).then_some(storey);
        let known = self.manifolds.iter().position(|own| own.air == run.air && own.storey == storey);
        let at = known.unwrap_or(self.manifolds.len());
        if known.is_none() {
            let (normal, boost, rise) = (Flow::ZERO, Flow::ZERO, Length::ZERO);
            self.manifolds.push(Manifold { air: run.air, storey, tubes: 0, ports: 0, normal, boost, rise });
        }
        let own = &mut self.manifolds[at];
        own.tubes = own.tubes.saturating_add(run.tubes.value);
        own.normal += run.normal;
        own.boost += run.boost;
        at
    }

    /// All of them with their ports, in the order in which they were taken.
    pub(super) fn finish(mut self, givens: &Givens) -> Vec<Manifold> {
        let spare = givens.value(GivenId::SparePorts) as u32;
        let lowest = self.manifolds.iter().filter_map(|own| own.storey).min();
        let storey = givens.length(GivenId::StoreyRise);
        for own in &mut self.manifolds {
            own.ports = own.tubes.saturating_add(spare);
            let up = own.storey.zip(lowest).map_or(0.0, |(own, lowest)| f64::from(own) - f64::from(lowest));
            own.rise = storey * up;
        }
        self.manifolds
    }
}
