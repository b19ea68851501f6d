//! Cases about what stands in a duct's way. What has no unit reads as a `ratio`.

use super::call::as_length;
use super::physics::{bare, measure, section};
use super::read::Found;
use airtally::duct::leak::Tightness;
use airtally::duct::tee::{self, Tee};
use airtally::duct::{bend, change, corrugated, restrictor};
use serde::Deserialize;

/// A fitting with its shape.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub enum Fitting {
    /// Reads as `loss`.
    Mitre { angle: f64 },
    /// Out of a box into a tube, radius of the edge in bores: reads as `loss`.
    RoundedEdge { radius: f64 },
    /// A plate that is not thin: reads as `loss`.
    ThickPlate { hole: String, bore: String, thickness: String },
    /// A sharp tee of equal ducts: reads as `dividing branch`, `dividing run`, `combining branch`, `combining run`.
    Tee { share: f64 },
    /// A single corrugated wall: reads as `factor`.
    Corrugated { bore: String, pitch: String },
    /// Flexible duct that is shorter than it could be by this part: reads as `times`.
    PushedTogether { bore: String, shorter: f64 },
    /// Reads as `bore`.
    EqualRound { shape: String, wide: String, high: String },
    /// Reads as `class`.
    LeakageClass { of: String },
}

impl Fitting {
    pub fn read(&self, what: &str) -> Found {
        match (self, what) {
            (Self::Mitre { angle }, "loss") => bare(bend::mitre(*angle)),
            (Self::RoundedEdge { radius }, "loss") => bare(change::into_rounded_tube(*radius)),
            (Self::ThickPlate { hole, bore, thickness }, "loss") => {
                let [hole, bore, thickness] = [hole, bore, thickness].map(|text| as_length(text).as_m());
                bare(restrictor::thick_plate(hole / bore, thickness / hole))
            }
            (Self::Tee { share }, what) => of_tee(Tee { share: *share, branch: 1.0, angle: 90.0, edge: 0.0 }, what),
            (Self::Corrugated { bore, pitch }, "factor") => {
                bare(corrugated::friction(as_length(bore), as_length(pitch)))
            }
            (Self::PushedTogether { bore, shorter }, "times") => {
                bare(corrugated::pushed_together(as_length(bore), *shorter))
            }
            (Self::EqualRound { shape, wide, high }, "bore") => measure(Some(section(shape, wide, high).equal_round())),
            (Self::LeakageClass { of }, "class") => bare(Some(tightness(of).american())),
            _ => panic!("nothing reads as \"{what}\" of a fitting"),
        }
    }
}

pub(super) fn tightness(class: &str) -> Tightness {
    Tightness::ALL.into_iter().find(|known| format!("{known:?}") == class).expect("a class")
}

fn of_tee(tee: Tee, what: &str) -> Found {
    let (way, leg) = what.split_once(' ').expect("a way and a leg");
    let loss = match way {
        "dividing" => tee::dividing(tee),
        "combining" => tee::combining(tee),
        _ => panic!("air does not go \"{way}\" in a tee"),
    };
    bare(loss.map(|loss| if leg == "run" { loss.run } else { loss.branch }))
}
