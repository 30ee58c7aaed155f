// The library. In: its bytes, in the page; a question. Out: the answer of the one door; a Fault when the library broke down.

/** The library broke down; what was asked is lost, nothing else. */
export class Fault extends Error {}

let compiled;
let running;

/** The bytes that stand in the page as text. */
function bytesOf(id) {
  const text = document.getElementById(id).textContent;
  if (Uint8Array.fromBase64) return Uint8Array.fromBase64(text);
  const letters = atob(text);
  const bytes = new Uint8Array(letters.length);
  for (let at = 0; at < letters.length; at++) bytes[at] = letters.charCodeAt(at);
  return bytes;
}

/** Unpack and start the library that stands in the page. */
export async function unpack() {
  const packed = bytesOf('library');
  const { exports } = (await WebAssembly.instantiate(bytesOf('unpack'))).instance;
  const at = exports.handspan_allocate(packed.length);
  new Uint8Array(exports.memory.buffer, at, packed.length).set(packed);
  const out = exports.handspan_unpack(at, packed.length);
  const length = new DataView(exports.memory.buffer).getUint32(out, true);
  compiled = await WebAssembly.compile(new Uint8Array(exports.memory.buffer, out + 4, length));
  await renew();
}

/** Start afresh, after a fault. */
export async function renew() {
  running = await WebAssembly.instantiate(compiled);
}

function taken(exports, at) {
  const length = new DataView(exports.memory.buffer).getUint32(at, true);
  const bytes = new Uint8Array(exports.memory.buffer, at + 4, length).slice();
  exports.handspan_free(at);
  return bytes;
}

/** Ask the library: `{code, text, notes, why, made, pages}`. */
export function ask(question) {
  const exports = running.exports;
  const bytes = new TextEncoder().encode(JSON.stringify(question));
  let answer;
  try {
    const at = exports.handspan_allocate(bytes.length);
    new Uint8Array(exports.memory.buffer, at, bytes.length).set(bytes);
    answer = taken(exports, exports.handspan_run(at, bytes.length));
  } catch (trap) {
    let why = String(trap);
    try {
      why = new TextDecoder().decode(taken(exports, exports.handspan_fault())) || why;
    } catch {
      // Nothing more can be learned of it.
    }
    throw new Fault(why);
  }
  const length = new DataView(answer.buffer).getUint32(0, true);
  const head = JSON.parse(new TextDecoder().decode(answer.subarray(4, 4 + length)));
  let at = 4 + length;
  head.pages = head.pages.map((size) => answer.slice(at, (at += size)));
  return head;
}
