// What leaves the page. In: the exam and how things are wanted. Out: files, a printed page, a note to copy; before a picture or a
// page leaves, its sides are read back.
import { ask } from './library.js';
import { asText, exam, heed, isEmpty, saved } from './exam.js';
import { heedHeld, isHeld, showHeld } from './hold.js';
import { settle } from './press.js';
import { conclusion, englishOf, look } from './view.js';
import { sign } from './marks.js';
import { beside, el, isDraft, lang, say, tongue } from './words.js';

const at = (id) => document.getElementById(id);

/** Everything that leaves. `sided`: read back first. */
const TAKEN = {
  print: { sided: true, run: printPage },
  page: { sided: true, run: (despite) => save(familyPage('pdf', despite), named('family-page', 'pdf'), 'application/pdf') },
  phone: { sided: true, run: (despite) => save(familyPage('html', despite), named('family-page', 'html'), 'text/html') },
  guide: { sided: true, run: (despite) => save(guide(despite), named('skin-guide', 'pdf'), 'application/pdf') },
  send: { sided: true, run: send },
  slip: { sided: true, run: () => save(note('slip'), named('slip', 'pdf'), 'application/pdf') },
  svg: { sided: true, run: () => save(draw('svg'), named('picture', 'svg'), 'image/svg+xml') },
  png: { sided: true, run: () => save(draw('png'), named('picture', 'png'), 'image/png') },
  pdf: { sided: true, run: () => save(draw('pdf'), named('picture', 'pdf'), 'application/pdf') },
  note: { run: () => showText(note('text'), 'desk-take-note') },
  handover: { run: () => showText(note('handover'), 'desk-take-handover') },
  fhir: { run: () => record(false, named('record', 'json')) },
  share: { run: () => record(true, named('record-to-share', 'json')) },
  exam: {
    run: () => {
      saveBytes(new TextEncoder().encode(exam.text), named('visit', 'toml'), 'text/plain');
      saved();
    },
  },
};

/** The name of a file: what it is, and how far along she was: `visit-37w2d.toml`. */
function named(what, ending) {
  const [weeks, days] = (exam.gestation?.text ?? '').split('+');
  return `${what}${weeks ? `-${weeks}w${days}d` : ''}.${ending}`;
}

let wanted = '';

