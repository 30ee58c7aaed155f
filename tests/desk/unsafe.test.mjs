// What could harm, tried with a finger: second taps, words that are not taken, two babies, alarms out of sight, paper and files of
// another woman.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { ROOT, downloaded, open, settled, stop } from './browser.mjs';
import { at as step, give, line } from './enter.mjs';

after(stop);
const PHONE = { hasTouch: true, isMobile: true, viewport: { width: 390, height: 844 } };
const example = (name) => join(ROOT, 'examples', name);
const chip = (page, finding, name) => page.locator(`#finding-${finding}`).getByRole('button', { name, exact: true });
const now = (page, finding) => page.locator(`#finding-${finding} .now`).innerText();
const tapped = async (page, locator) => {
  await locator.click();
  await settled(page);
};
for (const slower of [false, true]) test(`a second tap never erases${slower ? ', on a slow device' : ''}: states, values, places, fifths, backs; clearing is a control of its own`, async () => {
  const opened = await open(PHONE);
  const { page, context } = opened;
  if (slower) await slowed(opened);
  const twice = async (finding, button, words) => {
    await step(page, finding);
    for (const wait of [0, 500, 1200]) {
      await button().click();
      await page.waitForTimeout(wait);
      await button().click();
      await settled(page);
      assert.equal(await now(page, finding), words, `${finding} after ${wait} ms`);
    }
  };
  await twice('heart', () => chip(page, 'heart', 'not heard'), 'not heard');
  assert.match(await page.locator('#act-now').innerText(), /Act now/i);
  await twice('movements', () => chip(page, 'movements', 'fewer'), 'fewer');
  await twice('reports', () => page.locator('#finding-reports [data-value=bleeding]'), 'bleeding');
  await twice('back', () => page.locator('#finding-back [data-value="left front"]'), 'left front');
  await twice('head-above-brim', () => chip(page, 'head-above-brim', '2/5 palpable above the brim'), '2/5');
  await twice('back', () => chip(page, 'back', 'Unsure'), 'left front?');
  await step(page, 'limbs');
  const fields = page.locator('#finding-limbs details.fields');
  await fields.evaluate((own) => (own.open = true));
  await twice('limbs', () => fields.locator('.place-fields').getByRole('button', { name: 'right', exact: true }), 'right');
  // Each is cleared by its own control, and what is taken out of a list takes nothing else with it.
  await step(page, 'reports');
  await tapped(page, page.locator('#finding-reports [data-value=headache]'));
  const out = chip(page, 'reports', 'Take out bleeding');
  await out.evaluate((own) => own.scrollIntoView({ block: 'center' }));
  const box = await out.boundingBox();
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  await page.touchscreen.tap(box.x + box.width / 2, box.y + box.height / 2);
  await settled(page);
  assert.equal(await now(page, 'reports'), 'headache');
  await step(page, 'heart');
  await tapped(page, page.locator('#finding-heart .clear'));
  assert.equal(await now(page, 'heart'), 'not examined');
  await context.close();
});

test('days that are tapped before the weeks wait for them', async () => {
  const { page, context } = await open(PHONE);
  await step(page, 'weeks');
  const days = page.locator('#finding-weeks').getByRole('button', { name: '+3 days', exact: true });
  await tapped(page, days);
  assert.equal(await days.getAttribute('aria-pressed'), 'true');
  assert.equal(await now(page, 'weeks'), 'not examined');
  await page.locator('#finding-weeks select').selectOption('37');
  await settled(page);
  assert.equal(await now(page, 'weeks'), '37+3');
  await tapped(page, page.locator('#finding-weeks .clear'));
  assert.equal(await days.getAttribute('aria-pressed'), 'false');
  await context.close();
});

