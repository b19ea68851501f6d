use super::figures::{MAIN_SPEEDS, METRE_RANGE, METRES, main_flow, per_metre};
use super::*;
use crate::given::Givens;
use crate::issue::Trouble;
use crate::quantity::{Flow, Length};
use libm::pow;

const TUBE: Usual = Usual { bore: Length::from_m(0.063), outside: Length::from_m(0.075) };

fn typed(texts: &[(Slot, &str)]) -> Scratch {
    let mut scratch = Scratch::default();
    for (slot, text) in texts {
        scratch.set(*slot, (*text).to_owned(), slot.unit(Display::CubicMetres));
    }
    scratch
}

/// Values of the answer's figures, in order.
fn values(ask: Ask, texts: &[(Slot, &str)]) -> Vec<f64> {
    let found = answer(ask, &typed(texts), &Givens::registered(), TUBE);
    let lines =
        |answer: Answer| answer.lines.iter().filter_map(|id| answer.working.line(*id)).map(|line| line.value).collect();
    found.map(lines).unwrap_or_default()
}

fn close(found: &[f64], expect: &[(f64, f64)]) {
    assert_eq!(found.len(), expect.len(), "{found:?}");
    for (value, (is, within)) in found.iter().zip(expect) {
        assert!((value - is).abs() <= *within, "{value} should be {is}");
    }
}

/// Site handbook, pocket figures: 50 cfm in one 63 mm tube is 7.6 m/s, three tubes at 3 m/s.
#[test]
fn too_much_air_for_one_tube_asks_for_three() {
    close(&values(Ask::Tube, &[(Slot::TubeFlow, "50 cfm")]), &[(7.6, 0.05), (3.0, 0.0)]);
}

/// Site handbook, pocket figures: Q/11.2 and 2.2 Pa for each metre at 30 m³/h; nothing said of a metre of other bores.
#[test]
fn the_pressure_of_a_metre_is_given_for_known_bores_only() {
    close(&values(Ask::Tube, &[(Slot::TubeFlow, "30")]), &[(30.0 / 11.2, 0.01), (2.2, 0.01)]);
    close(&values(Ask::Tube, &[(Slot::TubeFlow, "30"), (Slot::TubeBore, "76")]), &[(30.0 / 16.3, 0.01), (0.9, 0.01)]);
    close(&values(Ask::Tube, &[(Slot::TubeFlow, "200"), (Slot::TubeBore, "160")]), &[(2.76, 0.005)]);
}

/// Site handbook: 359 × 30 / 760 mm; 107.6 cm² is the residential handbook's table.
#[test]
fn a_door_takes_its_own_width() {
    let gap = 359.0 * 30.0 / 760.0;
    close(&values(Ask::Door, &[(Slot::DoorFlow, "30"), (Slot::DoorWidth, "760")]), &[(gap, 0.02), (107.6, 0.05)]);
    close(&values(Ask::Door, &[(Slot::DoorFlow, "30")]), &[(359.0 * 30.0 / 800.0, 0.02), (107.6, 0.05)]);
}

/// By arithmetic: a valve of k 2 L/s at 25 Pa passes 10 L/s, and says so in the unit of its k.
#[test]
fn a_valve_answers_in_the_unit_of_its_factor() {
    close(&values(Ask::Valve, &[(Slot::ValveFactor, "2 L/s"), (Slot::ValvePressure, "25")]), &[(10.0, 1e-12)]);
}

/// Site handbook, pocket figures: most air in a main at 2.5 and at 3 m/s, printed as whole numbers; 132.54 as 132.
#[test]
fn mains_are_as_narrow_as_their_speed_lets_them() {
    let print = [(125.0, [110.0, 132.0]), (150.0, [159.0, 191.0]), (160.0, [181.0, 217.0])];
    for (bore, flows) in print.into_iter().chain([(180.0, [229.0, 275.0]), (200.0, [283.0, 339.0])]) {
        for (speed, flow) in MAIN_SPEEDS.into_iter().zip(flows) {
            close(&[main_flow(Length::from_mm(bore), speed).as_m3h()], &[(flow, 0.55)]);
        }
    }
    close(&values(Ask::Main, &[(Slot::MainFlow, "180")]), &[(160.0, 0.0), (150.0, 0.0)]);
    close(&values(Ask::Main, &[(Slot::MainFlow, "338")]), &[(200.0, 0.0)]);
    let wide = answer(Ask::Main, &typed(&[(Slot::MainFlow, "340")]), &Givens::registered(), TUBE);
    assert_eq!(wide.map(|answer| answer.lines.len()), Some(0));
}

/// Site handbook, pocket figures: 35 → 100 cfm is × 8. The lower end by arithmetic: (100/35)^1.8 is 6.62.
#[test]
fn both_ends_of_the_boost_pressure_are_given() {
    let typed = [(Slot::NormalPressure, "10"), (Slot::NormalFlow, "35 cfm"), (Slot::BoostFlow, "100 cfm")];
    close(&values(Ask::Boost, &typed), &[(66.2, 0.1), (80.0, 2.0)]);
}

