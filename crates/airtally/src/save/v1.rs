//! Version 1 of the file. Frozen: what it says about a house never changes; a new need is a new version.
//!
//! Everything is text by stable id, so reordering our own enums can never change what an old file means.

use super::fields::{Fields, Refusal};
use super::tree::Tree;
use crate::entry::Entry;
use crate::house::{Building, Choices, Credit, Display, Failing, Fuel, House, Joist, KitchenDraw, Outlets, Print};
use crate::house::{Fans, Manifolds, Room, RoomKind, Stud, Table, TubeSize, WetRooms};
use crate::id::{Air, Curve, GivenId, HouseField, Item, Part, RoomField, RoomId, RuleSet, StepKey, StepRule};
use crate::quantity::Unit;

type Opened<T> = Result<T, Refusal>;

/// The house as a tree.
pub fn write(house: &House) -> Tree {
    map([
        ("name", Tree::from(house.name.as_str())),
        ("choices", write_choices(&house.choices)),
        ("entries", write_entries(&house.entries, HouseField::id)),
        ("rooms", Tree::List(house.rooms.iter().map(write_room).collect())),
        ("next_room", Tree::from(f64::from(house.next_room))),
        ("settings", write_entries(&house.settings, |id| id.given().key)),
        ("ticks", Tree::List(house.ticks.iter().map(write_tick).collect())),
        // A file from before there were these means the same.
        ("prices", some_entries(&house.prices, Part::id)),
        ("curves", some_entries(&house.curves, Curve::id)),
    ])
}

fn write_choices(choices: &Choices) -> Tree {
    map([
        ("rules", choices.rules.id().into()),
        ("display", choices.display.id().into()),
        ("wet", optional(choices.wet.map(WetRooms::id))),
        ("kitchen", optional(choices.kitchen.map(KitchenDraw::id))),
        ("table", optional(choices.table.map(Table::id))),
        ("credit", choices.credit.id().into()),
        ("print", choices.print.id().into()),
        ("tube", choices.tube.id().into()),
        ("building", unless_default(choices.building, Building::id)),
        ("joist", optional(choices.joist.map(Joist::id))),
        ("stud", optional(choices.stud.map(Stud::id))),
        ("fuel", optional(choices.fuel.map(Fuel::id))),
        ("outlets", unless_default(choices.outlets, Outlets::id)),
        ("failing", unless_default(choices.failing, Failing::id)),
        ("fans", unless_default(choices.fans, Fans::id)),
        ("manifolds", unless_default(choices.manifolds, Manifolds::id)),
    ])
}

fn write_room(room: &Room) -> Tree {
    map([
        ("id", Tree::from(f64::from(room.id.0))),
        ("kind", room.kind.id().into()),
        ("name", room.name.as_str().into()),
        ("storey", Tree::from(f64::from(room.storey))),
        ("open", room.open.map_or(Tree::Nothing, Tree::Flag)),
        ("entries", write_entries(&room.entries, RoomField::id)),
    ])
}

fn write_entries<K: Copy>(entries: &[(K, Entry)], id: impl Fn(K) -> &'static str) -> Tree {
    let entry = |(field, entry): &(K, Entry)| {
        map([("field", id(*field).into()), ("text", entry.text.as_str().into()), ("unit", entry.unit.id().into())])
    };
    Tree::List(entries.iter().map(entry).collect())
}

/// Nothing for none.
fn some_entries<K: Copy>(entries: &[(K, Entry)], id: impl Fn(K) -> &'static str) -> Tree {
    if entries.is_empty() { Tree::Nothing } else { write_entries(entries, id) }
}

fn write_tick(key: &StepKey) -> Tree {
    let storey = match key.item {
        Some(Item::Floor(storey)) => Tree::from(f64::from(storey)),
        _ => Tree::Nothing,
    };
    map([
        ("step", key.rule.id().into()),
        ("room", key.room.map_or(Tree::Nothing, |room| Tree::from(f64::from(room.0)))),
        ("air", optional(key.air.map(Air::id))),
        ("item", optional(key.item.map(Item::id))),
        ("storey", storey),
    ])
}

