// The picture as the form: dragged, turned and tapped by mouse, finger and keyboard; what is set is written, and nothing else becomes
// known. The usual visit in few taps; a page that random taps do not break.
import assert from 'node:assert/strict';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { ROOT, downloaded, open, settled, stop, written } from './browser.mjs';
import { at as step, give, line } from './enter.mjs';

after(stop);
const PHONE = { hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } };
const middle = async (locator) => {
  const box = await locator.boundingBox();
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
};
/** Where a place lies on the picture, in pixels: told by the field of places of the heart, which has the same outline. */
const placeOn = (page, words) =>
  page.evaluate((words) => {
    const hands = document.getElementById('hands').getBoundingClientRect();
    const { x, y } = window.placesForTests.find((place) => place.words === words).at;
    return { x: hands.left + x * hands.width, y: hands.top + y * hands.width };
  }, words);
/** Keeps what the library tells of places, for `placeOn`. */
const spy = () => {
  const parse = JSON.parse;
  JSON.parse = (...given) => {
    const told = parse(...given);
    if (told?.places && told.fifths) window.placesForTests = told.places;
    return told;
  };
};
const dragTo = async (page, from, to) => {
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 4 });
  await page.mouse.move(to.x, to.y, { steps: 4 });
  await settled(page);
  await page.mouse.up();
  await settled(page);
};
const now = (page, finding) => page.locator(`#finding-${finding} .now`).textContent();
const all = (page) => page.evaluate(() => Object.fromEntries([...document.querySelectorAll('#form .now.found')].map((own) => [own.id.slice(8, -4), own.textContent])));

for (const [way, screen] of [['a mouse', {}], ['a phone', PHONE]]) {
  test(`head and bottom are dragged to where hands found them, on ${way}; nothing else becomes known`, async () => {
    const { page, context, faults } = await open({ ...screen, before: spy });
    for (const words of ['left iliac fossa', 'right iliac fossa', 'left, at navel', 'right, above navel']) {
      await dragTo(page, await middle(page.locator('.handle.head')), await placeOn(page, words));
      assert.deepEqual(await all(page), { head: words });
    }
    if (screen.isMobile) {
      // The words of the picture are small there: her sides are named over it, where they are.
      for (const side of ['left', 'right']) {
        const named = await middle(page.locator(`#hands .own-${side}`));
        const there = await placeOn(page, `${side} iliac fossa`);
        const { x } = await middle(page.locator('#hands'));
        assert.ok(Math.sign(named.x - x) === Math.sign(there.x - x), `her ${side} is named where it is`);
      }
    }
    await dragTo(page, await middle(page.locator('.handle.breech')), await placeOn(page, 'middle, fundus'));
    assert.deepEqual(await all(page), { head: 'right, above navel', breech: 'fundus' });
    await page.locator('#undo').click();
    await settled(page);
    assert.deepEqual(await all(page), { head: 'right, above navel' });
    // A tap alone moves nothing.
    await page.locator('.handle.head').click();
    await settled(page);
    assert.deepEqual(await all(page), { head: 'right, above navel' });
    assert.deepEqual(faults, []);
    await context.close();
  });
}

test('the back is turned along the ring to both sides, and the head is pushed down its fifths', async () => {
  const { page, context } = await open({ before: spy });
  await page.locator('[data-way=LOA]').click();
  await settled(page);
  const ring = await page.locator('.hoop').boundingBox();
  const edge = { left: { x: ring.x + ring.width, y: ring.y + ring.height / 2 }, right: { x: ring.x, y: ring.y + ring.height / 2 } };
  for (const side of ['right', 'left']) {
    await dragTo(page, await middle(page.locator('.handle.back')), edge[side]);
    assert.equal(await now(page, 'back'), `${side} lateral`, 'her left is at the right');
  }
  const before = await all(page);
  assert.ok(!('head-above-brim' in before));
  const scale = page.locator('.fifths-handle');
  const from = await middle(scale);
  await dragTo(page, from, { x: from.x, y: (await page.locator('#hands').boundingBox()).y + (await page.locator('#hands').boundingBox()).height - 4 });
  assert.equal(await now(page, 'head-above-brim'), '0/5');
  await scale.focus();
  await page.keyboard.press('ArrowUp');
  await settled(page);
  await page.keyboard.press('ArrowUp');
  await settled(page);
  assert.equal(await now(page, 'head-above-brim'), '2/5');
  assert.deepEqual(await all(page), { ...before, 'head-above-brim': '2/5' });
  await context.close();
});

