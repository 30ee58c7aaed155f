// One thing on the screen at a time. In: where she wants to be. Out: the start with the picture, one step of the examination, the
// remarks, or what leaves; the bar at the foot says where she is, what is missing, and leads on.
import { exam, path } from './exam.js';
import { el, key, say } from './words.js';

/** The steps of an examination; `more` stands behind a fold. A test holds that every key has its place. */
export const STEPS = [
  { id: 'weeks', keys: ['weeks'], more: ['visit', 'due', 'last-period', 'cycle', 'scan'] },
  { id: 'says', keys: ['movements', 'reports'], more: ['denies', 'births-before', 'operations', 'womb-cut', 'placenta', 'labour', 'hours-since-broken', 'water-colour', 'gravida', 'rupture-before', 'placentas', 'rhesus-d', 'group-b-strep'] },
  { id: 'look', keys: ['shape', 'scars'], more: ['skin', 'posture', 'consent', 'comfort', 'build', 'scar-feel', 'muscle-gap', 'hernia', 'bladder', 'temperature', 'blood-pressure', 'breathing', 'urine-protein'] },
  { id: 'grip-1', pole: ['breech', 'head', 'fundus'], keys: ['womb', 'breech'], more: ['fundus', 'water', 'lumps', 'tone-at-rest', 'tender-at', 'contractions-in-ten', 'contraction-length', 'contraction-strength', 'height-for-dates', 'fundus-feels'] },
  { id: 'grip-2', keys: ['back', 'limbs'], more: ['dip-at-navel', 'moved-under-hands', 'size', 'kicks', 'hiccups', 'unstable-lie', 'turning-tried'] },
  { id: 'grip-3', pole: ['head', 'breech', 'above pubic bone'], keys: ['head'], more: ['attitude', 'legs', 'brim-feels', 'ballottable'] },
  { id: 'grip-4', keys: ['head-above-brim', 'prominence'], more: ['descent', 'overlaps-pubic-bone', 'found-by-vagina', 'station'] },
  { id: 'listen', keys: ['heart', 'heart-counts', 'heart-rate', 'heart-with', 'pulse'], more: ['heart-rhythm', 'heart-rise', 'heart-also', 'heart-quality', 'heart-slows', 'heart-by', 'heart-and-pulse'] },
  { id: 'tape', keys: ['fundal-height'], more: ['earlier-tapes', 'girth', 'navel', 'tape-unfit', 'weight-by-hand', 'weight-by-scan'] },
  { id: 'wrote', keys: ['position'], more: ['lie', 'presentation', 'note'] },
];

const at = (id) => document.getElementById(id);
const VIEWS = ['start', ...STEPS.map(({ id }) => id), 'take'];
let now = 'start';

/** Wide screens show picture and remarks beside whatever else is shown. */
export const isWide = () => matchMedia('(min-width: 64rem)').matches;

/** Show `view`; `focus`: it is where the keyboard goes on. */
export function go(view, focus = true) {
  if (view === 'remarks' && isWide()) return remarks();
  now = view;
  for (const part of document.querySelectorAll('[data-view]')) part.classList.toggle('off', part.dataset.view !== view);
  showBar();
  if (!focus) return undefined;
  window.scrollTo(0, 0);
  if (view === 'remarks') return remarks();
  const heading = view === 'start' ? at('title') : document.querySelector(`[data-view="${view}"] h2`);
  heading?.focus({ preventScroll: true });
  return undefined;
}

function remarks() {
  at('remarks').scrollIntoView({ block: 'nearest' });
  at('came-title').focus({ preventScroll: true });
}

/** Bring what can be typed or tapped into sight, wherever it stands. */
export function goTo(element) {
  const view = element.closest('[data-view]')?.dataset.view;
  if (view && view !== now) go(view, false);
  element.closest('details')?.setAttribute('open', '');
  element.scrollIntoView({ block: 'center' });
  element.focus({ preventScroll: true });
}

