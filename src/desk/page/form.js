// The form, in the order of the examination. In: the vocabulary and the exam. Out: a control for every finding; what is chosen
// goes into the exam's text, and the form shows what was read of it.
import { apart, change, exam, path, together, turnTo } from './exam.js';
import { counter } from './count.js';
import { hold, isHeld, release, showHeld } from './hold.js';
import { dropFields, outlineField } from './outline.js';
import { HANDS, showPalpation } from './palpation.js';
import { pressed, settle } from './press.js';
import { STEPS, goTo } from './steps.js';
import { el, key, may, say, word } from './words.js';

const PLACES = ['breech', 'head', 'heart', 'limbs', 'lumps', 'heart-also', 'kicks', 'tender-at'];
const DAYS = ['visit', 'due', 'last-period'];
const UNITS = { 'fundal-height': 'cm', girth: 'cm', navel: 'cm', 'weight-by-hand': 'kg', 'weight-by-scan': 'kg' };
const SIDES = ['right flank', 'right', 'middle', 'left', 'left flank'];
const LEVELS = ['fundus', 'above navel', 'at navel', 'below navel', 'above pubic bone'];
/** Places that are named whole, with their side. */
const FOSSAE = ['right iliac fossa', 'left iliac fossa'];
/** The back as someone facing her sees it: her right, the middle, her left. */
const BACKS = [
  ['right front', 'front', 'left front'],
  ['right lateral', 'towards her spine', 'left lateral'],
  ['right, towards her spine', 'towards her ribs', 'left, towards her spine'],
  ['right', 'towards her feet', 'left'],
];

const at = (id) => document.getElementById(id);
const fields = new Map();

/** How a finding may be known otherwise than by hand: asked for these only. */
const KNOWN = ['breech', 'head', 'back', 'limbs', 'attitude', 'legs', 'placenta', 'water', 'lumps', 'lie', 'presentation', 'position'];

/** Build the form into `root`. */
export function build(root) {
  fields.clear();
  dropFields();
  root.replaceChildren(...STEPS.map(step));
}

/** Show what was read. */
export function refresh() {
  for (const field of fields.values()) field.show();
  for (const own of document.querySelectorAll('[data-babies]')) showBabies(own);
}

/** Forget what was typed and not taken. */
export function clearForm() {
  for (const field of fields.values()) field.clear();
}

function step({ id, keys, more, pole }) {
  const heading = `step-${id}`;
  const babies = [...keys, ...more].some((name) => key(name).scope === 'baby');
  return el(
    'section',
    { class: 'step', 'aria-labelledby': heading, id: `at-${id}`, 'data-view': id },
    el('header', {}, el('h2', { id: heading, tabindex: '-1' }, say(`desk-step-${id}`)), el('p', { class: 'hint' }, say(`desk-hint-${id}`))),
    HANDS[id] || babies ? el('div', { class: 'chips' },
      babies ? el('div', { class: 'babies', 'data-babies': id }) : null,
      HANDS[id] ? el('button', { type: 'button', class: 'chip show-palpation', 'aria-haspopup': 'dialog', onclick: () => showPalpation(HANDS[id], say(`desk-step-${id}`), say(`desk-hint-${id}`)) }, say('desk-show-palpation')) : null,
    ) : null,
    pole ? poleOf(...pole) : null,
    ...keys.map(finding),
    fold(id, more),
  );
}

function fold(id, names) {
  return el(
    'details',
    { class: 'more' },
    el('summary', {}, say(id === 'weeks' ? 'desk-from-dates' : 'desk-more')),
    ...names.map(finding),
  );
}

/** Where a second baby comes and goes; elsewhere it is only chosen. */
const FIRST = ['stage', 'grip-1'];

