//! Houses thrown together by dice of our own, the same ones native and in the browser.

use airtally::edit::Edit;
use airtally::given::GivenId;
use airtally::house::{Building, Failing, Fans, Fuel, Joist, Manifolds, Outlets, Stud, Table, TubeSize, WetRooms};
use airtally::house::{Choices, Credit, Display, Field, House, HouseField, KitchenDraw, Print, RoomField, RoomKind};
use airtally::rules::RuleSet;

/// Numbers that look random (a linear congruential generator with Knuth's MMIX constants).
pub struct Dice(u64);

impl Dice {
    /// The dice of a seed.
    pub const fn new(seed: u64) -> Self {
        Self(seed.wrapping_mul(0x9E37_79B9_7F4A_7C15))
    }

    /// A number from 0 to one below `end`.
    pub fn below(&mut self, end: u32) -> u32 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        // The high bits are the good ones.
        ((self.0 >> 33) % u64::from(end.max(1))) as u32
    }

    fn pick<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.below(all.len() as u32) as usize]
    }

    fn perhaps<T: Copy>(&mut self, all: &[T]) -> Option<T> {
        (self.below(2) == 0).then(|| self.pick(all))
    }
}

/// A house under a rule set: any rooms, choices, units, settings, and now and then a slip of the pen.
pub fn house(rules: RuleSet, seed: u64) -> House {
    let mut dice = Dice::new(seed);
    let mut house = Edit::Choose(choices(rules, &mut dice)).apply(&House::new());
    for field in HouseField::ALL {
        let text = house_text(field, &mut dice);
        house = typed(&house, Field::House(field), text);
    }
    for _ in 0..dice.below(4) {
        let id = dice.pick(&GivenId::all().collect::<Vec<_>>());
        let (low, high) = id.given().range;
        let share = f64::from(dice.below(11)) / 10.0;
        house = typed(&house, Field::Given(id), Some(format!("{}", low + (high - low) * share)));
    }
    (0..dice.below(20)).fold(house, |house, _| {
        let kind = dice.pick(&RoomKind::ALL);
        with_room(&house, kind, &mut dice)
    })
}

/// A usual house of so many rooms, every area and some runs typed.
pub fn house_of(rooms: u32) -> House {
    const KINDS: [RoomKind; 12] = [
        RoomKind::Living,
        RoomKind::Kitchen,
        RoomKind::MainBedroom,
        RoomKind::Bathroom,
        RoomKind::Bedroom,
        RoomKind::Hall,
        RoomKind::Wc,
        RoomKind::Bedroom,
        RoomKind::Utility,
        RoomKind::Study,
        RoomKind::Dining,
        RoomKind::Bathroom,
    ];
    let mut dice = Dice::new(u64::from(rooms));
    (0..rooms).fold(House::new(), |house, number| {
        let house = Edit::AddRoom(KINDS[number as usize % KINDS.len()]).apply(&house);
        let Some(id) = house.rooms.last().map(|room| room.id) else { return house };
        let area = format!("{}.{}", 4 + dice.below(24), dice.below(10));
        let house = typed(&house, Field::Room(id, RoomField::Area), Some(area));
        let run = format!("{}.{} + 1.4 + 2.6", 1 + dice.below(6), dice.below(10));
        typed(&house, Field::Room(id, RoomField::SupplyRun), Some(run))
    })
}

fn with_room(house: &House, kind: RoomKind, dice: &mut Dice) -> House {
    let house = Edit::AddRoom(kind).apply(house);
    let Some(id) = house.rooms.last().map(|room| room.id) else { return house };
    let house = Edit::SetOpen(id, dice.perhaps(&[true, false])).apply(&house);
    RoomField::ALL.into_iter().fold(house, |house, field| {
        let text = room_text(field, dice);
        typed(&house, Field::Room(id, field), text)
    })
}

fn typed(house: &House, field: Field, text: Option<String>) -> House {
    let unit = field.unit(house.choices.display);
    text.map_or_else(|| house.clone(), |text| Edit::Set(field, text, unit).apply(house))
}

