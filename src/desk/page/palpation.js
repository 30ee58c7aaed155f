// How a step of the examination is done. In: which one. Out: the hands on a belly that is not hers, marked as such; nothing of it goes into the visit.
import { ask } from './library.js';
import { el, say, tongue } from './words.js';

const at = (id) => document.getElementById(id);

/** The hands of each step. */
export const HANDS = {
  'grip-1': 'fundal', 'grip-2': 'lateral', 'grip-3': 'pelvic-one', 'grip-4': 'pelvic-two', listen: 'horn', tape: 'tape',
};

/** A baby to feel, head down. */
const FELT = [['weeks', '37+0'], ['baby.1.breech', 'fundus'], ['baby.1.back', 'left lateral'], ['baby.1.head', 'above pubic bone']];
const drawn = new Map();

/** Show the hands of a step, under the name of its step and how it is done. */
export function showPalpation(hands, name, how) {
  if (!drawn.has(hands)) {
    const { text } = ask({ command: 'edit', exam: { text: '' }, edits: FELT.map(([key, value]) => ({ key, values: [value] })) });
    const { pages } = ask({ command: 'draw', exam: { text }, format: 'svg', labels: 'none', hands, ...tongue('en'), screen: true });
    drawn.set(hands, URL.createObjectURL(new Blob([pages[0]], { type: 'image/svg+xml' })));
  }
  at('palpation-title').textContent = name;
  at('palpation-how').textContent = how;
  at('palpation-figure').replaceChildren(el('figcaption', { class: 'not-hers' }, say('desk-not-her-baby')), el('img', { src: drawn.get(hands), alt: '' }));
  at('palpation').showModal();
  at('palpation-title').focus();
}
