//! Who says so: the mark and the document.

use crate::ui::el::{el, nothing, text};
use crate::ui::mark::mark;
use airtally::source::{Source, Standing};
use airtally_words::standing;
use yew::prelude::*;

/// The mark of a source.
pub fn source_mark(source: &Source) -> Html {
    mark(class(source.standing), standing::mark(source.standing))
}

/// The mark and the document in one line.
pub fn source_line(source: &Source) -> Html {
    el("p", "marks", [source_mark(source), document(source)])
}

/// The document; nothing where the mark says it all.
pub fn document(source: &Source) -> Html {
    if source.document.is_empty() && !source.doubtful {
        return nothing();
    }
    el("span", "small soft", [text(standing::cite(source))])
}

const fn class(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "mark mark-published",
        Standing::CommonPractice => "mark mark-practice",
        Standing::FromMemory => "mark mark-memory",
        Standing::YourSetting => "mark mark-setting",
        Standing::Arithmetic => "mark mark-arithmetic",
    }
}
