//! The page unpacks its library with this. In: bytes that `xz --format=lzma` packed. Out: the bytes before.
//!
//! Addresses are of the module's own memory. What is handed out stays: the page drops the whole module once the library runs.
#![cfg(target_family = "wasm")]

use lzma_rust2::LzmaReader;
use std::io::Read;

/// Memory that unpacking may take, KiB: `src/desk/build` packs with a dictionary of 16 MiB.
const MEMORY_KIB: u32 = 32 * 1024;

/// Room for `length` bytes.
#[unsafe(no_mangle)]
pub extern "C" fn handspan_allocate(length: usize) -> *mut u8 {
    vec![0; length].leak().as_mut_ptr()
}

/// Unpacks `length` bytes at `at`: the address of the length, 4 bytes with the least first, and after it the bytes.
///
/// # Safety
/// `at` came from `handspan_allocate` for `length` bytes, all of which were written.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn handspan_unpack(at: *const u8, length: usize) -> *mut u8 {
    // SAFETY: as the caller promises.
    let packed = unsafe { std::slice::from_raw_parts(at, length) };
    let mut out = vec![0; 4];
    let read = LzmaReader::new_mem_limit(packed, MEMORY_KIB, None)
        .and_then(|mut reader| reader.read_to_end(&mut out));
    // A page that was cut short stops here, and says so.
    let length = u32::try_from(read.expect("the page is whole")).expect("a library under 4 GiB");
    out[..4].copy_from_slice(&length.to_le_bytes());
    out.leak().as_mut_ptr()
}