function showBabies(own) {
  const now = `${exam.two} ${exam.baby}`;
  if (own.dataset.shown === now) return;
  own.dataset.shown = now;
  if (!exam.two && !FIRST.includes(own.dataset.babies)) {
    own.replaceChildren();
    return;
  }
  const tab = (number) =>
    el(
      'button',
      { type: 'button', class: 'chip', 'aria-pressed': String(exam.baby === number), onclick: () => turn(number) },
      say('desk-baby', { number }),
    );
  const add = el('button', { type: 'button', class: 'chip', onclick: () => pressed(add, () => turn(2, () => change([['baby.2', ['recorded']]]))) }, say('desk-two-babies'));
  const drop = el('button', { type: 'button', class: 'chip', onclick: askOne, 'aria-haspopup': 'dialog' }, say('desk-one-baby'));
  const here = own.contains(document.activeElement);
  own.replaceChildren(...(exam.two ? [tab(1), tab(2), ...(FIRST.includes(own.dataset.babies) ? [drop] : [])] : [add]));
  if (here) (own.querySelector('[aria-pressed=true]') ?? own.querySelector('button'))?.focus();
}

/** Only one baby: what was found of the second is named before it goes. */
function askOne() {
  settle();
  if (isHeld()) return showHeld();
  const second = Object.keys(exam.read).filter((own) => own.startsWith('baby.2.'));
  if (!second.length) return turn(1, () => change([['baby.2', []]]));
  at('one-baby-list').replaceChildren(...second.map((own) => el('li', {}, `${say(`desk-key-${own.split('.').at(-1)}`)}: ${exam.said[own] ?? exam.read[own]}`)));
  at('one-baby').returnValue = '';
  at('one-baby').showModal();
  return undefined;
}

/** Wire what is asked about a second baby. */
export function prepareBabies() {
  at('one-baby').addEventListener('close', () => {
    if (at('one-baby').returnValue === 'so') turn(1, () => change([['baby.2', []]]));
  });
}

/** Turn to a baby, once `first` is done; words that are not taken belong to the one that is shown. */
function turn(number, first) {
  settle();
  if (isHeld()) return showHeld();
  first?.();
  return turnTo(number);
}

/** What lies at one end of the womb: the head or the bottom, in one tap. */
function poleOf(first, second, place) {
  const buttons = [first, second].map((name) =>
    el(
      'button',
      { type: 'button', class: 'chip large', 'aria-pressed': 'false', onclick: (event) => pressed(event.currentTarget, () => choose(name)) },
      say(`desk-pole-${name}`),
    ),
  );
  const at = (name) => exam.read[path(key(name))] ?? '';
  function choose(name) {
    const other = name === first ? second : first;
    const edits = [[path(key(name)), [place]]];
    if (at(other) === place) edits.push([path(key(other)), []]);
    return change(edits);
  }
  fields.set(`pole ${place}`, {
    show() {
      [first, second].forEach((name, index) => buttons[index].setAttribute('aria-pressed', String(at(name) === place)));
    },
    clear() {},
  });
  return el(
    'div',
    { class: 'finding pole' },
    el('div', { class: 'chips', role: 'group', 'aria-label': say(`desk-pole-at-${place === 'fundus' ? 'fundus' : 'brim'}`) }, ...buttons),
  );
}

/** One finding: its name, what stands, its control, its states. */
function finding(name) {
  const entry = key(name);
  const id = `finding-${name}`;
  const now = el('output', { class: 'now', id: `${id}-now` });
  const problem = el('p', { class: 'problem', id: `${id}-problem`, hidden: true });
  let parts = apart(entry, '');

  /** Write `values`; what speaks against it is shown here and the exam stays. */
  function write(next) {
    const whole = { ...parts, ...next };
    const kept = whole.values.length || whole.state ? together(whole) : [];
    const problems = change([[path(entry), kept]]);
    problem.hidden = !problems.length;
    problem.textContent = problems.map(told).join(' ');
    control.invalid?.(problems.length > 0);
    return problems;
  }
  /** Choose these values: a state that stood is over. */
  function set(values) {
    return write({ values, state: '', reason: '', ...(parts.state ? { known: '', unsure: false } : {}) });
  }
  /** What spoke against words that are gone. */
  set.forget = () => {
    problem.hidden = true;
    control.invalid?.(false);
  };
  const control = controlOf(entry, id, set);
  const states = statesOf(entry, id, () => parts, write);
  const came = el('p', { class: 'came', hidden: true });
  const formal = may(`desk-formal-${name}`);
  fields.set(name, {
    show() {
      const words = exam.read[path(entry)] ?? '';
      parts = apart(entry, words);
      const told = exam.said[path(entry)] ?? (words || say('desk-not-examined'));
      // What stays is not written anew: the page is laid out again for it.
      if (now.textContent !== told) now.textContent = told;
      now.classList.toggle('found', Boolean(words));
      element.classList.toggle('has', Boolean(words));
      control.show(parts.values);
      states?.show(parts);
      const follows = cameOf(name);
      came.hidden = !follows;
      if (came.textContent !== follows) came.textContent = follows;
    },
    clear() {
      set.forget();
      control.clear?.();
      states?.clear();
    },
  });
  const element = el(
    'div',
    { class: `finding kind-${control.kind}`, role: 'group', 'aria-labelledby': `${id}-name`, id },
    el(
      'div',
      { class: 'name' },
      el('h3', { id: `${id}-name` }, say(`desk-key-${name}`)),
      formal ? el('span', { class: 'formal' }, formal) : null,
      now,
    ),
    control.element,
    came,
    problem,
    states?.element,
  );
  return element;
}