/// Nothing for the default: a file from before the choice means the same.
fn unless_default<T: Copy + Default + PartialEq>(choice: T, id: impl Fn(T) -> &'static str) -> Tree {
    optional((choice != T::default()).then(|| id(choice)))
}

fn optional(id: Option<&'static str>) -> Tree {
    id.map_or(Tree::Nothing, Tree::from)
}

/// A map without the fields that hold nothing.
fn map<const N: usize>(fields: [(&str, Tree); N]) -> Tree {
    let held = fields.into_iter().filter(|(_, value)| *value != Tree::Nothing);
    Tree::Map(held.map(|(name, value)| (name.to_owned(), value)).collect())
}

/// The house of a tree.
///
/// # Errors
/// [`Refusal`] with the place of the first thing that is not of this version.
pub fn open(tree: Tree) -> Opened<House> {
    let mut fields = Fields::of(tree);
    let name = fields.text("name");
    let choices = fields.need("choices");
    let house = House {
        name,
        choices: open_choices(choices).unwrap_or_else(|why| {
            fields.refuse(why.within("choices"));
            Choices::default()
        }),
        entries: open_entries(&mut fields, "entries", |id| pick(HouseField::ALL, HouseField::id, id)),
        rooms: fields.list("rooms", open_room),
        next_room: fields.whole("next_room", IDS) as u32,
        settings: open_entries(&mut fields, "settings", GivenId::from_key),
        ticks: fields.list("ticks", open_tick),
        prices: perhaps_entries(&mut fields, "prices", Part::from_id),
        curves: perhaps_entries(&mut fields, "curves", |id| pick(Curve::ALL, Curve::id, id)),
    };
    let mut ids: Vec<RoomId> = Vec::with_capacity(house.rooms.len());
    for room in &house.rooms {
        match ids.binary_search(&room.id) {
            Err(at) if room.id.0 < house.next_room => ids.insert(at, room.id),
            _ => {
                let why = format!("the id {} is used twice or not below next_room", room.id.0);
                fields.refuse(Refusal::new(why).within("rooms"));
            }
        }
    }
    fields.end(house)
}

/// Numbers of rooms.
const IDS: (i64, i64) = (0, u32::MAX as i64);
const STOREYS: (i64, i64) = (i8::MIN as i64, i8::MAX as i64);

fn open_choices(tree: Tree) -> Opened<Choices> {
    let mut fields = Fields::of(tree);
    let choices = Choices {
        rules: known(&mut fields, "rules", RuleSet::ALL, RuleSet::id),
        display: known(&mut fields, "display", Display::ALL, Display::id),
        wet: known_or_none(&mut fields, "wet", WetRooms::ALL, WetRooms::id),
        kitchen: known_or_none(&mut fields, "kitchen", KitchenDraw::ALL, KitchenDraw::id),
        table: known_or_none(&mut fields, "table", Table::ALL, Table::id),
        credit: known(&mut fields, "credit", Credit::ALL, Credit::id),
        print: known(&mut fields, "print", Print::ALL, Print::id),
        tube: known(&mut fields, "tube", TubeSize::ALL, TubeSize::id),
        building: known_or_none(&mut fields, "building", Building::ALL, Building::id).unwrap_or_default(),
        joist: known_or_none(&mut fields, "joist", Joist::ALL, Joist::id),
        stud: known_or_none(&mut fields, "stud", Stud::ALL, Stud::id),
        fuel: known_or_none(&mut fields, "fuel", Fuel::ALL, Fuel::id),
        outlets: known_or_none(&mut fields, "outlets", Outlets::ALL, Outlets::id).unwrap_or_default(),
        failing: known_or_none(&mut fields, "failing", Failing::ALL, Failing::id).unwrap_or_default(),
        fans: known_or_none(&mut fields, "fans", Fans::ALL, Fans::id).unwrap_or_default(),
        manifolds: known_or_none(&mut fields, "manifolds", Manifolds::ALL, Manifolds::id).unwrap_or_default(),
    };
    fields.end(choices)
}

