use super::*;
use crate::prose;
use airtally::house::{Credit, Display, HouseField, KitchenDraw, Print, RoomField, Table, TubeSize, WetRooms};
use airtally::rules::RuleSet;
use std::collections::BTreeSet;

fn all_differ<T>(all: impl IntoIterator<Item = T>, say: impl Fn(T) -> String) {
    let texts: Vec<String> = all.into_iter().map(say).collect();
    texts.iter().for_each(|text| prose::is_label(text));
    assert_eq!(texts.iter().collect::<BTreeSet<_>>().len(), texts.len(), "{texts:?}");
}

#[test]
fn no_two_choices_read_alike() {
    all_differ(RoomKind::ALL, |it| kind(it).to_owned());
    all_differ(RoomKind::ALL, |it| kind_hint(it).to_owned());
    all_differ(RuleSet::ALL, |it| rules(it).to_owned());
    all_differ(Display::ALL, |it| display(it).to_owned());
    all_differ(WetRooms::ALL, |it| wet_rooms(it).to_owned());
    all_differ(KitchenDraw::ALL, |it| kitchen_draw(it).to_owned());
    all_differ(Credit::ALL, |it| credit(it).to_owned());
    all_differ(Table::ALL, |it| table(it).to_owned());
    all_differ(Print::ALL, |it| print(it).to_owned());
    all_differ(TubeSize::ALL, |it| tube(it).to_owned());
    all_differ(Level::ALL, |it| level(it).to_owned());
    all_differ(Air::BOTH, |it| air(it).to_owned());
    all_differ(-128..=127, storey);
}

#[test]
fn a_tube_is_named_by_its_diameter() {
    for size in TubeSize::ALL {
        let name = match size {
            TubeSize::Oval => format!("flat oval tube, {:.0} × {:.0} mm", size.outside_mm(), size.flat_mm()),
            _ => format!("{:.0} mm tube", size.outside_mm()),
        };
        assert_eq!(tube(size), name);
    }
}

#[test]
fn every_field_has_a_name_and_a_hint() {
    for it in HouseField::ALL {
        let label = house_field(it);
        prose::is_label(label.name);
        prose::is_label(label.hint);
    }
    for it in RoomField::ALL {
        let label = room_field(it);
        prose::is_label(label.name);
        prose::is_label(label.hint);
    }
}

#[test]
fn storeys_read_as_people_say_them() {
    let texts = [-2, -1, 0, 1, 2].map(storey);
    assert_eq!(texts, ["2 floors down", "Basement", "Ground floor", "One floor up", "2 floors up"]);
}
