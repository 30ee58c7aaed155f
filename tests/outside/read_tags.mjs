// The tags of a PDF as pdf.js reads them. In: PDF files. Out: a line of JSON each: what stands in the structure tree, in order.
import { createRequire } from "node:module";
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";

const require = createRequire(process.cwd() + "/");
const { getDocument } = await import(pathToFileURL(require.resolve("pdfjs-dist/legacy/build/pdf.mjs")));

for (const file of process.argv.slice(2)) {
  const pdf = await getDocument({ data: new Uint8Array(readFileSync(file)), verbosity: 0 }).promise;
  const read = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const { items } = await page.getTextContent({ includeMarkedContent: true });
    const marks = new Map();
    const open = [];
    for (const item of items) {
      if (item.type === "beginMarkedContent" || item.type === "beginMarkedContentProps") open.push(item.id ?? null);
      else if (item.type === "endMarkedContent") open.pop();
      else {
        const id = [...open].reverse().find((id) => id);
        if (id) marks.set(id, (marks.get(id) ?? "") + item.str);
      }
    }
    const words = (node) => (node.type === "content" ? (marks.get(node.id) ?? "") : (node.children ?? []).map(words).join(""));
    const walk = (node, lang) => {
      const here = node.lang ?? lang;
      if (["H1", "H2", "P", "LBody", "Figure"].includes(node.role)) {
        read.push({ tag: node.role, page: number, text: node.role === "Figure" ? node.alt : words(node), lang: here });
      } else (node.children ?? []).forEach((child) => walk(child, here));
    };
    walk((await page.getStructTree()) ?? { children: [] }, null);
  }
  const outline = (await pdf.getOutline()) ?? [];
  const flat = (entries) => entries.flatMap((entry) => [entry.title, ...flat(entry.items)]);
  const { info } = await pdf.getMetadata();
  console.log(JSON.stringify({ title: info.Title, lang: info.Language ?? null, outline: flat(outline), script: await pdf.getJSActions(), read }));
}
