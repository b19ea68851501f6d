//! Changes can be taken back and made again.

use super::{config, houses};
use airtally::edit::{Edit, History};
use airtally::house::{Field, House, HouseField, RoomField, RoomId, RoomKind};
use airtally::rules::Air;
use airtally::steps::{StepKey, StepRule};
use proptest::prelude::*;
use proptest::sample::select;

fn edit() -> impl Strategy<Value = Edit> {
    let room = || (0..12_u32).prop_map(RoomId);
    let kind = || select(&RoomKind::ALL[..]);
    let typed = (select(vec!["", "1", "12", "12.5", "🏠"]), any::<bool>());
    prop_oneof![
        3 => kind().prop_map(Edit::AddRoom),
        1 => room().prop_map(Edit::DuplicateRoom),
        1 => room().prop_map(Edit::RemoveRoom),
        1 => (room(), 0..15_usize).prop_map(|(room, to)| Edit::MoveRoom(room, to)),
        1 => (room(), kind()).prop_map(|(room, kind)| Edit::SetKind(room, kind)),
        1 => (room(), any::<i8>()).prop_map(|(room, storey)| Edit::SetStorey(room, storey)),
        1 => (room(), any::<Option<bool>>()).prop_map(|(room, open)| Edit::SetOpen(room, open)),
        1 => houses::choices().prop_map(Edit::Choose),
        4 => (room(), select(&RoomField::ALL[..]), typed).prop_map(|(room, field, (text, name))| {
            let field = if name { Field::RoomName(room) } else { Field::Room(room, field) };
            set(field, text)
        }),
        2 => (select(&HouseField::ALL[..]), select(vec!["", "3", "4"])).prop_map(|(field, text)| set(Field::House(field), text)),
        1 => (select(&StepRule::ALL[..]), room(), any::<bool>())
            .prop_map(|(rule, room, done)| Edit::Tick(StepKey::run(rule, room, Air::Supply), done)),
    ]
}

fn set(field: Field, text: &str) -> Edit {
    Edit::Set(field, text.to_owned(), field.unit(Default::default()))
}

proptest! {
    #![proptest_config(config())]

    /// Everything undone is the house it began with; everything redone is the house it ended with.
    #[test]
    fn undo_and_redo_are_exact(start in houses::house(), edits in prop::collection::vec(edit(), 0..60)) {
        let mut history = History::starting_with(start.clone());
        edits.iter().for_each(|edit| history.edit(edit));
        let end = history.now().as_ref().clone();
        while history.undo() {}
        prop_assert_eq!(history.now().as_ref(), &start);
        prop_assert!(!history.can_undo());
        while history.redo() {}
        prop_assert_eq!(history.now().as_ref(), &end);
        prop_assert!(!history.can_redo());
    }

    /// One step back and forth is no change, and a new change forgets what was undone.
    #[test]
    fn a_new_change_forgets_the_undone(start in houses::house(), edits in prop::collection::vec(edit(), 1..20), last in edit()) {
        let mut history = History::starting_with(start);
        edits.iter().for_each(|edit| history.edit(edit));
        history.undo();
        let before = history.now().as_ref().clone();
        history.edit(&last);
        let changed = history.now().as_ref() != &before;
        prop_assert!(!changed || !history.can_redo());
        prop_assert_eq!(history.now().as_ref(), &last.apply(&before));
    }

    /// Ids are never used twice, so ticks and readings stay with their room.
    #[test]
    fn room_ids_are_never_used_twice(edits in prop::collection::vec(edit(), 0..60)) {
        let mut house = House::new();
        let mut seen: Vec<RoomId> = Vec::new();
        for edit in &edits {
            let next = edit.apply(&house);
            for room in next.rooms.iter().filter(|room| house.room(room.id).is_none()) {
                prop_assert!(!seen.contains(&room.id), "{:?} came back", room.id);
                prop_assert!(room.id.0 < next.next_room);
                seen.push(room.id);
            }
            house = next;
        }
    }
}

#[test]
fn no_number_is_used_twice_even_when_all_are_used_up() {
    let mut house = Edit::AddRoom(RoomKind::Hall).apply(&House::new());
    house.next_room = u32::MAX;
    let id = house.rooms[0].id;
    for edit in [Edit::AddRoom(RoomKind::Wc), Edit::DuplicateRoom(id), Edit::AddRoom(RoomKind::Wc)] {
        house = edit.apply(&house);
    }
    assert_eq!(house.rooms.len(), 1);
}
