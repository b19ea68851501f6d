//! Elements in few bytes.
//!
//! The `html!` macro writes every element out in full where it stands: about 170 bytes each in the shipped program, which
//! has some four hundred of them. Here a function makes them, for about 50.

use std::cell::RefCell;
use std::rc::Rc;
use yew::prelude::*;
use yew::virtual_dom::{AttributeOrProperty, Attributes, Key, Listener, ListenerKind, VList, VTag, VText};

/// An element with a class (or none) and children.
pub fn el<const N: usize>(name: &'static str, class: &'static str, children: [Html; N]) -> Html {
    tag(name, class).around(children)
}

/// An element with a class (or none) around any number of children.
pub fn els(name: &'static str, class: &'static str, children: impl Iterator<Item = Html>) -> Html {
    tag(name, class).around_list(children.collect())
}

/// Some nodes beside each other.
pub fn nodes<const N: usize>(nodes: [Html; N]) -> Html {
    list(Vec::from(nodes))
}

/// Text.
pub fn text(words: impl Into<AttrValue>) -> Html {
    Html::VText(VText::new(words.into()))
}

/// Nothing, where something may be.
pub fn nothing() -> Html {
    list(Vec::new())
}

/// A node where there is one.
pub fn maybe(node: Option<Html>) -> Html {
    node.unwrap_or_else(nothing)
}

/// Begins an element that has more than a class.
#[inline(never)]
pub fn tag(name: &'static str, class: &'static str) -> El {
    let made = El { tag: Box::new(VTag::new(name)), names: Vec::new(), values: Vec::new() };
    if class.is_empty() { made } else { made.with("class", AttributeOrProperty::Static(class)) }
}

/// A button with a class, told when it is pressed.
#[inline(never)]
pub fn button(class: &'static str, pressed: Callback<Event>) -> El {
    tag("button", class).attr("type", "button").on(|| ListenerKind::onclick, pressed)
}

/// An element that is being made.
pub struct El {
    tag: Box<VTag>,
    names: Vec<&'static str>,
    values: Vec<Option<AttributeOrProperty>>,
}

impl El {
    /// An attribute.
    pub fn attr(self, name: &'static str, value: impl Into<AttrValue>) -> Self {
        self.named(name, value.into())
    }

    /// An attribute that is there when its value is.
    pub fn attr_if<V: Into<AttrValue>>(self, name: &'static str, value: Option<V>) -> Self {
        match value {
            Some(value) => self.named(name, value.into()),
            None => self,
        }
    }

    /// Whether it is the chosen one of a list, a property: it also holds after a person has chosen another.
    pub fn selected(self, selected: bool) -> Self {
        self.with("selected", AttributeOrProperty::Property(selected.into()))
    }

    /// Whether a tick or a chip is set.
    pub fn checked(mut self, checked: bool) -> Self {
        self.tag.set_checked(checked);
        self
    }

    /// The text of a box.
    pub fn value(mut self, value: AttrValue) -> Self {
        self.tag.set_value(Some(value));
        self
    }

    /// What it keeps its place by, among others like it.
    pub fn key(mut self, key: impl Into<Key>) -> Self {
        self.tag.key = Some(key.into());
        self
    }

    /// The handle by which others find it.
    pub fn handle(mut self, handle: &NodeRef) -> Self {
        self.tag.node_ref = handle.clone();
        self
    }

    /// Told when something happens. What happens is given by a function: to copy it takes 1 kB of code.
    #[inline(never)]
    pub fn on(mut self, kind: fn() -> ListenerKind, told: Callback<Event>) -> Self {
        self.tag.add_listener(Rc::new(Told { kind, told }));
        self
    }

    /// One more child.
    pub fn put(mut self, child: Html) -> Self {
        self.tag.add_child(child);
        self
    }

    /// The element around its children.
    pub fn around<const N: usize>(self, children: [Html; N]) -> Html {
        self.around_list(Vec::from(children))
    }

    /// The element as it is.
    #[inline(never)]
    pub fn html(mut self) -> Html {
        if !self.names.is_empty() {
            self.tag.set_attributes(Attributes::Dynamic { keys: for_good(self.names), values: self.values.into() });
        }
        Html::VTag(Rc::new(*self.tag))
    }

    #[inline(never)]
    fn around_list(mut self, children: Vec<Html>) -> Html {
        if let Some(own) = self.tag.children_mut() {
            *own = list(children);
        }
        self.html()
    }

    #[inline(never)]
    fn named(self, name: &'static str, value: AttrValue) -> Self {
        self.with(name, AttributeOrProperty::Attribute(value))
    }

    fn with(mut self, name: &'static str, value: AttributeOrProperty) -> Self {
        self.names.push(name);
        self.values.push(Some(value));
        self
    }
}

thread_local! {
    static SETS: RefCell<Vec<&'static [&'static str]>> = const { RefCell::new(Vec::new()) };
}

/// These names as a list that lives as long as the page, the same list each time: an element whose names are the same list
/// as before is changed value by value. There are as many lists as there are ways to write an element, about a hundred.
fn for_good(names: Vec<&'static str>) -> &'static [&'static str] {
    SETS.with_borrow_mut(|sets| match sets.iter().find(|known| **known == names) {
        Some(known) => known,
        None => {
            let names: &'static [&'static str] = Vec::leak(names);
            sets.push(names);
            names
        }
    })
}

#[inline(never)]
fn list(nodes: Vec<Html>) -> Html {
    Html::VList(Rc::new(VList::with_children(nodes, None)))
}

/// One sort of listener for every event.
struct Told {
    kind: fn() -> ListenerKind,
    told: Callback<Event>,
}

impl Listener for Told {
    fn kind(&self) -> ListenerKind {
        (self.kind)()
    }

    fn handle(&self, event: Event) {
        self.told.emit(event);
    }

    fn passive(&self) -> bool {
        false
    }
}
