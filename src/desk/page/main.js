// The page, put to work. In: nothing. Out: a desk that is ready, or a word on what it needs.
import { Fault, unpack } from './library.js';
import { canUndo, exam, heed, takeLine, undo } from './exam.js';
import { build, refresh, told } from './form.js';
import { outlineFor } from './outline.js';
import { mishap, prepareIdle, prepareSession, prepareSettings } from './session.js';
import { offer, showTaking } from './take.js';
import { prepareTeaching } from './teach.js';
import { showFindings, showPicture } from './view.js';
import { dress, el, learn, say } from './words.js';

const byId = (id) => document.getElementById(id);

/** What shapes her abdomen: the outline is drawn anew when it changes. */
const SHAPES = ['weeks', 'mother.fundal-height', 'mother.girth', 'mother.navel', 'mother.fundus'];

function wire() {
  const all = () => {
    refresh();
    showFindings();
    showTaking();
    byId('undo').disabled = !canUndo();
    outlineFor(exam.text, byId('lang').value, SHAPES.map((name) => exam.read[name] ?? '').join('|'));
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
  let spoken = 'en';
  prepareSettings(() => {
    // Another language: all words anew; the findings stay.
    if (byId('lang').value !== spoken) {
      spoken = byId('lang').value;
      learn(spoken);
    }
    showPicture();
  });
  all();
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
  dress();
  build(byId('form'), byId('steps'));
  prepareSession();
  prepareIdle();
  prepareTeaching();
  offer();
  wire();
  document.title = say('desk-title');
  document.documentElement.classList.add('ready');
  performance.mark('ready');
  byId('needs').remove();
}

window.addEventListener('error', (event) => event.error && mishap(event.error instanceof Fault ? event.error.message : event.error));
window.addEventListener('unhandledrejection', (event) => mishap(event.reason));
start();
