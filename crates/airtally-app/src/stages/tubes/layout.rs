//! What is laid where nothing is typed: every default, to see and to change.

use crate::context::View;
use crate::desk::Fold;
use crate::parts::choices::choice_fields;
use crate::parts::entry::plain;
use crate::parts::fold::fold;
use crate::ui::el::{el, els, nodes, text};
use airtally::given::GivenId as G;
use airtally::house::{Choice, Field, TubeSize};
use airtally::id::Curve;
use airtally_words::page as say;
use yew::prelude::*;

/// The part.
pub fn layout(view: &View) -> Html {
    fold(view, Fold::Layout, say::LAYOUT, say::LAYOUT_NOTE, || {
        let tubes = [Field::Given(G::RunLength), Field::Given(G::RunBends), Field::Given(G::BendRadius)];
        let bore = match view.page.report.runs().tube {
            TubeSize::Od63 => &[G::Bore63][..],
            TubeSize::Od75 => &[G::Bore75],
            TubeSize::Od90 => &[G::Bore90],
            TubeSize::Oval => &[G::OvalWide, G::OvalHigh],
        };
        let tubes = tubes.into_iter().chain(bore.iter().map(|id| Field::Given(*id)));
        let tubes = tubes.chain([Field::Given(G::TubeRoughness), Field::Curve(Curve::Tube)]);
        let valves = [
            Field::Given(G::ValvePressure),
            Field::Curve(Curve::Valve),
            Field::Curve(Curve::Setting),
            Field::Given(G::ValveArea),
        ];
        let manifolds = choice_fields(&view.page, &view.hands, &[Choice::Manifolds]).into_iter().collect();
        nodes([
            group(view, say::LAYOUT_TUBES, nodes([]), tubes),
            group(view, say::LAYOUT_VALVES, nodes([]), valves.into_iter()),
            group(view, say::LAYOUT_MANIFOLDS, manifolds, [G::StoreyRise, G::SparePorts].map(Field::Given).into_iter()),
            group(view, say::LAYOUT_MAINS, nodes([]), MAINS.into_iter().map(Field::Given)),
            group(view, say::LAYOUT_UNIT, nodes([]), UNIT.into_iter().map(Field::Given)),
            group(view, say::LAYOUT_SITE, nodes([]), SITE.into_iter().map(Field::Given)),
        ])
    })
}

fn group(view: &View, heading: &'static str, first: Html, fields: impl Iterator<Item = Field>) -> Html {
    let fields = [first].into_iter().chain(fields.map(|field| plain(view, field)));
    nodes([el("h3", "row-name", [text(heading)]), els("div", "fields fields-two", fields)])
}

const MAINS: [G; 8] = [
    G::ColdDuct,
    G::MainLength,
    G::MainBends,
    G::OutdoorDuct,
    G::MainRoughness,
    G::SilencerLength,
    G::FaceSpeed,
    G::GrilleLoss,
];
const UNIT: [G; 7] =
    [G::FilterClean, G::FilterDirty, G::UnitInside, G::FanEfficiency, G::LeakFactor, G::UnitSound, G::SilencerLoss];
const SITE: [G; 4] = [G::Altitude, G::IndoorTemperature, G::IndoorHumidity, G::OutdoorTemperature];
