//! The slip that is stuck into the chart. In: an entry. Out: `Content` for the layout `chart-slip.toml`.

use super::{entry::Entry, note};
use crate::sheet::{Block, Content, Kind};
use crate::words::WordsError;

/// The words of the slip; `notes` are what is to be said about the drawing.
pub fn content(entry: &Entry<'_>, notes: &[String]) -> Result<Content, WordsError> {
    let say = |id: &str| entry.words.say(id, &[]);
    let (act_now, others) = entry.act_now_and_others()?;
    let mut out = Content { title: say("slip-title")?, ..Content::default() };
    let mut put = |name: &str, blocks: Vec<Block>| {
        out.blocks.insert(name.to_owned(), blocks);
    };
    put("slip-title", vec![Block::new(Kind::Heading, entry.opening()?)]);
    put("slip-act-now", act_now.iter().map(|line| Block::new(Kind::Strong, &line.text)).collect());
    let mut blocks: Vec<Block> =
        entry.conclusions()?.into_iter().map(|told| Block::new(Kind::Strong, told)).collect();
    for told in [entry.boxes()?, entry.findings(|_| true)?, entry.not_examined()?] {
        if !told.is_empty() {
            blocks.push(Block::new(Kind::Text, told));
        }
    }
    blocks.extend(others.iter().map(|line| Block::new(Kind::Text, &line.text)));
    if act_now.is_empty() && others.is_empty() {
        blocks.push(Block::new(Kind::Text, entry.no_remarks()?));
    }
    put("slip-note", blocks);
    put("slip-about", notes.iter().map(|note| Block::new(Kind::Text, note)).collect());
    put("slip-label", vec![Block::new(Kind::Text, say("slip-label")?)]);
    put("slip-time", vec![Block::new(Kind::Blank, say("slip-time")?)]);
    put("slip-signature", vec![Block::new(Kind::Blank, say("slip-signature")?)]);
    let foot = format!("{} {}", entry.cautions()?, entry.versions()?);
    put("slip-foot", vec![Block::new(Kind::Text, foot)]);
    let body = note::body(entry)?;
    let told: Vec<&str> = act_now.iter().chain(&others).map(|line| line.text.as_str()).collect();
    out.description = told.into_iter().chain([body.as_str()]).collect::<Vec<_>>().join(" ");
    Ok(out)
}
