//! The native dialog: in front of everything, or beside the page.

use web_sys::HtmlDialogElement;

/// Opens a dialog; in front of the page, which then rests, or beside it. One that is open the other way is turned.
pub fn open(dialog: &HtmlDialogElement, in_front: bool) {
    if dialog.open() {
        dialog.close();
    }
    if !in_front || dialog.show_modal().is_err() {
        dialog.show();
    }
}

/// Closes a dialog; nothing happens to a closed one.
pub fn close(dialog: &HtmlDialogElement) {
    if dialog.open() {
        dialog.close();
    }
}
