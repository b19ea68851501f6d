//! Rules of thumb: how the step is done, and why so.

use airtally::steps::StepRule as R;

/// The rule of thumb of a step.
pub const fn rule(rule: R) -> &'static str {
    RULES[rule as usize].1
}

/// In working order, each beside the step it belongs to.
pub(super) static RULES: [(R, &str); R::ALL.len()] = [
    (
        R::AskOpenFlues,
        "Stoves, open fires, boilers, water heaters, gas cookers: note how each gets its air and where its smoke goes. \
         No unit and no intake in a room with an open flue.",
    ),
    (
        R::LookForSuspectBoard,
        "Old board, floor tiles, pipe lagging, flue boxes. Note old fans and trickle vents on the same round.",
    ),
    (
        R::CheckStructure,
        "Note kind, depth, span, spacing and direction. Where a hole does not fit: along the joists, a flat tube, or a \
         dropped ceiling.",
    ),
    (
        R::ListCrossings,
        "One box to tick for each place where a duct goes through the air barrier, a fire line or the wall to a \
         neighbour: what seals it, and who says so.",
    ),
    (R::KeepGarageClosed, "No terminal, no return and no leak there; better no duct through it at all."),
    (
        R::CheckUnitDuty,
        "A unit at its limit is loud and has nothing left for dirty filters. Ask for its curve, and whether its fans \
         hold the speed or the flow.",
    ),
    (
        R::PlaceUnit,
        "Inside the warm house, on a heavy wall, not over a bedroom. High enough for trap and drain, with a door wide \
         enough to take it out again.",
    ),
    (
        R::PlaceIntake,
        "High, sheltered, above the snow, easy to clean. Slow air in the face of the grille; mesh of 6 to 13 mm, \
         never finer.",
    ),
    (R::PlaceBedroomValves, "Not over the bed, not behind the door leaf, nothing in the way of the jet."),
    (R::PlaceExtractValves, "High up, on the side away from the door. In a bathroom beside the shower, not above it."),
    (R::PlaceKitchenValve, "Further is better: 2 to 3 m. A grease filter, or a duct that can be cleaned."),
    (
        R::PlaceManifolds,
        "Where a hand reaches every throttle later. One manifold for each storey when the longest run is more than \
         three times the shortest.",
    ),
    (R::DrillCores, "Duct, insulation on both sides and room to seal. The fall lets rain and condensate run out."),
    (
        R::DrillTubeHoles,
        "On the middle of the joist's depth, well apart, with smooth edges: a tube pulls hard over a burr.",
    ),
    (
        R::BendWide,
        "Bend by hand over the knee, never over an edge. No bend within a diameter of a spigot or a support.",
    ),
    (
        R::PullTubes,
        "One piece from manifold to valve, no joint in between, never one tube to two rooms. Twins equally long. Mark \
         both ends before you cut.",
    ),
    (R::SupportTubes, "Or closer where the maker says so. Hold without squeezing; leave no sag where water can stand."),
    (
        R::RecordRoutes,
        "A tape measure in every picture. Write down longer routes and missing twins at once: the flow changes.",
    ),
    (
        R::HangUnit,
        "On rubber mounts, level or tilted to its drain. Soft pieces between unit and ducts keep the hum out.",
    ),
    (R::FixManifolds, "Three diameters of straight main before each. Cap the spare ports tightly: they leak."),
    (R::FixSilencers, "One on supply and one on extract, between unit and manifold, two diameters from the fan."),
    (R::ConnectTubes, "Mark to mark. Ring on, push until it clicks, pull to see that it holds."),
    (
        R::ConnectMains,
        "Four ducts, four names: outdoor, supply, extract, exhaust. Rigid all the way; a flexible piece only at the \
         unit, stretched, never as a bend.",
    ),
    (R::SealJoints, "Three screws equally spaced on mains, then mastic or listed tape. Cloth tape does not last."),
    (
        R::LayCables,
        "Boost switches, sensors, the isolator in sight of the unit: what is forgotten before the board goes up.",
    ),
    (
        R::LeakTest,
        "Cap every valve, blow into one side, read, then the other. Keep pressure, flow, side and a photograph.",
    ),
    (
        R::InsulateColdDucts,
        "Closed-cell, with a jacket that keeps vapour out, taped at both ends and through the wall sleeve. More where \
         winters are hard or the room is damp.",
    ),
    (
        R::FitTrap,
        "Size it for the suction at the pan with dirty filters, not for the pressure in the ducts. A trap without \
         water suits a drain that is dry all summer.",
    ),
    (
        R::FallDrain,
        "Twice to five times the fall is better. To an indoor drain, with an air gap, where it can be cleaned.",
    ),
    (R::CloseUp, "After this nobody sees the tubes again. Leave the hatches."),
    (R::CapEnds, "From delivery to the first start, also overnight. Dust in a tube stays there."),
    (R::DustGone, "Plaster, sanding and sawing finished, floors swept, the unit wiped inside."),
    (
        R::FitFilters,
        "The right way round: the arrow follows the air. Filters that ran while people built are not clean.",
    ),
    (R::FillTrap, "Pour until it runs over, and see that the drain takes it."),
    (R::OpenValves, "Valves and throttles fully open, exchanger in, dampers open, summer bypass closed."),
    (
        R::CutUndercut,
        "Measure above the finished floor, carpet too. A grille or a wall opening of the same area does as well.",
    ),
    (R::ShutHouse, "Inner doors shut too. Cooker hood, dryer and bathroom fans off while anyone reads."),
    (R::CalmWeather, "Above 0 °C, so that frost protection rests. In worse weather a round is only provisional."),
    (R::FitCoAlarms, "Wherever something burns fuel, and beside an attached garage. Press the test button."),
    (R::WireUnit, "Its own protected circuit, an isolator in sight of the unit."),
    (R::StartUnit, "At the normal level. Listen, feel for air at each valve, look for water under the unit."),
    (R::LetSettle, "After every change of level or valve."),
    (
        R::ReadTerminals,
        "Set the hood to zero, hold it tight, three readings where the flow is small. The one that gets the least of \
         its share stays fully open.",
    ),
    (R::CompareTotals, "Equal is the aim. Add up what was read; compare with the mains where there are test points."),
    (R::ReadBoost, "The wet rooms most of all. Then once more at the lowest level."),
    (R::TestSpillage, "Doors shut, every fan and boost on: the worst case of the house."),
    (R::LockValves, "A valve that somebody turns upsets all the others."),
    (
        R::NoteFilterDates,
        "The fine outdoor filter lasts about six months, a year at most; after building work change at once.",
    ),
    (
        R::HandOverPapers,
        "Flows as designed and as read, plan of the tubes, filters and where they are, how to switch levels and how \
         to stop the unit.",
    ),
];
