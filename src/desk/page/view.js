// What the findings come to. In: the exam. Out: the picture, the conclusion in words, and remarks, the most pressing first; new
// remarks are spoken.
import { ask } from './library.js';
import { asText, exam, isEmpty } from './exam.js';
import { told } from './form.js';
import { isHeld } from './hold.js';
import { later } from './press.js';
import { sign } from './marks.js';
import { isWide } from './steps.js';
import { beside, el, lang, say, tongue } from './words.js';

const GRADES = ['act-now', 'cannot-both', 'look-again', 'follow-guidance'];
/** What is worth another look and speaks of a wrong side: in sight everywhere, as alarms and contradictions are. */
const SIDED = ['heart-far-from-the-back', 'limbs-on-the-side-of-the-back', 'prominence-on-the-side-of-the-back', 'heart-over-the-other-baby', 'twins-on-one-side', 'findings-fit-no-position'];
const at = (id) => document.getElementById(id);
let spoken = new Set();
let address = '';
let drawing = false;

/** How the picture is wanted. */
export function look() {
  const own = (id) => at(id).value;
  const palette = Number(own('palette'));
  const soft = own('style') === 'soft';
  return {
    style: own('style'),
    view: own('from'),
    labels: own('style') === 'sketch' && own('labels') !== 'none' ? 'few' : own('labels'),
    ...tongue(),
    ...(soft && palette ? { palette } : {}),
  };
}

let drawn = () => {};
/** Call `listener` after each drawing. */
export function heedPicture(listener) {
  drawn = listener;
}

/** Show everything anew. */
export function showFindings() {
  if (!isHeld('line')) at('line').value = exam.line.replace(/\n$/, '');
  showConclusion();
  showRemarks();
  // What was tapped and what it comes to is seen before the picture is drawn.
  at('picture').classList.add('old');
  if (!drawing) later(showPicture);
  drawing = true;
}

function showConclusion() {
  const weeks = exam.gestation ? say('desk-at-weeks', { value: exam.gestation.text }) : '';
  const said = conclusion();
  at('conclusion').replaceChildren(...(said.length ? said : [{ text: say('desk-nothing-yet') }]).map(({ text, english }) => el('p', {}, ...beside(text, english))));
  at('weeks-now').textContent = weeks;
}

/** What is concluded, in sentences: `{text, english}`. */
export function conclusion() {
  if (!exam.text) return [];
  return exam.babies.flatMap(({ said }, index) =>
    said.map((text, line) => ({
      text: exam.babies.length > 1 ? say('desk-of-baby', { number: index + 1, value: text }) : text,
      english: exam.english?.babies[index].said[line],
    })),
  );
}

/** The English of a remark, where the page is said in a draft. */
export function englishOf(remark) {
  return exam.english?.remarks[exam.remarks.indexOf(remark)]?.text;
}

const sentences = () => conclusion().map(({ text }) => text).join(' ') || say('desk-nothing-yet');

/** What a draft says, on one line, the English after it. */
function oneLine(text, english) {
  return english && english !== text ? `${text} (${english})` : text;
}

function showRemarks() {
  const list = at('remarks');
  list.replaceChildren(
    ...GRADES.flatMap((grade) =>
      exam.remarks
        .filter((remark) => remark.grade === grade)
        .map((remark) =>
          el('li', { class: `remark ${grade}` }, sign(grade), el('div', {}, el('h3', {}, say(`grade-${grade}`)), el('p', {}, ...beside(remark.text, englishOf(remark))))),
        ),
    ),
    ...exam.problems.map((problem) => el('li', { class: 'remark look-again' }, sign('look-again'), el('div', {}, el('h3', {}, say('desk-in-the-file')), el('p', {}, told(problem))))),
  );
  at('no-remarks').hidden = !exam.text || exam.remarks.length > 0;
  // The most pressing is in sight wherever she is on the page.
  const inSight = exam.remarks.filter((remark) => ['act-now', 'cannot-both'].includes(remark.grade) || SIDED.includes(remark.id));
  const grade = GRADES.find((own) => inSight.some((remark) => remark.grade === own));
  const pressing = inSight.filter((remark) => remark.grade === grade);
  const bar = at('act-now');
  bar.hidden = !pressing.length;
  bar.dataset.grade = grade ?? '';
  bar.setAttribute('aria-label', grade ? say(`grade-${grade}`) : '');
  const first = pressing[0];
  bar.querySelector('.text').textContent = first ? say('desk-pressing', { name: say(`grade-${grade}`), count: pressing.length, value: oneLine(first.text, englishOf(first)) }) : '';
  // What is new is spoken, once.
  const now = new Map(exam.remarks.map((remark) => [`${remark.id} ${remark.text}`, `${say(`grade-${remark.grade}`)}: ${remark.text}`]));
  const fresh = [...now].filter(([key]) => !spoken.has(key)).map(([, text]) => text);
  spoken = new Set(now.keys());
  const said = [...fresh, sentences()].join(' ');
  if (said !== at('status').textContent) at('status').textContent = said;
}

/** The small picture stands at the foot of narrow screens alone: a wide one does not draw it. */
function showSmall() {
  if (!isWide()) at('picture-small').src = address;
}
matchMedia('(min-width: 64rem)').addEventListener('change', showSmall);

/** The picture; before there is anything to draw, her outline stands there. */
export function showPicture() {
  drawing = false;
  const image = at('picture');
  const why = at('picture-why');
  image.classList.remove('old');
  why.hidden = true;
  const nothing = isEmpty();
  const answer = nothing
    ? ask({ command: 'outline', exam: asText(), lang: lang() })
    : ask({ command: 'draw', exam: asText(), format: 'svg', ...look(), screen: true });
  if (!answer.pages.length) {
    why.textContent = say('desk-no-picture', { value: answer.why });
    why.hidden = false;
    return;
  }
  if (address) URL.revokeObjectURL(address);
  address = URL.createObjectURL(new Blob([answer.pages[0]], { type: 'image/svg+xml' }));
  image.src = address;
  showSmall();
  drawn();
  image.alt = nothing ? say('desk-outline-alt') : say('desk-picture-alt', { value: sentences() });
}
