// One visit after another. In: files, settings, time. Out: nothing of one woman is carried to the next; what is kept on the device is
// what she who works here asked to keep, and never a finding.
import { renew } from './library.js';
import { exam, forget, isUnsaved, opened, reckonAgain, retell } from './exam.js';
import { clearForm, told } from './form.js';
import { turnBack } from './her.js';
import { releaseAll } from './hold.js';
import { layDown } from './stage.js';
import { growth, leave } from './take.js';
import { settle } from './press.js';
import { go } from './steps.js';
import { el, say } from './words.js';

const at = (id) => document.getElementById(id);
const KEPT = 'handspan-desk';
const SETTINGS = ['style', 'labels', 'paper', 'lang', 'theme', 'hand', 'size'];
/** What was chosen for this woman alone: how she sees the picture, her skin, her language. */
const HERS = ['from', 'palette', 'page-lang'];
const CLINIC = ['clinic-name', 'clinic-labour-ward', 'clinic-day', 'clinic-night', 'clinic-emergency'];
const IDLE = 20 * 60 * 1000;

/** Forget this woman and begin again. */
export function newVisit() {
  next = null;
  for (const id of HERS) at(id).selectedIndex = 0;
  turnBack();
  layDown();
  forget();
  clearForm();
  releaseAll();
  leave();
  for (const text of document.querySelectorAll('#line, #mend-text, #text-body, #fault-text')) text.value = '';
  for (const text of document.querySelectorAll('#line-why, #line-note, #start-note, #stage-said, #take-why, #status, #mend-why')) text.textContent = '';
  for (const fold of document.querySelectorAll('#form details.more')) fold.open = false;
  go('start');
}

/** Wire what belongs to a visit. */
export function prepareSession() {
  at('new-visit').addEventListener('click', () => askNew(null));
  at('new').addEventListener('close', () => {
    const text = next;
    next = null;
    if (at('new').returnValue !== 'so') return;
    newVisit();
    if (text !== null) openText(text);
  });
  at('open').addEventListener('click', () => at('file').click());
  at('file').addEventListener('change', () => {
    openFile(at('file').files[0]);
    at('file').value = '';
  });
  document.addEventListener('dragover', (event) => event.preventDefault());
  document.addEventListener('drop', (event) => {
    event.preventDefault();
    // One visit is opened; several become the tape over the visits.
    const files = [...event.dataTransfer.files];
    if (files.length > 1) growth(files);
    else openFile(files[0]);
  });
  at('mend').addEventListener('close', () => {
    if (at('mend').returnValue === 'so') openText(at('mend-text').value);
  });
  window.addEventListener('beforeunload', (event) => {
    settle();
    if (isUnsaved()) event.preventDefault();
  });
  for (const button of document.querySelectorAll('[data-close]')) {
    button.addEventListener('click', () => button.closest('dialog').close(button.dataset.close));
  }
}

/** The text of the visit that is to follow, when one was to be opened. */
let next = null;

function askNew(text) {
  next = text;
  at('new').returnValue = '';
  at('new').showModal();
}

async function openFile(file) {
  if (!file) return;
  const bytes = new Uint8Array(await file.arrayBuffer());
  const text = new TextDecoder().decode(bytes);
  settle();
  if (isUnsaved()) askNew(text);
  else openText(text);
}

/** Open a text; one with faults can be mended at once. */
function openText(text) {
  next = null;
  const problems = opened(text, () => {
    clearForm();
    releaseAll();
  });
  if (!problems.length) return;
  at('mend-text').value = text;
  at('mend-why').replaceChildren(...problems.map((problem) => el('li', {}, (problem.line ? `${say('desk-line', { number: problem.line })} ` : '') + told(problem))));
  at('mend').returnValue = '';
  at('mend').showModal();
}

/** After 20 minutes without a touch the page shows nothing. */
export function prepareIdle() {
  let last = performance.now();
  const blank = () => {
    if (performance.now() - last < IDLE || at('blank').open) return;
    for (const dialog of document.querySelectorAll('dialog[open]')) dialog.close('');
    document.body.classList.add('blank');
    at('blank').showModal();
  };
  for (const kind of ['pointerdown', 'keydown', 'input', 'wheel']) {
    document.addEventListener(kind, () => !at('blank').open && (last = performance.now()), { passive: true });
  }
  setInterval(blank, 15000);
  document.addEventListener('visibilitychange', blank);
  at('blank').addEventListener('cancel', (event) => event.preventDefault());
  at('blank').addEventListener('close', () => {
    document.body.classList.remove('blank');
    last = performance.now();
    if (at('blank').returnValue !== 'same') newVisit();
  });
}

/** Settings; `changed` is called after one has changed. */
export function prepareSettings(changed) {
  let kept = {};
  try {
    kept = JSON.parse(localStorage.getItem(KEPT) ?? '{}');
  } catch {
    // A device that keeps nothing.
  }
  for (const id of [...SETTINGS, ...CLINIC, ...HERS]) {
    if (kept[id] !== undefined && !HERS.includes(id)) at(id).value = kept[id];
    at(id).addEventListener('change', () => {
      keep();
      apply();
      changed();
    });
  }
  at('keep').checked = Object.keys(kept).length > 0;
  at('keep').addEventListener('change', keep);
  at('forget-all').addEventListener('click', () => {
    try {
      localStorage.removeItem(KEPT);
    } catch {
      // Nothing was kept.
    }
    at('keep').checked = false;
    for (const id of CLINIC) at(id).value = '';
    for (const id of SETTINGS) at(id).selectedIndex = 0;
    apply();
    newVisit();
    changed();
    at('forgotten').textContent = say('desk-forgotten');
  });
  apply();
}

function keep() {
  try {
    if (at('keep').checked) localStorage.setItem(KEPT, JSON.stringify(Object.fromEntries([...SETTINGS, ...CLINIC].map((id) => [id, at(id).value]))));
    else localStorage.removeItem(KEPT);
  } catch {
    at('forgotten').textContent = say('desk-cannot-keep');
  }
}

function apply() {
  for (const id of ['theme', 'hand', 'size']) document.documentElement.dataset[id] = at(id).value;
  const quoted = (id) => JSON.stringify(at(id).value.trim()).replaceAll('\u007f', '');
  const given = (id) => at(id).value.trim() !== '';
  const phones = CLINIC.slice(1).filter(given);
  const lines = [
    ...(given('clinic-name') ? [`name = ${quoted('clinic-name')}`] : []),
    ...(phones.length ? ['[telephone]', ...phones.map((id) => `${id.replace('clinic-', '')} = ${quoted(id)}`)] : []),
  ];
  const clinic = lines.length ? `${lines.join('\n')}\n` : '';
  if ((exam.clinic ?? '') !== clinic) reckonAgain(clinic);
}

/** Something broke: say so kindly, keep what was entered, go on. */
export async function mishap(why) {
  await renew();
  try {
    // What was pressed and not recorded is shown as it is.
    retell();
  } catch {
    // Told below.
  }
  at('fault-text').value = exam.text;
  at('fault-why').textContent = String(why).slice(0, 300);
  if (!at('fault').open) at('fault').showModal();
}