test('a press is seen before anything is reckoned or drawn', async () => {
  const { page, context } = await open(PHONE);
  await step(page, 'movements');
  const [before, later] = await page.evaluate(async () => {
    const button = document.querySelector('#finding-movements [data-value=usual]');
    button.click();
    const seen = button.getAttribute('aria-pressed');
    const reckoned = document.querySelector('#finding-movements .now').textContent;
    await new Promise((done) => setTimeout(done, 1500));
    return [[seen, reckoned], document.querySelector('#finding-movements .now').textContent];
  });
  assert.deepEqual(before, ['true', 'not examined']);
  assert.equal(later, 'usual');
  await context.close();
});

test('words on the line that are not read grey the picture, hold everything back, and are never lost', async () => {
  const { page, context } = await open(PHONE);
  await line(page, '37+0 LOA 2/5 palp');
  assert.ok(!(await page.locator('#held').isVisible()));
  const grey = () => page.evaluate(() => getComputedStyle(document.getElementById('picture')).filter);
  assert.equal(await grey(), 'none');
  await page.locator('#to-picture').click();
  // Typed and not yet taken; and taken, but with a question that stands: a word that is not known is kept, and holds nothing.
  for (const [words, taken] of [['38+0 ROP 3/5 palp', false], ['38+0 ROA 2/5', true]]) {
    await page.locator('#line').fill(words);
    if (taken) await page.locator('#fill').click();
    await settled(page);
    assert.match(await page.locator('#held').innerText(), new RegExp(words.slice(0, 8).replace('+', '\\+')));
    assert.match(await grey(), /grayscale/);
    for (const button of await page.locator('[data-take]').all()) assert.ok(await button.isDisabled());
    // A chip beside it does not take its words.
    await page.evaluate(() => document.querySelector('#finding-movements [data-value=usual]').click());
    await settled(page);
    assert.equal(await page.locator('#line').inputValue(), words);
    assert.ok(await page.locator('#held').isVisible());
    await page.keyboard.press('ControlOrMeta+p');
    assert.ok(!(await page.locator('#read-back').isVisible()), 'not printed either');
  }
  await page.locator('#held').getByRole('button', { name: 'Leave these words out' }).click();
  assert.ok(!(await page.locator('#held').isVisible()));
  assert.match(await page.locator('#line').inputValue(), /LOA.*2\/5/);
  assert.ok(await page.locator('[data-take=exam]').isEnabled());
  await context.close();
});

test('a line over findings names what it replaces, and drops none of them silently', async () => {
  const { page, context } = await open();
  await step(page, 'movements');
  await tapped(page, chip(page, 'movements', 'fewer'));
  await line(page, '37+0 LOA 2/5 palp');
  assert.match(await page.locator('#replaces-lines').innerText(), /Movements: fewer/);
  await page.locator('#replaces [data-close=""]').click();
  assert.ok(await page.locator('#held').isVisible(), 'going back keeps the words and what stood');
  await page.locator('#fill').click();
  await page.locator('#replaces [data-close=add]').click();
  await settled(page);
  assert.match(await page.locator('#line').inputValue(), /LOA/);
  assert.equal(await now(page, 'movements'), 'fewer');
  assert.match(await page.locator('#act-now').innerText(), /Act now/i);
  await line(page, (await page.locator('#line').inputValue()).replace('2/5', '3/5'));
  assert.match(await page.locator('#line-note').innerText(), /2\/5 → 3\/5/);
  await context.close();
});

