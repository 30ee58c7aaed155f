// Her abdomen to tap on. In: the outline of the library and where its places lie. Out: a field of places; tapping near one, or
// moving to it with the arrow keys and pressing Enter, chooses it; where several lie under one finger, it is asked which.
import { ask } from './library.js';
import { el, say } from './words.js';

/** What of the picture is shown, as shares of it: the abdomen. */
const CROP = { left: 0.1, right: 0.9, top: 0, bottom: 0.84 };

/** Height of the field for its width, as in the style. */
const TALL = 1 / 0.971;

/** Places nearer to each other than this, in pixels, cannot be told apart by a finger. */
const FINGER = 16;

let places = [];
let address = '';
let drawnFor = null;
const fields = [];

/** Draw the outline for this exam, if it changed shape. */
export function outlineFor(text, lang, shape) {
  const now = `${lang} ${shape}`;
  if (now === drawnFor) return;
  const answer = ask({ command: 'outline', exam: { text }, lang });
  if (answer.code) return;
  drawnFor = now;
  places = JSON.parse(answer.text).places;
  if (address) URL.revokeObjectURL(address);
  address = URL.createObjectURL(new Blob([answer.pages[0]], { type: 'image/svg+xml' }));
  for (const field of fields) field.redraw();
}

/** The form is built anew: its fields are gone. */
export function dropFields() {
  fields.length = 0;
}

/** How far the nearest other place lies, as a share of the field's width. */
function room(place) {
  const far = (other) => Math.hypot((across(other.x) - across(place.x)) / 100, ((down(other.y) - down(place.y)) / 100) * TALL);
  return Math.min(...places.filter((other) => other !== place).map(far));
}

const across = (x) => ((x - CROP.left) / (CROP.right - CROP.left)) * 100;
const down = (y) => ((y - CROP.top) / (CROP.bottom - CROP.top)) * 100;

/** A field of places; `choose(words)` is called for the one that is tapped. */
export function outlineField(label, choose) {
  const image = el('img', { alt: '', draggable: 'false' });
  const own = (side) => el('span', { class: `own-side own-${side}`, 'aria-hidden': 'true' }, say(side === 'left' ? 'desk-her-left' : 'desk-her-right'));
  const spots = el('div', { class: 'spots' });
  const which = el('div', { class: 'which chips', role: 'group', 'aria-label': say('desk-which-place'), hidden: true });
  const field = el('div', { class: 'outline', role: 'group', 'aria-label': label }, image, own('right'), own('left'), spots);
  let chosen = [];

  // A tap chooses the nearest place, wherever it falls; a key chooses the place it stands on.
  field.addEventListener('click', (event) => {
    if (!event.detail) return;
    const box = field.getBoundingClientRect();
    const x = ((event.clientX - box.left) / box.width) * 100;
    const y = ((event.clientY - box.top) / box.height) * 100;
    const far = (place) => Math.hypot((across(place.x) - x) * box.width, (down(place.y) - y) * box.height);
    pick(places.reduce((best, place) => (far(place) < far(best) ? place : best)));
  });
  field.addEventListener('keydown', (event) => {
    const step = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] }[event.key];
    const from = places[[...spots.children].indexOf(event.target)];
    if (!step || !from) return;
    event.preventDefault();
    // The nearest spot that lies mostly in this direction.
    const cost = (to) => {
      const [x, y] = [to.x - from.x, to.y - from.y];
      const along = x * step[0] + y * step[1];
      const astray = Math.abs(x * step[1]) + Math.abs(y * step[0]);
      return along > 0.01 && astray < along * 1.5 ? along + 2 * astray : Infinity;
    };
    const next = places.reduce((best, to) => (cost(to) < cost(best) ? to : best), from);
    if (next !== from && cost(next) < Infinity) focusOn(places.indexOf(next));
  });

  /** Choose `place`; ask, where others lie under it. */
  function pick(place) {
    const box = field.getBoundingClientRect();
    const near = (other) => Math.hypot((across(other.x) - across(place.x)) * box.width, (down(other.y) - down(place.y)) * box.height) < FINGER * 100;
    const under = places.filter(near);
    which.hidden = under.length < 2;
    if (which.hidden) {
      choose(place.words);
      return;
    }
    const taken = (words) => {
      which.hidden = true;
      choose(words);
      spots.children[places.findIndex((own) => own.words === words)]?.focus({ preventScroll: true });
    };
    which.replaceChildren(
      el('span', { class: 'hint' }, say('desk-which-place')),
      ...under.map(({ words, said }) => el('button', { type: 'button', class: 'chip', 'aria-pressed': String(chosen.includes(words)), onclick: () => taken(words) }, say('desk-place', { value: said ?? words }))),
    );
    which.querySelector('button').focus({ preventScroll: true });
  }

  function focusOn(at) {
    [...spots.children].forEach((spot, index) => (spot.tabIndex = index === at ? 0 : -1));
    spots.children[at].focus();
  }
  function show() {
    const buttons = [...spots.children];
    buttons.forEach((spot, at) => {
      const here = chosen.includes(places[at].words);
      spot.setAttribute('aria-pressed', String(here));
    });
    if (!buttons.some((spot) => spot.tabIndex === 0) && buttons.length) buttons[0].tabIndex = 0;
  }
  const made = {
    element: el('figure', { class: 'outline-figure' }, field, which, el('figcaption', {}, say('desk-outline-hint'))),
    redraw() {
      which.hidden = true;
      image.src = address;
      const size = 100 / (CROP.right - CROP.left);
      image.style.width = `${size}%`;
      image.style.left = `${-CROP.left * size}%`;
      spots.replaceChildren(
        ...places.map((place) => {
          const spot = el('button', {
            type: 'button',
            class: 'spot',
            tabindex: '-1',
            'aria-pressed': 'false',
            'aria-label': say('desk-place', { value: place.said ?? place.words }),
            title: say('desk-place', { value: place.said ?? place.words }),
            onclick: (event) => event.detail || pick(place),
          });
          spot.style.setProperty('--room', room(place));
          spot.style.left = `${across(place.x)}%`;
          spot.style.top = `${down(place.y)}%`;
          return spot;
        }),
      );
      show();
    },
    choose(words) {
      chosen = words;
      show();
    },
    clear: () => (which.hidden = true),
  };
  fields.push(made);
  if (places.length) made.redraw();
  return made;
}
