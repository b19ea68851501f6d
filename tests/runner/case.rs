//! The shape of a case file. Unknown keys are errors, so that a slip of the pen cannot switch a check off.

use super::call::Call;
use super::grid::Grid;
use airtally::quantity::Unit;
use serde::Deserialize;
use std::collections::BTreeMap;

/// One file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
pub struct File {
    #[serde(default)]
    pub case: Vec<Case>,
    #[serde(default)]
    pub grid: Vec<Grid>,
}

/// How an expected value came to be known.
#[derive(Clone, Copy, Debug, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mark {
    Published,
    FromMemory,
    CommonPractice,
    Arithmetic,
}

/// What is typed and chosen, what must come out, who says so.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
pub struct Case {
    pub name: String,
    /// Document, edition and clause.
    pub source: String,
    pub mark: Mark,
    /// The case holds under each of these rule sets.
    #[serde(default)]
    pub rules: Vec<String>,
    #[serde(default)]
    pub choose: Choose,
    /// Fields of the house by their id in files, as typed.
    #[serde(default)]
    pub house: BTreeMap<String, Text>,
    #[serde(default)]
    pub rooms: Vec<RoomTyped>,
    /// The person's own settings by key, as typed.
    #[serde(default)]
    pub settings: BTreeMap<String, Text>,
    /// One function instead of a whole house.
    #[serde(default)]
    pub call: Option<Call>,
    #[serde(default)]
    pub expect: Vec<Expect>,
    #[serde(default)]
    pub issues: Vec<ExpectIssue>,
    /// Codes that must not be there.
    #[serde(default)]
    pub no_issues: Vec<String>,
}

impl Case {
    /// The case once for each of its rule sets.
    pub fn for_each_rule_set(&self) -> Vec<Case> {
        if self.rules.is_empty() {
            return vec![self.clone()];
        }
        self.rules.iter().map(|rules| Case { rules: vec![rules.clone()], ..self.clone() }).collect()
    }

    pub fn checks(&self) -> usize {
        self.expect.len() + self.issues.len() + self.no_issues.len()
    }
}

/// A text, or a piece of it many times over.
#[derive(Clone, Deserialize)]
#[serde(untagged)]
pub enum Text {
    Plain(String),
    Many { piece: String, times: usize },
}

impl Text {
    pub fn typed(&self) -> String {
        match self {
            Self::Plain(text) => text.clone(),
            Self::Many { piece, times } => piece.repeat(*times),
        }
    }
}

/// Choices by their ids in files.
#[derive(Clone, Default, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Choose {
    pub display: Option<String>,
    pub wet: Option<String>,
    pub kitchen: Option<String>,
    pub credit: Option<String>,
    pub table: Option<String>,
    pub print: Option<String>,
    pub tube: Option<String>,
}

/// A room, or several alike. Cases call it by its name, or by its kind when it has none; the second of a name is
/// `"bedroom 2"`.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct RoomTyped {
    pub kind: String,
    pub name: Option<Text>,
    #[serde(default = "one")]
    pub count: u32,
    pub open: Option<bool>,
    /// Fields of the room by their id in files, as typed.
    #[serde(default)]
    pub typed: BTreeMap<String, Text>,
}

fn one() -> u32 {
    1
}

/// A value that must come out.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Expect {
    /// Where the value stands, see `read.rs`.
    pub read: String,
    pub is: Option<f64>,
    #[serde(default)]
    pub unit: String,
    #[serde(default)]
    pub within: f64,
    /// Why this tolerance.
    #[serde(default)]
    pub why: String,
    /// A word instead of a number.
    pub says: Option<String>,
    /// There must be no such value.
    #[serde(default)]
    pub none: bool,
}

impl Expect {
    pub fn wanted(&self) -> String {
        match (&self.is, &self.says) {
            (Some(is), _) => format!("{is} {} within {} ({})", self.unit, self.within, self.why),
            (None, Some(says)) => says.clone(),
            (None, None) => "absent".to_owned(),
        }
    }
}

/// An issue that must be there.
#[derive(Clone, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ExpectIssue {
    pub code: String,
    /// `house`, a room, `floor-area`, `kitchen/area`, `name`, `kitchen/name`, `given/step.ls`.
    pub at: String,
    /// Part of what the trouble holds, such as the kind of reading error.
    #[serde(default)]
    pub holds: String,
}

/// A unit by its id in files.
pub fn unit(id: &str) -> Unit {
    Unit::from_id(id).unwrap_or_else(|| panic!("no unit is called \"{id}\""))
}