test('a correction that is refused holds the picture and the note until it is settled', async () => {
  const { page, context } = await open();
  await step(page, 'fundal-height');
  const tape = page.locator('#finding-fundal-height .typed input');
  await tape.fill('35');
  await tape.press('Enter');
  await settled(page);
  await tape.fill('thirty');
  await tape.press('Enter');
  await settled(page);
  assert.equal(await tape.inputValue(), 'thirty');
  assert.match(await page.locator('#held').innerText(), /thirty/);
  assert.ok(await page.locator('[data-take=note]').first().isDisabled());
  await page.locator('#held').getByRole('button', { name: 'Leave these words out' }).click();
  assert.equal(await tape.inputValue(), '35');
  assert.ok(await page.locator('[data-take=note]').first().isEnabled());
  // A due date before the visit stays where it was typed.
  await step(page, 'visit');
  const visit = page.locator('#finding-visit');
  assert.equal(await visit.locator('input').inputValue(), '', 'no day is assumed');
  assert.match(await visit.getByRole('button', { name: /^Today/ }).innerText(), /\d{4}-\d\d-\d\d/);
  await visit.locator('input').fill('2026-03-14');
  await settled(page);
  await page.locator('#finding-due input').fill('2024-01-01');
  await page.locator('#finding-due input').blur();
  await settled(page);
  assert.equal(await page.locator('#finding-due input').inputValue(), '2024-01-01');
  assert.match(await page.locator('#held').innerText(), /2024-01-01/);
  await context.close();
});

test('another language waits for what is typed and not taken', async () => {
  const { page, context } = await open();
  await step(page, 'fundal-height');
  const tape = page.locator('#finding-fundal-height .typed input');
  await tape.fill('thirty');
  await tape.press('Enter');
  await settled(page);
  await page.locator('#lang').selectOption('es');
  assert.equal(await page.getAttribute('html', 'lang'), 'en');
  assert.equal(await tape.inputValue(), 'thirty');
  await page.locator('#held').getByRole('button', { name: 'Leave these words out' }).click();
  await page.locator('#lang').selectOption('es');
  assert.equal(await page.getAttribute('html', 'lang'), 'es');
  await context.close();
});

test('a page that is loaded anew asks first, and a file opened over words that are not taken asks too', async () => {
  const { page, context } = await open(PHONE);
  await page.locator('#line').tap();
  await page.locator('#line').fill('38+0 ROP 3/5');
  await page.locator('#file').setInputFiles(example('head-down-left.toml'));
  await page.locator('#new').waitFor();
  await page.locator('#new [data-close=""]').click();
  assert.equal(await page.locator('#line').inputValue(), '38+0 ROP 3/5');
  await page.locator('#held').getByRole('button', { name: 'Leave these words out' }).click();
  await line(page, '37+0 LOA');
  const asked = page.waitForEvent('dialog');
  // Going on is refused: the reload never ends.
  page.reload({ timeout: 5000 }).catch(() => {});
  const dialog = await asked;
  assert.equal(dialog.type(), 'beforeunload');
  await dialog.dismiss();
  assert.match(await page.locator('#line').inputValue(), /LOA/);
  await context.close();
});

test('leaving the page with findings in no file is asked about', async () => {
  const { page, context } = await open();
  const asks = () => page.evaluate(() => !window.dispatchEvent(new Event('beforeunload', { cancelable: true })));
  assert.equal(await asks(), false);
  await line(page, '37+0 LOA');
  assert.equal(await asks(), true);
  const { name } = await downloaded(page, () => give(page, 'exam'));
  assert.equal(name, 'visit-37w0d.toml');
  assert.equal(await asks(), false);
  await context.close();
});

/** A processor six times slower. */
const slowed = async ({ page, context }) => (await context.newCDPSession(page)).send('Emulation.setCPUThrottlingRate', { rate: 6 });

