//! The page: starts the app inside the shell that index.html has already painted.

#[cfg(target_family = "wasm")]
#[global_allocator]
static ALLOCATOR: rlsf::GlobalTlsf<Small> = rlsf::GlobalTlsf::new();

/// Pools are joined, so that memory stays flat; a block grows by a new one and a copy, which takes less code.
#[cfg(target_family = "wasm")]
struct Small;

#[cfg(target_family = "wasm")]
impl rlsf::GlobalTlsfOptions for Small {
    const ENABLE_REALLOCATION: bool = false;
}

fn main() {
    airtally_app::start();
}
