// Words that were typed and do not stand in the exam: not read yet, or refused. In: where they are typed, and why they are not taken.
// Out: a bar that names them; while there are any, the picture is grey and nothing leaves the page.
import { el, say } from './words.js';

const at = (id) => document.getElementById(id);
const held = new Map();
const listeners = [];

/** Call `listener` whenever it begins or ends. */
export function heedHeld(listener) {
  listeners.push(listener);
}

/** Hold `words` of the field `id`: `{name, words, why, show, drop}`. */
export function hold(id, entry) {
  held.set(id, entry);
  tell();
}

/** The words of this field are taken, or gone. */
export function release(id) {
  if (held.delete(id)) tell();
}

export function isHeld(id) {
  return id === undefined ? held.size > 0 : held.has(id);
}

/** Every field is gone. */
export function releaseAll() {
  held.clear();
  tell();
}

/** Go to the first of what is not taken. */
export function showHeld() {
  held.values().next().value?.show();
}

/** Say the bar anew, in other words too. */
export function tell() {
  const bar = at('held');
  bar.hidden = !held.size;
  document.body.classList.toggle('held', held.size > 0);
  const [first] = held.values();
  const words = first ? say(first.why ? 'desk-not-taken' : 'desk-not-read', { name: first.name, value: first.words }) : '';
  const more = held.size > 1 ? ` (+${held.size - 1})` : '';
  bar.replaceChildren(
    ...(first
      ? [
          el('span', { class: 'text' }, el('b', {}, words + more), ` ${say('desk-held')}`),
          el('span', { class: 'bar-buttons' }, el('button', { type: 'button', class: 'chip', onclick: () => first.show() }, say('desk-go-there')), el('button', { type: 'button', class: 'chip', onclick: () => first.drop() }, say('desk-drop-words'))),
        ]
      : []),
  );
  for (const listener of listeners) listener();
}
