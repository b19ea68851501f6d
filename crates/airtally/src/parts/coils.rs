//! Which tube is cut from which coil: every tube in one piece.

use crate::house::RoomId;
use crate::quantity::Length;
use crate::rules::Air;

/// A tube to cut.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Piece {
    /// Its room.
    pub room: RoomId,
    /// Its manifold.
    pub air: Air,
    /// The number of its run on that manifold.
    pub mark: u32,
    /// Which of the run's tubes, from 0.
    pub twin: u32,
    /// Length to cut.
    pub length: Length,
}

/// A coil with what is cut from it, longest first.
#[derive(Clone, Debug, PartialEq)]
pub struct Coil {
    /// Its pieces.
    pub pieces: Vec<Piece>,
    /// What is left of it.
    pub left: Length,
}

/// The coils for these pieces: the longest first, each from the first coil it fits on. A piece that is longer than a coil
/// gets one of its own with nothing left: it cannot be cut without a joint.
///
/// * Source: first fit decreasing, never more than 11/9 of the fewest coils and one more (Johnson 1973, from memory)
pub fn coils(pieces: Vec<Piece>, coil: Length) -> Vec<Coil> {
    let mut coils: Vec<Coil> = Vec::new();
    for piece in longest_first(pieces) {
        match coils.iter_mut().find(|coil| coil.left.as_m() + CLOSE >= piece.length.as_m()) {
            Some(coil) => {
                coil.left = (coil.left - piece.length).max(Length::ZERO);
                coil.pieces.push(piece);
            }
            None => {
                let left = (coil - piece.length).max(Length::ZERO);
                coils.push(Coil { pieces: vec![piece], left });
            }
        }
    }
    coils
}

/// Of equal ones the earlier first. To insert each takes a tenth of the code of a sort, and a house has few.
fn longest_first(pieces: Vec<Piece>) -> Vec<Piece> {
    let mut sorted: Vec<Piece> = Vec::with_capacity(pieces.len());
    for piece in pieces {
        let at = sorted.partition_point(|known| known.length >= piece.length);
        sorted.insert(at, piece);
    }
    sorted
}

/// Metres: lengths that differ by less are one length.
const CLOSE: f64 = 1e-9;

#[cfg(test)]
mod tests {
    use super::*;

    fn pieces(metres: &[f64]) -> Vec<Piece> {
        let piece = |(mark, metres): (usize, &f64)| Piece {
            room: RoomId(0),
            air: Air::Supply,
            mark: mark as u32,
            twin: 0,
            length: Length::from_m(*metres),
        };
        metres.iter().enumerate().map(piece).collect()
    }

    fn lengths(coils: &[Coil]) -> Vec<Vec<f64>> {
        coils.iter().map(|coil| coil.pieces.iter().map(|piece| piece.length.as_m()).collect()).collect()
    }

    /// Worked by hand: 50 m coils.
    #[test]
    fn tubes_are_cut_from_as_few_coils_as_the_rule_finds() {
        let cut = coils(pieces(&[12.0, 30.0, 20.0, 25.0, 8.0, 5.0]), Length::from_m(50.0));
        assert_eq!(lengths(&cut), [vec![30.0, 20.0], vec![25.0, 12.0, 8.0, 5.0]]);
        assert_eq!(cut[0].left, Length::ZERO);
        let long = coils(pieces(&[60.0, 10.0]), Length::from_m(50.0));
        assert_eq!(lengths(&long), [vec![60.0], vec![10.0]]);
        assert!(coils(Vec::new(), Length::from_m(50.0)).is_empty());
    }
}
