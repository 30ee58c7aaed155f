//! The way in for the page, in WebAssembly only. In: bytes in memory that the page has asked for. Out: bytes it may read, and
//! then gives back. The one file with `unsafe` in it.
//!
//! ```text
//! at = handspan_allocate(length)      room for the question, which the page writes there
//! answer = handspan_run(at, length)   takes the question; answer points to its length (4 bytes), then its bytes
//! handspan_free(answer)
//! handspan_fault()                    after a trap: the same kind of bytes, with what went wrong
//! ```
#![allow(unsafe_code)]

use super::answer;
use std::sync::Mutex;

/// What went wrong last.
static FAULT: Mutex<String> = Mutex::new(String::new());

/// Room for `length` bytes.
#[unsafe(no_mangle)]
pub extern "C" fn handspan_allocate(length: usize) -> *mut u8 {
    Box::into_raw(vec![0_u8; length].into_boxed_slice()).cast()
}

/// Answer the question of `length` bytes at `at`, which came from `handspan_allocate(length)` and is taken.
///
/// # Safety
/// `at` and `length` must be those of one call of `handspan_allocate`, and used once.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn handspan_run(at: *mut u8, length: usize) -> *mut u8 {
    std::panic::set_hook(Box::new(|fault| {
        if let Ok(mut text) = FAULT.lock() {
            *text = fault.to_string();
        }
    }));
    // SAFETY: as the caller promises, this is the whole of a boxed slice that nobody else holds.
    let question = unsafe { Box::from_raw(std::ptr::slice_from_raw_parts_mut(at, length)) };
    handed(&answer(&question))
}

/// What went wrong, after a trap.
#[unsafe(no_mangle)]
pub extern "C" fn handspan_fault() -> *mut u8 {
    let text = FAULT.lock().map(|text| text.clone()).unwrap_or_default();
    handed(text.as_bytes())
}

/// Give back what `handspan_run` or `handspan_fault` handed out.
///
/// # Safety
/// `at` must be what one of them returned, and be given back once.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn handspan_free(at: *mut u8) {
    // SAFETY: as the caller promises, `handed` made it: its first four bytes are the length of the rest.
    unsafe {
        let mut length = [0; 4];
        std::ptr::copy_nonoverlapping(at, length.as_mut_ptr(), 4);
        let length = 4 + u32::from_le_bytes(length) as usize;
        drop(Box::from_raw(std::ptr::slice_from_raw_parts_mut(at, length)));
    }
}

/// Bytes with their length before them, for the page to read.
fn handed(bytes: &[u8]) -> *mut u8 {
    let mut out = (bytes.len() as u32).to_le_bytes().to_vec();
    out.extend_from_slice(bytes);
    Box::into_raw(out.into_boxed_slice()).cast()
}
