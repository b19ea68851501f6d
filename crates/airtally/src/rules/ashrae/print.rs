//! The coefficients and tables of each print.

use crate::house::KitchenDraw;
use crate::quantity::Unit::{self, CubicFootPerMinute as CFM, LitrePerSecond as LS};
use crate::rules::local::{Kitchen, LocalExhaust};
use crate::source::Source;

static TABLE_IP: Source = Source::published("ASHRAE 62.2", "2013 and later", "table 4.1a");
static TABLE_SI: Source = Source::memory("ASHRAE 62.2", "2013 and later", "table 4.1b");
static TABLE_2010: Source = Source::memory("ASHRAE 62.2", "2010", "table 4.1a");

static BATHS: Source = Source::published("ASHRAE 62.2", "2013 and later", "section 5, bathrooms");
static KITCHENS: Source = Source::published("ASHRAE 62.2", "2013 and later", "section 5, kitchens");

static BATHS_SI: Source = Source::memory("ASHRAE 62.2", "2013 and later", "section 5, bathrooms, SI print");
static LOCAL_2010: Source = Source::memory("ASHRAE 62.2", "2010", "section 5").doubted();

const LOCAL_IP: LocalExhaust = LocalExhaust {
    unit: CFM,
    bath: (20.0, 50.0),
    counts_wc: false,
    kitchen: Kitchen::AirChanges(5.0, 300.0),
    draw: KitchenDraw::Hood,
    baths: &BATHS,
    kitchens: &KITCHENS,
};

const LOCAL_SI: LocalExhaust = LocalExhaust {
    unit: LS,
    bath: (10.0, 25.0),
    kitchen: Kitchen::AirChanges(5.0, 150.0),
    baths: &BATHS_SI,
    ..LOCAL_IP
};

/// A printed grid of rates.
pub struct Grid {
    /// Who prints it.
    pub source: &'static Source,
    /// Upper edges of the rows, in the print's unit of area.
    pub rows: &'static [f64],
    /// Upper edges of the columns, bedrooms.
    pub columns: &'static [f64],
    /// One row after another.
    pub cells: &'static [[f64; 5]],
}

/// The units, coefficients and grid of one print of one edition.
pub struct Printed {
    /// Unit of areas.
    pub area: Unit,
    /// Unit of rates.
    pub rate: Unit,
    /// Rate per area.
    pub per_area: f64,
    /// Rate per bedroom and one more.
    pub per_person: f64,
    /// The printed grid; `None` where it does not agree with its own equation.
    pub grid: Option<Grid>,
    /// Bathrooms and kitchens.
    pub local: LocalExhaust,
}

const BEDROOMS: [f64; 5] = [1.0, 2.0, 3.0, 4.0, 5.0];

/// 2013 and later, ft² and cfm.
pub static IP_2013: Printed = IP;

const IP: Printed = Printed {
    area: Unit::SquareFoot,
    rate: CFM,
    per_area: 0.03,
    per_person: 7.5,
    grid: Some(Grid {
        source: &TABLE_IP,
        rows: &[500.0, 1000.0, 1500.0, 2000.0, 2500.0, 3000.0, 3500.0, 4000.0, 4500.0, 5000.0],
        columns: &BEDROOMS,
        cells: &[
            [30.0, 38.0, 45.0, 53.0, 60.0],
            [45.0, 53.0, 60.0, 68.0, 75.0],
            [60.0, 68.0, 75.0, 83.0, 90.0],
            [75.0, 83.0, 90.0, 98.0, 105.0],
            [90.0, 98.0, 105.0, 113.0, 120.0],
            [105.0, 113.0, 120.0, 128.0, 135.0],
            [120.0, 128.0, 135.0, 143.0, 150.0],
            [135.0, 143.0, 150.0, 158.0, 165.0],
            [150.0, 158.0, 165.0, 173.0, 180.0],
            [165.0, 173.0, 180.0, 188.0, 195.0],
        ],
    }),
    local: LOCAL_IP,
};

/// The SI print says "< 47" and "47–93": 47 m² itself is in the second row. The inch-pound rows include their upper edge.
const BELOW_47: f64 = 46.9999;

/// 2013 and later, m² and L/s.
pub static SI_2013: Printed = METRIC;

const METRIC: Printed = Printed {
    area: Unit::SquareMetre,
    rate: LS,
    per_area: 0.15,
    per_person: 3.5,
    grid: Some(Grid {
        source: &TABLE_SI,
        rows: &[BELOW_47, 93.0, 139.0, 186.0, 232.0, 279.0, 325.0, 372.0, 418.0, 465.0],
        columns: &BEDROOMS,
        cells: &[
            [14.0, 18.0, 21.0, 25.0, 28.0],
            [21.0, 24.0, 28.0, 31.0, 35.0],
            [28.0, 31.0, 35.0, 38.0, 42.0],
            [35.0, 38.0, 42.0, 45.0, 49.0],
            [42.0, 45.0, 49.0, 52.0, 56.0],
            [49.0, 52.0, 56.0, 59.0, 63.0],
            [56.0, 59.0, 63.0, 66.0, 70.0],
            [63.0, 66.0, 70.0, 73.0, 77.0],
            [70.0, 73.0, 77.0, 80.0, 84.0],
            [77.0, 80.0, 84.0, 87.0, 91.0],
        ],
    }),
    local: LOCAL_SI,
};

/// 2010, ft² and cfm: the grid that the IRC still prints.
pub static IP_2010: Printed = Printed {
    per_area: 0.01,
    grid: Some(Grid {
        source: &TABLE_2010,
        rows: &super::super::irc::ROWS,
        columns: &super::super::irc::COLUMNS,
        cells: &super::super::irc::TABLE,
    }),
    local: LocalExhaust { baths: &LOCAL_2010, kitchens: &LOCAL_2010, ..LOCAL_IP },
    ..IP
};

/// 2010, m² and L/s. Its printed grid differs from its own equation in the last rows, so the equation alone is used.
pub static SI_2010: Printed = Printed {
    per_area: 0.05,
    grid: None,
    local: LocalExhaust { baths: &LOCAL_2010, kitchens: &LOCAL_2010, ..LOCAL_SI },
    ..METRIC
};
