//! The checklist in sentences.
