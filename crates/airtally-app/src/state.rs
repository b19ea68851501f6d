//! The document as the page holds it. Plain values: no DOM, storage, clock or random source.

use airtally::edit::{Edit, History};
use airtally::house::House;
use std::rc::Rc;
use yew::{AttrValue, Reducible};

/// A house among those of this device. The first one has 0, as it had before there were several; later ones have the time
/// they were begun.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct HouseId(pub u64);

impl HouseId {
    /// The id of a text of digits.
    pub fn of(digits: &str) -> Self {
        Self(digits.bytes().fold(0, |id, digit| id.wrapping_mul(10).wrapping_add(u64::from(digit & 15))))
    }
}

/// What can be done to the document.
pub enum Action {
    /// One change.
    Edit(Edit),
    /// The last change taken back.
    Undo,
    /// The change that was taken back last, made again.
    Redo,
    /// Another state of this house; can be undone.
    Load(House),
    /// Another house instead; can be undone. One that brings no prices takes those of this one along. A house into which
    /// nothing was typed makes place for it.
    Begin(HouseId, House),
    /// A house that was kept, which another tab may own.
    Open(HouseId, House, Seen),
    /// An empty house with the prices of this one, which was removed.
    Leave(HouseId),
    /// An old version to look at, or something else instead.
    See(Seen),
}

/// What is seen of the document. All but the first is only to look at.
#[derive(Clone)]
pub enum Seen {
    /// The house as it is.
    Now,
    /// Nothing yet: a kept house is on its way.
    Opening,
    /// The house as it was here last: another tab owns it.
    Elsewhere,
    /// An old version, and when that was.
    Past(Rc<House>, AttrValue),
}

/// A house with its history.
#[derive(Clone)]
pub struct Notebook {
    /// Which house it is.
    pub id: HouseId,
    /// What is seen of it.
    pub seen: Seen,
    /// How often something was tried on what is only to look at.
    pub refused: u32,
    history: History,
    before: Option<Rc<Notebook>>,
}

impl Notebook {
    /// A notebook that begins with this house.
    pub fn of(id: HouseId, house: House, seen: Seen) -> Self {
        Self { id, seen, refused: 0, history: History::starting_with(house), before: None }
    }

    /// The house as it is now.
    pub fn house(&self) -> &Rc<House> {
        self.history.now()
    }

    /// The house that is seen.
    pub fn shown(&self) -> &Rc<House> {
        match &self.seen {
            Seen::Past(house, _) => house,
            Seen::Now | Seen::Opening | Seen::Elsewhere => self.house(),
        }
    }

    /// Whether it may be changed.
    pub fn is_own(&self) -> bool {
        matches!(self.seen, Seen::Now)
    }

    /// Whether something can be undone.
    pub fn can_undo(&self) -> bool {
        self.history.can_undo() || self.before.is_some()
    }

    /// Whether something can be made again.
    pub fn can_redo(&self) -> bool {
        self.history.can_redo()
    }

    fn is_blank(&self) -> bool {
        let house = self.house();
        house.name.is_empty() && house.rooms.is_empty() && house.entries.is_empty()
    }

    fn begin(self: &Rc<Self>, id: HouseId, house: House) -> Self {
        let prices = if house.prices.is_empty() { self.house().prices.clone() } else { house.prices.clone() };
        let house = House { prices, ..house };
        let mut next = (**self).clone();
        if self.is_own() && self.is_blank() {
            next.history.replace(house);
            return next;
        }
        Self { before: self.is_own().then(|| Rc::clone(self)), ..Self::of(id, house, Seen::Now) }
    }
}

