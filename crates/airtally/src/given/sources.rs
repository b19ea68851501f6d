//! The documents behind the givens.

use crate::source::{PRACTICE, Source};

pub static ASHRAE_CAP: Source =
    Source::published("ASHRAE 62.2", "2013; later editions not confirmed", "section 4").doubted();
pub static ASHRAE_AEXT: Source = Source::memory("ASHRAE 62.2", "2016–2022", "section 4");
pub static DIN_2019_RATE: Source = Source::memory("DIN 1946-6", "2019-12", "eq. (8)").doubted();
pub static DIN_2009_LEVELS: Source = Source::memory("DIN 1946-6", "2009-05", "");
pub static DIN_LEVELS: Source = Source::memory("DIN 1946-6", "2009-05 and 2019-12", "");
pub static DIN_2019_LEVELS: Source = Source::memory("DIN 1946-6", "2019-12", "").doubted();
pub static DIN_PERSON: Source = Source::published("DIN 1946-6", "2009-05", "30 m³/h a person, seen in secondary pages");
pub static DIN_WET_CHECKED: Source =
    Source::published("DIN 1946-6", "2009-05; 2019 not confirmed", "table 7").doubted();
pub static DIN_WET_MEMORY: Source = Source::memory("DIN 1946-6", "2009-05; 2019 not confirmed", "table 7").doubted();
pub static DIN_WEIGHTS: Source = Source::memory("DIN 1946-6", "2009-05 and 2019-12", "supply weights");
pub static CANADA_LOW: Source = Source::published("CAN/CSA-F326", "programme rule built on it", "low speed 40–60 %");
pub static CANADA_WET: Source = Source::memory("CAN/CSA-F326", "M91", "").doubted();
pub static ROUGH_STEEL: Source =
    Source::published("ASHRAE Fundamentals", "2021", "chapter 21, table 1, galvanised, average");
pub static GRILLE: Source = Source::memory("duct practice", "", "weather louvre, 45 % free: 5 to 10");
pub static ORIFICE: Source = Source::memory("orifice practice", "", "sharp slot, 0.6 … 0.65");
pub static STANDARD_AIR: Source = Source { document: "standard air", edition: "EN", clause: "1.2 kg/m³", ..PRACTICE };
pub static CO2_SLEEPER: Source = Source::published("EN 16798-1", "2019", "13.6 L/h, seen in a secondary page");
pub static CO2_LIMITS: Source = Source::published("German Environment Agency, indoor air guide values", "2008", "");
pub static SUPPORTS: Source = Source::published("UK new-home warranty rules", "2021", "8.3.8");
pub static FLEXIBLE: Source = Source::published("UK new-home warranty rules", "2022", "8.3.7");
pub static TRAP: Source = Source::published("trap-sizing note", "", "drop = suction + 25 mm, seal half of it");
pub static WIND: Source = Source::published("blower-door measuring rule", "", "wind ≤ Beaufort 3");
pub static INTAKE: Source = Source::published("EN 13779", "2007", "A.2.2, seen at second hand");
pub static ADF_HEIGHT: Source = Source::published("Approved Document F vol 1", "2021", "seen at second hand");
pub static SUPPORTS_US: Source =
    Source::published("US building science guide on flexible duct", "", "supports ≤ 4 ft, strap ≥ 1.5 in");
pub static SERVICE: Source = Source::published("IRC", "2015–2024", "M1305.1");
pub static FLUE_GERMANY: Source = Source::published("FeuVO", "", "4 Pa, seen in a secondary page");
pub static FLUE_CANADA: Source = Source::memory("CAN/CSA-F326", "M91", "").doubted();
pub static FLUE_KITCHEN: Source = Source::memory("Approved Document J", "", "kitchen extract with an open flue");
pub static HOLE_THIRD: Source = Source::published("IRC", "2015–2024", "R502.8");
pub static HOLE_QUARTER: Source =
    Source::memory("UK timber joist practice", "", "0.25 d, on the centre line, 0.25–0.4 span");
pub static INTAKE_US: Source = Source::published("IRC", "2015–2021; 2024 as R325.4.1", "R303.5.1");
pub static OWN_EXHAUST_US: Source = Source::published("IRC", "2018–2024; 2015 as M1506.3", "M1504.3");
pub static OWN_EXHAUST_GERMANY: Source = Source { document: "VDI 6022", edition: "", clause: "and habit", ..PRACTICE };
pub static OWN_EXHAUST_CANADA: Source = Source::memory("NBC", "", "9.32.3.13").doubted();
pub static OWN_EXHAUST_F326: Source = Source::memory("CSA F326, trade", "M91", "").doubted();
pub static NOTICE: Source = Source::memory("Building Regulations, England", "", "regulation 44");
pub static WASHINGTON_QUALITY: Source =
    Source::published("IRC 2021, Washington State amendment", "WAC 51-51", "M1505.4.3, coefficient");
pub static EN_CATEGORY: Source = Source::memory("EN 16798-1", "2019", "annex B, category II as default");
pub static PASSIVE_PERSON: Source =
    Source::published("Passive house criteria", "", "30 m³/h a person, 20 … 30 accepted");
pub static PASSIVE_WET: Source = Source::memory("Passive house criteria", "", "extract at the maximum level").doubted();
pub static PASSIVE_LEVELS: Source = Source::memory("Passive house criteria", "", "operating levels").doubted();
pub static PASSIVE_CHANGES: Source = Source::memory("Passive house criteria", "", "average air change");
pub static NBC_TABLE: Source = Source::memory("NBC", "2010 and 2015", "9.32.3.3").doubted();
pub static DOOR_ENGLAND: Source =
    Source::memory("Approved Document F vol 1", "2021", "7 600 mm² free area, 10 mm under a 760 mm door");
pub static DOOR_ENGLAND_GAP: Source =
    Source::published("Approved Document F vol 1", "", "10 mm, or 20 mm above a bare floor, seen at second hand");
pub static DOOR_GERMANY: Source = Source::memory("German practice", "", "2.5 cm² for each m³/h");
pub static DOOR_PRESSURE_GERMANY: Source = Source::published("German practice", "", "≤ 1 Pa, seen in a secondary page");
pub static DOOR_PRESSURE_AMERICA: Source =
    Source::published("US weatherisation specification", "", "no room beyond ±3 Pa with doors closed");
pub(super) static BOX_DAMPING: Source = Source::memory("VDI 2081-1", "", "3 to 6 dB for a lined manifold");
pub(super) static QUIET: Source = Source::memory("EN 16798-1", "2019", "bedrooms and living rooms, category II");
pub(super) static TIGHTNESS: Source =
    Source::published("EN 12237", "", "class C; the form and the list also in EN 16798-3:2017");
pub(super) static SFP_ENGLAND: Source =
    Source::memory("Approved Document L vol 1", "2021", "balanced ventilation with heat recovery");
pub(super) static SFP_IRELAND: Source = Source::published("TGD F", "2019", "seen in a secondary page");
pub(super) static SFP_PASSIVE: Source = Source::memory("Passive house criteria", "", "0.45 Wh/m³").doubted();
