//! Building a house by the same changes a person makes.

use airtally::edit::Edit;
use airtally::given::GivenId;
use airtally::house::{Choices, Field, House, HouseField, RoomField, RoomId, RoomKind};

/// One field of a room and its text.
pub type RoomText<'a> = (RoomField, &'a str);

/// A house that grows by edits.
pub struct Builder {
    house: House,
}

impl Builder {
    /// A house without rooms.
    pub fn new(name: &str, choices: Choices) -> Self {
        Self { house: House { name: name.to_owned(), choices, ..House::new() } }
    }

    /// Types into a field of the house.
    pub fn house(self, field: HouseField, text: &str) -> Self {
        self.typed(Field::House(field), text)
    }

    /// Types a value of one's own in place of a registered one.
    pub fn given(self, id: GivenId, text: &str) -> Self {
        self.typed(Field::Given(id), text)
    }

    /// Adds a room with its floor area, name and storey, and types into some more of its fields.
    pub fn room(self, kind: RoomKind, (name, storey): (&str, i8), area: &str, texts: &[RoomText]) -> Self {
        let id = RoomId(self.house.next_room);
        let added = self.edited(Edit::AddRoom(kind)).edited(Edit::SetStorey(id, storey));
        let named = added.typed(Field::RoomName(id), name).typed(Field::Room(id, RoomField::Area), area);
        texts.iter().fold(named, |builder, (field, text)| builder.typed(Field::Room(id, *field), text))
    }

    /// The house.
    pub fn done(self) -> House {
        self.house
    }

    fn typed(self, field: Field, text: &str) -> Self {
        let unit = field.unit(self.house.choices.display);
        self.edited(Edit::Set(field, text.to_owned(), unit))
    }

    fn edited(self, edit: Edit) -> Self {
        Self { house: edit.apply(&self.house) }
    }
}
