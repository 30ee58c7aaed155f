// The exam at hand. In: edits, a file, a line. Out: its text and what the library reads in it; who listens is told.
// The text is the exam: the page keeps nothing of it beside.
import { ask } from './library.js';
import { isHeld } from './hold.js';
import { dropWaiting, settle } from './press.js';
import { isDraft, key, tongue } from './words.js';

const EMPTY = { text: '', line: '', read: {}, said: {}, babies: [], remarks: [], problems: [], english: null, saved: '' };

export const exam = { ...EMPTY, baby: 1, two: false };
const past = [];
const listeners = [];

/** Call `listener` after every change. */
export function heed(listener) {
  listeners.push(listener);
}

/** The question's part that carries the exam. */
export function asText() {
  return { text: exam.text };
}

function tell() {
  for (const listener of listeners) listener(exam);
}

function settings() {
  return exam.clinic ? { clinic: exam.clinic } : {};
}

/** Take `text` as the exam; `alone`: nothing was before it; `first` is done when it is taken. Out: what stands against it; then the exam stays as it was. */
export function take(text, alone = false, first = () => {}) {
  const check = (own) => ask({ command: 'check', exam: { text }, ...tongue(own), ...settings() });
  const answer = check();
  if (!answer.text) return [{ message: answer.why || answer.notes }];
  const { read = {}, said = {}, babies = [], remarks, problems, gestation, fundal_height } = JSON.parse(answer.text);
  const errors = problems.filter((problem) => problem.severity === 'error');
  const nothing = errors.length === 1 && errors[0].id === 'nothing-in-it';
  if (errors.length && !nothing) return errors;
  const line = nothing ? '' : ask({ command: 'line', exam: { text } }).text;
  if (alone) past.length = 0;
  else if (text !== exam.text) past.push(exam.text);
  if (alone) exam.saved = text;
  const two = babies.length > 1;
  // Beside a draft stands the English.
  const english = isDraft() ? JSON.parse(check('en').text) : null;
  Object.assign(exam, { text, line, read, said, babies, remarks, gestation, fundal_height, english, problems: nothing ? [] : problems });
  exam.two = exam.two || two;
  if (!exam.two) exam.baby = 1;
  first();
  tell();
  return [];
}

/** Take the text of a file: a visit of its own, with nothing before it. */
export function opened(text, first) {
  exam.two = false;
  return take(text, true, first);
}

/** The exam stands in a file as it is. */
export function saved() {
  exam.saved = exam.text;
}

/** Whether nothing of an examination is recorded. */
export function isEmpty() {
  return !exam.text || (!Object.keys(exam.read).length && exam.babies.length < 2);
}

/** Whether something would be lost. */
export function isUnsaved() {
  return (!isEmpty() && exam.text !== exam.saved) || isHeld();
}

/** Change findings: `[[key, values], ...]`. Out: what stands against it. */
export function change(edits) {
  const answer = ask({
    command: 'edit',
    exam: asText(),
    edits: edits.map(([key, values]) => ({ key, values })),
  });
  return answer.code ? [{ message: answer.why || answer.notes }] : take(answer.text);
}

/** What a line says: `{problems}` when it cannot be read, else `{text, read}`: its file, and its findings. */
export function readLine(line) {
  const check = JSON.parse(ask({ command: 'check', exam: { say: line }, ...settings() }).text);
  const problems = check.problems.filter((problem) => problem.severity === 'error');
  if (problems.length) return { problems, questions: check.questions ?? [] };
  const answer = ask({ command: 'file', exam: { say: line } });
  return answer.code ? { problems: [{ message: answer.why || answer.notes }] } : { text: answer.text, read: check.read };
}

/** What of the exam a line that reads `read` would drop, and what it would change: `[path, words, new words]`. */
export function replacedBy(read) {
  return Object.entries(exam.read)
    .filter(([path, words]) => read[path] !== words)
    .map(([path, words]) => [path, words, read[path]]);
}

/** Take the text of a line as the exam. */
export function takeText(text) {
  exam.two = false;
  return take(text);
}

/** Add what a line reads to the exam: what it does not name stays. */
export function addRead(read) {
  const edits = Object.entries(read).map(([path, words]) => {
    const entry = key(path.split('.').at(-1));
    return [path, together(apart(entry, words))];
  });
  return change(edits);
}

/** Reckon again, by other thresholds. */
export function reckonAgain(clinic) {
  exam.clinic = clinic;
  retell();
}

/** Say it all again, in other words. */
export function retell() {
  take(exam.text);
}

/** One step back. */
export function undo() {
  settle();
  if (!past.length) return;
  const text = past.pop();
  exam.two = false;
  take(text);
  past.pop();
  tell();
}

export function canUndo() {
  return past.length > 0;
}

/** Forget everything of this woman. */
export function forget() {
  dropWaiting();
  past.length = 0;
  Object.assign(exam, EMPTY, { read: {}, said: {}, babies: [], remarks: [], problems: [], baby: 1, two: false });
  delete exam.gestation;
  delete exam.fundal_height;
  tell();
}

/** Turn to a baby; `two`: whether there are two. */
export function turnTo(baby, two = exam.two) {
  Object.assign(exam, { baby, two });
  tell();
}

/** The name of a key as findings are named: `mother.pulse`, `baby.1.back`. */
export function path(entry) {
  if (entry.scope === 'top') return entry.name;
  return entry.scope === 'mother' ? `mother.${entry.name}` : `baby.${exam.baby}.${entry.name}`;
}

/** Canonical words taken apart: values, how they are known, whether unsure, a state with its reason. */
export function apart(entry, words) {
  const none = { values: [], known: '', unsure: false, state: '', reason: '' };
  if (!words) return none;
  const states = [entry.absent, entry.not_tried, 'could not tell'].filter(Boolean);
  const state = entry.states ? states.find((state) => words === state || words.startsWith(`${state} (`)) : '';
  if (state) return { ...none, state, reason: words.slice(state.length + 2, -1) };
  const unsure = entry.states && words.endsWith('?');
  const sure = unsure ? words.slice(0, -1) : words;
  const bracket = entry.states ? sure.match(/ \(((?:scan|vaginal examination)[^()]*)\)$/) : null;
  const bare = bracket ? sure.slice(0, bracket.index) : sure;
  const values = entry.list ? bare.split(/; (?![^(]*\))/) : [bare];
  return { values, known: bracket ? bracket[1] : '', unsure, state: '', reason: '' };
}

/** The values to write for these parts. */
export function together({ values, known, unsure, state, reason }) {
  if (state) return [reason ? `${state} (${reason})` : state];
  return values.map((value, at) =>
    at < values.length - 1 ? value : value + (known ? ` (${known})` : '') + (unsure ? '?' : ''),
  );
}
