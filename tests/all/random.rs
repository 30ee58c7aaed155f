//! A small fixed sequence of numbers for tests that try many cases. In: a seed. Out: the same numbers every time.

pub struct Random(u64);

impl Random {
    pub fn new(seed: u64) -> Self {
        Random(seed * 2 + 1)
    }
    pub fn next(&mut self) -> u64 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        self.0 >> 11
    }
    /// One of these.
    pub fn pick<'a, T>(&mut self, from: &'a [T]) -> &'a T {
        &from[(self.next() % from.len() as u64) as usize]
    }
    /// Between 0 and 1.
    pub fn share(&mut self) -> f32 {
        (self.next() % 100_000) as f32 / 100_000.0
    }
}