test('head, bottom and back are put by the keyboard alone', async () => {
  const { page, context } = await open();
  const press = async (...keys) => {
    for (const key of keys) {
      await page.keyboard.press(key);
      await settled(page);
    }
  };
  await page.locator('.handle.head').focus();
  await press('ArrowDown');
  assert.equal(await now(page, 'head'), 'above pubic bone');
  await page.locator('.handle.breech').focus();
  await press('ArrowUp');
  assert.equal(await now(page, 'breech'), 'fundus');
  await page.locator('.handle.back').focus();
  await press('ArrowRight');
  assert.equal(await now(page, 'back'), 'left lateral', 'to the right is her left');
  assert.match(await page.locator('#conclusion').textContent(), /LOT/);
  await press('ArrowLeft', 'ArrowLeft', 'ArrowLeft');
  assert.equal(await now(page, 'back'), 'right front');
  await page.locator('.handle.head').focus();
  await press('ArrowUp', 'ArrowLeft');
  assert.match(await now(page, 'head'), /^right/);
  await page.keyboard.press('ControlOrMeta+z');
  await settled(page);
  assert.ok(!(await now(page, 'head')).startsWith('right'));
  await context.close();
});

test('heart and limbs are tapped on the picture, each on its own side', async () => {
  const { page, context } = await open({ ...PHONE, before: spy });
  for (const side of ['left', 'right']) {
    await page.locator('[data-tool=heart]').tap();
    const there = await placeOn(page, `${side}, below navel`);
    await page.touchscreen.tap(there.x, there.y);
    await settled(page);
    assert.equal(await now(page, 'heart'), `${side}, below navel`);
  }
  await page.locator('[data-tool=limbs]').tap();
  for (const words of ['left, above navel', 'left, at navel', 'left, at navel']) {
    const there = await placeOn(page, words);
    await page.touchscreen.tap(there.x, there.y);
    await settled(page);
  }
  assert.equal(await now(page, 'limbs'), 'left, above navel; left, at navel');
  await context.close();
});

test('heart and limbs are put by the keyboard alone, each on its own side', async () => {
  const { page, context } = await open({ before: spy });
  for (const [side, arrow] of [['left', 'ArrowRight'], ['right', 'ArrowLeft']]) {
    await page.locator('[data-tool=heart]').focus();
    for (const key of ['Enter', arrow, 'ArrowDown', 'Enter']) await page.keyboard.press(key);
    await settled(page);
    assert.match(await now(page, 'heart'), new RegExp(`^${side}.*below navel`), 'to the right is her left');
  }
  await page.locator('[data-tool=limbs]').focus();
  for (const key of ['Enter', 'ArrowRight', 'Enter', 'ArrowLeft', 'ArrowLeft', 'Enter', 'Escape']) {
    await page.keyboard.press(key);
    await settled(page);
  }
  assert.match(await now(page, 'limbs'), /^left, at navel; right, at navel$/);
  assert.deepEqual(Object.keys(await all(page)).sort(), ['heart', 'limbs']);
  assert.equal(await page.locator('[data-tool=limbs]').getAttribute('aria-pressed'), 'false');
  await context.close();
});

test('every common way to lie writes what it says, and names what it takes the place of', async () => {
  const { page, context } = await open();
  for (const code of ['LOA', 'LOT', 'LOP', 'ROA', 'ROT', 'ROP', 'LSA', 'RSA']) {
    await page.locator(`[data-way=${code}]`).click();
    await settled(page);
    assert.match(await page.locator('#conclusion').textContent(), new RegExp(`\\(${code}\\)`));
  }
  await line(page, '37+0 LOA');
  if (await page.locator('#replaces').isVisible()) await page.locator('#replaces [data-close=so]').click();
  await settled(page);
  await page.locator('[data-way=ROP]').click();
  await settled(page);
  assert.match(await page.locator('#start-note').innerText(), /In place of: .*LOA/);
  assert.match(await page.locator('#conclusion').textContent(), /\(ROP\)/);
  assert.ok(!(await page.locator('#remarks').textContent()).includes('cannot both'));
  await context.close();
});

/** A dialog says that it was closed a moment after the tap that closes it. */
const usualIsRecorded = (page) => page.locator('#start-note').filter({ hasText: 'regular' }).waitFor();

