//! Who says so: the mark and the document.

use crate::ui::mark::mark;
use airtally::source::{Source, Standing};
use airtally_words::standing;
use yew::prelude::*;

/// The mark of a source.
pub fn source_mark(source: &Source) -> Html {
    mark(kind(source.standing), standing::mark(source.standing))
}

/// The mark and the document in one line.
pub fn source_line(source: &Source) -> Html {
    html! { <p class="marks">{ source_mark(source) }{ document(source) }</p> }
}

/// The document; nothing where the mark says it all.
pub fn document(source: &Source) -> Html {
    if source.document.is_empty() && !source.doubtful {
        return html! {};
    }
    html! { <span class="small soft">{ standing::cite(source) }</span> }
}

const fn kind(standing: Standing) -> &'static str {
    match standing {
        Standing::Published => "mark-published",
        Standing::CommonPractice => "mark-practice",
        Standing::FromMemory => "mark-memory",
        Standing::YourSetting => "mark-setting",
        Standing::Arithmetic => "mark-arithmetic",
    }
}