for (const [first, second] of [['left', 'right'], ['right', 'left']]) test(`two babies, the first on her ${first}: tapping two records two, neither is crossed, and a clash is remarked`, async () => {
  const opened = await open(PHONE);
  const { page, context } = opened;
  await slowed(opened);
  await tapped(page, page.locator('[data-babies]:visible').getByRole('button', { name: 'Two babies' }));
  assert.match(await page.locator('#line').inputValue(), /baby 1.*baby 2/);
  assert.ok(await page.locator('[data-take=exam]').first().isEnabled());
  const pick = (baby) => tapped(page, page.locator('[data-babies]:visible').getByRole('button', { name: `Baby ${baby}`, exact: true }));
  for (const [baby, back] of [[1, first], [2, second]]) {
    await step(page, 'back');
    await pick(baby);
    await tapped(page, page.locator(`#finding-back [data-value="${back}"]`));
    await step(page, 'breech');
    await tapped(page, page.locator('#at-grip-1').getByRole('button', { name: baby === 1 ? 'Breech' : 'Head', exact: true }));
    await step(page, 'head');
    await tapped(page, page.locator('#at-grip-3').getByRole('button', { name: baby === 1 ? 'Head' : 'Breech', exact: true }));
    await step(page, 'heart');
    assert.match(await page.locator('[data-babies]:visible [aria-pressed=true]').innerText(), new RegExp(`Baby ${baby}`), 'which baby is recorded is in sight');
    await page.evaluate(() => window.scrollTo(0, document.body.scrollHeight));
    assert.match(await page.locator('#step-now').innerText(), new RegExp(`Baby ${baby}: Listen`), 'and stays in sight');
    const fields = page.locator('#finding-heart details.fields');
    await fields.evaluate((own) => (own.open = true));
    await tapped(page, fields.locator('.place-fields').getByRole('button', { name: back, exact: true }));
    await tapped(page, fields.locator('.place-fields').getByRole('button', { name: baby === 1 ? 'below navel' : 'above navel', exact: true }));
  }
  const { bytes } = await downloaded(page, async () => {
    await give(page, 'svg');
    await page.locator('#read-back-so').click();
  });
  const words = [...bytes.toString().matchAll(/<text[^>]*x="([\d.]+)"[^>]*>(.*?)<\/text>/g)].map(([, x, text]) => [Number(x), text.replace(/<[^>]*>/g, '')]);
  const place = (words_) => words.find(([, text]) => text.startsWith(words_))?.[0];
  assert.ok(place('baby 1') > 0 && place('baby 2') > 0, JSON.stringify(words));
  assert.equal(place('baby 1') > place('baby 2'), first === 'left', `baby 1 is named at her ${first}: ${JSON.stringify(words)}`);
  assert.ok(!(await page.locator('#remarks').textContent()).includes('other baby lies'));
  await step(page, 'heart');
  await pick(1);
  const fields = page.locator('#finding-heart .place-fields');
  await tapped(page, fields.getByRole('button', { name: second, exact: true }));
  assert.ok((await page.locator('#remarks').textContent()).includes('other baby lies'));
  // The second baby does not go by one tap: what was found of it is named first.
  await page.locator('#to-picture').click();
  const one = page.locator('[data-babies=stage]').getByRole('button', { name: 'Only one baby' });
  await one.click();
  assert.match(await page.locator('#one-baby-list').innerText(), new RegExp(`Back: ${second}`));
  await page.locator('#one-baby [data-close=""]').click();
  assert.match(await page.locator('#line').inputValue(), /baby 2: breech/);
  await one.click();
  await page.locator('#one-baby [data-close=so]').click();
  await page.waitForFunction(() => !document.getElementById('line').value.includes('baby 2'));
  await page.locator('#undo').click();
  await settled(page);
  assert.match(await page.locator('#line').inputValue(), /baby 2: breech/);
  await context.close();
});

