//! The page. The only crate that knows the DOM.

use web_sys::HtmlInputElement;
use yew::prelude::*;

/// Puts the app in the place of the painted shell.
pub fn start() {
    if let Some(root) = gloo::utils::document().get_element_by_id("page") {
        yew::Renderer::<App>::with_root(root).render();
    }
}

/// The whole page.
#[component]
pub fn App() -> Html {
    let name = use_state(String::new);
    let oninput = {
        let name = name.clone();
        Callback::from(move |event: InputEvent| {
            if let Some(field) = event.target_dyn_into::<HtmlInputElement>() {
                name.set(field.value());
            }
        })
    };
    html! {
        <main>
            <h1>{ "airtally" }</h1>
            <label for="house-name">{ "Name of the house" }</label>
            <input id="house-name" type="text" autocomplete="off" value={(*name).clone()} {oninput} />
            <p role="status">{ greeting(&name) }</p>
        </main>
    }
}

fn greeting(name: &str) -> String {
    match name.trim() {
        "" => "A house without a name yet.".to_owned(),
        name => format!("The air of {name}."),
    }
}

#[cfg(test)]
mod tests {
    use super::greeting;
    use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

    wasm_bindgen_test_configure!(run_in_browser);

    #[wasm_bindgen_test]
    fn a_blank_name_is_no_name() {
        assert_eq!(greeting("  "), "A house without a name yet.");
    }
}
