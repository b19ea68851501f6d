//! The list, group by group: how much of what, its price, its amount.

use crate::context::View;
use crate::desk::field_id;
use crate::parts::entry::cell;
use crate::ui::el::{el, els, nothing, tag, text};
use crate::ui::figure::Size;
use crate::ui::part::part;
use airtally::house::Field;
use airtally::money::Money;
use airtally::parts::{Group, Line, Quotation, Quoted, TakeOff};
use airtally_words::book::Book;
use airtally_words::format::DASH;
use airtally_words::{label, parts as words};
use yew::prelude::*;

/// Every group that has lines.
pub fn lines(view: &View, book: &'static Book, take_off: &TakeOff, quotation: &Quotation) -> Html {
    let all: Vec<(&Line, &Quoted)> = take_off.lines.iter().zip(&quotation.lines).collect();
    let group = |group: Group| {
        let own: Vec<_> = all.iter().filter(|(line, _)| line.part.group() == group).collect();
        if own.is_empty() {
            return nothing();
        }
        let amounts = own.iter().filter_map(|(_, quoted)| quoted.amount);
        let sum = amounts.reduce(Money::plus).map_or(nothing(), |sum| el("span", "soft", [text(words::money(sum))]));
        let rows = own.iter().map(|(line, quoted)| row(view, book, line, quoted));
        part(book.group(group), sum, els("ol", "ledger priced", rows))
    };
    Group::ALL.into_iter().map(group).collect()
}

fn row(view: &View, book: &'static Book, line: &Line, quoted: &Quoted) -> Html {
    let (display, of) = (view.page.display(), book.part(line.part));
    let field = Field::Price(line.part);
    let (name_id, price_id) = ([&field_id(field), "-of"].concat(), [&field_id(field), "-name"].concat());
    let size = words::size(line.size, display);
    let name = match size.is_empty() {
        true => of.name.to_owned(),
        false => [of.name, ", ", &size].concat(),
    };
    let shown = words::quantity(line.quantity.value, line.part.unit(), display);
    let quantity = view.figure(of.name, &shown, Size::Row, line.quantity.line);
    let [price, said] = cell(view, field, [&price_id, " ", &name_id].concat());
    let amount = quoted.amount.map_or(DASH.to_owned(), words::money);
    let head = [tag("h3", "row-name").attr("id", name_id).around([text(name)]), el("p", "row-note", [text(of.hint)])];
    let asked = tag("span", "soft small").attr("id", price_id).around([text(label::field(field).name)]);
    let cost = [asked, price, el("b", "priced-sum", [text(amount)]), said];
    el("li", "row", [el("div", "row-main", head), el("div", "row-figure", [quantity]), el("div", "priced-row", cost)])
}
