//! Between the browser's values and the tree of a file.

use airtally::save::{Refusal, Tree};
use js_sys::{Array, Object, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// Deepest nesting that is read. A house needs five.
const DEEPEST: u32 = 16;

/// The tree of a value that came out of the browser's JSON.
pub fn tree(value: &JsValue) -> Result<Tree, Refusal> {
    read(value, DEEPEST)
}

fn read(value: &JsValue, deeper: u32) -> Result<Tree, Refusal> {
    if let Some(text) = value.as_string() {
        return Ok(Tree::Text(text));
    }
    if let Some(number) = value.as_f64() {
        return if number.is_finite() { Ok(Tree::Number(number)) } else { Err(Refusal::new("a number without end")) };
    }
    if let Some(flag) = value.as_bool() {
        return Ok(Tree::Flag(flag));
    }
    let Some(below) = deeper.checked_sub(1) else { return Err(Refusal::new("nested too deeply")) };
    if let Some(list) = value.dyn_ref::<Array>() {
        return list.iter().map(|item| read(&item, below)).collect::<Result<_, _>>().map(Tree::List);
    }
    let Some(object) = value.dyn_ref::<Object>() else { return Ok(Tree::Nothing) };
    let entries = Object::entries(object);
    let fields = entries.iter().map(|entry| {
        let entry: Array = entry.unchecked_into();
        Ok((entry.get(0).as_string().unwrap_or_default(), read(&entry.get(1), below)?))
    });
    fields.collect::<Result<_, _>>().map(Tree::Map)
}

/// The browser's value of a tree.
pub fn value(tree: &Tree) -> JsValue {
    match tree {
        Tree::Nothing => JsValue::NULL,
        Tree::Flag(flag) => JsValue::from_bool(*flag),
        Tree::Number(number) => JsValue::from_f64(*number),
        Tree::Text(text) => JsValue::from_str(text),
        Tree::List(list) => list.iter().map(value).collect::<Array>().into(),
        Tree::Map(map) => {
            let object = Object::new();
            for (name, field) in map {
                // Fails on frozen objects only, and this one is new.
                let _ = Reflect::set(&object, &JsValue::from_str(name), &value(field));
            }
            object.into()
        }
    }
}
