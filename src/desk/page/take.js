// What leaves the page. In: the exam and how things are wanted. Out: files, a printed page, a note to copy; before a picture or a
// page leaves, its sides are read back.
import { ask } from './library.js';
import { asText, exam, saved } from './exam.js';
import { conclusion, englishOf, look } from './view.js';
import { sign } from './marks.js';
import { beside, el, isDraft, lang, say, tongue } from './words.js';

const at = (id) => document.getElementById(id);

/** Everything that can be taken away. `sided`: read back first. */
const TAKEN = {
  print: { sided: true, run: printPage },
  page: { sided: true, run: (despite) => save(familyPage('pdf', despite), 'handspan-family-page.pdf', 'application/pdf') },
  guide: { sided: true, run: (despite) => save(ask({ command: 'skin-guide', exam: asText(), format: 'pdf', paper: at('paper').value, ...tongue(), despite: [...new Set(despite)], ...clinic() }), 'handspan-skin-guide.pdf', 'application/pdf') },
  slip: { sided: true, run: () => save(note('slip'), 'handspan-slip.pdf', 'application/pdf') },
  svg: { sided: true, run: () => save(draw('svg'), 'handspan-picture.svg', 'image/svg+xml') },
  png: { sided: true, run: () => save(draw('png'), 'handspan-picture.png', 'image/png') },
  pdf: { sided: true, run: () => save(draw('pdf'), 'handspan-picture.pdf', 'application/pdf') },
  note: { run: () => showText(note('text'), 'desk-take-note') },
  handover: { run: () => showText(note('handover'), 'desk-take-handover') },
  fhir: { run: () => record(false, 'handspan-visit.json') },
  share: { run: () => record(true, 'handspan-shared.json') },
  exam: {
    run: () => {
      saveBytes(new TextEncoder().encode(exam.text), 'handspan-visit.toml', 'text/plain');
      saved();
    },
  },
};
let wanted = '';

/** Wire the buttons; each carries `data-take`. */
export function offer() {
  for (const button of document.querySelectorAll('[data-take]')) {
    button.addEventListener('click', () => begin(button.dataset.take));
  }
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
}

/** The tape over the visits: those in files, and the one at hand. */
export async function growth(files) {
  const texts = await Promise.all(files.map((file) => file.text()));
  const visits = [...texts, ...(Object.keys(exam.read).length ? [exam.text] : [])].map((text) => ({ text }));
  save(ask({ command: 'growth', visits, format: 'pdf', paper: at('paper').value, ...tongue(), ...clinic() }), 'handspan-growth.pdf', 'application/pdf');
}

/** Nothing can be taken of an empty visit. */
export function showTaking() {
  const nothing = !exam.text || !Object.keys(exam.read).length;
  for (const button of document.querySelectorAll('[data-take]')) button.disabled = nothing;
}

function begin(kind) {
  at('take-why').textContent = '';
  if (TAKEN[kind].sided) readBack(kind);
  else TAKEN[kind].run();
}

function readBack(kind) {
  wanted = kind;
  const family = ['print', 'page', 'guide'].includes(kind);
  const sides = (lang) => ask({ command: 'read-back', exam: asText(), lang }).text.split('\n').filter(Boolean);
  const lines = sides(lang());
  const english = isDraft() ? sides('en') : [];
  const weeks = exam.gestation ? say('desk-at-weeks', { value: exam.gestation.text }) : say('desk-no-weeks');
  const pressing = exam.remarks.filter((remark) => remark.grade === 'act-now');
  const never = family && exam.remarks.some((remark) => remark.grade === 'cannot-both');
  at('read-back-lines').replaceChildren(...(lines.length ? lines : [say('desk-no-sides')]).map((line, at) => el('li', {}, ...beside(line, english[at]))));
  at('read-back-said').replaceChildren(el('p', {}, weeks), ...conclusion().map(({ text, english }) => el('p', {}, ...beside(text, english))));
  at('read-back-pressing').replaceChildren(
    ...(never ? exam.remarks.filter((remark) => remark.grade === 'cannot-both') : []).map((remark) => remarkOf(remark)),
    ...(never ? [el('p', {}, say('desk-no-page'))] : []),
    ...pressing.map((remark) =>
      family && !never
        ? el('label', { class: 'remark act-now' }, el('input', { type: 'checkbox', value: remark.id, onchange: ready }), el('span', {}, ...beside(`${say('grade-act-now')}: ${remark.text}`, englishOf(remark)), ` ${say('desk-in-hand')}`))
        : remarkOf(remark),
    ),
  );
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

/** A record; no draft has words for one. */
function record(share, name) {
  save(note('fhir', share), name, 'application/json');
  if (isDraft()) at('take-why').textContent = say('desk-saved-english', { file: name });
}

function note(form, share = false) {
  const seed = [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
  return ask({ command: 'note', exam: asText(), form, share, ...tongue(form === 'fhir' && isDraft() ? 'en' : lang()), seed, ...clinic() });
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
  at('printed').replaceChildren(...images);
  await Promise.all(images.map((image) => image.decode()));
  at('paper-size').textContent = `@page { size: ${at('paper').value === 'letter' ? 'letter' : 'A4'} portrait; margin: 0 }`;
  window.print();
  at('printed').replaceChildren();
  for (const address of addresses) URL.revokeObjectURL(address);
  return undefined;
}

function showText(answer, title) {
  if (!answer.pages.length) return refused(answer);
  at('text-title').textContent = say(title);
  at('text-body').value = new TextDecoder().decode(answer.pages[0]);
  at('copied').textContent = '';
  at('text').showModal();
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
