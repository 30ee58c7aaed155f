// For teaching. In: how the baby is to lie. Out: its picture, as large as the screen; nothing of it goes into the visit.
import { ask } from './library.js';
import { el, say, tongue, word } from './words.js';

const at = (id) => document.getElementById(id);
const LENGTHWISE = ['front', 'left front', 'left lateral', 'left, towards her spine', 'towards her spine', 'right, towards her spine', 'right lateral', 'right front'];
const ACROSS = ['front', 'towards her ribs', 'towards her spine', 'towards her feet'];
/** Where head and bottom lie, from her right to her left: across, slantwise, lengthwise; head low and head high. */
const LIES = [
  { say: 'across-right', low: ['right, at navel', 'left, at navel'] },
  { say: 'slant-right', low: ['right iliac fossa', 'left, above navel'], high: ['right, above navel', 'left iliac fossa'] },
  { say: 'lengthwise', low: ['above pubic bone', 'fundus'], high: ['fundus', 'above pubic bone'] },
  { say: 'slant-left', low: ['left iliac fossa', 'right, above navel'], high: ['left, above navel', 'right iliac fossa'] },
  { say: 'across-left', low: ['left, at navel', 'right, at navel'] },
];
const state = { turn: 1, lie: 2, head: 'low', fifths: 3, weeks: 38, labels: true };
let address = '';
const dials = [];

/** The dials, in the words of the page. */
export function buildTeaching() {
  dials.length = 0;
  const rows = [
    dial('turn', () => turns().length - 1, () => word(turns()[turn()])),
    dial('lie', () => LIES.length - 1, () => say(`desk-lie-${LIES[state.lie].say}`)),
    dial('fifths', () => 5, () => say('desk-fifths', { value: `${state.fifths}/5` })),
    dial('weeks', () => 42, () => say('desk-weeks-of', { number: state.weeks }), 26),
  ];
  const switches = el(
    'div',
    { class: 'chips' },
    toggle('desk-head-low', () => state.head === 'low', () => (state.head = 'low')),
    toggle('desk-head-high', () => state.head === 'high', () => (state.head = 'high')),
    toggle('desk-labels', () => state.labels, () => (state.labels = !state.labels)),
    el('button', { type: 'button', class: 'chip', onclick: () => (document.fullscreenElement ? document.exitFullscreen() : document.querySelector('.teach').requestFullscreen().catch(() => {})) }, say('desk-full-screen')),
  );
  at('dials').replaceChildren(...rows, switches);
}

/** Wire the teaching desk. */
export function prepareTeaching() {
  at('open-teach').addEventListener('click', () => {
    at('teach').showModal();
    draw();
  });
}

const across = () => !LIES[state.lie].high;
const turns = () => (across() ? ACROSS : LENGTHWISE);
const turn = () => Math.min(state.turn, turns().length - 1);

function dial(name, most, words, least = 0) {
  const id = `dial-${name}`;
  const out = el('output', { for: id });
  const range = el('input', { type: 'range', id, min: least, max: most(), step: 1, oninput: () => move(Number(range.value)) });
  const wraps = name === 'turn';
  function move(to) {
    const span = most() - least + 1;
    state[name] = wraps ? (((to % span) + span) % span) : Math.min(Math.max(to, least), most());
    draw();
  }
  const less = el('button', { type: 'button', class: 'chip', 'aria-label': say('desk-back-one', { name: say(`desk-dial-${name}`) }), onclick: () => move(value() - 1) }, '\u2039');
  const more = el('button', { type: 'button', class: 'chip', 'aria-label': say('desk-on-one', { name: say(`desk-dial-${name}`) }), onclick: () => move(value() + 1) }, '\u203a');
  const value = () => (wraps ? turn() : state[name]);
  const row = el('div', { class: 'dial' }, el('label', { for: id }, say(`desk-dial-${name}`)), out, less, range, more);
  dials.push({
    show() {
      range.max = most();
      range.value = value();
      out.textContent = words();
      range.setAttribute('aria-valuetext', words());
      row.hidden = name === 'fifths' && (state.lie !== 2 || state.head !== 'low');
    },
  });
  return row;
}

function toggle(id, is, flip) {
  const button = el('button', { type: 'button', class: 'chip', onclick: () => (flip(), draw()) }, say(id));
  dials.push({
    show() {
      button.setAttribute('aria-pressed', String(is()));
      button.disabled = id.startsWith('desk-head-') && across();
    },
  });
  return button;
}

function draw() {
  const lie = LIES[state.lie];
  const [head, breech] = lie[state.head] ?? lie.low;
  const edits = [
    ['weeks', [`${state.weeks}+0`]],
    ['baby.1.breech', [breech]],
    ['baby.1.back', [turns()[turn()]]],
    ['baby.1.head', [head]],
  ];
  if (state.lie === 2 && state.head === 'low') edits.push(['baby.1.head-above-brim', [`${state.fifths}/5`]]);
  const text = ask({ command: 'edit', exam: { text: '' }, edits: edits.map(([key, values]) => ({ key, values })) }).text;
  const check = JSON.parse(ask({ command: 'check', exam: { text }, ...tongue() }).text);
  const answer = ask({ command: 'draw', exam: { text }, format: 'svg', ...tongue(), screen: true, labels: state.labels ? 'all' : 'none', style: at('style').value, view: at('from').value });
  for (const own of dials) own.show();
  const said = check.babies[0].said[0];
  at('teach-said').textContent = said;
  if (!answer.pages.length) return;
  if (address) URL.revokeObjectURL(address);
  address = URL.createObjectURL(new Blob([answer.pages[0]], { type: 'image/svg+xml' }));
  at('teach-picture').src = address;
  at('teach-picture').alt = state.labels ? said : say('desk-teach-alt');
}
