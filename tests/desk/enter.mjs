// An exam entered as a midwife would. In: the page, findings as `check --json` reads them. Out: the same findings in the form, by
// tapping alone or by the keyboard alone; and how many taps or keys it took.

import { settled } from './browser.mjs';

const DAYS = ['visit', 'due', 'last-period'];
const PLACES = ['breech', 'head', 'heart', 'limbs', 'lumps'];
const SIDES = ['right flank', 'right', 'middle', 'left', 'left flank'];
const LEVELS = ['fundus', 'above navel', 'at navel', 'below navel', 'above pubic bone'];

/** With a finger. */
export function finger(page) {
  return {
    taps: 0,
    async press(locator) {
      this.taps += 1;
      await locator.click();
      await settled(page);
    },
    async choose(locator, text) {
      this.taps += 2;
      await locator.selectOption({ label: text });
    },
    async type(locator, text) {
      this.taps += 1 + text.length;
      await locator.click();
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
    },
    async day(locator, text) {
      this.taps += 4;
      await locator.fill(text);
    },
    async open(locator) {
      if (await locator.evaluate((fold) => fold.open)) return;
      await this.press(locator.locator('summary').first());
    },
    outline: true,
  };
}

/** With the keyboard and nothing else: everything is reached by Tab. */
export function keyboard(page) {
  return {
    taps: 0,
    async reach(locator) {
      const target = await locator.elementHandle();
      const here = () => target.evaluate((own) => own === document.activeElement);
      const after = await target.evaluate((own) => Boolean(document.activeElement.compareDocumentPosition(own) & Node.DOCUMENT_POSITION_PRECEDING));
      for (let step = 0; step < 900; step++) {
        if (await here()) return;
        await page.keyboard.press(after ? 'Shift+Tab' : 'Tab');
        this.taps += 1;
      }
      throw new Error(`not reached by Tab: ${await target.evaluate((own) => own.outerHTML)}`);
    },
    async press(locator) {
      await this.reach(locator);
      await page.keyboard.press('Enter');
      await settled(page);
      this.taps += 1;
    },
    async choose(locator, text) {
      await this.reach(locator);
      await page.keyboard.type(text);
      this.taps += text.length;
    },
    async type(locator, text) {
      await this.reach(locator);
      await page.keyboard.press('ControlOrMeta+a');
      await page.keyboard.type(text);
      await page.keyboard.press('Enter');
      this.taps += text.length + 2;
    },
    async day(locator, text) {
      await this.reach(locator);
      const [year, month, day] = text.split('-');
      await page.keyboard.type(`${month}${day}${year}`);
      await page.keyboard.press('Tab');
      this.taps += 9;
    },
    async open(locator) {
      if (await locator.evaluate((fold) => fold.open)) return;
      await this.press(locator.locator('summary').first());
    },
    outline: false,
  };
}

/** Read a line, from the start. */
export async function line(page, words) {
  await page.locator('#to-picture').click();
  await page.locator('#line').fill(words);
  await page.locator('#fill').click();
  await settled(page);
}

/** Press what gives something away, on its own screen. */
export async function give(page, kind) {
  await page.locator('#to-take').click();
  await page.locator(`.end [data-take=${kind}]`).click();
}

/** Go to the step of a finding, by the list of steps; a hand that is given does it itself. */
export async function at(page, name, hand) {
  const step = page.locator('.step', { has: page.locator(`#finding-${name}`) });
  const press = (locator) => (hand ? hand.press(locator) : locator.click());
  if (await step.evaluate((own) => own.classList.contains('off'))) {
    const id = await step.getAttribute('data-view');
    await press(page.locator('#step-now'));
    await press(page.locator(`#steps [data-step=${id}]`));
  }
  const fold = page.locator('details.more', { has: page.locator(`#finding-${name}`) });
  if (await fold.count()) {
    if (hand) await hand.open(fold);
    else await fold.evaluate((own) => (own.open = true));
  }
}

/** Enter every finding of `read`. */
export async function enter(page, hand, read) {
  let baby = '1';
  const dated = ['due', 'last-period', 'scan'].some((key) => read[key]) && read.visit;
  for (const [key, words] of Object.entries(read)) {
    if (key === 'weeks' && dated) continue;
    const parts = key.split('.');
    const name = parts.at(-1);
    if (parts[0] === 'baby' && parts[1] !== baby) {
      baby = parts[1];
      await at(page, 'breech', hand);
      const tabs = page.locator('[data-babies=grip-1]').getByRole('button', { name: `Baby ${baby}`, exact: true });
      if (await tabs.count()) await hand.press(tabs);
      else await hand.press(page.locator('[data-babies=grip-1]').getByRole('button', { name: 'Two babies' }));
      await settled(page);
    }
    await one(page, hand, name, words);
  }
}