/** What of a step is not recorded. */
const missing = ({ keys }) => keys.filter((name) => !exam.read[path(key(name))]);
const touched = ({ keys, more }) => [...keys, ...more].some((name) => exam.read[path(key(name))]);
const nameOf = (view) => say(view === 'start' ? 'desk-to-picture' : view === 'take' ? 'desk-to-take' : view === 'remarks' ? 'desk-remarks' : `desk-step-${view}`);

/** The bar and the list of steps, as the exam stands. */
export function showBar() {
  const place = VIEWS.indexOf(now);
  const step = STEPS.find(({ id }) => id === now);
  const lacks = step ? missing(step).length : 0;
  // Which baby is being recorded is in sight wherever she has scrolled.
  const ofBaby = exam.two && (now === 'start' || (step && [...step.keys, ...step.more].some((name) => key(name).scope === 'baby')));
  at('step-now').replaceChildren(el('b', {}, ofBaby ? say('desk-of-baby', { number: exam.baby, value: nameOf(now) }) : nameOf(now)), el('small', {}, step ? `${STEPS.indexOf(step) + 1}/${STEPS.length}${lacks ? ` \u00b7 ${say('desk-missing-count', { count: lacks })}` : ''}` : say('desk-all-steps')));
  at('step-back').disabled = place === 0;
  at('step-next').disabled = place === VIEWS.length - 1;
  at('to-remarks').textContent = say('desk-remarks-count', { count: exam.remarks.length });
  at('to-remarks').classList.toggle('some', exam.remarks.length > 0);
  at('to-picture').setAttribute('aria-current', String(now === 'start'));
  at('to-take').setAttribute('aria-current', String(now === 'take'));
  const held = at('steps').contains(document.activeElement) ? document.activeElement.dataset.step : '';
  at('steps').replaceChildren(
    ...STEPS.map((own) => {
      const left = missing(own).map((name) => say(`desk-key-${name}`)).join(', ');
      return el(
        'button',
        { type: 'button', class: `step-way${touched(own) ? ' done' : ''}`, 'data-step': own.id, 'aria-current': String(own.id === now), onclick: () => (at('steps-dialog').close(), go(own.id)) },
        el('b', {}, nameOf(own.id)),
        el('span', {}, left ? say('desk-missing', { value: left }) : say('desk-none-missing')),
      );
    }),
  );
  if (held) at('steps').querySelector(`[data-step="${held}"]`)?.focus();
}

/** Wire the bar. */
export function prepareSteps() {
  const by = (step) => go(VIEWS[Math.min(Math.max((now === 'remarks' ? 0 : VIEWS.indexOf(now)) + step, 0), VIEWS.length - 1)]);
  at('step-back').addEventListener('click', () => by(-1));
  at('step-next').addEventListener('click', () => by(1));
  at('step-now').addEventListener('click', () => at('steps-dialog').showModal());
  at('to-remarks').addEventListener('click', () => go('remarks'));
  at('to-picture').addEventListener('click', () => go('start'));
  at('to-take').addEventListener('click', () => go('take'));
  at('skip-print').addEventListener('click', (event) => {
    event.preventDefault();
    go('take', false);
    at('print').focus();
  });
  document.querySelector('a.skip').addEventListener('click', (event) => {
    event.preventDefault();
    goTo(at('line'));
  });
  // Groups of choices: arrow keys go from one to the next.
  document.addEventListener('keydown', (event) => {
    const step = { ArrowLeft: -1, ArrowUp: -1, ArrowRight: 1, ArrowDown: 1 }[event.key];
    const group = step && event.target.matches('button') && event.target.closest('.chips[role=group], .fifths, .back-grid, #steps, .gallery');
    if (!group) return;
    const all = [...group.querySelectorAll('button:not(:disabled)')].filter((own) => own.offsetParent);
    event.preventDefault();
    all[(all.indexOf(event.target) + step + all.length) % all.length]?.focus();
  });
}
