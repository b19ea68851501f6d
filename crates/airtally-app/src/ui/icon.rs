//! Icons on a grid of 24 units, one stroke width, no fill.

use super::el::tag;
use yew::prelude::*;

/// What there is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
#[allow(missing_docs, reason = "the variant says it all")]
pub enum Icon {
    House,
    Air,
    Tubes,
    Parts,
    Steps,
    Undo,
    Redo,
    Menu,
    Close,
    Down,
    Up,
    Back,
    Next,
    Plus,
    Copy,
    Caution,
    Lock,
    Bin,
    Fine,
    Pocket,
}

/// Draws one. Words beside it say what it means, so it is silent.
pub fn icon(icon: Icon) -> Html {
    drawing("icon", "0 0 24 24", [stroke("", path(icon))])
}

const fn path(icon: Icon) -> &'static str {
    match icon {
        Icon::House => "M3 11.5 12 4l9 7.5M5.5 9.8V20h13V9.8M10 20v-6h4v6",
        Icon::Air => "M3 8h15M14.5 4.5 18 8l-3.5 3.5M21 16H6M9.5 12.5 6 16l3.5 3.5",
        Icon::Tubes => "M3 20V12a3 3 0 0 1 3-3h15M8 20v-5a1.5 1.5 0 0 1 1.5-1.5H21M3 4.5h18",
        Icon::Parts => "M4 8.5 12 4l8 4.5v7L12 20l-8-4.5zM4 8.5l8 4.5 8-4.5M12 13v7",
        Icon::Steps => "M3.5 6 5.5 8 9 4M12 6h9M3.5 13l2 2L9 11M12 13h9M4 20h4M12 20h9",
        Icon::Undo => "M8 5 4 9l4 4M4 9h9.5a5.5 5.5 0 0 1 0 11H9",
        Icon::Redo => "M16 5l4 4-4 4M20 9h-9.5a5.5 5.5 0 0 0 0 11H15",
        Icon::Menu => "M4 6.5h16M4 12h16M4 17.5h16",
        Icon::Close => "M5.5 5.5l13 13M18.5 5.5l-13 13",
        Icon::Down => "M6 9.5l6 6 6-6",
        Icon::Up => "M6 14.5l6-6 6 6",
        Icon::Back => "M14.5 6l-6 6 6 6",
        Icon::Next => "M9.5 6l6 6-6 6",
        Icon::Plus => "M12 5v14M5 12h14",
        Icon::Copy => "M9 9h11v11H9zM5.5 15H4V4h11v1.5",
        Icon::Caution => "M12 4 2.8 20h18.4zM12 10v4.5M12 17.4v.1",
        Icon::Lock => "M6 11h12v9H6zM8.5 11V8a3.5 3.5 0 0 1 7 0v3",
        Icon::Bin => "M5 7h14M10 7V4.5h4V7M7 7l1 13h8l1-13M10.5 11v5.5M13.5 11v5.5",
        Icon::Fine => "M5 12.5l4.5 4.5L19 7",
        Icon::Pocket => "M4.5 8.5h15V17L12 21.5 4.5 17zM4.5 12.5h15M13.5 8.5v-6h3v6",
    }
}

/// A drawing that words beside it explain, so it is silent.
pub fn drawing<const N: usize>(class: &'static str, view: &'static str, strokes: [Html; N]) -> Html {
    tag("svg", class).attr("viewBox", view).attr("aria-hidden", "true").around(strokes)
}

/// One path of a drawing.
pub fn stroke(class: &'static str, path: impl Into<AttrValue>) -> Html {
    tag("path", class).attr("d", path).html()
}