/** What the library reckons of a finding, shown where it arises. */
function cameOf(name) {
  const baby = exam.babies[exam.baby - 1] ?? {};
  const rounded = (value) => String(Math.round(value));
  const beats = baby.heart_rate;
  if (name === 'heart-counts' && beats && exam.read[path(key(name))]) return say('desk-came-beats', { value: rounded(beats.mean), name: `${rounded(beats.low)}\u2013${rounded(beats.high)}` });
  const tape = exam.fundal_height;
  if (name === 'fundal-height' && tape?.centile !== undefined) return say('desk-came-tape', { value: tape.expected_cm.toFixed(1), number: rounded(tape.centile) });
  if (['due', 'last-period', 'scan'].includes(name) && exam.read[name] && exam.gestation) return say('desk-at-weeks', { value: exam.gestation.text });
  if (name === 'position' && baby.fits?.length) return say('desk-came-fits', { value: baby.fits.map(word).join(', ') });
  return '';
}

/** A problem in words. */
export function told({ message, expected, suggestion }) {
  const text = message.replace(/^./, (first) => first.toUpperCase());
  const more = expected ? ` ${say('desk-expected', { value: expected })}` : '';
  return `${text}.${more}${suggestion ? ` ${say('desk-suggested', { value: suggestion })}` : ''}`.replaceAll('`', '');
}

/** Absent, not tried, could not tell and why, unsure, how known; and the one control that clears. */
function statesOf(entry, id, parts, write) {
  const name = say(`desk-key-${entry.name}`);
  const chip = (words, work, extra = {}) => el('button', { type: 'button', class: 'chip', ...extra, onclick: (event) => pressed(event.currentTarget, work) }, words);
  const clear = el('button', { type: 'button', class: 'chip quiet clear', 'aria-label': say('desk-clear-finding', { name }), onclick: () => write({ values: [], state: '' }) }, say('desk-clear'));
  if (!entry.states) {
    return { element: el('div', { class: 'states' }, clear), show: (now) => (clear.hidden = !now.values.length), clear() {} };
  }
  const names = [entry.absent, entry.not_tried, 'could not tell'].filter(Boolean);
  const buttons = names.map((own) => chip(word(own), () => parts().state === own || write({ values: [], state: own, reason: '' }), { 'aria-pressed': 'false' }));
  const unsure = chip(say('desk-unsure'), () => write({ unsure: true }), { 'aria-pressed': 'false' });
  const sure = chip(say('desk-sure'), () => write({ unsure: false }));
  let why = '';
  let week = '';
  const reason = el('input', { type: 'text', class: 'reason', 'aria-label': say('desk-reason'), placeholder: say('desk-reason') });
  const reasons = watched(reason, `${id}-reason`, { name, now: () => why, commit: (text) => write({ values: [], state: 'could not tell', reason: text.replace(/[()]/g, '') }) });
  const known = el(
    'select',
    { 'aria-label': say('desk-known-by'), onchange: () => write({ known: known.value }) },
    el('option', { value: '' }, say('desk-by-hand')),
    el('option', { value: 'scan' }, say('desk-by-scan')),
    el('option', { value: 'vaginal examination' }, say('desk-by-vaginal')),
  );
  const when = el('input', { type: 'text', class: 'when', 'aria-label': say('desk-scan-weeks'), placeholder: say('desk-scan-weeks') });
  const weeks = watched(when, `${id}-when`, { name, now: () => week, commit: (text) => write({ known: `scan ${text}`.trim() }) });
  return {
    element: el('div', { class: 'states' }, ...buttons, reason, unsure, sure, known, when, clear),
    show({ values, state, reason: told, unsure: doubt, known: by }) {
      names.forEach((own, at) => buttons[at].setAttribute('aria-pressed', String(state === own)));
      reason.hidden = state !== 'could not tell';
      why = told;
      if (document.activeElement !== reason || !why) reasons.show(why);
      unsure.hidden = !values.length;
      unsure.setAttribute('aria-pressed', String(doubt));
      sure.hidden = !doubt;
      known.hidden = !values.length || !(KNOWN.includes(entry.name) || by);
      known.value = by.startsWith('scan') ? 'scan' : by;
      when.hidden = !values.length || known.value !== 'scan';
      week = by.replace(/^scan ?/, '');
      if (document.activeElement !== when || !week) weeks.show(week);
      clear.hidden = !values.length && !state;
    },
    clear() {
      [why, week] = ['', ''];
      reasons.clear();
      weeks.clear();
    },
  };
}

