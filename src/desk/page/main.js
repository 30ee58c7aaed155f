// The page, put to work. In: nothing. Out: a desk that is ready, or a word on what it needs.
import { Fault, unpack } from './library.js';
import { canUndo, exam, heed, retell, takeLine, undo } from './exam.js';
import { build, refresh, told } from './form.js';
import { outlineFor } from './outline.js';
import { mishap, prepareIdle, prepareSession, prepareSettings } from './session.js';
import { offer, showTaking } from './take.js';
import { buildTeaching, prepareTeaching } from './teach.js';
import { showFindings, showPicture } from './view.js';
import { draft, dress, el, isDraft, lang, languages, learn, say } from './words.js';

const byId = (id) => document.getElementById(id);

/** What shapes her abdomen: the outline is drawn anew when it changes. */
const SHAPES = ['weeks', 'mother.fundal-height', 'mother.girth', 'mother.navel', 'mother.fundus'];

function wire() {
  const all = () => {
    refresh();
    showFindings();
    showTaking();
    byId('undo').disabled = !canUndo();
    outlineFor(exam.text, lang(), SHAPES.map((name) => exam.read[name] ?? '').join('|'));
  };
  heed(all);
  byId('undo').addEventListener('click', undo);
  byId('line').addEventListener('keydown', (event) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    fill();
  });
  byId('fill').addEventListener('click', fill);
  byId('to-picture').addEventListener('click', () => byId('view').scrollIntoView({ behavior: calm() ? 'auto' : 'smooth' }));
  byId('act-now-show').addEventListener('click', () => {
    byId('remarks').scrollIntoView({ behavior: calm() ? 'auto' : 'smooth', block: 'center' });
    byId('remarks').focus({ preventScroll: true });
  });
  prepareSettings(() => {
    if (byId('lang').value === lang()) showPicture();
    else speak();
  });
  speak();
}

/** All words in the language chosen; the findings stay, and so does what is open. */
function speak() {
  const open = [...document.querySelectorAll('#form details')].map((fold) => fold.open);
  learn(byId('lang').value);
  nameLanguages();
  build(byId('form'), byId('steps'));
  buildTeaching();
  [...document.querySelectorAll('#form details')].forEach((fold, at) => (fold.open = open[at] ?? fold.open));
  retell();
}

/** The languages to choose from: for the page those that have its words; for the family all. */
function nameLanguages() {
  const option = ({ tag, name, signed }) => el('option', { value: tag, lang: tag }, signed ? name : say('desk-draft-language', { name }));
  const fill = (id, first, all) => {
    const { value } = byId(id);
    byId(id).replaceChildren(...first, ...all.map(option));
    byId(id).value = value;
  };
  fill('lang', [], languages().filter(({ desk }) => desk));
  fill('page-lang', [el('option', { value: '' }, say('desk-page-language-same'))], languages());
  const told = byId('draft');
  told.hidden = !isDraft();
  told.replaceChildren(...(isDraft() ? [el('b', {}, draft().mark), ` ${draft().note}`] : []));
}

const calm = () => matchMedia('(prefers-reduced-motion: reduce)').matches;

function fill() {
  const line = byId('line').value.trim();
  if (line === exam.line.trim()) return;
  const problems = line ? takeLine(line) : [];
  byId('line-why').replaceChildren(...problems.map((problem) => el('p', {}, told(problem))));
}

async function start() {
  if (!window.WebAssembly || !window.HTMLDialogElement) return;
  await unpack();
  learn('en');
  nameLanguages();
  dress();
  prepareSession();
  prepareIdle();
  prepareTeaching();
  offer();
  wire();
  document.documentElement.classList.add('ready');
  performance.mark('ready');
  byId('needs').remove();
}

window.addEventListener('error', (event) => event.error && mishap(event.error instanceof Fault ? event.error.message : event.error));
window.addEventListener('unhandledrejection', (event) => mishap(event.reason));
start();