test('a usual visit to the printed page: 7 taps on a phone, without scrolling more than two screens', async () => {
  const { page, context } = await open({ ...PHONE, before: () => (window.print = () => (window.printed = true)) });
  let taps = 0;
  const tap = async (locator) => {
    taps += 1;
    await locator.tap();
    await settled(page);
  };
  const within = async (locator) => {
    const box = await locator.boundingBox();
    assert.ok(box.y + (await page.evaluate(() => window.scrollY)) < 2 * 844, 'within two screens');
  };
  await within(page.locator('[data-way=LOA]'));
  await tap(page.locator('[data-way=LOA]'));
  await within(page.locator('#usual'));
  await tap(page.locator('#usual'));
  taps += 2;
  await page.locator('#usual-weeks').selectOption('37');
  await tap(page.locator('#usual-dialog [data-close=so]'));
  await usualIsRecorded(page);
  assert.deepEqual(Object.keys(await all(page)).sort(), ['back', 'breech', 'head', 'heart-rhythm', 'movements', 'reports', 'shape', 'weeks', 'womb']);
  await tap(page.locator('.first-takes [data-take=print]'));
  await tap(page.locator('#read-back-so'));
  await page.waitForFunction(() => window.printed);
  assert.ok(taps <= 7, `${taps} taps`);
  await context.close();
});

for (const [visit, most, babies] of [['one baby, without the usual visit', 12, 1], ['two babies', 14, 2]]) {
  test(`${visit}: to the printed page in ${most} taps on a phone`, async () => {
    const { page, context } = await open({ ...PHONE, before: () => (window.print = () => (window.printed = true)) });
    let taps = 0;
    const tap = async (locator) => {
      taps += 1;
      await locator.tap();
      await settled(page);
    };
    if (babies === 2) await tap(page.locator('#stage').getByRole('button', { name: 'Two babies' }));
    if (babies === 2) await tap(page.locator('#stage').getByRole('button', { name: 'Baby 1', exact: true }));
    await tap(page.locator('[data-way=LOA]'));
    if (babies === 2) {
      await tap(page.locator('#stage').getByRole('button', { name: 'Baby 2', exact: true }));
      await tap(page.locator('[data-way=ROA]'));
    }
    await tap(page.locator('#step-next'));
    taps += 2;
    await page.locator('#finding-weeks select').selectOption('36');
    await settled(page);
    await tap(page.locator('#to-take'));
    await tap(page.locator('#print'));
    await tap(page.locator('#read-back-so'));
    await page.waitForFunction(() => window.printed);
    assert.match(await page.locator('#conclusion').textContent(), babies === 2 ? /Baby 1: .*LOA.*Baby 2: .*ROA/ : /LOA/);
    assert.ok(taps <= most, `${taps} taps`);
    await context.close();
  });
}

test('a usual visit writes over nothing, and what is taken out of it is not written', async () => {
  const { page, context } = await open();
  await step(page, 'movements');
  await page.locator('#finding-movements [data-value=fewer]').click();
  await settled(page);
  await page.locator('#to-picture').click();
  await page.locator('#usual').click();
  assert.ok(!(await page.locator('#usual-list').innerText()).includes('Movements'));
  await page.locator('#usual-list [data-finding=womb]').uncheck();
  await page.locator('#usual-dialog [data-close=so]').click();
  await usualIsRecorded(page);
  const found = await all(page);
  assert.equal(found.movements, 'fewer');
  assert.ok(!('womb' in found) && found.reports === 'none', JSON.stringify(found));
  await context.close();
});

test('from the line to printing in at most 25 tabs', async () => {
  const { page, context } = await open();
  await page.locator('#line').focus();
  await page.keyboard.type('37+0 LOA 2/5 palp');
  await page.keyboard.press('Enter');
  await settled(page);
  let tabs = 0;
  while (tabs < 60 && !(await page.evaluate(() => document.activeElement.id === 'to-take'))) {
    await page.keyboard.press('Tab');
    tabs += 1;
  }
  await page.keyboard.press('Enter');
  while (tabs < 60 && !(await page.evaluate(() => document.activeElement.dataset.take === 'print'))) {
    await page.keyboard.press('Tab');
    tabs += 1;
  }
  assert.ok(tabs <= 25, `${tabs} tabs`);
  await context.close();
});

