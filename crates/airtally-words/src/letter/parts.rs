//! What the house takes, and which tube is cut from which coil: for whoever orders and cuts.

use super::Sheet;
use crate::step::mark;
use crate::{format, page as say, parts as words, room};
use airtally::parts::{Group, Line, Piece};

impl Sheet<'_> {
    /// Pieces and metres with their sizes, without prices or hours of work.
    pub(super) fn parts(&mut self) {
        let report = self.report;
        self.heading(say::stage(3));
        for group in Group::ALL.into_iter().filter(|group| *group != Group::Work) {
            let mut lines = report.take_off().lines.iter().filter(|line| line.part.group() == group).peekable();
            if lines.peek().is_none() {
                continue;
            }
            self.paper.put("h3", self.book.group(group));
            self.paper.open("table");
            lines.for_each(|line| self.line(line));
            self.paper.close("table");
        }
        self.coils();
    }

    fn line(&mut self, line: &Line) {
        let name = self.book.part(line.part).name;
        let size = words::size(line.size, self.display());
        self.row(if size.is_empty() { name.to_owned() } else { [name, ", ", &size].concat() });
        let quantity = words::quantity(line.quantity.value, line.part.unit(), self.display());
        self.paper.cell("td", quantity.to_string());
    }

    fn coils(&mut self) {
        let report = self.report;
        self.paper.put("h3", say::COILS);
        for (at, coil) in report.take_off().coils.iter().enumerate() {
            let left = format::length(coil.left, self.display()).to_string();
            let pieces: Vec<String> = coil.pieces.iter().map(|piece| self.piece(piece)).collect();
            self.paper.put("p class=\"task\"", &say::coil(at + 1, &left));
            self.paper.put("p class=\"soft\"", &pieces.join("; "));
        }
    }

    /// `S1a Living room: 8.4 m`.
    fn piece(&self, piece: &Piece) -> String {
        let twins = self.report.runs().side(piece.air).find(|run| run.room == piece.room);
        let mark = mark(piece.air, piece.mark, (piece.twin, twins.map_or(1, |run| run.tubes.value)));
        let length = format::length(piece.length, self.display()).to_string();
        [&mark, " ", &room::name(self.report.house(), piece.room), ": ", &length].concat()
    }
}
