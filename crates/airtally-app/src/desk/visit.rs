//! The way to the place of an issue or of something typed.

use super::{Desk, Fold, InSight, OpenStep, ROOMS, Stage, Topic, field_id, row_id};
use airtally::house::Field;
use airtally::id::Curve;
use airtally::issue::Place;
use airtally::steps::asked_by;

impl Desk {
    pub(super) fn visit(&mut self, place: Place) {
        if let Place::Field(field) = place
            && let Some(key) = asked_by(field)
        {
            self.stage = Stage::Steps;
            self.shown = InSight::default();
            self.step = OpenStep::This(key);
            return self.aim(field_id(field));
        }
        match place {
            Place::Field(Field::Given(id)) => return self.sheet.push(Topic::Given(id)),
            Place::Field(field) => {
                if let Field::Room(room, _) | Field::RoomName(room) = field {
                    self.open = Some(room);
                }
                self.aim(field_id(field));
                if let Some((stage, fold)) = stage_of(field) {
                    self.stage = stage;
                    self.folds = fold.map_or(self.folds, |fold| self.folds.with(fold));
                    return;
                }
            }
            Place::Room(room) => {
                self.open = Some(room);
                self.aim(row_id(room));
            }
            Place::House => self.aim(ROOMS.to_owned()),
        }
        self.stage = Stage::House;
        self.begun = true;
    }
}

/// Where a field stands that is not on the screen of the house, and the part that must be open.
const fn stage_of(field: Field) -> Option<(Stage, Option<Fold>)> {
    match field {
        Field::Price(_) => Some((Stage::Parts, None)),
        Field::Curve(Curve::Fan) => Some((Stage::Tubes, Some(Fold::Unit))),
        Field::Curve(_) => Some((Stage::Tubes, Some(Fold::Layout))),
        _ => None,
    }
}
