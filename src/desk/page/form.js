// The form, in the order of the examination. In: the vocabulary and the exam. Out: a control for every finding; what is chosen
// goes into the exam's text, and the form shows what was read of it.
import { apart, change, exam, path, together, turnTo } from './exam.js';
import { counter } from './count.js';
import { dropFields, outlineField } from './outline.js';
import { el, key, may, say, word } from './words.js';

/** The steps of an examination; `more` stands behind a fold. A test holds that every key has its place. */
export const STEPS = [
  { id: 'weeks', keys: ['weeks'], more: ['visit', 'due', 'last-period', 'cycle', 'scan'] },
  { id: 'says', keys: ['movements', 'reports'], more: ['denies', 'births-before', 'operations', 'womb-cut', 'placenta'] },
  { id: 'look', keys: ['shape', 'scars'], more: ['skin', 'posture'] },
  { id: 'grip-1', pole: ['breech', 'head', 'fundus'], keys: ['womb', 'breech'], more: ['fundus', 'water', 'lumps'] },
  { id: 'grip-2', keys: ['back', 'limbs'], more: ['dip-at-navel', 'moved-under-hands'] },
  { id: 'grip-3', pole: ['head', 'breech', 'above pubic bone'], keys: ['head'], more: ['attitude', 'legs'] },
  { id: 'grip-4', keys: ['head-above-brim', 'prominence'], more: ['descent'] },
  { id: 'listen', keys: ['heart', 'heart-counts', 'heart-rate', 'heart-with', 'pulse'], more: ['heart-rhythm', 'heart-rise'] },
  { id: 'tape', keys: ['fundal-height'], more: ['earlier-tapes', 'girth', 'navel', 'tape-unfit', 'weight-by-hand', 'weight-by-scan'] },
  { id: 'wrote', keys: ['position'], more: ['lie', 'presentation', 'note'] },
];

const PLACES = ['breech', 'head', 'heart', 'limbs', 'lumps'];
const DAYS = ['visit', 'due', 'last-period'];
const UNITS = { 'fundal-height': 'cm', girth: 'cm', navel: 'cm', 'weight-by-hand': 'kg', 'weight-by-scan': 'kg' };
const SIDES = ['right flank', 'right', 'middle', 'left', 'left flank'];
const LEVELS = ['fundus', 'above navel', 'at navel', 'below navel', 'iliac fossa', 'above pubic bone'];
/** The back as someone facing her sees it: her right, the middle, her left. */
const BACKS = [
  ['right front', 'front', 'left front'],
  ['right lateral', 'towards her spine', 'left lateral'],
  ['right, towards her spine', 'towards her ribs', 'left, towards her spine'],
  ['right', 'towards her feet', 'left'],
];

const fields = new Map();
let unique = 0;

/** How a finding may be known otherwise than by hand: asked for these only. */
const KNOWN = ['breech', 'head', 'back', 'limbs', 'attitude', 'legs', 'placenta', 'water', 'lumps', 'lie', 'presentation', 'position'];

