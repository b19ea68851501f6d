//! What all air of a side passes, and what leads on to each manifold.

use super::ducts::{Ducts, Path};
use crate::duct::change::{INTO_BOX, INTO_TUBE};
use crate::given::{GivenId, Givens};
use crate::network::Law;
use crate::quantity::{Flow, Pressure, Velocity};
use crate::runs::Manifold;

/// The ducts of a side that are not tubes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Mains {
    /// Between grille and unit.
    pub outside: Path,
    /// From the unit to the manifold or, where each storey has one, to the box where the ways part.
    pub trunk: Path,
    /// A main to a manifold of a storey, without its rise; none where the trunk leads there.
    branch: Option<Path>,
    /// Loss of the grille on its face speed, and that speed at boost.
    pub grille: (f64, Velocity),
}

impl Mains {
    pub fn of(givens: &Givens, ducts: &Ducts, by_storey: bool) -> Self {
        let (main, outside) = (givens.length(GivenId::MainLength), givens.length(GivenId::OutdoorDuct));
        let silencer = givens.length(GivenId::SilencerLength) * SILENCER;
        let (indoor, outdoor) = (ducts.indoor, ducts.outdoor);
        let whole = ducts.main(main + silencer, INTO_TUBE + INTO_BOX, indoor);
        let short = ducts.main(silencer, INTO_TUBE + INTO_BOX, indoor).straight();
        let speed = Velocity::of(givens.measure(GivenId::FaceSpeed)).unwrap_or(Velocity::ZERO);
        Self {
            outside: ducts.main(outside, INTO_TUBE, outdoor),
            trunk: if by_storey { short } else { whole },
            branch: by_storey.then(|| ducts.main(main, INTO_TUBE + INTO_BOX, indoor)),
            grille: (givens.value(GivenId::GrilleLoss), speed),
        }
    }

    /// The main of its own that leads to a manifold.
    pub fn branch(&self, manifold: &Manifold) -> Option<Path> {
        self.branch.map(|path| Path { length: path.length + manifold.rise, ..path })
    }

    /// Speed in the face of the grille at a flow: it is chosen so that its face is as fast as it may be at boost.
    pub fn face_speed(&self, flow: Flow, boost: Flow) -> Velocity {
        if boost > Flow::ZERO { self.grille.1 * (flow.as_m3h() / boost.as_m3h()) } else { Velocity::ZERO }
    }

    /// Pressure of the grille. Equation: `p = K·ρ·v²/2`.
    pub fn grille_at(&self, speed: Velocity) -> Pressure {
        Pressure::from_pa(self.grille.0 * self.outside.air.density() * speed.as_ms() * speed.as_ms() / 2.0)
    }

    /// All that the whole air passes, one behind the other.
    pub fn common(&self, boost: Flow) -> Law {
        let grille = self.grille_at(self.face_speed(boost, boost));
        self.trunk.law().and(self.outside.law()).rated(Pressure::ZERO, grille, boost)
    }
}

impl Path {
    /// The same without bends.
    fn straight(self) -> Self {
        Self { bends: crate::legs::Bends::right(0), ..self }
    }
}

/// A straight round silencer takes about twice what a duct of its length takes: it counts double. Common practice.
const SILENCER: f64 = 2.0;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::Length;

    /// One law in series is the sum of its parts.
    #[test]
    fn what_all_air_passes_is_the_sum_of_its_parts() {
        let givens = Givens::registered();
        let section = crate::duct::section::Section::Round(Length::from_mm(63.0));
        let ducts = Ducts::of(&givens, section, 75.0, super::super::ducts::Measured::default()).unwrap();
        let mains = Mains::of(&givens, &ducts, false);
        let (flow, boost) = (Flow::from_m3h(150.0), Flow::from_m3h(200.0));
        let parts = mains.trunk.at(flow).pressure
            + mains.outside.at(flow).pressure
            + mains.grille_at(mains.face_speed(flow, boost));
        assert!((mains.common(boost).pressure(flow) - parts).abs().as_pa() < 1e-9);
    }
}
