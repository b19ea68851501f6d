//! Equations: their titles, how they are written, and what their symbols mean.

mod symbol;

#[cfg(test)]
mod tests;

pub use symbol::{meaning, symbol_meaning};

use airtally::formula::Formula as F;

/// What an equation works out.
pub const fn title(formula: F) -> &'static str {
    match formula {
        F::FloorArea => "Floor area of the rooms together",
        F::Volume => "Volume inside the air barrier",
        F::Stated => "As stated",
        F::AshraeTotal => "Total rate by the equation",
        F::AshraeTable => "Total rate from the table",
        F::AshraePeople => "Total rate with more people than bedrooms + 1",
        F::BlowerDoorFlow => "Air flow of the blower-door test at 50 Pa",
        F::AshraeInfiltration => "Air that comes in through leaks",
        F::AshraeCapped => "Air through leaks, as much as may count",
        F::AshraeFan => "Rate of the fans after the infiltration credit",
        F::KitchenAirChanges => "Kitchen exhaust by air changes",
        F::IrcEquation => "Whole-house rate by the equation",
        F::IrcTable => "Whole-house rate from the table",
        F::IrcCredit => "Rate after the credit for a balanced system",
        F::IrcRunTime => "Rate while running, for part of the time",
        F::AdfTable => "Whole-dwelling rate by bedrooms",
        F::AdfArea => "Whole-dwelling rate by floor area",
        F::AdfWhole => "Whole-dwelling rate: the larger of the two",
        F::DinNominal => "Nominal air flow by floor area",
        F::CanadaRoomCount => "Rate by counting rooms",
        F::PersonRate => "Rate by people",
        F::LevelShare => "A level as a share of another",
        F::RoomMinimum => "Least air of this room",
        F::SumOfRooms => "Least air of the rooms together",
        F::LevelTotal => "Total of the level: the largest that is asked",
        F::IdealShare => "Share of this room before rounding",
        F::WholeSteps => "Share of this room in whole steps",
        F::TubeLimit => "Most air for one tube",
        F::TubeCount => "Number of tubes",
        F::TubeSpeed => "Speed in each tube",
        F::Ports => "Ports of the manifold",
        F::CutLength => "Length to cut for each tube",
        F::TransferArea => "Free area of the opening at the door",
        F::Undercut => "Gap under the door",
        F::Co2Night => "CO2 in the bedroom by morning",
        F::PerSleeper => "Outdoor air for each sleeper",
        F::AirChange => "Air changes of the room",
        F::WallCore => "Diameter of the wall core",
        F::TrapDrop => "Drop of the condensate trap",
        F::BendRadius => "Smallest bend radius",
        F::LeakLimit => "Largest leak that passes the test",
        F::Tolerance => "Largest difference that passes",
    }
}

/// How an equation is written. A subscript follows `_`.
pub const fn notation(formula: F) -> &'static str {
    match formula {
        F::FloorArea => "A = ΣA",
        F::Volume => "V = Σ(A·h)",
        F::Stated => "as stated",
        F::AshraeTotal => "Q_tot = a·A + b·(N + 1)",
        F::AshraeTable => "Q_tot = table(A, N)",
        F::AshraePeople => "Q = Q_tot + b·P_extra",
        F::BlowerDoorFlow => "Q_50 = V·ACH_50 / 60 in cfm, / 3.6 in L/s",
        F::AshraeInfiltration => "Q_inf = 0.052·Q_50·wsf·(H / H_r)^0.4",
        F::AshraeCapped => "Q_inf = smaller of Q_inf and cap·Q_tot",
        F::AshraeFan => "Q_fan = Q_tot − φ·Q_inf·A_ext",
        F::KitchenAirChanges => "q = n·V, V = A·h",
        F::IrcEquation => "Q = a·A + b·(N + 1)",
        F::IrcTable => "Q = table(A, N)",
        F::IrcCredit => "Q_credit = c·Q",
        F::IrcRunTime => "Q_run = f·Q, f = table(t)",
        F::AdfTable => "Q_table = table(N)",
        F::AdfArea => "Q_area = a·A",
        F::AdfWhole => "Q = larger of Q_table and Q_area",
        F::DinNominal => "q_NL = a_2·A² + a_1·A + a_0",
        F::CanadaRoomCount => "Q = 10·n_10 + 5·n_5",
        F::PersonRate => "q = P·q_P",
        F::LevelShare => "q = f·T, or f·q_NL",
        F::RoomMinimum => "q as stated",
        F::SumOfRooms => "q = Σq",
        F::LevelTotal => "T = largest of W, ΣS, ΣE, f·T, T_lower",
        F::IdealShare => "q = q_min + rest·w / Σw",
        F::WholeSteps => "q_set = n·step, n close to q / step",
        F::TubeLimit => "limit = v·π·d² / 4",
        F::TubeCount => "n = max(q_normal / limit_normal, q_boost / limit_boost) − slack, rounded up, not below least",
        F::TubeSpeed => "v = q / (n·π·d² / 4)",
        F::Ports => "ports = tubes + spare",
        F::CutLength => "cut = (L + 2·end)·(1 + waste)",
        F::TransferArea => "A = q / (C_d·√(2·Δp / ρ))",
        F::Undercut => "gap = A / b",
        F::Co2Night => "C = C_o + P·G / q·(1 − e^(−q·t / V))",
        F::PerSleeper => "q / P",
        F::AirChange => "q / V",
        F::WallCore => "core = d + 2·t + c",
        F::TrapDrop => "drop = p in mm of water + e",
        F::BendRadius => "r = k·OD",
        F::LeakLimit => "leak = s·Q",
        F::Tolerance => "difference = s·Q",
    }
}
