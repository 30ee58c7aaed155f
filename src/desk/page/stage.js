// The picture as the form. In: a finger or the arrow keys on head, bottom, back, fifths, limbs and heart. Out: findings, each where
// it was put; nothing else becomes known. Sides are hers: her left is at the right.
import { ask } from './library.js';
import { asText, change, exam, isEmpty, path } from './exam.js';
import { told } from './form.js';
import { isHeld } from './hold.js';
import { later } from './press.js';
import { el, key, lang, say, tongue, word } from './words.js';

const at = (id) => document.getElementById(id);
/** Round the trunk as someone facing her sees it, from her front by her left to her spine. */
const RING = ['front', 'left front', 'left lateral', 'left, towards her spine', 'towards her spine', 'right, towards her spine', 'right lateral', 'right front'];
const RING_ACROSS = ['front', 'towards her feet', 'towards her spine', 'towards her ribs'];
/** Half the ring, as shares of the width of the picture. */
const HOOP = { wide: 0.2, tall: 0.085 };
/** Where head and bottom wait before they are put anywhere. */
const WAITING = { head: { x: 0.13, y: 0.62 }, breech: { x: 0.13, y: 0.2 } };
const TOOLS = ['heart', 'limbs'];
const ARROWS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };

let spots = { places: [], babies: [], fifths: [] };
let tool = '';
/** The place that the arrow keys have reached with it. */
let aimed = null;
let shown = { url: '' };

/** Build what can be taken hold of, in the words of the page. */
export function buildStage() {
  // As someone facing her sees it: her right at the left.
  const side = (own) => el('span', { class: `own-side own-${own}`, 'aria-hidden': 'true' }, say(`desk-her-${own}`));
  at('hands').replaceChildren(side('right'), side('left'), handle('head'), handle('breech'), hoop(), bead(), ladder(), sight());
  at('tools').replaceChildren(
    ...TOOLS.map((name) => {
      const button = el('button', { type: 'button', class: 'chip', 'aria-pressed': String(tool === name), onclick: () => choose(tool === name ? '' : name) }, say(`desk-tool-${name}`));
      button.dataset.tool = name;
      button.addEventListener('keydown', (event) => tool === name && aim(event));
      return button;
    }),
  );
}

/** Lay the handles on the picture that is shown. */
export function showStage() {
  const usable = at('from').value === 'facing' && at('style').value !== 'sketch' && !isHeld();
  at('hands').hidden = !usable;
  // How it is done is said until it was done once.
  at('stage-hint').textContent = usable ? '' : say('desk-stage-off');
  at('start-hint').textContent = usable && isEmpty() ? say('desk-stage-hint') : '';
  for (const button of at('tools').children) button.disabled = !usable;
  if (!usable) return;
  const answer = ask({ command: 'places', exam: asText(), lang: lang() });
  at('hands').classList.toggle('laid', !answer.code);
  if (answer.code) return;
  spots = JSON.parse(answer.text);
  for (const own of at('hands').children) own.lay?.();
}

const here = () => spots.babies.find(({ baby }) => baby === exam.baby);
const read = (name) => exam.read[path(key(name))] ?? '';
const named = (name, value) => say('desk-put', { name: say(`desk-tool-${name}`), value });
/** A pole in the middle has its plain name. */
const plain = (words) => (['middle, fundus', 'middle, above pubic bone'].includes(words) ? words.slice(8) : words);

function put(element, { x, y }) {
  element.style.left = `${x * 100}%`;
  element.style.top = `calc(${y} * 100cqw)`;
}

/** Where on the picture an event is, in shares of its width. */
function where(event) {
  const box = at('hands').getBoundingClientRect();
  return { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.width };
}

const far = (a, b) => Math.hypot(a.x - b.x, a.y - b.y);
const nearest = (point) => spots.places.reduce((best, place) => (far(place.at, point) < far(best.at, point) ? place : best));
const said = (words) => spots.places.find((place) => plain(place.words) === words)?.said ?? word(words);

