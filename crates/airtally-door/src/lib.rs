//! JSON text to document and back, through the browser's own JSON.