function controlOf(entry, id, set) {
  const { name } = entry;
  if (name === 'weeks') return weeks(id, set);
  if (DAYS.includes(name)) return day(entry, id, set);
  if (name === 'back') return back(set);
  if (name === 'head-above-brim') return fifths(set);
  if (name === 'heart-counts') return counts(entry, id, set);
  if (name === 'position') return choice(entry, id, set);
  if (name === 'note') return typed(entry, id, set, 'textarea');
  if (PLACES.includes(name)) return place(entry, id, set);
  if (entry.words.length && entry.form) return both(words(entry, set), typed(entry, id, set));
  return entry.words.length ? words(entry, set) : typed(entry, id, set);
}

function both(first, second) {
  return {
    kind: 'both',
    element: el('div', { class: 'both' }, first.element, second.element),
    show(values) {
      first.show(values);
      second.show(first.knows(values) ? [] : values);
    },
    clear: () => second.clear(),
    invalid: (is) => second.invalid(is),
  };
}

/** A word on a chip. */
function shown(value) {
  if (FOSSAE.includes(value)) return say('desk-fossa', { value: shown(value.split(' ')[0]) });
  return may(`desk-word-${value.replaceAll(' ', '-')}`) || word(value);
}

/** Words to tap; several at once where the language takes a list. */
function words(entry, set) {
  let chosen = [];
  const list = entry.words.map(({ word }) => word);
  const buttons = list.map((own) =>
    el('button', { type: 'button', class: 'chip', 'aria-pressed': 'false', 'data-value': own, onclick: (event) => pressed(event.currentTarget, () => set(next(own))) }, shown(own)),
  );
  const next = (value) => (entry.list && !chosen.includes(value) ? [...chosen, value] : entry.list ? chosen : [value]);
  const out = takenOut(entry, () => chosen, set);
  return {
    kind: 'words',
    element: el('div', { class: 'chosen' }, el('div', { class: 'chips' }, ...buttons), out.element),
    knows: (values) => values.every((value) => list.includes(value)),
    show(values) {
      chosen = values;
      buttons.forEach((button, at) => button.setAttribute('aria-pressed', String(values.includes(list[at]))));
      out.show(values);
    },
  };
}

/** Of several values, each is taken out by a control of its own. What was taken out keeps its place, struck through and dead, so
 * that a second tap takes out nothing else. */
function takenOut(entry, chosen, set) {
  let order = [];
  let mine = false;
  const element = el('div', { class: 'chips out', role: 'group', 'aria-label': say('desk-take-out'), hidden: true });
  function out(value) {
    mine = true;
    set(chosen().filter((own) => own !== value));
    mine = false;
  }
  return {
    element,
    show(values) {
      if (!entry.list) return;
      const next = mine ? order : values;
      const now = JSON.stringify([next, values]);
      if (element.dataset.now === now) return;
      element.dataset.now = now;
      order = next;
      element.hidden = !order.length;
      element.replaceChildren(
        ...order.map((value) =>
          el('button', { type: 'button', class: 'chip gone', disabled: !values.includes(value), 'aria-label': say('desk-remove', { value: shown(value) }), onclick: () => out(value) }, shown(value), el('span', { 'aria-hidden': 'true' }, ' \u00d7')),
        ),
      );
    },
  };
}