/// Rates, section 6.5: a third of the depth and 2 in from both edges in America, a quarter in Britain, in 0.25 to 0.4 of the
/// span; site practice, section 2: a tube of 75 mm wants 85 mm, and four lie in 400 mm.
#[test]
fn a_joist_bears_a_hole_by_two_rules() {
    let deep = [(Slot::JoistDepth, "9.25 in")];
    close(&values(Ask::Joist, &deep), &[(78.3, 0.05), (58.7, 0.05), (85.0, 0.0)]);
    close(&values(Ask::Joist, &[(Slot::JoistDepth, "5.5 in")]), &[(38.1, 0.01), (34.9, 0.05), (85.0, 0.0)]);
    let all = [(Slot::JoistDepth, "225"), (Slot::JoistSpan, "4 m"), (Slot::JoistClear, "400")];
    close(&values(Ask::Joist, &all), &[(75.0, 0.01), (56.25, 0.0), (1.0, 0.0), (1.6, 0.001), (85.0, 0.0), (4.0, 0.0)]);
    assert!(values(Ask::Joist, &[(Slot::JoistSpan, "4 m")]).is_empty());
    assert!(values(Ask::Joist, &[(Slot::JoistDepth, "225"), (Slot::JoistSpan, "far")]).is_empty());
}

/// The international foot: 1 cfm is 1.699 m³/h.
#[test]
fn a_flow_is_said_in_the_other_two_units() {
    close(&values(Ask::Convert, &[(Slot::AnyFlow, "100 cfm")]), &[(169.9, 0.01), (47.19, 0.005)]);
    close(&values(Ask::Convert, &[(Slot::AnyFlow, "36")]), &[(10.0, 1e-12), (21.19, 0.005)]);
}

#[test]
fn nothing_is_answered_from_a_text_that_cannot_be_read() {
    for text in ["", "fast", "-3", "1e9", "20 mm"] {
        for ask in Ask::ALL {
            let texts: Vec<_> = ask.slots().iter().map(|slot| (*slot, text)).collect();
            assert!(values(ask, &texts).is_empty(), "{ask:?} from “{text}”");
        }
    }
    let scratch = typed(&[(Slot::TubeFlow, "-3")]);
    assert!(matches!(scratch.read(Slot::TubeFlow), Err(Trouble::OutOfRange { .. })));
    assert_eq!(scratch.entry(Slot::TubeFlow).map(|entry| entry.text.as_str()), Some("-3"));
}

/// At both ends of every field all figures are numbers.
#[test]
fn figures_are_finite_at_the_ends_of_every_range() {
    for ask in Ask::ALL {
        for ends in 0..1 << ask.slots().len() {
            let mut scratch = Scratch::default();
            for (at, slot) in ask.slots().iter().enumerate() {
                let (min, max) = slot.limit().range;
                let end = if ends >> at & 1 == 0 { min } else { max };
                scratch.set(*slot, end.to_string(), slot.limit().unit);
            }
            let found = answer(ask, &scratch, &Givens::registered(), TUBE).expect("an answer");
            let finite =
                |id: &crate::working::LineId| found.working.line(*id).is_some_and(|line| line.value.is_finite());
            assert!(found.lines.iter().all(finite), "{ask:?}");
        }
    }
}

/// Churchill, Chemical Engineering 84(24), 1977, written out here once more; air of 20 °C and 50 % at sea level:
/// 1.199 kg/m³ and 1.813·10⁻⁵ Pa·s, roughness 0.1 mm.
#[test]
fn the_power_law_stays_within_four_percent_of_churchill() {
    let [from, to] = METRE_RANGE.map(Flow::as_m3h);
    for known in METRES {
        for step in 0..=60 {
            let flow = from + (to - from) * f64::from(step) / 60.0;
            let quick = per_metre(Flow::from_m3h(flow), Length::from_mm(known.bore)).expect("in range").as_pa();
            let error = quick / churchill(flow, known.bore / 1000.0) - 1.0;
            assert!(error.abs() < 0.0405, "{flow} m³/h in {} mm: {error}", known.bore);
        }
    }
}

fn churchill(flow: f64, bore: f64) -> f64 {
    let (density, viscosity, roughness): (f64, f64, f64) = (1.199, 1.813e-5, 1e-4);
    let speed = flow / 3600.0 / (std::f64::consts::PI * bore * bore / 4.0);
    let reynolds = density * speed * bore / viscosity;
    let inner = 1.0 / (pow(7.0 / reynolds, 0.9) + 0.27 * roughness / bore);
    let (a, b) = (pow(2.457 * libm::log(inner), 16.0), pow(37_530.0 / reynolds, 16.0));
    let friction = 8.0 * pow(pow(8.0 / reynolds, 12.0) + 1.0 / pow(a + b, 1.5), 1.0 / 12.0);
    friction / bore * density * speed * speed / 2.0
}
