//! The empty start that teaches.

use crate::context::Hands;
use crate::desk::Move;
use crate::frame::top::load;
use crate::parts::air::{air_tag, outdoor_tag};
use airtally::rules::Air;
use airtally_words::{demo, page as say};
use yew::prelude::*;

/// The start.
pub fn start(hands: &Hands) -> Html {
    html! {
        <div class="spread"><div class="leaf"><div class="start">
            <h1>{ say::START_TITLE }</h1>
            { sketch() }
            <ol class="start-lines">
                <li>{ outdoor_tag() }<span><b>{ say::OUTDOOR }</b>{ " " }{ say::START_OUTDOOR }</span></li>
                <li>{ air_tag(Air::Supply) }<span><b>{ say::SUPPLY }</b>{ " " }{ say::START_SUPPLY }</span></li>
                <li>{ air_tag(Air::Extract) }<span><b>{ say::EXTRACT }</b>{ " " }{ say::START_EXTRACT }</span></li>
            </ol>
            <div class="buttons">
                <button type="button" class="button-main" onclick={hands.doing(|hands| hands.make(Move::Begin))}>
                    { say::START_MINE }
                </button>
                <button type="button" class="button"
                    onclick={hands.doing(|hands| load(hands, demo::larkfield(), say::EXAMPLE_OPENED))}>
                    { say::START_EXAMPLE }
                </button>
            </div>
            <p class="soft small">{ say::START_PRIVATE }</p>
        </div></div></div>
    }
}

/// A house cut open: the four airs and the unit between them.
fn sketch() -> Html {
    html! {
        <svg class="start-sketch" viewBox="0 0 400 236" role="img" aria-label={say::START_SKETCH}>
            <path class="faint" d="M4 222h392" />
            <path d="M62 222V96L200 22l138 74v126M62 150h276M200 96v54M200 150v72" />
            <path class="faint" d="M86 136v-14h52v14M86 122v-8h14v8M296 136h24v-10h-24z" />
            <rect x="222" y="176" width="64" height="36" />
            <path class="faint" d="M222 176l64 36M286 176l-64 36" />
            <path class="path-outdoor" d="M392 204H292M302 197l-10 7 10 7" />
            <path class="path-exhaust" d="M292 184h100M382 177l10 7-10 7" />
            <path class="path-supply" d="M222 194H180V112h-26M164 105l-10 7 10 7" />
            <path class="path-extract-edge" d="M302 112h-48v58M247 160l7 10 7-10" />
            <path class="path-extract" d="M302 112h-48v58M247 160l7 10 7-10" />
            <text x="80" y="106">{ say::SKETCH_BEDROOM }</text>
            <text x="276" y="102">{ say::SKETCH_BATH }</text>
        </svg>
    }
}
