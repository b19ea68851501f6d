//! What can be chosen in a house file.

use crate::id;
use crate::shape::map;
use airtally::house::{Display, Role, RoomKind, TubeSize};
use airtally::rules::RuleSet;
use airtally::save::Tree;
use airtally_words::label;

/// Rule sets, kinds of room, units and tubes, each with its id and its name.
pub fn tree() -> Tree {
    map([
        ("rules", list(RuleSet::ALL, |rules| named(rules.id(), label::rules(rules)))),
        ("kinds", list(RoomKind::ALL, kind)),
        ("displays", list(Display::ALL, display)),
        ("tubes", list(TubeSize::ALL, |tube| named(tube.id(), label::tube(tube)))),
    ])
}

fn list<T: Copy, const N: usize>(all: [T; N], tree: impl Fn(T) -> Tree) -> Tree {
    Tree::List(all.into_iter().map(tree).collect())
}

fn named(id: &'static str, name: &'static str) -> Tree {
    map([("id", id.into()), ("name", name.into())])
}

fn kind(kind: RoomKind) -> Tree {
    let role: Role = kind.role();
    map([
        ("id", kind.id().into()),
        ("name", label::kind(kind).into()),
        ("hint", label::kind_hint(kind).into()),
        ("role", id::role(role).into()),
        ("sleeps", Tree::Flag(kind.is_bedroom())),
    ])
}

fn display(display: Display) -> Tree {
    map([
        ("id", display.id().into()),
        ("name", label::display(display).into()),
        ("flow", display.flow().id().into()),
        ("area", display.area().id().into()),
        ("length", display.length().id().into()),
    ])
}
