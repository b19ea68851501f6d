//! The riser: unit, manifolds and every tube, storey above storey; supply on the left, extract on the right.

use super::{Anchor, Drawing, Pen, Said, Shape};
use crate::facts::Facts;
use crate::given::Givens;
use crate::quantity::Length;
use crate::rules::Air;
use crate::runs::{Manifold, Run, Runs};

/// Draws it; nothing for a house without tubes. The unit stands at the foot, wherever it hangs.
pub fn riser(facts: &Facts, runs: &Runs, givens: &Givens) -> Option<Drawing> {
    let storey = |run: &Run| facts.rooms.iter().find(|room| room.id == run.room).map_or(0, |room| room.storey);
    let mut storeys: Vec<i8> = Vec::new();
    for run in &runs.runs {
        let own = storey(run);
        if let Err(at) = storeys.binary_search(&own) {
            storeys.insert(at, own);
        }
    }
    storeys.last()?;
    let mut shapes = Vec::new();
    let mut top = 0.0;
    for floor in storeys.into_iter().rev() {
        shapes.push(Shape::Line((0.0, top + HEAD), (WIDE, top + HEAD), Pen::Rule));
        shapes.push(Shape::Words((0.0, top + HEAD - GAP), Anchor::Start, Said::Storey(floor)));
        top += HEAD;
        let mut deepest = 0;
        for air in Air::BOTH {
            let own = runs.side(air).filter(|run| storey(run) == floor);
            for (at, run) in own.enumerate() {
                deepest = deepest.max(at + 1);
                one(&mut shapes, run, top + at as f64 * ROW, run.length(givens));
            }
        }
        top += deepest as f64 * ROW;
        top += of_storey(&mut shapes, runs, floor, top);
    }
    trunk(&mut shapes, runs, top);
    Some(Drawing { size: (WIDE, top + FOOT), shapes })
}

/// One run: its words at the side, its tubes to the trunk.
fn one(shapes: &mut Vec<Shape>, run: &Run, top: f64, length: Length) {
    let trunk = trunk_of(run.air);
    let (anchor, edge) = if run.air == Air::Supply { (Anchor::Start, 0.0) } else { (Anchor::End, WIDE) };
    shapes.push(Shape::Words((edge, top + FIRST), anchor, Said::Run(run.air, run.mark, run.room)));
    let tubes = Said::Tubes(run.tubes.value, length, run.normal);
    shapes.push(Shape::Words((edge, top + SECOND), anchor, tubes));
    shapes.push(Shape::Line((edge, top + LINE), (trunk, top + LINE), Pen::Duct(run.air)));
    shapes.push(Shape::Line((trunk, top + LINE), (trunk, top + ROW + LINE), Pen::Duct(run.air)));
}

/// The manifolds of a storey, below its runs; gives back how high they stand.
fn of_storey(shapes: &mut Vec<Shape>, runs: &Runs, floor: i8, top: f64) -> f64 {
    let own: Vec<_> = runs.manifolds.iter().filter(|own| own.storey == Some(floor)).collect();
    own.iter().for_each(|own| manifold(shapes, own, top));
    if own.is_empty() { 0.0 } else { UNIT }
}

fn manifold(shapes: &mut Vec<Shape>, own: &Manifold, top: f64) {
    let trunk = trunk_of(own.air);
    shapes.push(Shape::Box((trunk - HALF, top + BOX), (trunk + HALF, top + BOX + THICK), Pen::Full));
    let (anchor, edge) = if own.air == Air::Supply { (Anchor::Start, 0.0) } else { (Anchor::End, WIDE) };
    shapes.push(Shape::Words((edge, top + BOX + THICK), anchor, Said::Manifold(own.air, own.ports)));
}

const fn trunk_of(air: Air) -> f64 {
    match air {
        Air::Supply => SUPPLY,
        Air::Extract => EXTRACT,
    }
}

/// The trunks down to the manifolds, and the unit below them.
fn trunk(shapes: &mut Vec<Shape>, runs: &Runs, top: f64) {
    let first = HEAD + LINE;
    for own in runs.manifolds.iter().filter(|own| own.storey.is_none()) {
        manifold(shapes, own, top);
    }
    for air in Air::BOTH.into_iter().filter(|air| runs.tubes(*air) > 0) {
        let trunk = trunk_of(air);
        shapes.push(Shape::Line((trunk, first), (trunk, top + UNIT), Pen::Duct(air)));
    }
    shapes.push(Shape::Box((SUPPLY - HALF, top + UNIT), (EXTRACT + HALF, top + UNIT + TALL), Pen::Ink));
    shapes.push(Shape::Words((WIDE / 2.0, top + UNIT + TALL / 2.0 + GAP), Anchor::Middle, Said::Unit));
}

const WIDE: f64 = 340.0;
/// Where the trunks stand.
const SUPPLY: f64 = 155.0;
const EXTRACT: f64 = 185.0;
const HEAD: f64 = 30.0;
const GAP: f64 = 5.0;
const ROW: f64 = 44.0;
const FIRST: f64 = 16.0;
const SECOND: f64 = 31.0;
const LINE: f64 = 37.0;
/// The manifolds.
const BOX: f64 = 18.0;
const THICK: f64 = 10.0;
const HALF: f64 = 12.0;
/// The unit.
const UNIT: f64 = 48.0;
const TALL: f64 = 34.0;
const FOOT: f64 = 90.0;