test('an alarm, a contradiction, a heart opposite the back: in sight on a phone; under an alarm the handover is the chief button', async () => {
  const { page, context } = await open(PHONE);
  const inSight = async (words) => {
    for (const y of [0, 100_000]) {
      await page.evaluate((y) => window.scrollTo(0, y), y);
      const box = await page.locator('#act-now').boundingBox();
      assert.ok(box && box.y >= 0 && box.y + box.height <= 844, `${words} at ${y}`);
      assert.match(await page.locator('#act-now').innerText(), words);
      const cut = await page.locator('#act-now .text').evaluate((own) => own.scrollHeight - own.clientHeight);
      if (words.test('act now')) assert.ok(cut <= 1, `what cannot wait is read whole: ${cut} px are cut off`);
    }
  };
  const chief = (kind) => page.evaluate((kind) => document.querySelector(`.take-one[data-take=${kind}]`).matches('.main') && document.querySelector(`.first-takes [data-take=${kind}]`).matches('.strong'), kind);
  for (const [file, words, first] of [['does-not-agree.toml', /Cannot both be right/i, 'print'], ['heart-not-heard.toml', /Act now/i, 'handover']]) {
    await page.locator('#file').setInputFiles(example(file));
    await page.waitForFunction(() => !document.querySelector('#act-now').hidden);
    await settled(page);
    await inSight(words);
    assert.ok(await chief(first), file);
  }
  // From wherever she is, the handover is one tap away.
  await step(page, 'movements');
  await page.locator('#act-now [data-take=handover]').tap();
  await page.locator('#text').waitFor();
  await page.locator('#text [data-close]').click();
  await give(page, 'handover');
  assert.deepEqual(await page.evaluate(() => [document.getElementById('text-body').scrollTop, document.getElementById('text').scrollTop, document.activeElement.id]), [0, 0, 'text-title']);
  await page.locator('#text [data-close]').click();
  await page.locator('#file').setInputFiles({ name: 'visit.toml', mimeType: 'text/plain', buffer: Buffer.from('weeks = "37+0"\n[baby]\nbreech = "fundus"\nback = "left front"\nhead = "above pubic bone"\nheart = "right, below navel"\n') });
  await page.waitForFunction(() => document.querySelector('#act-now').dataset.grade === 'look-again');
  await inSight(/heart was heard on the other side/i);
  await context.close();
});

test('Ctrl+P prints the page or the text that is meant, and the sheet stays until the visit changes', async () => {
  const { page, context } = await open({ before: () => (window.print = () => (window.prints = (window.prints ?? 0) + 1)) });
  await page.locator('#file').setInputFiles(example('head-down-left.toml'));
  await page.waitForFunction(() => document.querySelector('#line').value);
  await page.keyboard.press('ControlOrMeta+p');
  await page.locator('#read-back-so').click();
  await page.waitForFunction(() => window.prints === 1);
  await page.waitForTimeout(300);
  assert.ok(await page.evaluate(() => document.querySelectorAll('#printed img').length > 0 && [...document.querySelectorAll('#printed img')].every((image) => image.naturalWidth > 0)), 'the sheet stays');
  await give(page, 'note');
  await page.keyboard.press('ControlOrMeta+p');
  await page.waitForFunction(() => window.prints === 2);
  assert.match(await page.locator('#printed pre').textContent(), /Back: left,\s+anterior/i);
  await page.locator('#text [data-close]').click();
  await step(page, 'movements');
  await tapped(page, chip(page, 'movements', 'none'));
  assert.equal(await page.locator('#printed').evaluate((own) => own.children.length), 0);
  // The menu of the browser prints a word on what to do, and nothing of her.
  await page.emulateMedia({ media: 'print' });
  assert.deepEqual(await page.evaluate(() => [...document.body.children].filter((own) => getComputedStyle(own).display !== 'none' && own.textContent).map((own) => own.id)), ['print-word']);
  await context.close();
});