/** Enter one finding. */
export async function one(page, hand, name, words) {
  const finding = page.locator(`#finding-${name}`);
  await at(page, name, hand);
  await found(page, finding, hand, name, words);
  await settled(page);
}

async function found(page, finding, hand, name, words) {
  const states = finding.locator('.states');
  const button = (within, text) => within.getByRole('button', { name: text, exact: true });
  const state = words.match(/^(not felt|not heard|none|not listened|not asked|could not tell)(?: \((.*)\))?$/);
  if (state && (await states.getByRole('button', { name: state[1], exact: true }).count())) {
    await hand.press(button(states, state[1]));
    if (state[2]) await hand.type(states.locator('.reason'), state[2]);
    return;
  }
  const unsure = words.endsWith('?') && (await states.locator('button', { hasText: /^Unsure$/ }).count()) > 0;
  const sure = unsure ? words.slice(0, -1) : words;
  const known = sure.match(/ \(((?:scan|vaginal examination)[^)]*)\)$/);
  const bare = known ? sure.slice(0, known.index) : sure;
  if (name === 'weeks') {
    const [weeks, days] = bare.split('+');
    await hand.choose(finding.locator('select'), `${weeks} weeks`);
    if (days !== '0') await hand.press(button(finding, `+${days} days`));
  } else if (DAYS.includes(name)) {
    await hand.day(finding.locator('input'), bare);
  } else if (name === 'back') {
    await hand.press(finding.locator(`.back-grid [data-value="${bare}"]`));
  } else if (name === 'head-above-brim') {
    await hand.press(button(finding, `${bare} palpable above the brim`));
  } else if (name === 'position') {
    await hand.choose(finding.locator('.typed select'), hand.outline ? await label(finding, bare) : bare);
  } else if (PLACES.includes(name)) {
    for (const [at, value] of bare.split('; ').entries()) await place(finding, hand, value, button, at > 0);
  } else if (await finding.locator('.typed input, .typed textarea').count()) {
    const chips = finding.locator('.both > .chips');
    const chip = chips.getByRole('button', { name: bare, exact: true });
    if (await chip.count()) {
      await hand.press(chip);
    } else {
      const unit = bare.match(/^([\d.]+) cm$/);
      await hand.type(finding.locator('.typed input, .typed textarea'), unit ? unit[1] : bare);
    }
  } else {
    for (const value of bare.split('; ')) await hand.press(button(finding.locator('.chips').first(), value));
  }
  if (known) {
    const [by, weeks] = known[1].match(/^(scan|vaginal examination) ?(.*)$/).slice(1);
    await hand.choose(states.locator('select'), `by ${by}`);
    if (weeks) await hand.type(states.locator('.when'), weeks);
  }
  if (unsure) await hand.press(button(states, 'Unsure'));
}

async function label(finding, code) {
  return finding.locator(`option[value="${code}"]`).textContent();
}

async function place(finding, hand, value, button, another) {
  const spot = finding.locator('.outline').getByRole('button', { name: `hers: ${value}`, exact: true });
  if (hand.outline && (await spot.count())) {
    // As a finger does: whatever lies on top there.
    hand.taps += 1;
    await spot.evaluate((own) => own.scrollIntoView({ block: 'center' }));
    await spot.click({ force: true });
    const which = finding.locator('.which');
    if (await which.isVisible()) await hand.press(button(which, `hers: ${value}`));
    return undefined;
  }
  await hand.open(finding.locator('details.fields'));
  const fields = finding.locator('.place-fields');
  if (/^(left|right) iliac fossa$/.test(value)) return hand.press(button(fields, value));
  const [side, level] = [SIDES.find((own) => value === own || value.startsWith(`${own}, `)), LEVELS.find((own) => value === own || value.endsWith(`, ${own}`))];
  const plain = [side, level].filter(Boolean).join(', ') === value;
  if (value === 'heard') return hand.press(button(fields, 'heard, place not noted'));
  if (!plain) return hand.type(fields.locator('input'), value);
  const next = button(fields, 'Another place');
  if (another && (await next.isVisible())) await hand.press(next);
  if (side) await hand.press(button(fields, side));
  if (level) await hand.press(button(fields, level));
  return undefined;
}
