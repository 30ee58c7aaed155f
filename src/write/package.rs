//! A zip. In: files with their names. Out: its bytes; the same files give the same bytes.

use super::WriteError;
use std::io::{Cursor, Write};
use zip::write::SimpleFileOptions;
use zip::{CompressionMethod, DateTime, ZipWriter};

/// The files in one package, in their order.
pub fn package(files: &[(String, Vec<u8>)]) -> Result<Vec<u8>, WriteError> {
    let refused = |reason: String| WriteError::Refused { what: "zip", reason };
    let options = SimpleFileOptions::default()
        .compression_method(CompressionMethod::Deflated)
        .last_modified_time(DateTime::default());
    let mut zip = ZipWriter::new(Cursor::new(vec![]));
    for (name, bytes) in files {
        zip.start_file(name.as_str(), options).map_err(|e| refused(e.to_string()))?;
        zip.write_all(bytes).map_err(|e| refused(e.to_string()))?;
    }
    Ok(zip.finish().map_err(|e| refused(e.to_string()))?.into_inner())
}
