//! What a benchmark under Node has of the page: its allocator.

#[global_allocator]
static ALLOCATOR: rlsf::GlobalTlsf<Small> = rlsf::GlobalTlsf::new();

struct Small;

impl rlsf::GlobalTlsfOptions for Small {
    const ENABLE_REALLOCATION: bool = false;
}
