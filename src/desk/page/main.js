// The page, put to work. In: nothing. Out: a desk that is ready, or a word on what it needs.
import { Fault, unpack } from './library.js';
import { addRead, canUndo, exam, heed, isEmpty, readLine, replacedBy, retell, takeText, undo } from './exam.js';
import { build, prepareBabies, refresh, told } from './form.js';
import { heedHeld, hold, isHeld, release, showHeld, tell } from './hold.js';
import { outlineFor } from './outline.js';
import { mishap, prepareIdle, prepareSession, prepareSettings } from './session.js';
import { offer, showTaking } from './take.js';
import { prepareHer } from './her.js';
import { buildStage, prepareStage, showStage } from './stage.js';
import { buildTeaching, prepareTeaching } from './teach.js';
import { buildStart, prepareUsual } from './usual.js';
import { heedPicture, showFindings, showPicture } from './view.js';
import { later, settle } from './press.js';
import { go, goTo, prepareSteps, showBar } from './steps.js';
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
    showBar();
    outlineFor(exam.text, lang(), SHAPES.map((name) => exam.read[name] ?? '').join('|'));
  };
  heed(all);
  byId('undo').addEventListener('click', undo);
  prepareLine();
  prepareBabies();
  prepareStage();
  prepareUsual();
  prepareHer();
  heedPicture(() => later(showStage));
  heedHeld(showStage);
  document.addEventListener('keydown', (event) => {
    if (event.key.toLowerCase() !== 'z' || !(event.ctrlKey || event.metaKey) || event.shiftKey || event.altKey) return;
    // Inside a field it takes back what is being typed there.
    if (event.target.matches('textarea, input') || document.querySelector('dialog[open]')) return;
    event.preventDefault();
    undo();
  });
  byId('act-now-show').addEventListener('click', () => go('remarks'));
  prepareSteps();
  prepareSettings(() => {
    settle();
    if (byId('lang').value === lang()) showPicture();
    else if (isHeld()) {
      // The fields are built anew in the other language: first what is typed in them.
      byId('lang').value = lang();
      showHeld();
    } else speak();
  });
  speak();
}

/** All words in the language chosen; the findings stay, and so does what is open. */
function speak() {
  const open = [...document.querySelectorAll('#form details')].map((fold) => fold.open);
  learn(byId('lang').value);
  nameLanguages();
  build(byId('form'));
  buildTeaching();
  buildStage();
  buildStart();
  tell();
  go(document.querySelector('[data-view]:not(.off):not(.always)')?.dataset.view ?? 'start', false);
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

/** The line: what is typed on it is held until it is read; what it would replace is named first. */
function prepareLine() {
  const line = byId('line');
  const typed = () => line.value.trim();
  const same = () => typed() === exam.line.trim();
  const keep = (why) => hold('line', { name: say('desk-one-line'), words: typed(), why, show: () => goTo(line), drop });
  const say_ = (problems) => byId('line-why').replaceChildren(...problems.map((problem) => el('p', {}, told(problem))));
  let reading = null;
  function drop() {
    line.value = exam.line.trim();
    say_([]);
    release('line');
  }
  line.addEventListener('input', () => {
    byId('line-note').textContent = '';
    if (same()) drop();
    else keep('');
  });
  line.addEventListener('keydown', (event) => {
    if (event.key !== 'Enter') return;
    event.preventDefault();
    fill();
  });
  byId('fill').addEventListener('click', fill);

  function fill() {
    settle();
    if (same()) return drop();
    reading = typed() ? readLine(typed()) : { text: '', read: {} };
    if (reading.problems) {
      say_(reading.problems);
      byId('line-why').append(...reading.questions?.map(asked) ?? []);
      return keep(reading.problems.map(told).join(' '));
    }
    const replaced = isEmpty() ? [] : replacedBy(reading.read);
    // What would be dropped is asked about; what is only changed is named.
    if (replaced.some(([, , words]) => words === undefined)) return ask_(replaced);
    return taken(takeText(reading.text), replaced);
  }
  /** What a line is asked: each answer is the whole line as it is meant, and is read at once. */
  function asked({ message, readings }) {
    const answer = ({ says, line: whole }) => el('button', { type: 'button', class: 'chip', onclick: () => ((line.value = whole), fill()) }, says);
    return el('div', { class: 'question' }, el('p', {}, message), el('div', { class: 'chips', role: 'group', 'aria-label': message }, ...readings.map(answer)));
  }
  /** It stands now, or why not. */
  function taken(problems, replaced) {
    say_(problems);
    if (problems.length) return keep(problems.map(told).join(' '));
    release('line');
    line.value = exam.line.trim();
    byId('line-note').textContent = replaced.length ? say('desk-replaced', { value: replaced.map(named).join('; ') }) : '';
    return undefined;
  }
  const named = ([path, words, next]) => `${nameOf(path)}: ${words}${next === undefined ? '' : ` \u2192 ${next}`}`;
  function ask_(replaced) {
    byId('replaces-lines').replaceChildren(...replaced.map((row) => el('li', {}, named(row))));
    byId('replaces').returnValue = '';
    byId('replaces').showModal();
  }
  byId('replaces').addEventListener('close', () => {
    const { returnValue } = byId('replaces');
    if (returnValue === 'so') taken(takeText(reading.text), replacedBy(reading.read));
    if (returnValue === 'add') taken(addRead(reading.read), []);
  });
}

/** The name of a finding by its path. */
function nameOf(path) {
  const [scope, baby, name = baby] = path.split('.');
  const own = say(`desk-key-${(scope === 'baby' ? name : baby) ?? scope}`);
  return scope === 'baby' && exam.babies.length > 1 ? say('desk-of-baby', { number: baby, value: own }) : own;
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
