//! Who says so: the document behind a number, and how sure we are of it.

/// How a value came to be known. Shown beside every number as its mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// Printed in the named document and seen there or in a public copy of it.
    Published,
    /// A habit of the trade without a single source.
    CommonPractice,
    /// Known from the named document but not looked up again: check before relying on it.
    FromMemory,
    /// Set by the person who uses the page.
    YourSetting,
    /// Follows from the lines above it by arithmetic alone.
    Arithmetic,
}

/// A document, its edition and the place in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Source {
    /// Title as the trade knows it, e.g. `"IRC"`.
    pub document: &'static str,
    /// Edition or year; empty when there is none.
    pub edition: &'static str,
    /// Clause, table or equation; empty when unknown.
    pub clause: &'static str,
    /// How the value is known.
    pub standing: Standing,
    /// `true` for the values we are least sure of: they can be changed and the page says so.
    pub doubtful: bool,
}

impl Source {
    /// A value printed in a document that was seen, directly or in a public copy.
    pub const fn published(document: &'static str, edition: &'static str, clause: &'static str) -> Self {
        Self { document, edition, clause, standing: Standing::Published, doubtful: false }
    }

    /// A value known from a document but not seen again.
    pub const fn memory(document: &'static str, edition: &'static str, clause: &'static str) -> Self {
        Self { document, edition, clause, standing: Standing::FromMemory, doubtful: false }
    }

    /// The same source, marked as one of the values we are least sure of.
    pub const fn doubted(self) -> Self {
        Self { doubtful: true, ..self }
    }
}

/// Trade habit without a source.
pub static PRACTICE: Source =
    Source { document: "", edition: "", clause: "", standing: Standing::CommonPractice, doubtful: false };

/// Plain arithmetic on the lines above.
pub static ARITHMETIC: Source =
    Source { document: "", edition: "", clause: "", standing: Standing::Arithmetic, doubtful: false };

/// Typed by the person who uses the page.
pub static YOURS: Source =
    Source { document: "", edition: "", clause: "", standing: Standing::YourSetting, doubtful: false };