/** Words being typed into `input` are held until they are taken: `commit` gives what speaks against them. */
function watched(input, id, { name, now, commit, undo, wait = 0 }) {
  let waiting = 0;
  const keep = (why) => hold(id, { name, words: input.value.trim(), why, show: () => goTo(input), drop });
  function drop() {
    clearTimeout(waiting);
    input.value = now();
    release(id);
    undo?.();
  }
  function take() {
    clearTimeout(waiting);
    if (input.value.trim() === now()) return release(id);
    release(id);
    const problems = commit(input.value.trim()) ?? [];
    if (problems.length) keep(problems.map(told).join(' '));
    return undefined;
  }
  input.addEventListener('change', take);
  input.addEventListener('input', () => {
    clearTimeout(waiting);
    if (input.value.trim() === now()) release(id);
    else keep('');
    if (wait) waiting = setTimeout(take, wait);
  });
  return {
    show: (value) => isHeld(id) || input.value === value || (input.value = value),
    clear() {
      clearTimeout(waiting);
      input.value = now();
      release(id);
    },
  };
}

/** Words or numbers to type. */
function typed(entry, id, set, tag = 'input') {
  const unit = UNITS[entry.name];
  let shown = '';
  const input = el(tag, {
    id: `${id}-input`,
    'aria-labelledby': `${id}-name`,
    'aria-describedby': `${id}-form ${id}-problem`,
    autocomplete: 'off',
    ...(tag === 'textarea' ? { rows: 3 } : { type: 'text' }),
    ...((unit && entry.name !== 'weight-by-scan') || entry.number ? { inputmode: 'decimal' } : {}),
  });
  const field = watched(input, `${id}-typed`, {
    name: say(`desk-key-${entry.name}`),
    now: () => shown,
    undo: () => set.forget?.(),
    wait: 700,
    commit(text) {
      if (!text) return set([]);
      const whole = unit && /^[\d.,]+$/.test(text) ? `${text.replace(',', '.')} ${unit}` : text;
      return set(entry.list ? whole.split(/\s*;\s*/).filter(Boolean) : [whole]);
    },
  });
  const bare = (values) => {
    const text = values.join('; ');
    return unit && new RegExp(`^[\\d.]+ ${unit}$`).test(text) ? text.slice(0, -unit.length - 1) : text;
  };
  return {
    kind: 'typed',
    element: el(
      'div',
      { class: 'typed' },
      input,
      unit ? el('span', { class: 'unit' }, unit) : null,
      el('span', { class: 'form', id: `${id}-form` }, may(`desk-form-${entry.name}`) || entry.form.replaceAll('`', '')),
    ),
    show(values) {
      shown = bare(values);
      // What is being typed stays as it is typed.
      if (document.activeElement !== input || input.value.trim() === '' || shown === '') field.show(shown);
    },
    clear() {
      shown = '';
      field.clear();
      this.invalid(false);
    },
    invalid: (is) => (is ? input.setAttribute('aria-invalid', 'true') : input.removeAttribute('aria-invalid')),
  };
}

/** Weeks and days. */
function weeks(id, set) {
  const week = el(
    'select',
    { 'aria-label': say('desk-weeks'), id: `${id}-input`, onchange: () => write(days) },
    el('option', { value: '' }, say('desk-weeks')),
    ...Array.from({ length: 42 }, (_, at) => el('option', { value: at + 4 }, say('desk-weeks-of', { number: at + 4 }))),
  );
  let days = '0';
  let had = false;
  const buttons = Array.from({ length: 7 }, (_, at) =>
    el('button', { type: 'button', class: 'chip day', 'aria-pressed': 'false', 'aria-label': say('desk-and-days', { number: at }), onclick: (event) => pressed(event.currentTarget, () => write(String(at))) }, `+${at}`),
  );
  function write(at) {
    days = at;
    return week.value ? set([`${week.value}+${days}`]) : set([]);
  }
  return {
    kind: 'weeks',
    element: el('div', { class: 'weeks' }, week, el('div', { class: 'chips', role: 'group', 'aria-label': say('desk-days') }, ...buttons)),
    show([value]) {
      const [weeks, rest] = (value ?? '').split('+');
      week.value = weeks || '';
      // Days that were tapped before the weeks wait for them.
      if (value || had) days = rest || '0';
      had = Boolean(value);
      buttons.forEach((button, at) => button.setAttribute('aria-pressed', String((Boolean(value) || days !== '0') && String(at) === days)));
    },
    clear() {
      days = '0';
    },
  };
}