/** Build the form into `root`, and the way to each step into `steps`. */
export function build(root, steps) {
  fields.clear();
  dropFields();
  root.replaceChildren(...STEPS.map(step));
  const links = STEPS.map(({ id }) => el('a', { href: `#at-${id}` }, say(`desk-step-${id}`)));
  steps.replaceChildren(...links);
  fields.set('steps', {
    show() {
      STEPS.forEach(({ keys, more }, at) => links[at].classList.toggle('done', [...keys, ...more].some((name) => exam.read[path(key(name))])));
    },
    clear() {},
  });
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
    { class: 'step', 'aria-labelledby': heading, id: `at-${id}` },
    el('header', {}, el('h2', { id: heading }, say(`desk-step-${id}`)), el('p', { class: 'hint' }, say(`desk-hint-${id}`))),
    babies ? el('div', { class: 'babies', 'data-babies': id }) : null,
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

function showBabies(own) {
  const now = `${exam.two} ${exam.baby}`;
  if (own.dataset.shown === now) return;
  own.dataset.shown = now;
  if (!exam.two && own.dataset.babies !== 'grip-1') {
    own.replaceChildren();
    return;
  }
  const tab = (number) =>
    el(
      'button',
      { type: 'button', class: 'chip', 'aria-pressed': String(exam.baby === number), onclick: () => turnTo(number) },
      say('desk-baby', { number }),
    );
  const add = el('button', { type: 'button', class: 'chip quiet', onclick: () => turnTo(2, true) }, say('desk-two-babies'));
  const drop = el(
    'button',
    { type: 'button', class: 'chip quiet', onclick: () => (change([['baby.2', []]]), turnTo(1, false)) },
    say('desk-one-baby'),
  );
  const held = own.contains(document.activeElement);
  own.replaceChildren(...(exam.two ? [tab(1), tab(2), ...(own.dataset.babies === 'grip-1' ? [drop] : [])] : [add]));
  if (held) (own.querySelector('[aria-pressed=true]') ?? own.querySelector('button'))?.focus();
}

/** What lies at one end of the womb: the head or the bottom, in one tap. */
function poleOf(first, second, place) {
  const buttons = [first, second].map((name) =>
    el(
      'button',
      { type: 'button', class: 'chip large', onclick: () => toggle(name) },
      say(`desk-pole-${name}`),
    ),
  );
  const at = (name) => exam.read[path(key(name))] ?? '';
  function toggle(name) {
    if (at(name) === place) return change([[path(key(name)), []]]);
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
  const control = controlOf(entry, id, set);
  const states = statesOf(entry, () => parts, write);
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
    },
    clear() {
      problem.hidden = true;
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
    problem,
    states?.element,
  );
  return element;
}

/** A problem in words. */
export function told({ message, expected, suggestion }) {
  const text = message.replace(/^./, (first) => first.toUpperCase());
  const more = expected ? ` ${say('desk-expected', { value: expected })}` : '';
  return `${text}.${more}${suggestion ? ` ${say('desk-suggested', { value: suggestion })}` : ''}`.replaceAll('`', '');
}

/** Absent, not tried, could not tell and why, unsure, how known, cleared. */
function statesOf(entry, parts, write) {
  const clear = el(
    'button',
    { type: 'button', class: 'chip quiet', onclick: () => write({ values: [], state: '' }) },
    say('desk-clear'),
  );
  if (!entry.states) {
    return { element: el('div', { class: 'states' }, clear), show: (now) => (clear.hidden = !now.values.length), clear() {} };
  }
  const names = [entry.absent, entry.not_tried, 'could not tell'].filter(Boolean);
  const buttons = names.map((name) =>
    el(
      'button',
      { type: 'button', class: 'chip quiet', onclick: () => write(parts().state === name ? { values: [], state: '' } : { values: [], state: name, reason: '' }) },
      word(name),
    ),
  );
  const unsure = el(
    'button',
    { type: 'button', class: 'chip quiet', onclick: () => write({ unsure: !parts().unsure }) },
    say('desk-unsure'),
  );
  const reason = el('input', {
    type: 'text',
    class: 'reason',
    'aria-label': say('desk-reason'),
    placeholder: say('desk-reason'),
    onchange: () => write({ values: [], state: 'could not tell', reason: reason.value.replace(/[()]/g, '').trim() }),
  });
  const known = el(
    'select',
    { 'aria-label': say('desk-known-by'), onchange: () => write({ known: known.value }) },
    el('option', { value: '' }, say('desk-by-hand')),
    el('option', { value: 'scan' }, say('desk-by-scan')),
    el('option', { value: 'vaginal examination' }, say('desk-by-vaginal')),
  );
  const when = el('input', {
    type: 'text',
    class: 'when',
    'aria-label': say('desk-scan-weeks'),
    placeholder: say('desk-scan-weeks'),
    onchange: () => write({ known: `scan ${when.value.trim()}`.trim() }),
  });
  return {
    element: el('div', { class: 'states' }, ...buttons, reason, unsure, known, when, clear),
    show({ values, state, reason: why, unsure: doubt, known: by }) {
      names.forEach((name, at) => buttons[at].setAttribute('aria-pressed', String(state === name)));
      reason.hidden = state !== 'could not tell';
      if (document.activeElement !== reason) reason.value = why;
      unsure.hidden = !values.length;
      known.hidden = !values.length || !(KNOWN.includes(entry.name) || by);
      unsure.setAttribute('aria-pressed', String(doubt));
      known.value = by.startsWith('scan') ? 'scan' : by;
      when.hidden = !values.length || known.value !== 'scan';
      if (document.activeElement !== when) when.value = by.replace(/^scan ?/, '');
      clear.hidden = !values.length && !state;
    },
    clear() {
      reason.value = '';
      when.value = '';
    },
  };
}

function controlOf(entry, id, set) {
  const { name } = entry;
  if (name === 'weeks') return weeks(id, set);
  if (DAYS.includes(name)) return day(id, set);
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
  return may(`desk-word-${value.replaceAll(' ', '-')}`) || word(value);
}

/** Words to tap; several at once where the language takes a list. */
function words(entry, set) {
  let chosen = [];
  const list = entry.words.map(({ word }) => word);
  const buttons = list.map((own) =>
    el('button', { type: 'button', class: 'chip', 'data-value': own, onclick: () => set(next(own)) }, shown(own)),
  );
  const next = (value) => {
    if (chosen.includes(value)) return chosen.filter((own) => own !== value);
    return entry.list ? [...chosen, value] : [value];
  };
  return {
    kind: 'words',
    element: el('div', { class: 'chips' }, ...buttons),
    knows: (values) => values.every((value) => list.includes(value)),
    show(values) {
      chosen = values;
      buttons.forEach((button, at) => button.setAttribute('aria-pressed', String(values.includes(list[at]))));
    },
  };
}

/** Words or numbers to type. */
function typed(entry, id, set, tag = 'input') {
  const unit = UNITS[entry.name];
  let shown = '';
  let waiting = 0;
  const input = el(tag, {
    id: `${id}-input`,
    'aria-labelledby': `${id}-name`,
    'aria-describedby': `${id}-form ${id}-problem`,
    autocomplete: 'off',
    ...(tag === 'textarea' ? { rows: 3 } : { type: 'text' }),
    ...((unit && entry.name !== 'weight-by-scan') || entry.number ? { inputmode: 'decimal' } : {}),
    onchange: commit,
    oninput: () => {
      clearTimeout(waiting);
      waiting = setTimeout(commit, 700);
    },
  });
  function commit() {
    clearTimeout(waiting);
    const text = input.value.trim();
    if (text === shown) return;
    if (!text) return set([]);
    const whole = unit && /^[\d.,]+$/.test(text) ? `${text.replace(',', '.')} ${unit}` : text;
    return set(entry.list ? whole.split(/\s*;\s*/).filter(Boolean) : [whole]);
  }
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
      const free = document.activeElement !== input || input.value.trim() === '' || shown === '';
      if (free && input.value !== shown) input.value = shown;
    },
    clear() {
      clearTimeout(waiting);
      input.value = shown;
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
  const buttons = Array.from({ length: 7 }, (_, at) =>
    el('button', { type: 'button', class: 'chip day', 'aria-label': say('desk-and-days', { number: at }), onclick: () => write(String(at)) }, `+${at}`),
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
      days = rest || '0';
      buttons.forEach((button, at) => button.setAttribute('aria-pressed', String(Boolean(value) && String(at) === days)));
    },
    clear() {
      days = '0';
    },
  };
}

