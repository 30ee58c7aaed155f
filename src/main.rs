//! The program. In: arguments. Out: an exit code.

fn main() {}
