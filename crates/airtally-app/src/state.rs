//! The document as the page holds it. Plain values: no DOM, storage, clock or random source.

use airtally::edit::{Edit, History};
use airtally::house::House;
use std::rc::Rc;
use yew::Reducible;

/// What can be done to the document.
pub enum Action {
    /// One change.
    Edit(Edit),
    /// The last change taken back.
    Undo,
    /// The change that was taken back last, made again.
    Redo,
    /// A whole house in place of this one; can be undone.
    Load(House),
    /// The same for a house that brings no prices: those of this one go along.
    Begin(House),
}

/// A house with its history.
#[derive(Clone)]
pub struct Notebook {
    history: History,
}

impl Notebook {
    /// A notebook that begins with this house.
    pub fn of(house: House) -> Self {
        Self { history: History::starting_with(house) }
    }

    /// The house as it is now.
    pub fn house(&self) -> &Rc<House> {
        self.history.now()
    }

    /// Whether something can be undone.
    pub fn can_undo(&self) -> bool {
        self.history.can_undo()
    }

    /// Whether something can be made again.
    pub fn can_redo(&self) -> bool {
        self.history.can_redo()
    }
}

impl Reducible for Notebook {
    type Action = Action;

    fn reduce(self: Rc<Self>, action: Action) -> Rc<Self> {
        let mut next = (*self).clone();
        match action {
            Action::Edit(edit) => next.history.edit(&edit),
            Action::Undo => drop(next.history.undo()),
            Action::Redo => drop(next.history.redo()),
            Action::Load(house) => next.history.replace(house),
            Action::Begin(house) => {
                let own = if house.prices.is_empty() { self.house().prices.clone() } else { house.prices.clone() };
                next.history.replace(House { prices: own, ..house });
            }
        }
        if Rc::ptr_eq(next.house(), self.house()) { self } else { Rc::new(next) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use airtally::house::{Field, RoomKind};
    use airtally::parts::Part;
    use airtally::quantity::Unit;

    fn after(actions: Vec<Action>) -> Rc<Notebook> {
        actions.into_iter().fold(Rc::new(Notebook::of(House::new())), Notebook::reduce)
    }

    #[test]
    fn prices_go_along_into_a_new_house() {
        let field = Field::Price(Part::Tube);
        let price = Action::Edit(Edit::Set(field, "3.20".to_owned(), Unit::Money));
        let begun = after(vec![price, Action::Begin(House::new())]);
        assert_eq!(begun.house().text(field), "3.20");
    }

    #[test]
    fn a_change_can_be_taken_back_and_made_again() {
        let add = || Action::Edit(Edit::AddRoom(RoomKind::Hall));
        assert_eq!(after(vec![add(), Action::Undo]).house().rooms.len(), 0);
        let again = after(vec![add(), Action::Undo, Action::Redo]);
        assert_eq!(again.house().rooms.len(), 1);
        assert!(again.can_undo() && !again.can_redo());
    }

    #[test]
    fn nothing_to_do_is_the_same_notebook() {
        let empty = Rc::new(Notebook::of(House::new()));
        assert!(Rc::ptr_eq(&empty.clone().reduce(Action::Undo), &empty));
        assert!(Rc::ptr_eq(&empty.clone().reduce(Action::Load(House::new())), &empty));
    }
}