function day(id, set) {
  const input = el('input', { type: 'date', id: `${id}-input`, 'aria-labelledby': `${id}-name`, 'aria-describedby': `${id}-problem`, onchange: () => set(input.value ? [input.value] : []) });
  return {
    kind: 'day',
    element: el('div', { class: 'typed' }, input),
    show([value]) {
      if (document.activeElement !== input) input.value = value ?? '';
    },
    clear: () => (input.value = ''),
  };
}

/** Where the back was felt, laid out as someone facing her sees it. */
function back(set) {
  let chosen = '';
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
        { type: 'button', class: 'chip', 'data-value': value, onclick: () => set(chosen === value ? [] : [value]), 'aria-label': `${words}, ${say('desk-place', { value: word(value) })}` },
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
      chosen = value ?? '';
      for (const [own, button] of buttons) button.setAttribute('aria-pressed', String(own === chosen));
    },
  };
}

/** Fifths of the head above the brim: a row of five that fills, and none. */
function fifths(set) {
  let chosen = '';
  const buttons = Array.from({ length: 6 }, (_, k) =>
    el(
      'button',
      { type: 'button', class: `fifth${k ? '' : ' none'}`, 'aria-label': say('desk-fifths', { value: `${k}/5` }), onclick: () => set(chosen === `${k}/5` ? [] : [`${k}/5`]) },
      `${k}/5`,
    ),
  );
  return {
    kind: 'fifths',
    element: el('div', { class: 'fifths' }, ...buttons),
    show([value]) {
      chosen = value ?? '';
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
  const list = el('div', { class: 'chips' });
  const text = typed(entry, id, set);
  const clock = counter((count) => set([...chosen, count]));
  return {
    kind: 'counts',
    element: el('div', { class: 'both' }, list, clock.element, text.element),
    show(values) {
      const same = values.join('; ') === chosen.join('; ');
      chosen = values;
      text.show(values);
      if (same) return;
      list.replaceChildren(
        ...values.map((value, at) =>
          el(
            'button',
            { type: 'button', class: 'chip', 'aria-label': say('desk-remove', { value }), onclick: () => set(values.filter((_, own) => own !== at)) },
            value,
            el('span', { 'aria-hidden': 'true' }, ' \u00d7'),
          ),
        ),
      );
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
  const field = outlineField(say('desk-tap-where', { name: say(`desk-key-${entry.name}`) }), (value) => set(toggled(value)));
  const toggled = (value) => {
    if (chosen.includes(value)) return chosen.filter((own) => own !== value);
    return entry.list ? [...chosen, value] : [value];
  };
  let side = '';
  let level = '';
  const extra = entry.words.filter(({ word }) => ![...SIDES, ...LEVELS].includes(word)).map(({ word }) => word);
  const row = (words, label, tap) =>
    el(
      'div',
      { class: 'chips', role: 'group', 'aria-label': label },
      ...words.map((value) => el('button', { type: 'button', class: 'chip', 'data-value': value, onclick: () => tap(value) }, shown(value))),
    );
  const join = () => (side && level ? (level === 'iliac fossa' && !side.includes('flank') ? `${side} ${level}` : `${side}, ${level}`) : side || level);
  function pick(nextSide, nextLevel) {
    const before = join();
    [side, level] = [nextSide, nextLevel];
    // A fossa has no name of its own without a side.
    if (level === 'iliac fossa' && (!side || side === 'middle')) {
      show();
      return;
    }
    const value = join();
    if (!entry.list) set(value ? [value] : []);
    else set([...chosen.filter((own) => own !== before), ...(value ? [value] : [])]);
  }
  const sides = row(SIDES, say('desk-side'), (value) => pick(value === side ? '' : value, level));
  const levels = row([...LEVELS, ...extra], say('desk-level'), (value) => {
    if (extra.includes(value)) return set(chosen.includes(value) ? [] : [value]);
    return pick(side, value === level ? '' : value);
  });
  // Of several places the chips show the last; another begins with none.
  const another = el('button', { type: 'button', class: 'chip quiet', onclick: () => (([side, level] = ['', '']), show()) }, say('desk-another-place'));
  const fossa = (value) => /^(left|right) iliac fossa$/.test(value);
  const isPlain = (value) => fossa(value) || extra.includes(value) || value.split(', ').every((part, at, all) => (SIDES.includes(part) && at === 0) || (LEVELS.includes(part) && at === all.length - 1));
  // What stands on the chips or the outline need not stand in the field as well.
  const text = typed(entry, id, (values) => set(entry.list ? [...chosen.filter(isPlain), ...values] : values));
  function show() {
    another.hidden = !entry.list || !(side || level);
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
      // Where there is room, the fields stand beside the outline.
      el('details', { class: 'fields', open: matchMedia('(min-width: 34rem)').matches }, el('summary', {}, say('desk-in-fields')), el('div', { class: 'place-fields' }, sides, levels, another, text.element)),
    ),
    show(values) {
      chosen = values;
      const last = values.at(-1) ?? '';
      const known = [...SIDES].sort((a, b) => b.length - a.length).find((own) => last === own || last.startsWith(`${own}, `) || last === `${own} iliac fossa`);
      const rest = known ? last.slice(known.length).replace(/^,? /, '') : last;
      [side, level] = isPlain(last) && !extra.includes(last) ? [known ?? '', rest] : ['', ''];
      field.choose(values);
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