/** The place that lies mostly in the direction of `step` from `from`; where there is none, `from`. */
function onwards(from, step) {
  const cost = (place) => {
    const [x, y] = [place.at.x - from.at.x, place.at.y - from.at.y];
    const along = x * step[0] + y * step[1];
    const astray = Math.abs(x * step[1]) + Math.abs(y * step[0]);
    return along > 0.01 && astray < along * 1.5 ? along + 2 * astray : Infinity;
  };
  const next = spots.places.reduce((best, place) => (cost(place) < cost(best) ? place : best), from);
  return cost(next) < Infinity ? next : from;
}

/** Write a finding; what stands in its way is said. */
function write(edits, words) {
  const problems = change(edits);
  at('stage-said').textContent = problems.length ? problems.map(told).join(' ') : words;
}

/** Head or bottom, to be dragged, or moved with the arrow keys. */
function handle(name) {
  const label = el('span', { class: 'handle-name' }, say(`desk-tool-${name}`));
  const button = el('button', { type: 'button', class: `handle ${name}` }, label);
  let going = null;
  const spot = () => here()?.[name === 'head' ? 'head' : 'bottom'];
  button.lay = () => {
    const drawn = spot();
    put(button, drawn ?? WAITING[name]);
    button.classList.toggle('waiting', !read(name));
    button.setAttribute('aria-label', named(name, read(name) ? said(read(name)) : say('desk-not-examined')));
  };
  const to = (words) => write([[path(key(name)), [plain(words)]]], named(name, said(plain(words))));
  drag(button, {
    start: () => (going = null),
    move(point) {
      put(button, point);
      const place = nearest(point);
      if (place.words === going) return;
      going = place.words;
      at('stage-said').textContent = named(name, place.said);
      later(() => going === place.words && preview([[path(key(name)), [plain(place.words)]]]));
    },
    end: () => (going ? to(going) : button.lay()),
    stop: () => button.lay(),
  });
  button.addEventListener('keydown', (event) => {
    const step = ARROWS[event.key];
    if (!step) return;
    event.preventDefault();
    const from = spots.places.find((place) => plain(place.words) === read(name));
    if (!from) return to({ '-1,0': 'right, at navel', '1,0': 'left, at navel', '0,-1': 'fundus', '0,1': 'above pubic bone' }[step.join()]);
    const next = onwards(from, step);
    return next === from ? undefined : to(next.words);
  });
  return button;
}

/** The ring round the trunk, on which the back is turned. */
function hoop() {
  const ring = el('span', { class: 'hoop', 'aria-hidden': 'true' });
  ring.lay = () => {
    put(ring, middle());
    ring.classList.toggle('across', isAcross());
  };
  return ring;
}

const middle = () => here()?.trunk ?? { x: 0.5, y: 0.42 };
const isAcross = () => exam.babies[exam.baby - 1]?.lie === 'transverse';
const ring = () => (isAcross() ? RING_ACROSS : RING);

/** The point of the ring at which a back lies: her front is the nearer, lower edge; lying across, the ring stands upright. */
function onRing(at_, backs) {
  const turn = (at_ / backs.length) * 2 * Math.PI;
  const { x, y } = middle();
  // Across: the front is the nearer edge at her left, then her feet below.
  return isAcross() ? { x: x + HOOP.tall * Math.cos(turn), y: y + HOOP.wide * Math.sin(turn) } : { x: x + HOOP.wide * Math.sin(turn), y: y + HOOP.tall * Math.cos(turn) };
}

