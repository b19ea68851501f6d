//! The steps there are, and the phases of the work.

use super::order::{COUNT, Row, TABLE};

/// A phase of the work, in working order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Phase {
    /// Before you start: questions that stop the work.
    Before,
    /// Set out.
    SetOut,
    /// Drill.
    Drill,
    /// Pull the tubes.
    Pull,
    /// Fix unit and manifolds.
    Fix,
    /// Connect.
    Connect,
    /// Seal and test.
    Seal,
    /// Insulate.
    Insulate,
    /// Drain.
    Drain,
    /// Cap and protect.
    Protect,
    /// Before power.
    PreCheck,
    /// Power.
    Power,
    /// Measure.
    Measure,
    /// Hand over.
    HandOver,
}

impl Phase {
    /// All of them, in working order.
    pub const ALL: [Self; 14] = [
        Self::Before,
        Self::SetOut,
        Self::Drill,
        Self::Pull,
        Self::Fix,
        Self::Connect,
        Self::Seal,
        Self::Insulate,
        Self::Drain,
        Self::Protect,
        Self::PreCheck,
        Self::Power,
        Self::Measure,
        Self::HandOver,
    ];
}

/// A visit to the site: some phases that belong together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Visit {
    /// Look, ask, set out.
    Survey,
    /// Everything that the board will hide.
    FirstFix,
    /// Everything before and at the first start.
    StartUp,
    /// Read, set, explain.
    Measuring,
}

impl Visit {
    /// All of them, in working order.
    pub const ALL: [Self; 4] = [Self::Survey, Self::FirstFix, Self::StartUp, Self::Measuring];
}

impl Phase {
    /// The visit it belongs to.
    pub const fn visit(self) -> Visit {
        match self {
            Self::Before | Self::SetOut => Visit::Survey,
            Self::Drill
            | Self::Pull
            | Self::Fix
            | Self::Connect
            | Self::Seal
            | Self::Insulate
            | Self::Drain
            | Self::Protect => Visit::FirstFix,
            Self::PreCheck | Self::Power => Visit::StartUp,
            Self::Measure | Self::HandOver => Visit::Measuring,
        }
    }
}

/// A kind of step, in working order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum StepRule {
    /// Ask for appliances that take their air from the house. Stops the work.
    AskOpenFlues,
    /// See which old fans there are. Stops the work.
    SurveyOldFans,
    /// See which trickle vents and air bricks there are. Stops the work.
    SurveyVents,
    /// Look for board that may hold asbestos. Stops the work.
    LookForSuspectBoard,
    /// See what the joists are and how big a hole they bear. Stops the work.
    CheckStructure,
    /// List every crossing of a fire line and of the air barrier. Stops the work.
    ListCrossings,
    /// Keep the garage closed to the dwelling's air. Stops the work.
    KeepGarageClosed,
    /// Compare the unit with the flows it must give.
    CheckUnitDuty,
    /// Choose the place of the unit.
    PlaceUnit,
    /// Choose the place of the outside terminals.
    PlaceIntake,
    /// Mark the supply valves of bedrooms.
    PlaceBedroomValves,
    /// Mark the extract valves.
    PlaceExtractValves,
    /// Mark the kitchen's valve.
    PlaceKitchenValve,
    /// Choose the place of the manifolds.
    PlaceManifolds,
    /// Mark one terminal and its holes.
    SetOutTerminal,
    /// Drill the two cores through the outside wall.
    DrillCores,
    /// Drill the holes for the tubes.
    DrillTubeHoles,
    /// Keep bends wide.
    BendWide,
    /// Pull this run's tubes.
    PullTubes,
    /// Support the tubes.
    SupportTubes,
    /// Photograph the routes and write down what differs.
    RecordRoutes,
    /// Hang the unit.
    HangUnit,
    /// Fix the manifolds.
    FixManifolds,
    /// Fix the silencers.
    FixSilencers,
    /// Connect the tubes to the manifolds.
    ConnectTubes,
    /// Connect the mains.
    ConnectMains,
    /// Seal the joints.
    SealJoints,
    /// Lay the cables that are forgotten before the board goes up.
    LayCables,
    /// Test for leaks.
    LeakTest,
    /// Give the exhaust duct its fall.
    SlopeExhaust,
    /// Insulate the cold ducts.
    InsulateColdDucts,
    /// Fit the trap.
    FitTrap,
    /// Give the drain its fall.
    FallDrain,
    /// Close every crossing of a fire line and of the air barrier.
    CloseCrossings,
    /// Close walls and ceilings.
    CloseUp,
    /// Keep open ends capped.
    CapEnds,
    /// Wait until the dust is gone.
    DustGone,
    /// Fit the filters.
    FitFilters,
    /// Fill the trap.
    FillTrap,
    /// Take off the caps and open the valves.
    OpenValves,
    /// Cut the gap under this room's door.
    CutUndercut,
    /// Shut windows and doors, switch other fans off.
    ShutHouse,
    /// Wait for weather in which readings hold.
    CalmWeather,
    /// See that carbon monoxide alarms are where they must be.
    FitCoAlarms,
    /// Have the unit wired.
    WireUnit,
    /// Start the unit.
    StartUnit,
    /// Let the flows settle.
    LetSettle,
    /// Read every terminal of one side.
    ReadTerminals,
    /// Compare the totals of both sides.
    CompareTotals,
    /// Read the flows at boost.
    ReadBoost,
    /// Have flued appliances tested for spillage.
    TestSpillage,
    /// Lock the valves.
    LockValves,
    /// Note when filters are due.
    NoteFilterDates,
    /// Hand over the papers.
    HandOverPapers,
}

/// What a step waits for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Waits {
    /// Every step of this rule.
    Step(StepRule),
    /// Every step of this phase.
    Phase(Phase),
}

impl StepRule {
    /// All of them, in working order.
    pub const ALL: [Self; COUNT] = {
        let mut all = [Self::AskOpenFlues; COUNT];
        let mut at = 0;
        while at < COUNT {
            all[at] = TABLE[at].rule;
            at += 1;
        }
        all
    };

    /// A stable id for files.
    pub const fn id(self) -> &'static str {
        self.row().id
    }

    /// The phase it belongs to.
    pub const fn phase(self) -> Phase {
        self.row().phase
    }

    /// What must be ticked before it can be done. Only earlier steps are named.
    pub const fn waits(self) -> &'static [Waits] {
        self.row().waits
    }

    const fn row(self) -> &'static Row {
        &TABLE[self as usize]
    }
}
