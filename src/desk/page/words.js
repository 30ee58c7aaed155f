// The words of the page. In: the vocabulary of the library. Out: messages, keys, elements that carry words.
import { ask } from './library.js';

let vocabulary;

/** Fetch the words of a language; all that stands on the page is said anew. */
export function learn(lang) {
  const answer = ask({ command: 'vocabulary', lang });
  if (answer.code) throw new Error(answer.notes);
  vocabulary = JSON.parse(answer.text);
  document.documentElement.lang = vocabulary.lang;
  document.title = say('desk-title');
  for (const at of document.querySelectorAll('[data-say]')) at.textContent = say(at.dataset.say);
  for (const at of document.querySelectorAll('[data-name]')) at.setAttribute('aria-label', say(at.dataset.name));
}

/** The languages that are there: `{tag, name, signed, desk}`. */
export function languages() {
  return vocabulary.languages;
}

/** The language of the page. */
export function lang() {
  return vocabulary.lang;
}

/** Whether no native clinician has signed what the page is said in. */
export function isDraft() {
  return tongue().draft;
}

/** The mark and the word of a draft, in its language. */
export function draft() {
  return vocabulary.draft;
}

/** How the language is asked for: a draft is marked as one, with the English beside it. */
export function tongue(own = lang()) {
  return { lang: own, draft: !languages().find(({ tag }) => tag === own).signed };
}

/** `text`, and where the language is a draft, the English under it. */
export function beside(text, english) {
  if (!isDraft() || !english || english === text) return [text];
  return [text, el('span', { class: 'english', lang: 'en' }, english)];
}

/** Set the page in the letters of the pictures. */
export function dress() {
  const [upright, strong] = ask({ command: 'letters' }).pages;
  for (const [bytes, weight] of [[upright, '400'], [strong, '600 700']]) document.fonts.add(new FontFace('Source Sans 3', bytes, { weight }));
}

/** The message `id` with its values; a missing one is a fault of the page. */
export function say(id, values = {}) {
  const text = vocabulary.messages[id];
  if (text === undefined) throw new Error(`no message ${id}`);
  return text.replace(/\{(\w+)\}/g, (hole, name) => values[name] ?? hole);
}

/** The message `id`, or nothing. */
export function may(id) {
  return vocabulary.messages[id] ?? '';
}

/** A word of the exam language as the page's language says it. */
export function word(canonical) {
  return vocabulary.said[canonical] ?? canonical;
}

/** All keys, in the order of the hands. */
export function keys() {
  return vocabulary.keys;
}

/** The entry of a key. */
export function key(name) {
  return vocabulary.keys.find((entry) => entry.name === name);
}

/** An element: `el('button', { class: 'chip', onclick }, 'words', child)`. */
export function el(tag, attributes = {}, ...children) {
  const made = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (name.startsWith('on')) made.addEventListener(name.slice(2), value);
    else if (value === true) made.setAttribute(name, '');
    else if (value !== false && value !== undefined && value !== null) made.setAttribute(name, value);
  }
  made.append(...children.filter((child) => child !== null && child !== undefined));
  return made;
}
