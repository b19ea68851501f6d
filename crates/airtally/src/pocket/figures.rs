//! The equations of the pocket.

use crate::power::power;
use crate::quantity::{Flow, Length, Pressure, Velocity};

/// A bore with the pressure that one metre of its tube takes at [`METRE_FLOW`].
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MetreOf {
    /// Bore, mm.
    pub bore: f64,
    /// Pressure, Pa.
    pub pressure: f64,
}

/// The bores of which the pressure of a metre is known here.
pub const METRES: [MetreOf; 3] = [
    MetreOf { bore: 52.0, pressure: 5.7 },
    MetreOf { bore: 63.0, pressure: 2.2 },
    MetreOf { bore: 76.0, pressure: 0.9 },
];
/// The flow at which [`METRES`] hold.
pub const METRE_FLOW: Flow = Flow::from_m3h(30.0);
/// From and up to here [`per_metre`] is within 4 % of Churchill's equation.
pub const METRE_RANGE: [Flow; 2] = [Flow::from_m3h(15.0), Flow::from_m3h(75.0)];
/// How the pressure of a tube grows with its flow.
pub const METRE_EXPONENT: f64 = 1.8;
/// Two bores this close, in m, are one and the same: half a millimetre.
const SAME_BORE: Length = Length::from_m(0.0005);

/// Pressure that one metre of straight tube takes.
///
/// * Equation: `R = c·(q / 30 m³/h)^1.8`, c 5.7, 2.2, 0.9 Pa for bores of 52, 63, 76 mm
/// * Units: q m³/h, R Pa for each metre
/// * Valid range: those three bores, to half a millimetre, and 15 … 75 m³/h; `None` elsewhere
/// * Source: a power law laid through Churchill's friction equation (1977) for a roughness of 0.1 mm and air of 20 °C;
///   within 4 % of it. Example: 2.2 Pa at 30 m³/h in a tube of 63 mm (site handbook, pocket figures)
///
/// ```
/// use airtally::{pocket::figures::per_metre, quantity::{Flow, Length}};
/// let metre = per_metre(Flow::from_m3h(30.0), Length::from_mm(63.0)).expect("a known bore");
/// assert!((metre.as_pa() - 2.2).abs() < 0.05);
/// assert_eq!(per_metre(Flow::from_m3h(30.0), Length::from_mm(100.0)), None);
/// ```
pub fn per_metre(flow: Flow, bore: Length) -> Option<Pressure> {
    let [from, to] = METRE_RANGE;
    let metre = metre_of(bore).filter(|_| flow >= from && flow <= to)?;
    Some(Pressure::from_pa(metre.pressure * power(flow / METRE_FLOW, METRE_EXPONENT)))
}

/// What is known of a bore.
pub fn metre_of(bore: Length) -> Option<MetreOf> {
    METRES.into_iter().find(|known| (bore - Length::from_mm(known.bore)).abs() <= SAME_BORE)
}

/// Air that passes a valve.
///
/// * Equation: `q = k·√p`
/// * Units: k as a flow at 1 Pa, p Pa, q in the unit of k
/// * Valid range: p from 0; zero below it. k belongs to one opening of one valve
/// * Source: the data sheet of the valve; example by arithmetic: k 2 at 25 Pa is 10
///
/// ```
/// use airtally::{pocket::figures::valve_flow, quantity::{Flow, Pressure}};
/// assert_eq!(valve_flow(Flow::from_ls(2.0), Pressure::from_pa(25.0)), Flow::from_ls(10.0));
/// ```
pub fn valve_flow(factor: Flow, pressure: Pressure) -> Flow {
    factor * f64::sqrt(pressure.max(Pressure::ZERO).as_pa())
}

/// Bores of mains, mm.
pub const MAIN_BORES: [f64; 5] = [125.0, 150.0, 160.0, 180.0, 200.0];
/// Largest speeds in mains: quiet, and still accepted.
pub const MAIN_SPEEDS: [Velocity; 2] = [Velocity::from_ms(2.5), Velocity::from_ms(3.0)];

/// Most air in a main.
///
/// * Equation: `q = v·π·d²/4`
/// * Units: v m/s, d m, q m³/h
/// * Valid range: any round duct
/// * Source: arithmetic; example: 181 m³/h at 2.5 m/s in 160 mm (site handbook, pocket figures)
///
/// ```
/// use airtally::{pocket::figures::main_flow, quantity::{Length, Velocity}};
/// let most = main_flow(Length::from_mm(160.0), Velocity::from_ms(2.5));
/// assert!((most.as_m3h() - 181.0).abs() < 0.5);
/// ```
pub fn main_flow(bore: Length, speed: Velocity) -> Flow {
    speed * bore.section()
}

/// Narrowest bore of [`MAIN_BORES`] in which the air is not faster than this; `None` when all are too narrow.
///
/// * Equation: `d ≥ √(4·q / (π·v))`
/// * Units: q m³/h, v m/s, d m
/// * Valid range: up to the flow of the widest bore
/// * Source: arithmetic; example: 191 m³/h still pass 150 mm at 3 m/s, at 2.5 m/s they need 180 mm (site handbook)
///
/// ```
/// use airtally::{pocket::figures::main_bore, quantity::{Flow, Length, Velocity}};
/// let bore = |flow, speed| main_bore(Flow::from_m3h(flow), Velocity::from_ms(speed));
/// assert_eq!(bore(190.0, 3.0), Some(Length::from_mm(150.0)));
/// assert_eq!(bore(190.0, 2.5), Some(Length::from_mm(180.0)));
/// assert_eq!(bore(400.0, 3.0), None);
/// ```
pub fn main_bore(flow: Flow, speed: Velocity) -> Option<Length> {
    MAIN_BORES.into_iter().map(Length::from_mm).find(|bore| flow <= main_flow(*bore, speed))
}

/// Exponents between which the pressure of a system grows with its flow: smooth tubes, and valves or bends alone.
pub const BOOST_EXPONENTS: [f64; 2] = [1.8, 2.0];

/// Pressure at boost.
///
/// * Equation: `p_boost = p·(q_boost / q)^n`
/// * Units: p Pa, both flows alike
/// * Valid range: n 1.8 … 2, nothing re-set between normal and boost; zero for a normal flow that is not positive
/// * Source: common practice; example: 35 → 100 cfm is × 8 (site handbook, pocket figures)
///
/// ```
/// use airtally::{pocket::figures::boost_pressure, quantity::{Flow, Pressure}};
/// let (normal, boost) = (Flow::from_cfm(35.0), Flow::from_cfm(100.0));
/// let pressure = boost_pressure(Pressure::from_pa(10.0), normal, boost, 2.0);
/// assert!((pressure.as_pa() / 10.0 - 8.0).abs() < 0.5);
/// ```
pub fn boost_pressure(pressure: Pressure, normal: Flow, boost: Flow, exponent: f64) -> Pressure {
    if normal <= Flow::ZERO || boost < Flow::ZERO {
        return Pressure::ZERO;
    }
    pressure * power(boost / normal, exponent)
}