/** Wire the buttons; each carries `data-take`. */
export function offer() {
  for (const button of document.querySelectorAll('[data-take]')) {
    button.addEventListener('click', () => begin(button.dataset.take));
  }
  heedHeld(showTaking);
  heed(leave);
  document.addEventListener('keydown', (event) => {
    if (event.key.toLowerCase() !== 'p' || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
    // What the browser would print is the desk; what is meant is the page, or the text that is open.
    event.preventDefault();
    if (at('text').open) printText();
    else if (!document.querySelector('dialog[open]') && !isEmpty()) begin('print');
  });
  at('read-back').addEventListener('close', () => {
    if (at('read-back').returnValue === 'so') TAKEN[wanted].run(despite());
    for (const part of ['lines', 'said', 'pressing']) at(`read-back-${part}`).replaceChildren();
  });
  at('copy').addEventListener('click', copy);
  at('growth').addEventListener('click', () => at('growth-files').click());
  at('growth-files').addEventListener('change', () => {
    const files = [...at('growth-files').files];
    at('growth-files').value = '';
    if (files.length) growth(files);
  });
  at('woman').addEventListener('close', () => {
    const visits = asked;
    asked = [];
    if (at('woman').returnValue === 'so') save(ask({ command: 'growth', visits, format: 'pdf', paper: at('paper').value, ...tongue(), ...clinic() }), 'heights-over-visits.pdf', 'application/pdf');
  });
  at('print-text').addEventListener('click', printText);
}

/** The visits of the sheet that is asked about. */
let asked = [];

/** The heights over the visits: those in files, and the one at hand; whose they are is asked first. */
export async function growth(files) {
  settle();
  if (isHeld()) return showHeld();
  const texts = await Promise.all(files.map((file) => file.text()));
  const all = [...texts.map((text, at) => [files[at].name, text]), ...(isEmpty() ? [] : [[say('desk-this-visit'), exam.text]])];
  asked = all.map(([, text]) => ({ text }));
  at('woman-files').replaceChildren(
    ...all.map(([name, text]) => {
      const { text: answer, why, notes } = ask({ command: 'check', exam: { text }, ...tongue() });
      const { read = {}, gestation } = answer ? JSON.parse(answer) : {};
      const when = [read.visit ?? say('desk-no-date'), gestation ? say('desk-at-weeks', { value: gestation.text }) : answer ? say('desk-no-weeks') : why || notes];
      return el('li', {}, el('b', {}, name), `: ${when.join(', ')}`);
    }),
  );
  at('woman').returnValue = '';
  at('woman').showModal();
  return undefined;
}

/** Nothing can be taken of an empty visit, nor while words wait to be taken; under an alarm the handover comes first. */
export function showTaking() {
  const nothing = isEmpty() || isHeld();
  const pressing = exam.remarks.some((remark) => remark.grade === 'act-now');
  for (const button of document.querySelectorAll('[data-take]')) {
    button.disabled = nothing;
    const chief = button.dataset.take === (pressing ? 'handover' : 'print');
    if (button.matches('.take-one')) button.classList.toggle('main', chief);
    else if (button.dataset.take === 'print' || button.dataset.take === 'handover') button.classList.toggle('strong', chief);
  }
  for (const chips of document.querySelectorAll('.first-takes')) chips.classList.toggle('pressing', pressing);
}

function begin(kind) {
  settle();
  at('take-why').textContent = '';
  if (isHeld()) showHeld();
  else if (TAKEN[kind].sided) readBack(kind);
  else TAKEN[kind].run();
}

function readBack(kind) {
  wanted = kind;
  const family = ['print', 'page', 'phone', 'guide', 'send'].includes(kind);
  const sides = (lang) => ask({ command: 'read-back', exam: asText(), lang }).text.split('\n').filter(Boolean);
  const lines = sides(lang());
  const english = isDraft() ? sides('en') : [];
  const weeks = exam.gestation ? say('desk-at-weeks', { value: exam.gestation.text }) : say('desk-no-weeks');
  const pressing = exam.remarks.filter((remark) => remark.grade === 'act-now');
  const unheard = family && exam.remarks.some((remark) => remark.no_page);
  const never = unheard || (family && exam.remarks.some((remark) => remark.grade === 'cannot-both'));
  at('read-back-lines').replaceChildren(...(lines.length ? lines : [say('desk-no-sides')]).map((line, at) => el('li', {}, ...beside(line, english[at]))));
  at('read-back-said').replaceChildren(el('p', {}, weeks), ...conclusion().map(({ text, english }) => el('p', {}, ...beside(text, english))));
  at('read-back-pressing').replaceChildren(
    ...(never ? exam.remarks.filter((remark) => remark.grade === 'cannot-both') : []).map((remark) => remarkOf(remark)),
    ...(unheard ? exam.remarks.filter((remark) => remark.no_page && remark.grade !== 'act-now') : []).map((remark) => remarkOf(remark)),
    ...(never ? [el('p', {}, say(unheard ? 'desk-no-page-unheard' : 'desk-no-page'))] : []),
    ...pressing.map((remark) =>
      family && !never
        ? el('label', { class: 'remark act-now' }, el('input', { type: 'checkbox', value: remark.id, onchange: ready }), el('span', {}, ...beside(`${say('grade-act-now')}: ${remark.text}`, englishOf(remark)), ` ${say('desk-in-hand')}`))
        : remarkOf(remark),
    ),
  );
  at('read-back-guide').hidden = kind !== 'guide';
  // Her skin as it was chosen for the picture, the hand as for the page; each can be changed here.
  at('guide-skin').value = at('palette').value;
  at('guide-hand').value = at('hand').value;
  function ready() {
    const boxes = [...at('read-back-pressing').querySelectorAll('input')];
    at('read-back-so').disabled = never || !boxes.every((box) => box.checked);
  }
  at('read-back').returnValue = '';
  ready();
  at('read-back').showModal();
  at('read-back').querySelector('h2').focus();
}

function remarkOf(remark) {
  return el('div', { class: `remark ${remark.grade}` }, sign(remark.grade), el('p', {}, ...beside(`${say(`grade-${remark.grade}`)}: ${remark.text}`, englishOf(remark))));
}

function despite() {
  return [...at('read-back-pressing').querySelectorAll('input:checked')].map((box) => box.value);
}

function clinic() {
  return exam.clinic ? { clinic: exam.clinic } : {};
}

function familyPage(format, despite = []) {
  return ask({ command: 'handout', exam: asText(), format, paper: at('paper').value, ...tongue(at('page-lang').value || lang()), despite: [...new Set(despite)], ...clinic() });
}

function draw(format) {
  return ask({ command: 'draw', exam: asText(), format, ...look() });
}

/** The guide for drawing on her skin, as it was asked for beside its sides. */
function guide(despite) {
  const palette = Number(at('guide-skin').value);
  return ask({
    command: 'skin-guide', exam: asText(), format: 'pdf', paper: at('paper').value, minutes: at('guide-minutes').value,
    left_handed: at('guide-hand').value === 'left', ...(palette ? { palette } : {}), ...tongue(), despite: [...new Set(despite)], ...clinic(),
  });
}

/** A record; no draft has words for one. */
function record(share, name) {
  save(note('fhir', share), name, 'application/json');
  if (isDraft()) at('take-why').textContent = say('desk-saved-english', { file: name });
}

function note(form, share = false) {
  const seed = [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return ask({ command: 'note', exam: asText(), form, share, ...tongue(form === 'fhir' && isDraft() ? 'en' : lang()), seed, ...clinic() });
}

/** The family page to her phone: the share sheet of the device where there is one, else a file. */
async function send(despite) {
  const answer = familyPage('pdf', despite);
  if (!answer.pages.length) return refused(answer);
  const name = named('family-page', 'pdf');
  const files = [new File([answer.pages[0]], name, { type: 'application/pdf' })];
  if (!navigator.canShare?.({ files })) return saveBytes(answer.pages[0], name, 'application/pdf');
  try {
    await navigator.share({ files });
  } catch (why) {
    // She who shares may change her mind.
    if (why.name !== 'AbortError') saveBytes(answer.pages[0], name, 'application/pdf');
  }
  return undefined;
}

function save(answer, name, type) {
  if (!answer.pages.length) return refused(answer);
  return saveBytes(answer.pages[0], name, type);
}

function saveBytes(bytes, name, type) {
  const link = el('a', { href: URL.createObjectURL(new Blob([bytes], { type })), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 10000);
  at('take-why').textContent = say('desk-saved', { file: name });
}

function refused(answer) {
  at('take-why').textContent = answer.notes || answer.why;
}

/** The family page on paper: the browser prints it, and nothing else of this page. */
async function printPage(despite) {
  const answer = familyPage('svg', despite);
  if (!answer.pages.length) return refused(answer);
  const addresses = answer.pages.map((page) => URL.createObjectURL(new Blob([page], { type: 'image/svg+xml' })));
  const images = addresses.map((address) => el('img', { src: address, alt: '' }));
  leave();
  sheets = addresses;
  at('printed').replaceChildren(...images);
  await Promise.all(images.map((image) => image.decode()));
  // Two languages stand beside one another on a sheet twice as wide.
  const wide = images[0].naturalWidth > images[0].naturalHeight;
  const [one, two] = at('paper').value === 'letter' ? ['letter portrait', '17in 11in'] : ['A4 portrait', 'A3 landscape'];
  at('paper-size').textContent = `@page { size: ${wide ? two : one}; margin: 0 }`;
  window.print();
  return undefined;
}

/** The note or the handover that is open, on paper. */
function printText() {
  leave();
  at('printed').replaceChildren(el('h1', {}, at('text-title').textContent), el('pre', {}, at('text-body').value));
  at('paper-size').textContent = `@page { size: ${at('paper').value === 'letter' ? 'letter' : 'A4'} portrait; margin: 18mm }`;
  window.print();
}

/** What was printed stays until the visit changes: some browsers print long after they were asked to. */
let sheets = [];
export function leave() {
  at('printed').replaceChildren();
  for (const address of sheets) URL.revokeObjectURL(address);
  sheets = [];
}

function showText(answer, title) {
  if (!answer.pages.length) return refused(answer);
  at('text-title').textContent = say(title);
  at('text-body').value = new TextDecoder().decode(answer.pages[0]);
  at('copied').textContent = '';
  at('text').showModal();
  // From its first line on.
  at('text-body').setSelectionRange(0, 0);
  at('text-body').scrollTop = 0;
  at('text').scrollTop = 0;
  at('text-title').focus({ preventScroll: true });
  return undefined;
}

async function copy() {
  try {
    await navigator.clipboard.writeText(at('text-body').value);
  } catch {
    at('text-body').select();
    document.execCommand('copy');
  }
  at('copied').textContent = say('desk-copied');
}
