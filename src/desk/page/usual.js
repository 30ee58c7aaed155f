// The start: eight common ways to lie as small pictures, and a usual visit. In: taps. Out: findings, as found by whoever taps; what
// they take the place of is named.
import { ask } from './library.js';
import { change, exam, path } from './exam.js';
import { told } from './form.js';
import { isHeld, showHeld } from './hold.js';
import { pressed, settle } from './press.js';
import { el, key, say, tongue, word } from './words.js';

const at = (id) => document.getElementById(id);

/** Head down or bottom down, and where the back is. */
const WAYS = [
  ['LOA', 'down', 'left front'],
  ['LOT', 'down', 'left lateral'],
  ['LOP', 'down', 'left, towards her spine'],
  ['ROA', 'down', 'right front'],
  ['ROT', 'down', 'right lateral'],
  ['ROP', 'down', 'right, towards her spine'],
  ['LSA', 'up', 'left front'],
  ['RSA', 'up', 'right front'],
];
const POLES = { down: [['breech', 'fundus'], ['head', 'above pubic bone']], up: [['head', 'fundus'], ['breech', 'above pubic bone']] };
/** What was written of the same baby in other words, and would stand against it. */
const OTHERWISE = ['position', 'lie', 'presentation'];

/** What a usual visit records, where nothing is recorded yet. */
const USUAL = [
  ['movements', 'usual'],
  ['reports', 'none'],
  ['shape', 'long'],
  ['womb', 'soft'],
  ['heart-rhythm', 'regular'],
];

const pictures = new Map();
let asked = [];

/** Build the row of pictures; those that were drawn are used again. */
export function buildStart() {
  const ways = WAYS.map((way) => {
    const [code, end, back] = way;
    const words = `${say(`desk-way-${end}`)}, ${say('desk-way-back', { value: word(back) })}`;
    const picture = el('img', { alt: '', 'data-code': code });
    if (pictures.has(code)) picture.src = pictures.get(code);
    const button = el('button', { type: 'button', class: 'way', 'data-way': code, onclick: () => pressed(button, () => lies(way, words)) }, el('span', { class: 'way-picture' }, picture), el('span', {}, `${say(`desk-way-${end}`)}, `), el('b', {}, say('desk-way-back', { value: word(back) })));
    return button;
  });
  at('ways').replaceChildren(...ways);
  drawNext();
}

/** One small picture after another, whenever nothing else is to be done. */
function drawNext() {
  const next = WAYS.find(([code]) => !pictures.has(code));
  if (!next) return;
  const idle = window.requestIdleCallback ?? ((work) => setTimeout(work, 300));
  idle(() => {
    if (pictures.has(next[0])) return;
    const edits = [['weeks', ['38+0']], ...found(next, 1)].map(([own, values]) => ({ key: own, values }));
    const { text } = ask({ command: 'edit', exam: { text: '' }, edits });
    const { pages } = ask({ command: 'draw', exam: { text }, format: 'svg', labels: 'none', ...tongue('en'), screen: true });
    if (!pages.length) return;
    pictures.set(next[0], URL.createObjectURL(new Blob([pages[0]], { type: 'image/svg+xml' })));
    for (const own of document.querySelectorAll(`img[data-code=${next[0]}]`)) own.src = pictures.get(next[0]);
    drawNext();
  });
}

const found = ([, end, back], baby) => [...POLES[end], ['back', back]].map(([name, value]) => [`baby.${baby}.${name}`, [value]]);

function lies(way, words) {
  if (isHeld()) return showHeld();
  const edits = found(way, exam.baby);
  const gone = OTHERWISE.map((name) => path(key(name))).filter((own) => exam.read[own]);
  const replaced = [...edits.map(([own, [value]]) => [own, value]), ...gone.map((own) => [own, ''])].filter(([own, value]) => exam.read[own] && exam.read[own] !== value).map(([own]) => `${say(`desk-key-${own.split('.').at(-1)}`)}: ${exam.read[own]}`);
  const problems = change([...edits, ...gone.map((own) => [own, []])]);
  at('start-note').textContent = problems.length ? problems.map(told).join(' ') : say('desk-recorded', { value: words }) + (replaced.length ? ` ${say('desk-in-place-of', { value: replaced.join('; ') })}` : '');
  return undefined;
}

/** Wire the usual visit. */
export function prepareUsual() {
  at('usual').addEventListener('click', () => {
    settle();
    if (isHeld()) return showHeld();
    asked = USUAL.filter(([name]) => !exam.read[path(key(name))]);
    at('usual-list').replaceChildren(
      ...asked.map(([name, value]) => el('li', {}, el('label', { class: 'check' }, el('input', { type: 'checkbox', checked: true, 'data-finding': name }), el('span', {}, `${say(`desk-key-${name}`)}: `, el('b', {}, word(value)))))),
    );
    const weeks = el('select', { id: 'usual-weeks' }, el('option', { value: '' }, say('desk-weeks')), ...Array.from({ length: 31 }, (_, at) => el('option', { value: String(at + 12) }, say('desk-weeks-of', { number: at + 12 }))));
    const days = el('select', { id: 'usual-days' }, ...Array.from({ length: 7 }, (_, at) => el('option', { value: String(at) }, say('desk-and-days', { number: at }))));
    const known = exam.read.weeks;
    at('usual-when').hidden = Boolean(known);
    at('usual-when').replaceChildren(...(known ? [] : [el('label', {}, el('span', {}, say('desk-key-weeks')), weeks), el('label', {}, el('span', {}, say('desk-days')), days)]));
    at('usual-dialog').returnValue = '';
    at('usual-dialog').showModal();
    at('usual-title').focus();
    return undefined;
  });
  at('usual-dialog').addEventListener('close', () => {
    if (at('usual-dialog').returnValue !== 'so') return;
    const ticked = [...at('usual-list').querySelectorAll('input:checked')].map((box) => box.dataset.finding);
    const rows = asked.filter(([name]) => ticked.includes(name));
    const weeks = at('usual-weeks')?.value;
    const problems = change([...(weeks ? [['weeks', [`${weeks}+${at('usual-days').value}`]]] : []), ...rows.map(([name, value]) => [path(key(name)), [value]])]);
    at('start-note').textContent = problems.length ? problems.map(told).join(' ') : say('desk-recorded', { value: rows.map(([name, value]) => `${say(`desk-key-${name}`)}: ${word(value)}`).join('; ') });
  });
}
