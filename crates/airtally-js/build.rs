//! Cuts the chapters about equations out of the book: the package shows its working and has no checklist.

use std::path::PathBuf;
use std::{env, fs};

const BOOK: &str = "../airtally-words/text/book.txt";

fn main() {
    println!("cargo::rerun-if-changed={BOOK}");
    let book = fs::read_to_string(BOOK).expect("the book");
    let from = book.find("\n= sum ").expect("chapters about equations");
    let end = book.find("\n= value ").expect("chapters about values after them");
    let to = PathBuf::from(env::var_os("OUT_DIR").expect("Cargo says where")).join("sums.txt");
    fs::write(to, &book[from..end]).expect("a place for the chapters");
}
