//! Elements in few bytes.
//!
//! The `html!` macro writes every element out in full where it stands: about 170 bytes each in the shipped program, which
//! has some four hundred of them. Here a function makes them, for about 50.

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
    let mut made = VTag::new(name);
    if !class.is_empty() {
        let values = Box::new([Some(AttributeOrProperty::Static(class))]);
        made.set_attributes(Attributes::Dynamic { keys: &["class"], values });
    }
    El(Box::new(made))
}

/// A button with a class, told when it is pressed.
#[inline(never)]
pub fn button(class: &'static str, pressed: Callback<Event>) -> El {
    tag("button", class).attr("type", "button").on(ListenerKind::onclick, pressed)
}

/// An element that is being made.
pub struct El(Box<VTag>);

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
    pub fn selected(mut self, selected: bool) -> Self {
        self.0.add_property("selected", selected);
        self
    }

    /// Whether a tick or a chip is set.
    pub fn checked(mut self, checked: bool) -> Self {
        self.0.set_checked(checked);
        self
    }

    /// The text of a box.
    pub fn value(mut self, value: AttrValue) -> Self {
        self.0.set_value(Some(value));
        self
    }

    /// What it keeps its place by, among others like it.
    pub fn key(mut self, key: impl Into<Key>) -> Self {
        self.0.key = Some(key.into());
        self
    }

    /// The handle by which others find it.
    pub fn handle(mut self, handle: &NodeRef) -> Self {
        self.0.node_ref = handle.clone();
        self
    }

    /// Told when something happens.
    #[inline(never)]
    pub fn on(mut self, kind: ListenerKind, told: Callback<Event>) -> Self {
        self.0.add_listener(Rc::new(Told { kind, told }));
        self
    }

    /// One more child.
    pub fn put(mut self, child: Html) -> Self {
        self.0.add_child(child);
        self
    }

    /// The element around its children.
    pub fn around<const N: usize>(self, children: [Html; N]) -> Html {
        self.around_list(Vec::from(children))
    }

    /// The element as it is.
    #[inline(never)]
    pub fn html(self) -> Html {
        Html::VTag(Rc::new(*self.0))
    }

    #[inline(never)]
    fn around_list(mut self, children: Vec<Html>) -> Html {
        if let Some(own) = self.0.children_mut() {
            *own = list(children);
        }
        self.html()
    }

    #[inline(never)]
    fn named(mut self, name: &'static str, value: AttrValue) -> Self {
        self.0.add_attribute(name, value);
        self
    }
}

#[inline(never)]
fn list(nodes: Vec<Html>) -> Html {
    Html::VList(Rc::new(VList::with_children(nodes, None)))
}

/// One sort of listener for every event.
struct Told {
    kind: ListenerKind,
    told: Callback<Event>,
}

impl Listener for Told {
    fn kind(&self) -> ListenerKind {
        self.kind.clone()
    }

    fn handle(&self, event: Event) {
        self.told.emit(event);
    }

    fn passive(&self) -> bool {
        false
    }
}
