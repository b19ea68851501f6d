//! The quotation on paper: house, date, every line with its quantity and amount, the sums. Nothing that is typed into.

use crate::context::View;
use crate::platform::clock;
use crate::ui::el::{el, els, nodes, nothing, tag, text};
use airtally::given::GivenId;
use airtally::house::Field;
use airtally::money::Money;
use airtally::parts::{Group, Line, Quoted};
use airtally_words::book::Book;
use airtally_words::format::{self, DASH};
use airtally_words::{page as say, parts as words};
use yew::prelude::*;

/// The sheet.
pub fn sheet(view: &View, book: &'static Book) -> Html {
    let report = &view.page.report;
    let (take_off, quotation) = (report.take_off(), report.quotation());
    let all: Vec<(&Line, &Quoted)> = take_off.lines.iter().zip(&quotation.lines).collect();
    let of = |group: Group| {
        let mut own = all.iter().filter(|(line, _)| line.part.group() == group).peekable();
        own.peek()?;
        let head = tag("th", "").attr("scope", "rowgroup").attr("colspan", "4").around([text(book.group(group))]);
        let lines = own.map(|(line, quoted)| row(view, book, line, quoted)).collect();
        Some(el("tbody", "", [el("tr", "", [head]), lines]))
    };
    let groups = Group::ALL.into_iter().filter_map(of).collect();
    let heads = [head("", say::QUOTED_WHAT), head(NUMBER, say::QUOTED_QUANTITY)];
    let heads = heads.into_iter().chain([head(NUMBER, say::QUOTED_PRICE), head(NUMBER, say::QUOTED_AMOUNT)]);
    let table = el("table", "quoted", [el("thead", "", [els("tr", "", heads)]), groups, sums(view)]);
    let open = match quotation.unpriced {
        0 => nothing(),
        count => el("p", "", [text(say::unpriced(count))]),
    };
    nodes([el("h1", "", [text(say::QUOTATION)]), el("p", "", [text(for_house(view))]), table, open])
}

/// `Larkfield · 2026-03-10`.
fn for_house(view: &View) -> String {
    let name = view.page.house.name.trim();
    let name = if name.is_empty() { say::NO_NAME } else { name };
    [name, " · ", &clock::today()].concat()
}

fn head(class: &'static str, words: &'static str) -> Html {
    tag("th", class).attr("scope", "col").around([text(words)])
}

fn row(view: &View, book: &'static Book, line: &Line, quoted: &Quoted) -> Html {
    let display = view.page.display();
    let (of, size) = (book.part(line.part), words::size(line.size, display));
    let name = if size.is_empty() { of.name.to_owned() } else { [of.name, ", ", &size].concat() };
    let quantity = words::quantity(line.quantity.value, line.part.unit(), display).to_string();
    let (price, amount) = match quoted.amount {
        Some(amount) => (view.page.house.text(Field::Price(quoted.priced_as)).to_owned(), words::money(amount)),
        None => (String::new(), DASH.to_owned()),
    };
    let number = |words: String| el("td", NUMBER, [text(words)]);
    el("tr", "", [el("td", "", [text(name)]), number(quantity), number(price), number(amount)])
}

fn sums(view: &View) -> Html {
    let (quotation, givens) = (view.page.report.quotation(), view.page.report.givens());
    let sum = |name: String, money: Money| {
        let name = tag("th", "").attr("scope", "row").attr("colspan", "3").around([text(name)]);
        el("tr", "", [name, el("td", NUMBER, [text(words::money(money))])])
    };
    let rated = |name: &str, id: GivenId| [name, " ", &format::text(givens.value(id), id.given().unit)].concat();
    let margin = match quotation.margin {
        Money::ZERO => nothing(),
        margin => sum(rated(say::SUM_MARGIN, GivenId::PartsMargin), margin),
    };
    let rows = [
        sum(say::SUM_PARTS.to_owned(), quotation.parts),
        margin,
        sum(say::SUM_WORK.to_owned(), quotation.work),
        sum(say::SUM_NET.to_owned(), quotation.net),
        sum(rated(say::SUM_TAX, GivenId::Tax), quotation.tax),
        sum(say::SUM_TOTAL.to_owned(), quotation.total),
    ];
    el("tbody", "quoted-sums", rows)
}

const NUMBER: &str = "number";
