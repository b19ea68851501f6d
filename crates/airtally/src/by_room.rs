//! Values by room, for looking many up.

use crate::id::RoomId;

/// One value a room. Rooms mostly come in the order of their ids, so a sorted list is as quick as a tree and a tenth of
/// its size in the page.
#[derive(Clone, Debug)]
pub struct ByRoom<T>(Vec<(RoomId, T)>);

impl<T: Copy> ByRoom<T> {
    /// Without any room, with space for so many.
    pub fn with_space_for(rooms: usize) -> Self {
        Self(Vec::with_capacity(rooms))
    }

    /// The value of a room.
    pub fn get(&self, room: RoomId) -> Option<T> {
        self.place(room).ok().map(|at| self.0[at].1)
    }

    /// Puts a value in for a room, in place of the one before.
    pub fn put(&mut self, room: RoomId, value: T) {
        match self.place(room) {
            Ok(at) => self.0[at].1 = value,
            Err(at) => self.0.insert(at, (room, value)),
        }
    }

    fn place(&self, room: RoomId) -> Result<usize, usize> {
        match self.0.last() {
            Some((last, _)) if *last == room => Ok(self.0.len() - 1),
            Some((last, _)) if *last > room => self.0.binary_search_by_key(&room, |(room, _)| *room),
            _ => Err(self.0.len()),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rooms_are_found_in_whatever_order_they_came() {
        let mut by_room = ByRoom::with_space_for(4);
        for id in [4, 1, 9, 2, 4] {
            by_room.put(RoomId(id), id * 10);
        }
        assert_eq!([1, 2, 4, 9].map(|id| by_room.get(RoomId(id))), [Some(10), Some(20), Some(40), Some(90)]);
        assert_eq!(by_room.get(RoomId(3)), None);
    }
}
