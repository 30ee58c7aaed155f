//! Benchmarks of the stages.

fn main() {}
