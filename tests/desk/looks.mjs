// Pictures of the page to be looked at, how many taps three visits take, and how long things take.
// usage: node tests/desk/looks.mjs [DIRECTORY]   (DIRECTORY `-`: the times alone)
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, checked, downloaded, open, settled, stop } from './browser.mjs';
import { at, enter, finger, give, one } from './enter.mjs';

const timesAlone = process.argv[2] === '-';
const out = (!timesAlone && process.argv[2]) || join(ROOT, 'target/desk/looks');
mkdirSync(out, { recursive: true });
const example = (name) => join(ROOT, 'examples', `${name}.toml`);
const shot = (page, name, options = {}) => page.screenshot({ path: join(out, `${name}.png`), ...options });

const SIZES = { phone: { width: 390, height: 844 }, narrow: { width: 320, height: 640 }, tablet: { width: 820, height: 1180 }, desktop: { width: 1366, height: 860 }, projector: { width: 1920, height: 1080 } };
for (const theme of timesAlone ? [] : ['light', 'dark']) {
  for (const [size, viewport] of Object.entries(SIZES)) {
    const { page, context } = await open({ colorScheme: theme, viewport });
    if (theme === 'light') await shot(page, `${size}-empty`);
    await page.locator('#file').setInputFiles(example(size === 'tablet' ? 'heart-not-heard' : 'head-down-left'));
    await settled(page);
    await shot(page, `${size}-${theme}`);
    for (const [name, finding] of [['first', 'breech'], ['second', 'back'], ['listen', 'heart']]) {
      if (size === 'projector' || size === 'narrow') break;
      await at(page, finding);
      await shot(page, `${size}-${theme}-${name}`);
    }
    for (const view of ['remarks', 'take', 'picture']) {
      await page.locator(`#to-${view}`).click();
      if (size === 'phone') await shot(page, `${size}-${theme}-${view}`);
    }
    if (size === 'projector') {
      await page.locator('#open-teach').click();
      await shot(page, `${size}-${theme}-teach`);
    }
    if (size === 'desktop') {
      await give(page, 'page');
      await shot(page, `${size}-${theme}-read-back`);
      await page.keyboard.press('Escape');
      await page.locator('#to-picture').click();
      await page.locator('#open-teach').click();
      await shot(page, `${size}-${theme}-teach`);
    }
    await context.close();
  }
}

// Printed from the page.
if (!timesAlone) {
  const { page, context } = await open({ before: () => (window.print = () => new Promise(() => {})), viewport: { width: 794, height: 1123 } });
  await page.locator('#file').setInputFiles(example('head-down-left'));
  await settled(page);
  await give(page, 'print');
  await page.locator('#read-back-so').click();
  await page.waitForSelector('#printed img', { state: 'attached' });
  await page.pdf({ path: join(out, 'printed.pdf'), preferCSSPageSize: true });
  await page.emulateMedia({ media: 'print' });
  await shot(page, 'printed');
  await context.close();
}

// Taps and time of three visits, entered by tapping.
for (const [name, read] of [
  ['37+0 LOA 2/5 to the family page', { weeks: '37+0', 'baby.1.position': 'LOA', 'baby.1.head-above-brim': '2/5' }],
  ['head-down-left', checked(example('head-down-left')).read],
  ['probably-breech', checked(example('probably-breech')).read],
]) {
  const { page, context } = await open({ hasTouch: true });
  const hand = finger(page);
  const start = Date.now();
  await enter(page, hand, read);
  await downloaded(page, async () => {
    await give(page, 'page');
    await page.locator('#read-back-so').click();
  });
  console.log(`${name}: ${hand.taps + 3} taps, ${((Date.now() - start) / 1000).toFixed(1)} s by script`);
  await context.close();
}

/** From a tap to the press that shows it, and to the picture, ms. */
async function change(page, finding, words) {
  await at(page, finding);
  await page.evaluate(async () => {
    const image = document.getElementById('picture');
    await image.decode();
    await new Promise((done) => setTimeout(done, 500));
    window.shown = new Promise((done) => image.addEventListener('load', () => requestAnimationFrame(() => done(performance.now())), { once: true }));
    document.addEventListener('click', () => {
      window.tapped = performance.now();
      // The frame after the next one has painted what the tap showed at once.
      window.pressed = new Promise((done) => requestAnimationFrame(() => setTimeout(() => done(performance.now()), 0)));
    }, { once: true, capture: true });
  });
  await one(page, finger(page), finding, words);
  return page.evaluate(async () => [(await window.pressed) - window.tapped, (await window.shown) - window.tapped]);
}

for (const slower of [1, 6]) {
  const { page, context } = await open();
  const ready = await page.evaluate(() => performance.getEntriesByName('ready')[0].startTime);
  await page.locator('#file').setInputFiles(example('head-down-left'));
  await settled(page);
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slower });
  const times = [];
  for (const words of ['3/5', '1/5', '4/5', '2/5', '0/5']) times.push(await change(page, 'head-above-brim', words));
  const list = (at) => times.map((pair) => pair[at].toFixed(0)).join(', ');
  console.log(`ready after ${ready.toFixed(0)} ms; a press is seen after ${list(0)} ms, its picture after ${list(1)} ms${slower > 1 ? `, ${slower} times slower` : ''}`);
  await context.close();
}
await stop();