test('a new visit forgets her skin, her view and her language; the device keeps none of them', async () => {
  const { page, context } = await open();
  await page.evaluate(() => document.querySelectorAll('details').forEach((fold) => (fold.open = true)));
  await line(page, '37+0 LOA');
  await page.evaluate(() => {
    for (const [id, value] of [['from', 'hers'], ['palette', '4'], ['page-lang', 'es']]) {
      const own = document.getElementById(id);
      own.value = value;
      own.dispatchEvent(new Event('change'));
    }
    document.getElementById('keep').click();
  });
  assert.ok(!/hers|"4"|"es"|page-lang|palette/.test(await page.evaluate(() => JSON.stringify(localStorage))));
  // What was taken in hand, and the dark in which she was shown it.
  await page.locator('#to-picture').click();
  await page.locator('#from').evaluate((own) => ((own.value = 'facing'), own.dispatchEvent(new Event('change'))));
  await settled(page);
  await page.locator('[data-tool=heart]').click();
  await page.locator('#show-her').click();
  await page.locator('#her-dark').click();
  await page.locator('#her [data-close]').click();
  await page.locator('#from').evaluate((own) => ((own.value = 'hers'), own.dispatchEvent(new Event('change'))));
  await page.locator('#new-visit').click();
  await page.locator('#new [data-close=so]').click();
  await page.waitForFunction(() => !document.getElementById('line').value);
  await settled(page);
  assert.deepEqual(await page.evaluate(() => ['from', 'palette', 'page-lang'].map((id) => document.getElementById(id).value)), ['facing', '0', '']);
  assert.equal(await page.locator('[data-tool=heart]').getAttribute('aria-pressed'), 'false');
  assert.equal(await page.locator('#her').evaluate((own) => own.classList.contains('dark')), false);
  assert.equal(await page.locator('#stage-said').textContent(), '');
  await context.close();
});

test('the sheet of several visits names its files and dates, and another woman is refused', async () => {
  const { page, context } = await open();
  const visit = (name, due, day) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(`visit = ${day}\ndue = ${due}\n[mother]\nfundal-height = "30 cm"\n`) });
  await page.locator('#growth-files').setInputFiles([visit('one.toml', '2026-05-01', '2026-03-02'), visit('two.toml', '2026-07-20', '2026-04-20')]);
  await page.locator('#woman').waitFor();
  const listed = await page.locator('#woman-files').innerText();
  for (const words of ['one.toml', '2026-03-02', 'two.toml', '2026-04-20']) assert.ok(listed.includes(words), listed);
  await page.locator('#woman [data-close=so]').click();
  await page.waitForFunction(() => document.getElementById('take-why').textContent);
  assert.match(await page.locator('#take-why').textContent(), /due/i);
  await context.close();
});

test('the hands of a palpation are shown on a belly that is marked as not hers, and nothing of it is recorded', async () => {
  const { page, context } = await open(PHONE);
  for (const finding of ['breech', 'back', 'head', 'head-above-brim']) {
    await step(page, finding);
    await page.locator('.step:not(.off) .show-palpation').tap();
    const image = page.locator('#palpation-figure img');
    await image.evaluate((own) => own.decode());
    const [mark, picture] = [await page.locator('#palpation .not-hers').boundingBox(), await image.boundingBox()];
    assert.ok(mark.y >= picture.y && mark.y + mark.height <= picture.y + picture.height, 'the mark lies on the picture');
    assert.match(await page.locator('#palpation .not-hers').innerText(), /not her baby/);
    await page.locator('#palpation [data-close]').tap();
  }
  assert.equal(await page.locator('#line').inputValue(), '');
  await context.close();
});

test('teaching is marked as not her baby, over the picture, in every view of it', async () => {
  const { page, context } = await open(PHONE);
  await page.locator('#open-teach').click();
  const over = async () => {
    const mark = await page.locator('.not-hers').boundingBox();
    const picture = await page.locator('#teach-picture').boundingBox();
    assert.ok(mark.y >= picture.y && mark.y + mark.height <= picture.y + picture.height, 'the mark lies on the picture');
    assert.match(await page.locator('.not-hers').innerText(), /not her baby/);
  };
  await over();
  await page.locator('#dials').getByRole('button', { name: 'Head high' }).click();
  await over();
  await page.getByRole('button', { name: 'Full screen' }).click();
  assert.ok(!(await page.locator('#fault').isVisible()));
  await over();
  await context.close();
});