impl Reducible for Notebook {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        let mut next = (*self).clone();
        match action {
            Action::Open(id, house, seen) => return Rc::new(Self::of(id, house, seen)),
            Action::Leave(id) => {
                let house = House { prices: self.house().prices.clone(), ..House::new() };
                return Rc::new(Self::of(id, house, Seen::Now));
            }
            Action::Begin(id, house) => next = self.begin(id, house),
            Action::See(seen) => {
                next.seen = seen;
                return Rc::new(next);
            }
            Action::Load(house) => {
                next.seen = Seen::Now;
                next.history.replace(house);
            }
            _ if !self.is_own() => {
                next.refused += 1;
                return Rc::new(next);
            }
            Action::Edit(edit) => next.history.edit(&edit),
            Action::Undo if !self.history.can_undo() => return self.before.clone().unwrap_or(self),
            Action::Undo => drop(next.history.undo()),
            Action::Redo => drop(next.history.redo()),
        }
        if Rc::ptr_eq(next.house(), self.house()) && next.is_own() == self.is_own() { self } else { Rc::new(next) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use airtally::house::{Field, RoomKind};
    use airtally::parts::Part;
    use airtally::quantity::Unit;

    fn after(actions: Vec<Action>) -> Rc<Notebook> {
        let begun = Notebook::of(HouseId(0), House::new(), Seen::Now);
        actions.into_iter().fold(Rc::new(begun), Notebook::reduce)
    }

    fn add() -> Action {
        Action::Edit(Edit::AddRoom(RoomKind::Hall))
    }

    #[test]
    fn prices_go_along_into_a_new_house() {
        let field = Field::Price(Part::Tube);
        let price = Action::Edit(Edit::Set(field, "3.20".to_owned(), Unit::Money));
        let begun = after(vec![price, add(), Action::Begin(HouseId(7), House::new())]);
        assert_eq!((begun.id, begun.house().text(field)), (HouseId(7), "3.20"));
    }

    #[test]
    fn a_change_can_be_taken_back_and_made_again() {
        assert_eq!(after(vec![add(), Action::Undo]).house().rooms.len(), 0);
        let again = after(vec![add(), Action::Undo, Action::Redo]);
        assert_eq!(again.house().rooms.len(), 1);
        assert!(again.can_undo() && !again.can_redo());
    }

    #[test]
    fn nothing_to_do_is_the_same_notebook() {
        let empty = after(Vec::new());
        assert!(Rc::ptr_eq(&empty.clone().reduce(Action::Undo), &empty));
        assert!(Rc::ptr_eq(&empty.clone().reduce(Action::Load(House::new())), &empty));
    }

    #[test]
    fn undo_leads_back_to_the_house_before_with_all_its_history() {
        let back = after(vec![add(), add(), Action::Begin(HouseId(7), House::new()), Action::Undo]);
        assert_eq!((back.id, back.house().rooms.len(), back.can_undo()), (HouseId(0), 2, true));
    }

    #[test]
    fn an_id_is_read_as_it_is_written() {
        assert_eq!(HouseId::of("1795799999123"), HouseId(1_795_799_999_123));
    }

    #[test]
    fn an_empty_house_makes_place() {
        assert_eq!(after(vec![Action::Begin(HouseId(7), House::new())]).id, HouseId(0));
    }

    #[test]
    fn what_another_tab_owns_is_not_changed() {
        let seen = after(vec![add(), Action::See(Seen::Elsewhere), add(), Action::Undo]);
        assert_eq!((seen.house().rooms.len(), seen.refused), (1, 2));
        let copy = seen.reduce(Action::Begin(HouseId(7), House::new()));
        assert!(copy.is_own() && !copy.can_undo());
    }

    #[test]
    fn an_old_version_is_looked_at_and_comes_back_as_a_change() {
        let old = Rc::new(Edit::AddRoom(RoomKind::Kitchen).apply(&House::new()));
        let seen = after(vec![add(), add(), Action::See(Seen::Past(Rc::clone(&old), "14:32".into())), add()]);
        assert_eq!((seen.shown().rooms.len(), seen.house().rooms.len()), (1, 2));
        let back = seen.reduce(Action::Load((*old).clone()));
        assert_eq!((back.house().rooms.len(), back.can_undo()), (1, true));
    }
}
