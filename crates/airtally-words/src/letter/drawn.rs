//! The riser as markup.

use super::Sheet;
use super::paper::escape;
use crate::drawing::{class, number, said, way};
use crate::page as say;
use airtally::drawing::{Shape, riser};

impl Sheet<'_> {
    /// All tubes in one drawing, where there are some.
    pub(super) fn riser(&mut self) {
        let report = self.report;
        let Some(drawing) = riser(report.facts(), report.runs(), report.givens()) else { return };
        let [wide, high] = [drawing.size.0, drawing.size.1].map(number);
        self.paper.put("h3", say::RISER);
        self.raw(&["<svg class=\"drawing\" viewBox=\"0 0 ", &wide, " ", &high, "\" role=\"img\" aria-label=\""]);
        escape(say::RISER_DESCRIBED, &mut self.paper.markup);
        self.raw(&["\">"]);
        drawing.shapes.iter().for_each(|shape| self.shape(*shape));
        self.paper.close("svg");
    }

    fn shape(&mut self, shape: Shape) {
        if let Some((way, class)) = way(shape) {
            self.raw(&["<path class=\"", class, "\" d=\"", &way, "\"></path>"]);
        }
        if let Shape::Words((x, y), anchor, what) = shape {
            let class = class(anchor, what);
            self.raw(&["<text class=\"", class, "\" x=\"", &number(x), "\" y=\"", &number(y), "\">"]);
            escape(&said(what, self.report.house(), self.display()), &mut self.paper.markup);
            self.paper.close("text");
        }
    }

    /// Markup of our own, without a word of anybody's.
    fn raw(&mut self, parts: &[&str]) {
        self.paper.markup.push_str(&parts.concat());
    }
}