function day(entry, id, set) {
  let shown = '';
  const input = el('input', { type: 'date', id: `${id}-input`, 'aria-labelledby': `${id}-name`, 'aria-describedby': `${id}-problem` });
  const field = watched(input, `${id}-typed`, { name: say(`desk-key-${entry.name}`), now: () => shown, undo: () => set.forget?.(), commit: (value) => set(value ? [value] : []) });
  // Today is offered and never assumed.
  const now = new Date();
  const today = [now.getFullYear(), String(now.getMonth() + 1).padStart(2, '0'), String(now.getDate()).padStart(2, '0')].join('-');
  const offer = entry.name === 'visit' ? el('button', { type: 'button', class: 'chip', onclick: () => (release(`${id}-typed`), set([today])) }, say('desk-today', { value: today })) : null;
  return {
    kind: 'day',
    element: el('div', { class: 'typed' }, input, offer),
    show([value]) {
      shown = value ?? '';
      if (document.activeElement !== input || !shown) field.show(shown);
    },
    clear() {
      shown = '';
      field.clear();
      this.invalid(false);
    },
    invalid: (is) => (is ? input.setAttribute('aria-invalid', 'true') : input.removeAttribute('aria-invalid')),
  };
}

/** Where the back was felt, laid out as someone facing her sees it. */
function back(set) {
  const buttons = new Map();
  const head = (side) => el('span', { class: 'side', 'aria-hidden': 'true' }, say(side));
  const element = el(
    'div',
    { class: 'back-grid' },
    head('desk-her-right'),
    head('desk-middle'),
    head('desk-her-left'),
    ...BACKS.flat().map((value) => {
      const words = say(`desk-back-${value.replaceAll(',', '').replaceAll(' ', '-').replace(/^(left|right)(?=-)/, 'side').replace(/^(left|right)$/, 'side-only')}`);
      const button = el(
        'button',
        { type: 'button', class: 'chip', 'aria-pressed': 'false', 'data-value': value, onclick: (event) => pressed(event.currentTarget, () => set([value])), 'aria-label': `${words}, ${say('desk-place', { value: word(value) })}` },
        words,
      );
      buttons.set(value, button);
      return button;
    }),
  );
  return {
    kind: 'back',
    element,
    show([value]) {
      for (const [own, button] of buttons) button.setAttribute('aria-pressed', String(own === (value ?? '')));
    },
  };
}

/** Fifths of the head above the brim: a row of five that fills, and none. */
function fifths(set) {
  const buttons = Array.from({ length: 6 }, (_, k) =>
    el(
      'button',
      { type: 'button', class: `fifth${k ? '' : ' none'}`, 'aria-pressed': 'false', 'aria-label': say('desk-fifths', { value: `${k}/5` }), onclick: (event) => pressed(event.currentTarget, () => set([`${k}/5`])) },
      `${k}/5`,
    ),
  );
  return {
    kind: 'fifths',
    element: el('div', { class: 'fifths' }, ...buttons),
    show([value]) {
      const chosen = value ?? '';
      const filled = chosen ? Number(chosen[0]) : -1;
      buttons.forEach((button, k) => {
        button.setAttribute('aria-pressed', String(chosen === `${k}/5`));
        button.classList.toggle('filled', k > 0 && k <= filled);
      });
    },
  };
}

/** Counts of beats: tapped or typed. */
function counts(entry, id, set) {
  let chosen = [];
  const text = typed(entry, id, set);
  const out = takenOut(entry, () => chosen, set);
  const clock = counter((count) => set([...chosen, count]));
  return {
    kind: 'counts',
    element: el('div', { class: 'both' }, clock.element, out.element, text.element),
    show(values) {
      chosen = values;
      text.show(values);
      out.show(values);
    },
    clear() {
      clock.reset();
      text.clear();
    },
    invalid: (is) => text.invalid(is),
  };
}

