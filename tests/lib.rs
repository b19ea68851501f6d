//! Proofs.