test('shown to her: turned to her, in her language, without a word of alarm; from there to her phone', async () => {
  const { page, context } = await open(PHONE);
  await page.locator('#file').setInputFiles(join(ROOT, 'examples/heart-not-heard.toml'));
  await page.waitForFunction(() => !document.querySelector('#act-now').hidden);
  await settled(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.locator('#show-her').tap();
  assert.equal(await page.locator('#her-dark').getAttribute('aria-pressed'), 'true', 'in a dark room it opens dark');
  await page.locator('#her-dark').tap();
  assert.equal(await page.locator('#her-dark').getAttribute('aria-pressed'), 'false');
  await page.emulateMedia({ colorScheme: 'light' });
  await page.locator('#her-lang').selectOption('es');
  const shown = await page.evaluate(async () => {
    // Its bytes, drawn onto nothing: the words are asked of the element alone.
    const image = document.getElementById('her-picture');
    await image.decode();
    return { alt: image.alt, said: document.getElementById('her').innerText, wide: image.getBoundingClientRect().width };
  });
  assert.ok(!/act now|urgent|not heard/i.test(shown.said + shown.alt), JSON.stringify(shown));
  assert.ok(shown.wide > 300);
  await page.locator('#her [data-close]').tap();
  await page.locator('#file').setInputFiles(join(ROOT, 'examples/head-down-left.toml'));
  await page.waitForFunction(() => document.querySelector('#act-now').hidden);
  await settled(page);
  await page.locator('#show-her').tap();
  await page.locator('#her-lang').selectOption('en');
  // What was found, in the words of her page; her sides.
  assert.match(await page.locator('#her-said').innerText(), /head down[^]*back is to your left/);
  await page.locator('#her-lang').selectOption('es');
  assert.match(await page.locator('#her-said').innerText(), /espalda[^]*izquierd/);
  await page.locator('#her-lang').selectOption('en');
  const { name, bytes } = await downloaded(page, async () => {
    await page.locator('#her-share').tap();
    await page.locator('#read-back-so').tap();
  });
  assert.equal(name, 'family-page-37w0d.pdf');
  assert.ok(bytes.equals(written('pdf', 'handout', 'examples/head-down-left.toml')));
  await context.close();
});

test('random taps leave a page that works (DESK_TAPS: how many)', async () => {
  const { page, context, faults } = await open(PHONE);
  const rounds = Number(process.env.DESK_TAPS ?? 300);
  const broken = await page.evaluate(async (rounds) => {
    let seed = 20260314;
    const dice = (n) => ((seed = (seed * 1103515245 + 12345) % 2147483648), Math.floor((seed / 2147483648) * n));
    window.print = () => {};
    HTMLAnchorElement.prototype.click = () => {};
    HTMLInputElement.prototype.showPicker = () => {};
    const seen = [];
    for (let tap = 0; tap < rounds; tap++) {
      const within = [...document.querySelectorAll('dialog[open]')].at(-1) ?? document;
      const all = [...within.querySelectorAll('button:not(:disabled), summary, select, input')].filter((own) => own.offsetParent && own.type !== 'file');
      const own = all[dice(all.length)];
      if (!own) continue;
      if (own.matches('select')) {
        own.selectedIndex = dice(own.options.length);
        own.dispatchEvent(new Event('change', { bubbles: true }));
      } else if (own.matches('input[type=text]')) {
        own.value = ['35', 'x', '', '12+3', '140'][dice(5)];
        own.dispatchEvent(new Event('input', { bubbles: true }));
        own.dispatchEvent(new Event('change', { bubbles: true }));
      } else own.click();
      if (tap % 5 === 0) await new Promise((done) => setTimeout(done, 0));
      if (document.getElementById('fault').open) return [`tap ${tap}: ${document.getElementById('fault-why').textContent}`];
    }
    return seen;
  }, rounds);
  assert.deepEqual(broken, []);
  await settled(page);
  for (const dialog of await page.locator('dialog[open]').all()) await dialog.evaluate((own) => own.close(''));
  await page.locator('#new-visit').click();
  await page.locator('#new [data-close=so]').click();
  await settled(page);
  await line(page, '37+0 LOA 2/5 palp');
  assert.match(await page.locator('#conclusion').textContent(), /LOA/);
  assert.deepEqual(faults, []);
  await give(page, 'exam');
  await context.close();
});