fn choices(rules: RuleSet, dice: &mut Dice) -> Choices {
    Choices {
        rules,
        display: dice.pick(&Display::ALL),
        wet: dice.perhaps(&WetRooms::ALL),
        kitchen: dice.perhaps(&KitchenDraw::ALL),
        credit: dice.pick(&Credit::ALL),
        table: dice.perhaps(&Table::ALL),
        print: dice.pick(&Print::ALL),
        tube: dice.pick(&TubeSize::ALL),
        building: dice.pick(&Building::ALL),
        joist: dice.perhaps(&Joist::ALL),
        stud: dice.perhaps(&Stud::ALL),
        fuel: dice.perhaps(&Fuel::ALL),
        outlets: dice.pick(&Outlets::ALL),
        failing: dice.pick(&Failing::ALL),
        fans: dice.pick(&Fans::ALL),
        manifolds: dice.pick(&Manifolds::ALL),
    }
}

fn house_text(field: HouseField, dice: &mut Dice) -> Option<String> {
    let tenths = |dice: &mut Dice, from: u32, to: u32| {
        let number = from + dice.below(to - from);
        format!("{}.{}", number / 10, number % 10)
    };
    let text = match field {
        HouseField::FloorArea if dice.below(3) > 0 => return None,
        HouseField::FloorArea => tenths(dice, 300, 6_000) + " m2",
        HouseField::Ceiling => tenths(dice, 21, 40) + " m",
        HouseField::People => return (dice.below(3) == 0).then(|| (1 + dice.below(9)).to_string()),
        HouseField::Ach50 => tenths(dice, 2, 90),
        HouseField::EnvelopeHeight => tenths(dice, 80, 300) + " ft",
        HouseField::WeatherFactor => format!("0.{}", 30 + dice.below(69)),
        HouseField::RunTime => return (dice.below(3) == 0).then(|| (25 + dice.below(76)).to_string()),
        HouseField::JoistNotch | HouseField::JoistNotchLength | HouseField::StudNotch => {
            format!("{} mm", dice.below(90))
        }
        HouseField::JoistNotchAt => tenths(dice, 0, 40) + " m",
        HouseField::StudDepth => format!("{} in", 2 + dice.below(6)),
        HouseField::JoistDepth | HouseField::JoistClear => format!("{} mm", 100 + dice.below(400)),
        HouseField::LeakPressure => format!("{} Pa", 20 + dice.below(180)),
        HouseField::LeakSupply | HouseField::LeakExtract => tenths(dice, 0, 300) + " m3/h",
        HouseField::OtherFans | HouseField::LargestFans => format!("{} cfm", dice.below(400)),
        HouseField::IntakeBelow | HouseField::ExhaustAbove => format!("-{} ft", dice.below(6)),
        HouseField::JoistSpan
        | HouseField::IntakeGround
        | HouseField::IntakeSource
        | HouseField::IntakeExhaust
        | HouseField::ExhaustOpening
        | HouseField::ExhaustBoundary
        | HouseField::ExhaustOver
        | HouseField::ExhaustGround
        | HouseField::IntakeBoundary
        | HouseField::IntakeStreet
        | HouseField::DryerOpening => tenths(dice, 3, 120) + " m",
    };
    (dice.below(5) > 0).then_some(text)
}

fn room_text(field: RoomField, dice: &mut Dice) -> Option<String> {
    const SLIPS: [&str; 6] = ["1,234", "-3", "12 kg", "NaN", "1e308", "twelve"];
    let (whole, part) = (dice.below(24), dice.below(100));
    let text = match field {
        _ if dice.below(40) == 0 => dice.pick(&SLIPS).to_owned(),
        RoomField::Area if dice.below(4) == 0 => format!("{} sq ft", 30 + 11 * whole),
        RoomField::Area => format!("{}.{part:02}", 2 + whole),
        RoomField::Length | RoomField::Width if dice.below(6) > 0 => return None,
        RoomField::Length | RoomField::Width => format!("{} ft {} in", 6 + whole % 12, part % 12),
        RoomField::Height if dice.below(4) > 0 => return None,
        RoomField::Height => format!("2 m {part} cm"),
        RoomField::Sleepers if dice.below(3) > 0 => return None,
        RoomField::Sleepers => (whole % 5).to_string(),
        RoomField::SupplyRun | RoomField::ExtractRun => format!("{whole}.{part} + 2½"),
        _ if dice.below(4) > 0 => return None,
        RoomField::SupplyBuilt | RoomField::ExtractBuilt => format!("{whole}.{part} m"),
        RoomField::SupplyTubes | RoomField::ExtractTubes => (1 + whole % 4).to_string(),
    };
    Some(text)
}
