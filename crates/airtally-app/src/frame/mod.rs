//! What every screen shares: the top line with its menu, and the dock with the balance and the stages.

pub mod banner;
pub mod dock;
pub mod send;
pub mod top;
