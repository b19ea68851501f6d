//! Words of a house on its way: the link, its code, and what comes by one.

use crate::format::count;

/// The way to another device.
pub const SEND: &str = "To another device";
/// Puts it away, or what came.
pub const CLOSE_LINK: &str = "Close";
/// What to do there.
pub const SEND_HOW: &str = "Point the camera of the other device at this code, or send it the link.";
/// What a link holds.
pub const SEND_WHAT: &str = "The whole house is in the link, with readings and prices: whoever has the link can open it. It opens as a \
    copy, and what is changed later does not travel.";
/// The box with the link.
pub const LINK: &str = "Link";
/// Copies it.
pub const COPY_LINK: &str = "Copy the link";
/// That was done.
pub const LINK_COPIED: &str = "The link is copied.";
/// It was not.
pub const LINK_NOT_COPIED: &str = "This device lets no page copy. Mark the link in its box and copy it by hand.";
/// Hands the house on as a file, by the ways of the device.
pub const SHARE_FILE: &str = "Share as a file";
/// Hands the link on by them.
pub const SHARE_LINK: &str = "Share the link";
/// Read out in place of the code.
pub const LINK_CODE: &str = "Code with the link to this house";
/// While it is made.
pub const LINK_COMES: &str = "The link is being made …";
/// Beside the code on paper.
pub const CODE_ON_PAPER: &str =
    "The house on this paper, as a copy to go on with: point the camera of a phone at the code.";

/// Why there is a link but no code.
pub fn no_code(letters: usize) -> String {
    let letters = count(u32::try_from(letters).unwrap_or(u32::MAX));
    [
        "A code that cameras read well holds 1 003 letters, and this link has ",
        &letters,
        ". Send the link, or save the house as a file.",
    ]
    .concat()
}

/// Why there is no link.
pub fn no_link(why: &str) -> &'static str {
    match why {
        "large" => "This house is too large for a link. Save it as a file and open that on the other device.",
        "here" => {
            "This page is a file on this device, and a link to it opens nowhere else. Save the house as a file and send that."
        }
        _ => {
            "What makes links did not come, or this browser is too old for it. Save the house as a file and send that."
        }
    }
}

/// A house came by a link.
pub const CAME: &str = "A house by link";
/// Before it is opened.
pub const CAME_NOTE: &str =
    "Nothing of yours has changed. Open it as a copy, or leave it. The house you have now stays under Houses.";
/// Opens it.
pub const CAME_OPEN: &str = "Open a copy";
/// Does not.
pub const CAME_LEAVE: &str = "Leave it";
/// It is open.
pub const CAME_OPENED: &str = "A copy of the house by link is open.";
/// It is the house that is open already.
pub const CAME_SAME: &str = "It is the same as the house that is open, to the letter.";
/// What is told of it.
pub const CAME_NAME: &str = "Name";
/// What is told of it.
pub const CAME_ROOMS: &str = "Rooms";
/// What is told of it.
pub const CAME_AREA: &str = "Floor area";
/// What is told of it.
pub const CAME_RULES: &str = "Rule set";

/// A link was not taken in, and why.
pub fn link_refused(why: &str) -> &'static str {
    match why {
        "damaged" => "This link is damaged: it was cut or changed on its way. Nothing was changed. Ask for it again.",
        "newer" => {
            "This link was made by a newer airtally. Nothing was changed. Load this page again to have the newest one."
        }
        "large" => "What is in this link is larger than any house. Nothing was changed.",
        _ => {
            "What reads links did not come, or this browser is too old for it. Nothing was changed. Try again with a network."
        }
    }
}

/// A whole link holds something that is no house.
pub fn link_strange(place: &str, detail: &str) -> String {
    let place = if place.is_empty() { String::new() } else { [place, ": "].concat() };
    ["The house in this link was not opened. Nothing was changed. Why: ", &place, detail].concat()
}