fn open_room(tree: Tree) -> Opened<Room> {
    let mut fields = Fields::of(tree);
    let id = RoomId(fields.whole("id", IDS) as u32);
    let kind = known(&mut fields, "kind", RoomKind::ALL, RoomKind::id);
    let name = fields.text("name");
    let storey = fields.whole("storey", STOREYS) as i8;
    let open = match fields.take("open") {
        Tree::Nothing => None,
        Tree::Flag(open) => Some(open),
        _ => fields.wrong("open", "this must be true or false"),
    };
    let entries = open_entries(&mut fields, "entries", |id| pick(RoomField::ALL, RoomField::id, id));
    fields.end(Room { id, kind, name, storey, open, entries })
}

fn open_tick(tree: Tree) -> Opened<StepKey> {
    let mut fields = Fields::of(tree);
    let rule = known(&mut fields, "step", StepRule::ALL, StepRule::id);
    let air = known_or_none(&mut fields, "air", Air::BOTH, Air::id);
    let room = match fields.take("room") {
        Tree::Nothing => None,
        id => Some(RoomId(fields.as_whole("room", id, IDS) as u32)),
    };
    let item = match known_or_none(&mut fields, "item", Item::ALL, Item::id) {
        Some(Item::Floor(_)) => Some(Item::Floor(fields.whole("storey", STOREYS) as i8)),
        item => item,
    };
    fields.end(StepKey { rule, room, air, item })
}

fn open_entries<K: Copy + PartialEq>(
    fields: &mut Fields,
    name: &str,
    find: impl Fn(&str) -> Option<K>,
) -> Vec<(K, Entry)> {
    let mut known: Vec<K> = Vec::new();
    fields.list(name, |tree| {
        let (field, entry) = open_entry(tree)?;
        let key = find(&field).ok_or_else(|| unknown(&field).within("field"))?;
        if known.contains(&key) {
            return Err(Refusal::new(["\"", &short(&field), "\" is given twice"].concat()).within("field"));
        }
        known.push(key);
        Ok((key, entry))
    })
}

/// Entries that a file may be without.
fn perhaps_entries<K: Copy + PartialEq>(
    fields: &mut Fields,
    name: &str,
    find: impl Fn(&str) -> Option<K>,
) -> Vec<(K, Entry)> {
    if fields.has(name) { open_entries(fields, name, find) } else { Vec::new() }
}

fn open_entry(tree: Tree) -> Opened<(String, Entry)> {
    let mut fields = Fields::of(tree);
    let (field, text, id) = (fields.text("field"), fields.text("text"), fields.text("unit"));
    let unit = Unit::from_id(&id).unwrap_or_else(|| {
        fields.refuse(unknown(&id).within("unit"));
        Unit::Ratio
    });
    fields.end((field, Entry { text, unit }))
}

/// One of a list by its id; the first of the list when it is refused.
fn known<T: Copy, const N: usize>(
    fields: &mut Fields,
    name: &str,
    all: [T; N],
    id_of: impl Fn(T) -> &'static str,
) -> T {
    let id = fields.text(name);
    pick(all, id_of, &id).unwrap_or_else(|| {
        fields.refuse_at(name, unknown(&id));
        all[0]
    })
}

fn known_or_none<T: Copy, const N: usize>(
    fields: &mut Fields,
    name: &str,
    all: [T; N],
    id_of: impl Fn(T) -> &'static str,
) -> Option<T> {
    let id = fields.text_or_none(name)?;
    let found = pick(all, id_of, &id);
    if found.is_none() {
        fields.refuse_at(name, unknown(&id));
    }
    found
}

fn pick<T: Copy>(all: impl IntoIterator<Item = T>, id_of: impl Fn(T) -> &'static str, id: &str) -> Option<T> {
    all.into_iter().find(|item| id_of(*item) == id)
}

#[inline(never)]
fn unknown(id: &str) -> Refusal {
    Refusal::new(["version 1 has no \"", &short(id), "\""].concat())
}

/// Ids are short: the rest of a long text is not repeated.
fn short(id: &str) -> String {
    id.chars().take(40).collect()
}
