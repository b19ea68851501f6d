//! Printed tables: one case for every cell.

use super::case::{Case, Choose, Expect, Mark, RoomTyped, Text};
use serde::Deserialize;
use std::collections::BTreeMap;

/// A table whose rows are floor areas.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Grid {
    name: String,
    source: String,
    mark: Mark,
    #[serde(default)]
    rules: Vec<String>,
    #[serde(default)]
    choose: Choose,
    /// Rooms that every cell has.
    #[serde(default)]
    rooms: Vec<RoomTyped>,
    /// For each row, floor areas as typed; each must give the row's cells.
    rows: Vec<Vec<String>>,
    columns: Vec<Column>,
    cells: Vec<Vec<f64>>,
    #[serde(default)]
    read: String,
    unit: String,
    within: f64,
    why: String,
}

/// What a column adds.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Column {
    /// Numbers of bedrooms; each must give the column's cells.
    #[serde(default = "as_they_are")]
    bedrooms: Vec<u32>,
    #[serde(default)]
    rules: Vec<String>,
    #[serde(default)]
    settings: BTreeMap<String, Text>,
    read: Option<String>,
}

fn as_they_are() -> Vec<u32> {
    vec![0]
}

impl Grid {
    /// Every cell, for every way of typing its row and every number of bedrooms of its column.
    pub fn cases(&self) -> Vec<Case> {
        assert_eq!(self.cells.len(), self.rows.len(), "{}: rows of cells", self.name);
        let mut cases = Vec::new();
        for (areas, cells) in self.rows.iter().zip(&self.cells) {
            assert_eq!(cells.len(), self.columns.len(), "{}: cells of {areas:?}", self.name);
            for (column, cell) in self.columns.iter().zip(cells) {
                let pairs = areas.iter().flat_map(|area| column.bedrooms.iter().map(move |bedrooms| (area, *bedrooms)));
                cases.extend(pairs.map(|(area, bedrooms)| self.case(column, area, bedrooms, *cell)));
            }
        }
        cases
    }

    fn case(&self, column: &Column, area: &str, bedrooms: u32, cell: f64) -> Case {
        let bedroom =
            RoomTyped { kind: "bedroom".to_owned(), name: None, count: bedrooms, open: None, typed: BTreeMap::new() };
        let expect = Expect {
            read: column.read.clone().unwrap_or_else(|| self.read.clone()),
            is: Some(cell),
            unit: self.unit.clone(),
            within: self.within,
            why: self.why.clone(),
            says: None,
            none: false,
        };
        Case {
            name: format!("{}, {area}, {bedrooms} bedrooms", self.name),
            source: self.source.clone(),
            mark: self.mark,
            rules: if column.rules.is_empty() { self.rules.clone() } else { column.rules.clone() },
            choose: self.choose.clone(),
            house: BTreeMap::from([("floor-area".to_owned(), Text::Plain(area.to_owned()))]),
            rooms: self.rooms.iter().cloned().chain([bedroom]).collect(),
            settings: column.settings.clone(),
            call: None,
            expect: vec![expect],
            issues: Vec::new(),
            no_issues: Vec::new(),
        }
    }
}
