//! Every equation the calculation uses, by id. `airtally-words` gives each its title and notation.

/// An equation.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Formula {
    /// A = sum of the rooms' floor areas.
    FloorArea,
    /// Q_tot = a·A + b·(N + 1), ASHRAE 62.2.
    AshraeTotal,
    /// Cell of ASHRAE 62.2 table 4.1.
    AshraeTable,
    /// Q_tot + b per person beyond bedrooms + 1, ASHRAE 62.2.
    AshraePeople,
    /// Q_50 = V·ACH50/60.
    BlowerDoorFlow,
    /// Q_inf = 0.052·Q_50·wsf·(H/H_r)^0.4.
    AshraeInfiltration,
    /// NL = 1000·(ELA/A)·(H/H_r)^0.4, ELA = 3.81·10⁻⁴·Q_50.
    AshraeNormalisedLeakage,
    /// Q_inf = NL·wsf·A/7.3.
    AshraeInfiltration2013,
    /// Q_inf = min(Q_inf, cap·Q_tot).
    AshraeCapped,
    /// Q_fan = Q_tot − φ·Q_inf·A_ext.
    AshraeFan,
    /// Kitchen at 5 air changes per hour.
    KitchenAirChanges,
    /// Q = 0.01·A + 7.5·(N + 1), IRC equation 15-1.
    IrcEquation,
    /// Cell of the IRC table.
    IrcTable,
    /// Q × 0.70.
    IrcCredit,
    /// Q × run-time factor.
    IrcRunTime,
    /// Cell of Approved Document F table 1.3.
    AdfTable,
    /// 0.3 L/s per m².
    AdfArea,
    /// The larger of table and area.
    AdfWhole,
    /// q = a₂·A² + a₁·A + a₀, DIN 1946-6.
    DinNominal,
    /// Q = 10·n₁₀ + 5·n₅, rooms counted.
    CanadaRoomCount,
    /// q = c + q_P·P.
    ConstantAndPeople,
    /// q = a·A.
    AreaRate,
    /// The larger of two.
    Larger,
    /// q = max(q_max, s·Σq), Netherlands.
    SharedAreas,
    /// Cell of a table by main rooms.
    RoomsTable,
    /// Cell of a table by bedrooms, with a least and a most.
    BedroomsTable,
    /// V = A·h.
    FloorVolume,
    /// q_max = max(q, n·V/f), passive house.
    PassiveMaximum,
    /// Q_r = max(a·A + b·(N + 1), least), Washington.
    WashingtonRate,
    /// Q_v = C·Q_r, Washington.
    WashingtonQuality,
    /// Persons × rate.
    PersonRate,
    /// A level as a share of another.
    LevelShare,
    /// A room's minimum as printed.
    RoomMinimum,
    /// Sum of the rooms' minimums.
    SumOfRooms,
    /// T = max(W, ΣS, ΣE).
    LevelTotal,
    /// A room's ideal share before rounding.
    IdealShare,
    /// A share in whole steps.
    WholeSteps,
    /// q = v·π·d²/4.
    TubeLimit,
    /// n = ceil(max(q/limit) − slack).
    TubeCount,
    /// v = q/(n·π·d²/4).
    TubeSpeed,
    /// Ports = tubes + spare.
    Ports,
    /// Cut length = legs + ends, plus waste.
    CutLength,
    /// A = q/(C_d·√(2Δp/ρ)).
    TransferArea,
    /// Undercut = A / door width.
    Undercut,
    /// A = a·q.
    AreaForFlow,
    /// Δp = ρ/2·(q/(C_d·A))².
    DoorPressure,
    /// C = C_o + G/q·(1 − e^(−q·t/V)).
    Co2Night,
    /// Flow per sleeper.
    PerSleeper,
    /// Air changes per hour of a room.
    AirChange,
    /// Core = outside duct + 2 × insulation + clearance.
    WallCore,
    /// Trap drop = suction in mm of water + extra.
    TrapDrop,
    /// Water seal = trap drop / 2.
    TrapSeal,
    /// Hole for a tube = outside diameter + clearance.
    TubeHole,
    /// Joist depth = hole / largest share.
    JoistDepth,
    /// Free area of a grille = flow / face speed.
    GrilleArea,
    /// Smallest maximum of the unit = boost / share.
    UnitMaximum,
    /// Outside diameter of a silencer = main + lining.
    SilencerSize,
    /// Speed in a main = q/(π·d²/4).
    MainSpeed,
    /// The total, rounded up to whole steps.
    WholeTotal,
    /// Smallest bend radius = ratio × outside diameter.
    BendRadius,
    /// Largest leak = share × design flow.
    LeakLimit,
    /// Allowed difference = share × flow.
    Tolerance,
    /// Net draw = share × boost + other fans.
    NetDraw,
    /// House pressure = 50·(Q/Q50)^(1/0.65).
    HousePressure,
    /// Most exhaust of the two largest fans = rate × floor area / 100.
    FanLimit,
    /// Largest hole = min(share × depth, depth − 2 × edge).
    HoleLimit,
    /// Largest notch = share × depth.
    NotchLimit,
    /// Zone of holes = shares of the span.
    HoleZone,
    /// Tubes between two joists = (b + 10)/(OD + 10), rounded down.
    TubesInBay,
    /// Leak at 30 Pa = q·(30/p)^0.65.
    LeakAt,
    /// Largest leak in the test = share × design flow × (p/30)^0.65.
    LeakInTest,
    /// Height where two tubes cross = 2 × outside diameter.
    CrossingDepth,
    /// v = q/(π·d²/4).
    DuctSpeed,
    /// R = c·(q/q_r)^n.
    TubePressure,
    /// n = v/v_max − slack, rounded up.
    TubesBeside,
    /// q = k·√p.
    ValveFlow,
    /// d ≥ √(4·q/(π·v)), the next bore that is sold.
    MainBore,
    /// p_boost = p·(q_boost/q_normal)^n.
    BoostPressure,
    /// How far extract is off supply, %.
    OffSupply,
    /// How far supply and extract are off their average, %.
    OffAverage,
    /// A flow in another unit.
    FlowConversion,
    /// p = (f·L/d + K)·ρ·v²/2 + p_valve.
    RunPressure,
    /// p_valve = p_30·(q/30)².
    ValvePressure,
    /// p = (f·L/d + K)·ρ·v²/2.
    DuctPressure,
    /// p = K·ρ·v²/2.
    GrillePressure,
    /// throttle = p_index − p.
    Throttle,
    /// The hole of a thin plate that takes the throttle.
    ThrottleHole,
    /// p = p_index + p_main + p_outside + p_grille.
    ExternalPressure,
    /// p = p_run + p_main.
    WayPressure,
    /// Pressure at boost through every throttle as it is set, at least p_open.
    SetPressure,
    /// p = c·qⁿ.
    MeasuredPressure,
    /// The setting of a valve at p_30 = (p_valve + throttle)·(30/q)².
    ValveSetting,
    /// SFP = (p_supply + p_extract + 2·p_inside)/η.
    SpecificPower,
    /// The flow of a run as it was pulled, all runs together.
    BuiltFlow,
    /// L = Σ n·L_cut.
    TubeMetres,
    /// L = n·L_main + rise.
    MainMetres,
    /// n = ⌈L/s⌉.
    HoldCount,
    /// x = n·k.
    Each,
    /// x = 1.4·K·v₀·√A₀/0.25.
    Throw,
    /// The thinnest insulation whose jacket does not sweat.
    LeastInsulation,
    /// The thinnest insulation of a warm tube in the cold whose wall does not sweat inside.
    LeastAround,
    /// Temperature of the outdoor air at the unit.
    WarmedAir,
    /// Sound of the unit, less silencer, split, manifold, tube and opening, in the room.
    RoomSound,
    /// A voice of another room through both tubes and the manifold.
    VoiceHeard,
}