function bead() {
  const button = el('button', { type: 'button', class: 'handle back', role: 'slider' }, el('span', { class: 'handle-name' }, say('desk-tool-back')));
  let going = null;
  button.lay = () => {
    const backs = ring();
    const now = backs.indexOf(read('back'));
    button.classList.toggle('waiting', now < 0);
    put(button, now < 0 ? middle() : onRing(now, backs));
    button.setAttribute('aria-label', say('desk-tool-back'));
    button.setAttribute('aria-valuemin', '0');
    button.setAttribute('aria-valuemax', String(backs.length - 1));
    button.setAttribute('aria-valuenow', String(Math.max(now, 0)));
    button.setAttribute('aria-valuetext', read('back') ? said(read('back')) : say('desk-not-examined'));
  };
  const to = (value) => write([[path(key('back')), [value]]], named('back', word(value)));
  drag(button, {
    start: () => (going = null),
    move(point) {
      put(button, point);
      const backs = ring();
      const best = backs.reduce((now, _, own) => (far(onRing(own, backs), point) < far(onRing(now, backs), point) ? own : now), 0);
      if (backs[best] === going) return;
      going = backs[best];
      at('stage-said').textContent = named('back', word(going));
      const own = going;
      later(() => going === own && preview([[path(key('back')), [own]]]));
    },
    end: () => (going ? to(going) : button.lay()),
    stop: () => button.lay(),
  });
  button.addEventListener('keydown', (event) => {
    const step = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key];
    if (!step) return;
    event.preventDefault();
    const backs = ring();
    const now = backs.indexOf(read('back'));
    // The first step goes to the side of the arrow: her left is at the right.
    to(now < 0 ? (isAcross() ? backs[0] : step > 0 ? 'left lateral' : 'right lateral') : backs[(now + step + backs.length) % backs.length]);
  });
  return button;
}

/** Fifths of the head above the brim: the head is pushed down along them. */
function ladder() {
  const button = el('button', { type: 'button', class: 'handle fifths-handle', role: 'slider', 'aria-valuemin': '0', 'aria-valuemax': '5' }, el('span', { class: 'handle-name' }));
  const label = button.firstChild;
  const x = 0.82;
  let going = null;
  const of = (value) => spots.fifths[Number(value[0])];
  button.lay = () => {
    const drawn = here();
    button.hidden = !spots.fifths.length || !drawn || isAcross() || drawn.head.y < drawn.bottom.y;
    if (button.hidden) return;
    const now = read('head-above-brim');
    const value = /^[0-5]\/5/.test(now) ? now.slice(0, 3) : '';
    button.classList.toggle('waiting', !value);
    label.textContent = value || '?/5';
    put(button, { x, y: of(value || '5/5').y });
    button.setAttribute('aria-label', say('desk-key-head-above-brim'));
    button.setAttribute('aria-valuenow', value ? value[0] : '5');
    button.setAttribute('aria-valuetext', value ? say('desk-fifths', { value }) : say('desk-not-examined'));
  };
  const to = (value) => write([[path(key('head-above-brim')), [value]]], say('desk-fifths', { value }));
  drag(button, {
    start: () => (going = null),
    move(point) {
      put(button, { x, y: point.y });
      const best = spots.fifths.reduce((now, own, k) => (Math.abs(own.y - point.y) < Math.abs(spots.fifths[now].y - point.y) ? k : now), 0);
      if (`${best}/5` === going) return;
      going = `${best}/5`;
      label.textContent = going;
      at('stage-said').textContent = say('desk-fifths', { value: going });
      const own = going;
      later(() => going === own && preview([[path(key('head-above-brim')), [own]]]));
    },
    end: () => (going ? to(going) : button.lay()),
    stop: () => button.lay(),
  });
  button.addEventListener('keydown', (event) => {
    const step = { ArrowLeft: -1, ArrowDown: -1, ArrowRight: 1, ArrowUp: 1 }[event.key];
    if (!step) return;
    event.preventDefault();
    const now = read('head-above-brim');
    const from = /^[0-5]\/5/.test(now) ? Number(now[0]) : step > 0 ? -1 : 6;
    to(`${Math.min(Math.max(from + step, 0), 5)}/5`);
  });
  return button;
}

