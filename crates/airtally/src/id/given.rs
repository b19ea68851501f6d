//! Registered values by name; the values are in `given`.

/// A registered value.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GivenId {
    /// Smallest step of a terminal, m³/h.
    StepCubicMetres,
    /// Smallest step of a terminal, L/s.
    StepLitres,
    /// Smallest step of a terminal, cfm.
    StepCubicFeet,
    /// Ceiling height where none is typed.
    Ceiling,
    /// People in a main bedroom where none is typed.
    SleepersMain,
    /// People in another bedroom where none is typed.
    SleepersOther,
    /// Boost as a share of normal where the rule names no boost.
    BoostShare,
    /// Largest infiltration credit as a share of the total rate.
    AshraeCap,
    /// Exterior share of the envelope: 1 for a detached house.
    AshraeExteriorShare,
    /// Coefficient of A² in the 2019 equation.
    DinSquare,
    /// Coefficient of A in the 2019 equation.
    DinLinear,
    /// Constant of the 2019 equation.
    DinConstant,
    /// Moisture-protection share 2009: 0.3 high insulation, 0.4 low.
    DinMoisture2009,
    /// Moisture-protection share 2019: 0.2 … 0.4 by insulation and occupancy.
    DinMoisture2019,
    /// Reduced level as a share of nominal.
    DinReduced,
    /// Intensive level as a share of nominal.
    DinIntensive,
    /// Outdoor air per person.
    DinPerson,
    /// Kitchen extract.
    DinKitchen,
    /// Bathroom extract.
    DinBathroom,
    /// WC extract.
    DinWc,
    /// Utility or store extract.
    DinUtility,
    /// Supply weight of a living room.
    WeightLiving,
    /// Supply weight of a bedroom.
    WeightBedroom,
    /// Supply weight of any other habitable room.
    WeightOther,
    /// Continuous low speed as a share of the capacity, 0.40 … 0.60.
    CanadaLow,
    /// Kitchen exhaust on demand.
    CanadaKitchen,
    /// Bathroom exhaust on demand.
    CanadaBathroom,
    /// Kitchen exhaust all day.
    CanadaKitchenSteady,
    /// Bathroom exhaust all day.
    CanadaBathroomSteady,
    /// Bore of a tube of 63 mm outside.
    Bore63,
    /// Bore of a tube of 75 mm outside.
    Bore75,
    /// Bore of a tube of 90 mm outside.
    Bore90,
    /// Largest tube speed at normal.
    SpeedNormal,
    /// Largest tube speed to a bedroom at normal.
    SpeedBedroom,
    /// Largest tube speed at boost.
    SpeedBoost,
    /// How far past a limit a tube may be before another is added.
    CountSlack,
    /// Fewest tubes to a kitchen.
    KitchenTubes,
    /// More tubes than this to one room call for another bore.
    TubesMany,
    /// Spare ports on each manifold, capped.
    SparePorts,
    /// Added to a cut length for each end.
    CutEnd,
    /// Waste as a share of the cut length.
    CutWaste,
    /// Pressure across a closed door.
    TransferPressure,
    /// Discharge coefficient of a gap under a door.
    TransferDischarge,
    /// Air density, kg/m³.
    TransferDensity,
    /// Width of an inner door.
    DoorWidth,
    /// Taller gaps under a door are seldom accepted.
    UndercutTall,
    /// CO2 given off by a sleeper.
    SleeperCo2,
    /// CO2 outdoors.
    OutdoorCo2,
    /// Length of a night.
    NightHours,
    /// Above this the air is noticeably stale.
    Co2Noticeable,
    /// Above this it is unacceptable.
    Co2Unacceptable,
    /// Smallest bend radius by hand, in outside diameters.
    BendRadius,
    /// Most right-angle bends of a run.
    BendsMost,
    /// Largest distance between supports.
    SupportSpacing,
    /// Largest distance between supports, United States.
    SupportSpacingFeet,
    /// Longest piece of flexible duct, at the unit or a valve only.
    FlexibleLength,
    /// Clear space on the throttle side of a manifold.
    ManifoldClear,
    /// Side of a permanent hatch.
    Hatch,
    /// Length of a silencer.
    SilencerLength,
    /// Outside diameter of a silencer beyond its main.
    SilencerLining,
    /// Clear space in front of the unit for service.
    ServiceSpace,
    /// Longest duct from the unit to outdoors.
    OutdoorDuct,
    /// Boost as the largest share of the unit's maximum.
    UnitReserve,
    /// Largest speed in the mains at normal.
    MainSpeed,
    /// Largest depressurisation with an appliance that takes its air from the house, Germany.
    FlueGermany,
    /// Largest depressurisation with such an appliance, Canada.
    FlueCanada,
    /// Largest kitchen extract with an open gas flue, England.
    FlueKitchen,
    /// Added to a tube's outside diameter for the hole it is pulled through.
    HoleClearance,
    /// Largest hole as a share of a joist's depth, United States.
    HoleThird,
    /// Largest hole as a share of a joist's depth elsewhere.
    HoleQuarter,
    /// Insulation around an outside duct where it passes the wall.
    CoreInsulation,
    /// Added to a wall core for sealing.
    CoreClearance,
    /// Bore of the outside ducts.
    ColdDuct,
    /// Fall of the exhaust duct outward.
    CoreFall,
    /// Smallest fall of the condensate pipe.
    DrainFall,
    /// Suction at the drain pan with dirty filters.
    DrainSuction,
    /// Added to the trap's drop.
    TrapExtra,
    /// Pressure of the leak test.
    LeakPressure,
    /// Largest leak as a share of the design flow.
    LeakShare,
    /// Settling time before a reading.
    SettleTime,
    /// Strongest wind for readings, Beaufort.
    WindMost,
    /// Months between filter checks.
    FilterCheck,
    /// Distance of the intake from bins, parking, sewer vents and chimneys.
    IntakeClear,
    /// Distance of the intake from vents, chimneys, streets and parking, United States.
    IntakeClearFeet,
    /// Distance between the intake and the house's own exhaust, United States.
    OwnExhaustFeet,
    /// Distance between the intake and the house's own exhaust, Germany.
    OwnExhaustGermany,
    /// Distance between the intake and the house's own exhaust, Canada.
    OwnExhaustCanada,
    /// Distance of the intake from the house's own exhaust by the trade's reading of F326.
    OwnExhaustF326,
    /// Height of the intake above ground or snow, Canada.
    IntakeGroundCanada,
    /// Distance of the intake from what fouls the air, Canada.
    IntakeSourceCanada,
    /// Imbalance that a sound unit may have.
    Imbalance,
    /// Largest air speed in the face of an outside grille.
    FaceSpeed,
    /// Smallest distance of a kitchen terminal from the hob.
    HobDistance,
    /// Furthest an extract terminal may hang below the ceiling.
    ExtractBelowCeiling,
    /// Smallest distance of a supply valve from a bed head.
    BedHead,
    /// A terminal may differ from design by this share.
    TerminalTolerance,
    /// Supply and extract totals may differ by this share.
    TotalTolerance,
    /// Days until building control is told the measured flows, England.
    NoticeDays,
    /// Washington coefficient: 1 balanced and distributed, 1.25 one of the two, 1.5 neither.
    WashingtonQuality,
    /// Category of EN 16798-1, 1 to 4.
    EnCategory,
    /// Outdoor air per person.
    PassivePerson,
    /// Kitchen extract at the maximum level.
    PassiveKitchen,
    /// Bathroom extract at the maximum level.
    PassiveBathroom,
    /// WC, utility or store extract at the maximum level.
    PassiveOther,
    /// Standard level as a share of the maximum.
    PassiveStandard,
    /// Basic level as a share of the maximum.
    PassiveBasic,
    /// Least air change at the standard level.
    PassiveChanges,
    /// Least normal capacity with 1 bedroom.
    NbcLeast1,
    /// Most normal capacity with 1 bedroom.
    NbcMost1,
    /// Least normal capacity with 2 bedrooms.
    NbcLeast2,
    /// Most normal capacity with 2 bedrooms.
    NbcMost2,
    /// Least normal capacity with 3 bedrooms.
    NbcLeast3,
    /// Most normal capacity with 3 bedrooms.
    NbcMost3,
    /// Least normal capacity with 4 bedrooms.
    NbcLeast4,
    /// Most normal capacity with 4 bedrooms.
    NbcMost4,
    /// Least normal capacity with 5 bedrooms.
    NbcLeast5,
    /// Most normal capacity with 5 bedrooms.
    NbcMost5,
    /// Free area of the opening at an inner door, England.
    DoorEngland,
    /// Gap above the bare floor while its finish is missing, England.
    DoorEnglandBare,
    /// Free area at an inner door for each m³/h, in cm², Germany.
    DoorGermany,
    /// Largest pressure across a closed inner door, Germany.
    DoorPressureGermany,
    /// Largest pressure across a closed inner door, United States.
    DoorPressureAmerica,
    /// Length of a tube where none is typed.
    RunLength,
    /// Right-angle bends of a tube.
    RunBends,
    /// Absolute roughness of the inside of a tube.
    TubeRoughness,
    /// Pressure of an open valve at 30 m³/h.
    ValvePressure,
    /// Length of a main between unit and manifold.
    MainLength,
    /// Right-angle bends of a main or an outside duct.
    MainBends,
    /// Absolute roughness of the inside of a main.
    MainRoughness,
    /// Loss coefficient of an outside grille on its face speed.
    GrilleLoss,
    /// Height of the site above the sea.
    Altitude,
    /// Temperature indoors.
    IndoorTemperature,
    /// Relative humidity indoors.
    IndoorHumidity,
    /// Temperature outdoors when the unit is chosen.
    OutdoorTemperature,
    /// Largest pressure of a run at normal.
    RunPressureMost,
    /// Length of tube on a coil.
    CoilLength,
    /// Distance between brackets of mains and outside ducts.
    BracketSpacing,
    /// Length of the drain pipe.
    DrainLength,
    /// Hours of setting out and drilling for each valve.
    HoursSetOut,
    /// Hours of pulling each tube.
    HoursTube,
    /// Hours of fixing each valve with its box.
    HoursValve,
    /// Hours of hanging unit, manifolds and mains.
    HoursUnit,
    /// Hours of each duct outdoors.
    HoursOutside,
    /// Hours of testing, measuring and handing over for each valve.
    HoursMeasure,
    /// What is added on parts.
    PartsMargin,
    /// Tax on the whole.
    Tax,
    /// Free area of a supply valve.
    ValveArea,
    /// How well the insulation of cold ducts conducts, W/(m·K).
    Conductivity,
    /// Sound power of the unit into a duct at boost, as measured; 0 while it is not known.
    UnitSound,
    /// Pressure that the unit itself takes.
    UnitInside,
    /// How much a silencer's lining takes at best.
    LiningAbsorption,
    /// What a manifold takes of the sound.
    BoxDamping,
    /// What a metre of tube takes of it.
    TubeDamping,
    /// Diameter of a valve's opening.
    ValveBore,
    /// How long a furnished room rings.
    Reverberation,
    /// From a valve to an ear.
    EarDistance,
    /// The most that is heard in a bedroom.
    QuietBedroom,
    /// The most that is heard in other rooms.
    QuietLiving,
    /// Longer side of the inside of a flat oval tube.
    OvalWide,
    /// Shorter side of the inside of a flat oval tube.
    OvalHigh,
    /// Fewest tubes to any room.
    TubesLeast,
    /// From one storey to the next.
    StoreyRise,
    /// Pressure of a clean filter at normal.
    FilterClean,
    /// A dirty filter takes so many times the pressure of a clean one.
    FilterDirty,
    /// What ducts lose, L/s for each m² of wall at 1 Pa.
    LeakFactor,
    /// What stays open around a shut door without a gap below it.
    DoorCrack,
    /// Pressure of a fan with everything shut against that at its largest duty.
    FanShut,
    /// What a fan with motor and control makes of its electricity.
    FanEfficiency,
    /// Largest specific fan power of both fans, W for each L/s, England.
    SfpEngland,
    /// Largest specific fan power of both fans, W for each L/s, Ireland.
    SfpIreland,
    /// Largest specific fan power of both fans, W for each L/s, passive house.
    SfpPassive,
    /// What a silencer takes at 250 Hz, as measured; 0 while it is not known.
    SilencerLoss,
    /// Sound power of a valve at 30 m³/h, as measured; 0 while it is not known.
    ValveSound,
    /// The most that is heard of a voice in another room.
    VoiceMost,
}