/** One of many codes. */
function choice(entry, id, set) {
  const select = el(
    'select',
    { id: `${id}-input`, 'aria-labelledby': `${id}-name`, onchange: () => set(select.value ? [select.value] : []) },
    el('option', { value: '' }, say('desk-none-written')),
    ...entry.words.map(({ word, means }) => el('option', { value: word }, means && means !== word ? `${word} \u2013 ${means}` : word)),
  );
  return { kind: 'choice', element: el('div', { class: 'typed' }, select), show: ([value]) => (select.value = value ?? '') };
}

/** A place: on the outline, by side and level, or measured. */
function place(entry, id, set) {
  let chosen = [];
  const field = outlineField(say('desk-tap-where', { name: say(`desk-key-${entry.name}`) }), (value) => set(added(value)));
  const added = (value) => (entry.list && chosen.includes(value) ? chosen : entry.list ? [...chosen, value] : [value]);
  const out = takenOut(entry, () => chosen, set);
  let side = '';
  let level = '';
  const extra = entry.words.filter(({ word }) => ![...SIDES, ...LEVELS, 'iliac fossa'].includes(word)).map(({ word }) => word);
  const row = (words, label, tap) =>
    el(
      'div',
      { class: 'chips', role: 'group', 'aria-label': label },
      ...words.map((value) => el('button', { type: 'button', class: 'chip', 'aria-pressed': 'false', 'data-value': value, onclick: (event) => pressed(event.currentTarget, () => tap(value)) }, shown(value))),
    );
  const join = () => (side && level ? `${side}, ${level}` : side || level);
  function pick(nextSide, nextLevel) {
    const before = join();
    [side, level] = [nextSide, nextLevel];
    const value = join();
    if (!entry.list) set(value ? [value] : []);
    else set([...chosen.filter((own) => own !== before), ...(value ? [value] : [])]);
  }
  const sides = row(SIDES, say('desk-side'), (value) => pick(value, level));
  const levels = row([...LEVELS, ...extra], say('desk-level'), (value) => {
    return extra.includes(value) ? set([value]) : pick(side, value);
  });
  const fossae = row(FOSSAE, say('desk-level'), (value) => set(added(value)));
  // Of several places the chips show the last; another begins with none.
  const another = el('button', { type: 'button', class: 'chip quiet', onclick: () => (([side, level] = ['', '']), show()) }, say('desk-another-place'));
  const fossa = (value) => FOSSAE.includes(value);
  const isPlain = (value) => fossa(value) || extra.includes(value) || value.split(', ').every((part, at, all) => (SIDES.includes(part) && at === 0) || (LEVELS.includes(part) && at === all.length - 1));
  // What stands on the chips or the outline need not stand in the field as well.
  const text = typed(entry, id, (values) => set(entry.list ? [...chosen.filter(isPlain), ...values] : values));
  function show() {
    another.hidden = !entry.list || !(side || level);
    for (const button of fossae.children) button.setAttribute('aria-pressed', String(chosen.includes(button.dataset.value)));
    for (const [own, now] of [[sides, side], [levels, level]]) {
      for (const button of own.children) {
        const { value } = button.dataset;
        button.setAttribute('aria-pressed', String(value === now || (extra.includes(value) && chosen.includes(value))));
      }
    }
  }
  return {
    kind: 'place',
    element: el(
      'div',
      { class: 'place' },
      field.element,
      out.element,
      // Where there is room, the fields stand beside the outline.
      el('details', { class: 'fields', open: matchMedia('(min-width: 34rem)').matches }, el('summary', {}, say('desk-in-fields')), el('div', { class: 'place-fields' }, sides, levels, fossae, another, text.element)),
    ),
    show(values) {
      chosen = values;
      const last = values.at(-1) ?? '';
      const known = [...SIDES].sort((a, b) => b.length - a.length).find((own) => last === own || last.startsWith(`${own}, `));
      const rest = known ? last.slice(known.length).replace(/^,? /, '') : last;
      [side, level] = isPlain(last) && !extra.includes(last) && !fossa(last) ? [known ?? '', rest] : ['', ''];
      field.choose(values);
      out.show(values);
      text.show(values.filter((value) => !isPlain(value)));
      show();
    },
    clear() {
      [side, level] = ['', ''];
      field.clear();
      text.clear();
    },
    invalid: (is) => text.invalid(is),
  };
}