/** A finger, pen or mouse on `button`: a tap alone moves nothing. */
function drag(button, { start, move, end, stop }) {
  let from = null;
  let moved = false;
  button.addEventListener('pointerdown', (event) => {
    if (event.button || isHeld()) return;
    from = { x: event.clientX, y: event.clientY };
    shown = { url: shown.url };
    moved = false;
    button.setPointerCapture(event.pointerId);
    button.classList.add('held-by-finger');
    start();
  });
  button.addEventListener('pointermove', (event) => {
    if (!from) return;
    moved ||= Math.hypot(event.clientX - from.x, event.clientY - from.y) > 6;
    if (moved) move(where(event));
  });
  const over = (kept) => () => {
    if (!from) return;
    from = null;
    button.classList.remove('held-by-finger');
    if (kept && moved) end();
    else stop();
    if (!kept) unpreview();
  };
  button.addEventListener('pointerup', over(true));
  button.addEventListener('pointercancel', over(false));
}

/** How it would look; nothing is written. */
function preview(edits) {
  const { text, code } = ask({ command: 'edit', exam: asText(), edits: edits.map(([own, values]) => ({ key: own, values })) });
  if (code) return;
  const { pages } = ask({ command: 'draw', exam: { text }, format: 'svg', labels: 'none', ...tongue(), screen: true });
  if (!pages.length) return;
  if (shown.url) URL.revokeObjectURL(shown.url);
  shown = { url: URL.createObjectURL(new Blob([pages[0]], { type: 'image/svg+xml' })), before: shown.before ?? at('picture').src };
  at('picture').src = shown.url;
}

function unpreview() {
  if (shown.before) at('picture').src = shown.before;
  shown = { url: '' };
}

/** A tap on the picture puts what was chosen: the heart, or limbs. */
function choose(name) {
  tool = name;
  aimed = null;
  document.querySelector('.sight')?.lay();
  for (const button of at('tools').children) button.setAttribute('aria-pressed', String(button.dataset.tool === name));
  at('hands').classList.toggle('aim', Boolean(name));
  at('stage-said').textContent = name ? say('desk-aim', { value: say(`desk-key-${name}`) }) : '';
}

/** Where the arrow keys have led what is to be put. */
function sight() {
  const mark = el('span', { class: 'sight', 'aria-hidden': 'true', hidden: true });
  mark.lay = () => {
    mark.hidden = !aimed;
    if (aimed) put(mark, aimed.at);
  };
  return mark;
}

/** By the keyboard: the arrow keys lead over the places, Enter puts it, Escape lays it down. */
function aim(event) {
  const step = ARROWS[event.key];
  const done = aimed && (event.key === 'Enter' || event.key === ' ');
  if (!(step || done || event.key === 'Escape') || !spots.places.length || isHeld()) return undefined;
  event.preventDefault();
  // The arrow keys lead over her abdomen, not along the row of buttons.
  event.stopPropagation();
  if (event.key === 'Escape') return choose('');
  if (done) return place(aimed);
  const first = spots.places.find(({ words }) => words === 'middle, at navel') ?? spots.places[0];
  aimed = onwards(aimed ?? first, step);
  document.querySelector('.sight').lay();
  at('stage-said').textContent = named(tool, aimed.said);
  return undefined;
}

/** Put what is in hand at `spot`; limbs are added, a heart is where it was heard last. */
function place(spot) {
  const name = tool;
  const before = name === 'limbs' && read('limbs') && !/^(not felt|could not tell)/.test(read('limbs')) ? read('limbs').split('; ') : [];
  const values = before.includes(spot.words) ? before : [...before, spot.words];
  if (name === 'heart') choose('');
  later(() => write([[path(key(name)), values]], named(name, spot.said)));
}

/** Nothing is held in the hand any more. */
export const layDown = () => choose('');

/** Wire the taps on the picture. */
export function prepareStage() {
  at('hands').addEventListener('click', (event) => {
    if (!tool || event.target.closest('.handle') || isHeld() || !spots.places.length) return;
    place(nearest(where(event)));
  });
}
