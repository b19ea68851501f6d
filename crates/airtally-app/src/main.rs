//! The page: starts the app inside the shell that index.html has already painted.

fn main() {
    airtally_app::start();
}
