//! The words of the page itself: headings, buttons, cautions.
