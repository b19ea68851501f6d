//! Everything the calculation means, said in English.
