// The page as a whole: what it may reach, what it keeps, what it says when it breaks, what it takes and gives.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { AXE, PAGE, ROOT, checked, downloaded, open, served, settled, stop, written } from './browser.mjs';
import { at, enter, finger, give, line } from './enter.mjs';

after(stop);
const example = (name) => join(ROOT, 'examples', name);
/** What cannot wait in `examples/bleeding.toml`; a page may be made despite it. */
const BLEEDING = ['movements-fewer', 'bleeding', 'constant-pain', 'hard-tender-womb', 'heart-outside-usual-with-signs'];
const openFile = async (page, path) => {
  await page.locator('#file').setInputFiles(path);
  await page.waitForFunction(() => document.querySelector('dialog[open]') || document.querySelector('#line').value);
  await settled(page);
};
const text = async (page) => {
  const { bytes } = await downloaded(page, () => give(page, 'exam'));
  return bytes.toString();
};
const tap = async (page, finding, name) => {
  await at(page, finding);
  await page.locator(`#finding-${finding}`).getByRole('button', { name, exact: true }).click();
  await settled(page);
};
const nothing = (page) => page.locator('#conclusion').filter({ hasText: 'Nothing recorded yet' }).waitFor();

for (const from of ['disk', 'an address']) {
  test(`from ${from}: ready, no request but itself, and no other is possible`, async () => {
    const { page, context, requested, faults } = await open(from === 'disk' ? {} : { address: await served() });
    assert.equal(requested.filter((address) => !/^(blob|data):/.test(address)).length, 1, requested.join(' '));
    assert.deepEqual(faults, []);
    const tried = await page.evaluate(async () => {
      const out = {};
      out.fetch = await fetch(location.href).then(() => 'sent', () => 'blocked');
      out.image = await new Promise((done) => {
        const image = new Image();
        image.onload = () => done('sent');
        image.onerror = () => done('blocked');
        image.src = 'https://example.invalid/x.png';
      });
      const script = document.createElement('script');
      script.textContent = 'window.slipped = true';
      document.body.append(script);
      out.script = window.slipped ? 'ran' : 'blocked';
      document.body.insertAdjacentHTML('beforeend', '<p id="slip" onclick="window.slipped = true">x</p>');
      document.getElementById('slip').click();
      out.handler = window.slipped ? 'ran' : 'blocked';
      try {
        out.code = eval('1') && 'ran';
      } catch {
        out.code = 'blocked';
      }
      return out;
    });
    assert.deepEqual(tried, { fetch: 'blocked', image: 'blocked', script: 'blocked', handler: 'blocked', code: 'blocked' });
    await context.close();
  });
}

test('the file names no path of the machine that built it, and stays under its size', () => {
  const bytes = readFileSync(PAGE);
  assert.ok(bytes.length <= 3_800_000, `${bytes.length}`);
  assert.ok(!bytes.includes(ROOT));
});

test('everything that can be taken away is what the program writes', async () => {
  const { page, context } = await open();
  const file = 'examples/head-down-left.toml';
  await openFile(page, example('head-down-left.toml'));
  for (const [kind, ending, ...words] of [
    ['page', 'pdf', 'handout'],
    ['guide', 'pdf', 'skin-guide'],
    ['slip', 'pdf', 'note'],
  ]) {
    const made = await downloaded(page, async () => {
      await give(page, kind);
      assert.match(await page.locator('#read-back-lines').innerText(), /Back to HER LEFT: on your right as you face her\./);
      await page.locator('#read-back-so').click();
    });
    assert.ok(made.bytes.equals(written(ending, ...words, file)), `${kind} differs`);
  }
  // The guide for a minute, a left hand and her skin, as it is asked for beside its sides.
  const short = await downloaded(page, async () => {
    await give(page, 'guide');
    for (const [id, value] of [['minutes', '1'], ['hand', 'left'], ['skin', '5']]) await page.locator(`#guide-${id}`).selectOption(value);
    await page.locator('#read-back-so').click();
  });
  assert.ok(short.bytes.equals(written('pdf', 'skin-guide', '--minutes', '1', '--left-handed', '--palette', 'deeper', file)), 'the short guide differs');
  await give(page, 'page');
  assert.ok(!(await page.locator('#read-back-guide').isVisible()), 'asked for the guide alone');
  await page.locator('#read-back [data-close=""]').click();
  for (const [kind, form] of [['note', 'text'], ['handover', 'handover']]) {
    await give(page, kind);
    assert.equal(await page.locator('#text-body').inputValue(), written('txt', 'note', '--as', form, file).toString());
    await page.locator('#text [data-close]').click();
  }
  const whole = JSON.parse((await downloaded(page, () => give(page, 'fhir'))).bytes);
  const shared = JSON.parse((await downloaded(page, () => give(page, 'share'))).bytes);
  assert.equal(whole.resourceType, 'Bundle');
  assert.equal(shared.resourceType, 'Bundle');
  const again = JSON.parse((await downloaded(page, () => give(page, 'fhir'))).bytes);
  assert.notEqual(again.entry[0].fullUrl, whole.entry[0].fullUrl, 'ids are random');
  await context.close();
});

test('printing prints the family page and nothing else', async () => {
  const { page, context } = await open({
    before: () => {
      window.print = () => {
        window.printed = [...document.querySelectorAll('#printed img')].map((image) => image.naturalWidth);
      };
    },
  });
  await openFile(page, example('head-down-left.toml'));
  await give(page, 'print');
  await page.locator('#read-back-so').click();
  await page.waitForFunction(() => window.printed?.length > 0 && window.printed.every((width) => width > 0));
  await page.emulateMedia({ media: 'print' });
  const shown = await page.evaluate(() => [...document.body.children].filter((own) => getComputedStyle(own).display !== 'none').map((own) => own.id));
  assert.deepEqual(shown, ['printed']);
  await context.close();
});

test('several visits in files become the tape over the visits', async () => {
  const { page, context } = await open();
  const files = ['28-weeks', '31-weeks', '34-weeks', '36-weeks'].map((name) => `examples/growth/${name}.toml`);
  const same = async (give) => {
    await give();
    await page.locator('#woman [data-close=so]').click();
  };
  const made = await downloaded(page, () => same(() => page.locator('#growth-files').setInputFiles(files.map((file) => join(ROOT, file)))));
  assert.ok(made.bytes.equals(written('pdf', 'growth', ...files)));
  const drop = (paths) => async () => {
    const given = paths.map((path) => [path, readFileSync(join(ROOT, path), 'utf8')]);
    const carried = await page.evaluateHandle((given) => {
      const own = new DataTransfer();
      for (const [name, text] of given) own.items.add(new File([text], name, { type: 'text/plain' }));
      return own;
    }, given);
    await page.dispatchEvent('body', 'drop', { dataTransfer: carried });
  };
  assert.ok((await downloaded(page, () => same(drop(files)))).bytes.equals(made.bytes), 'several files dropped');
  await drop(files.slice(3))();
  assert.equal(await text(page), readFileSync(join(ROOT, files[3]), 'utf8'), 'one file dropped is opened');
  await context.close();
});

test('open, edit, save: comments stay, and only what was changed changes', async () => {
  const { page, context } = await open();
  const before = readFileSync(example('earlier-caesarean.toml'), 'utf8');
  await openFile(page, example('earlier-caesarean.toml'));
  assert.equal(await text(page), before);
  await at(page, 'fundal-height');
  await page.locator('#finding-fundal-height .typed input').fill('38');
  await page.locator('#finding-fundal-height .typed input').press('Enter');
  assert.equal(await text(page), before.replace('"36 cm"', '"38 cm"'));
  await page.locator('#undo').click();
  await settled(page);
  assert.equal(await text(page), before);
  await context.close();
});

test('a file opened over findings that are in no file asks first, and nothing can be undone into it', async () => {
  const { page, context } = await open();
  await line(page, '37+0 LOA 2/5 palp');
  const before = await text(page);
  await tap(page, 'movements', 'usual');
  await openFile(page, example('bleeding.toml'));
  await page.locator('#new [data-close=""]').click();
  assert.notEqual(await text(page), before, 'the findings stay');
  // Saved just now: nothing would be lost.
  await openFile(page, example('bleeding.toml'));
  await page.locator('#act-now').waitFor();
  assert.equal(await text(page), readFileSync(example('bleeding.toml'), 'utf8'));
  assert.ok(await page.locator('#undo').isDisabled());
  await context.close();
});

test('a file with faults is told line by line and can be mended', async () => {
  const { page, context } = await open();
  await openFile(page, { name: 'visit.toml', mimeType: 'text/plain', buffer: Buffer.from('weeks = "37+0"\n[baby]\nback = "lft"\n') });
  assert.match(await page.locator('#mend-why').innerText(), /Line 3/);
  await page.locator('#mend-text').fill('weeks = "37+0"\n[baby]\nback = "left"\n');
  await page.locator('#mend [data-close=so]').click();
  await page.locator('#conclusion').filter({ hasText: 'back to her left' }).waitFor();
  await context.close();
});

test('one line fills the form, and the form shows as a line', async () => {
  const { page, context } = await open();
  await line(page, '37+0 LOA 2/5');
  assert.match(await page.locator('#line-why').innerText(), /2\/5 felt above the brim/);
  await nothing(page);
  await line(page, '37+0 LOA 2/5 palp SFH 34');
  assert.equal(await page.locator('#finding-position .now').textContent(), 'LOA');
  assert.equal(await page.locator('#finding-head-above-brim .now').textContent(), '2/5');
  await tap(page, 'head-above-brim', '3/5 palpable above the brim');
  assert.match(await page.locator('#line').inputValue(), /37\+0; .*LOA; 3\/5 palp/);
  await context.close();
});

test('what cannot wait stands first, is spoken, and keeps the family page back', async () => {
  const { page, context } = await open();
  await openFile(page, example('heart-not-heard.toml'));
  await page.locator('#remarks h3').first().waitFor();
  const grades = await page.locator('#remarks h3').allInnerTexts();
  assert.equal(grades[0].toLowerCase(), 'act now');
  assert.ok(await page.locator('#act-now').isVisible());
  assert.match(await page.locator('#status').innerText(), /Act now: /);
  await give(page, 'page');
  assert.ok(await page.locator('#read-back-so').isDisabled());
  // While the heart has not been heard nothing goes home, whatever is ticked.
  for (const box of await page.locator('#read-back-pressing input').all()) await box.check();
  assert.ok(await page.locator('#read-back-so').isDisabled());
  assert.match(await page.locator('#read-back-pressing').innerText(), /the heart has not been heard/);
  await page.locator('#read-back [data-close=""]').click();
  await openFile(page, example('bleeding.toml'));
  await give(page, 'page');
  assert.ok(await page.locator('#read-back-so').isDisabled());
  for (const box of await page.locator('#read-back-pressing input').all()) await box.check();
  const made = await downloaded(page, () => page.locator('#read-back-so').click());
  const despite = BLEEDING.flatMap((id) => ['--despite', id]);
  assert.ok(made.bytes.equals(written('pdf', 'handout', 'examples/bleeding.toml', ...despite)));
  await openFile(page, example('does-not-agree.toml'));
  await give(page, 'page');
  assert.ok(await page.locator('#read-back-so').isDisabled());
  await context.close();
});

test('the wrong side is seen from both ends', async () => {
  const { page, context } = await open();
  for (const [side, facing] of [['LEFT', 'right'], ['RIGHT', 'left']]) {
    const own = side.toLowerCase();
    await at(page, 'heart');
    const spot = page.locator('#finding-heart .outline').getByRole('button', { name: `hers: ${own}, below navel`, exact: true });
    const box = await spot.boundingBox();
    const whole = await page.locator('#finding-heart .outline').boundingBox();
    const middle = whole.x + whole.width / 2;
    assert.ok(side === 'LEFT' ? box.x > middle : box.x + box.width < middle, `${side} is at the viewer's ${facing}`);
    const name = page.locator('#finding-heart .own-side', { hasText: `Her ${own}` });
    const named = await name.boundingBox();
    assert.ok(await name.isVisible());
    assert.ok(side === 'LEFT' ? named.x > middle : named.x + named.width < middle, 'the sides are named where they are');
    await spot.click();
    await at(page, 'back');
    await page.locator(`#finding-back [data-value="${own} front"]`).click();
    await settled(page);
    const pressed = await page.locator('#finding-back [aria-pressed=true]').boundingBox();
    const grid = await page.locator('.back-grid').boundingBox();
    assert.ok(side === 'LEFT' ? pressed.x > grid.x + grid.width / 2 : pressed.x < grid.x + grid.width / 2);
    assert.equal(await page.locator('#finding-back .now').innerText(), `${own} front`);
    await give(page, 'svg');
    assert.match(await page.locator('#read-back-lines').innerText(), new RegExp(`Back to HER ${side}: on your ${facing}`));
    await page.locator('#read-back [data-close=""]').click();
  }
  await context.close();
});

test('beats are counted by tapping against a clock', async () => {
  const { page, context } = await open();
  await at(page, 'heart-counts');
  // Time stands still but for the test.
  await page.clock.install({ time: 0 });
  await page.clock.pauseAt(1000);
  const finding = page.locator('#finding-heart-counts');
  await finding.getByRole('button', { name: '6 s', exact: true }).click();
  const beat = finding.locator('.beat');
  await beat.click();
  for (let count = 0; count < 14; count++) await beat.click();
  assert.match(await beat.getAttribute('aria-label'), /14 so far/);
  await page.clock.runFor(6200);
  assert.equal(await finding.locator('.now').innerText(), '14 in 6 s');
  await beat.focus();
  await page.keyboard.press('Space');
  for (let count = 0; count < 13; count++) await page.keyboard.press('Space');
  await page.clock.runFor(6200);
  assert.equal(await finding.locator('.now').innerText(), '14 in 6 s; 13 in 6 s');
  await context.close();
});

test('places are reached on the outline with the arrow keys', async () => {
  const { page, context } = await open();
  await at(page, 'heart');
  const field = page.locator('#finding-heart .outline');
  await field.locator('.spot[tabindex="0"]').focus();
  const here = () => page.evaluate(() => document.activeElement.getAttribute('aria-label'));
  const seen = new Set([await here()]);
  for (const key of ['ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowLeft', 'ArrowDown', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowRight', 'ArrowDown', 'ArrowLeft', 'ArrowLeft', 'ArrowDown']) {
    await page.keyboard.press(key);
    seen.add(await here());
  }
  assert.ok(seen.size >= 15, [...seen].join('\n'));
  await page.keyboard.press('Enter');
  await settled(page);
  assert.equal(`hers: ${await page.locator('#finding-heart .now').innerText()}`, await here());
  await context.close();
});

test('a panic inside keeps what was entered, and the page goes on', async () => {
  const { page, context } = await open({
    before: () => {
      const real = WebAssembly.instantiate;
      WebAssembly.instantiate = async (...given) => {
        const made = await real(...given);
        // What unpacks the library is left alone.
        if (made.instance) return made;
        const exports = { ...made.exports };
        exports.handspan_run = (at, length) => {
          // The small pictures of the start are drawn whenever the page has nothing else to do: they are not what is broken.
          const asked = new TextDecoder().decode(new Uint8Array(made.exports.memory.buffer, at, length));
          if (!window.breakNext || !asked.includes('movements')) return made.exports.handspan_run(at, length);
          window.breakNext = false;
          // A length that no memory has: the library traps.
          return made.exports.handspan_run(0xfffffff0, 0x7fffffff);
        };
        return { exports };
      };
    },
  });
  await line(page, '37+0 LOA 2/5 palp');
  await at(page, 'movements');
  await page.evaluate(() => (window.breakNext = true));
  await page.locator('#finding-movements').getByRole('button', { name: 'usual', exact: true }).click();
  await page.locator('#fault').waitFor();
  assert.match(await page.locator('#fault-text').inputValue(), /position = "LOA"/);
  await page.locator('#fault [data-close]').click();
  await tap(page, 'movements', 'usual');
  assert.equal(await page.locator('#finding-movements .now').innerText(), 'usual');
  assert.match(await text(page), /LOA/);
  await context.close();
});

test('settings are kept only when asked, a finding never, and one button forgets everything', async () => {
  const { page, context } = await open();
  const kept = () => page.evaluate(() => JSON.stringify(localStorage));
  await page.locator('#to-take').click();
  await page.locator('.settings summary').click();
  await page.locator('#clinic-name').fill('Larkfield Midwives');
  await page.locator('#clinic-name').press('Tab');
  await openFile(page, example('bleeding.toml'));
  assert.equal(await kept(), '{}');
  await page.locator('#keep').check();
  assert.match(await kept(), /Larkfield/);
  assert.ok(!/hard|bleeding|29/.test(await kept()));
  await page.reload();
  await page.waitForSelector('html.ready');
  assert.equal(await page.locator('#clinic-name').inputValue(), 'Larkfield Midwives');
  await nothing(page);
  await page.locator('#to-take').click();
  await page.locator('.settings summary').click();
  await page.locator('#forget-all').click();
  assert.equal(await kept(), '{}');
  assert.equal(await page.locator('#clinic-name').inputValue(), '');
  await context.close();
});

test('another language at once: what was entered stays; a draft says that it is one, and the English stands beside', async () => {
  const { page, context, requested } = await open();
  const file = 'examples/bleeding.toml';
  await openFile(page, join(ROOT, file));
  await page.locator('#to-take').click();
  await page.locator('.settings summary').click();
  const choose = (tag) => page.locator('#lang').selectOption(tag);
  const before = await text(page);
  const remarks = await page.locator('#remarks li p').allInnerTexts();
  const conclusion = await page.locator('#conclusion p').allInnerTexts();
  const findings = await page.locator('#form .now').allTextContents();
  const title = await page.title();
  assert.ok(!(await page.locator('#draft').isVisible()));
  for (const [tag, mark] of [['es', 'BORRADOR'], ['fr', 'BROUILLON']]) {
    await choose(tag);
    assert.equal(await page.getAttribute('html', 'lang'), tag);
    assert.notEqual(await page.title(), title);
    assert.equal(await text(page), before, 'what was entered stays');
    assert.match(await page.locator('#draft').innerText(), new RegExp(mark));
    assert.deepEqual(await page.locator('#remarks .english').allInnerTexts(), remarks);
    assert.deepEqual(await page.locator('#conclusion .english').allInnerTexts(), conclusion);
    assert.ok((await page.locator('#act-now .text').innerText()).includes(remarks[0]), 'in both languages');
    const said = await page.locator('#form .now').allTextContents();
    assert.equal(said.length, findings.length);
    for (const [at, own] of said.entries()) assert.ok(own !== findings[at] || own === 'Doppler' || !/[a-z]{4}/.test(own), own);
    assert.deepEqual(await page.locator('[data-say]:empty').count(), 0);
    await give(page, 'pdf');
    assert.equal(await page.locator('#read-back-said .english').count(), conclusion.length);
    const picture = await downloaded(page, () => page.locator('#read-back-so').click());
    assert.ok(picture.bytes.equals(written('pdf', 'draw', file, '--lang', tag, '--draft')), `the picture in ${tag}`);
    await give(page, 'page');
    for (const box of await page.locator('#read-back-pressing input').all()) await box.check();
    const handout = await downloaded(page, () => page.locator('#read-back-so').click());
    const despite = BLEEDING.flatMap((id) => ['--despite', id]);
    assert.ok(handout.bytes.equals(written('pdf', 'handout', file, '--lang', tag, '--draft', ...despite)), `the page in ${tag}`);
    await page.evaluate(AXE);
    const { violations } = await page.evaluate(() => axe.run(document));
    assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`), [], tag);
  }
  await choose('en-US');
  assert.ok((await page.locator('.settings').textContent()).includes('Labor ward'));
  await choose('en');
  assert.ok(!(await page.locator('#draft').isVisible()));
  assert.equal(await page.locator('.english').count(), 0);
  assert.deepEqual(await page.locator('#form .now').allTextContents(), findings);
  assert.equal(requested.filter((address) => !/^(blob|data):/.test(address)).length, 1, 'nothing is fetched');
  await context.close();
});

test('after 20 idle minutes the page blanks itself', async () => {
  const { page, context } = await open({ clock: true });
  await openFile(page, example('bleeding.toml'));
  await page.locator('#title').click();
  await page.clock.runFor(19 * 60 * 1000);
  assert.ok(!(await page.locator('#blank').isVisible()));
  await page.clock.runFor(2 * 60 * 1000);
  assert.ok(await page.locator('#blank').isVisible());
  assert.ok(!(await page.locator('#conclusion').isVisible()));
  await page.locator('#blank [data-close=so]').click();
  await nothing(page);
  await context.close();
});

/** Everything of a visit that a page could still hold. */
const residue = (page) =>
  page.evaluate(() => {
    const fields = [...document.querySelectorAll('#form input:not([type=checkbox]), #form textarea, #form select, #line, dialog textarea, #mend textarea')].map((own) => own.value).join('|');
    return { fields: fields.replace(/\||0$/g, ''), pressed: document.querySelectorAll('#form [aria-pressed=true]').length, now: [...new Set([...document.querySelectorAll('.now')].map((own) => own.textContent))], said: document.getElementById('conclusion').textContent, remarks: document.getElementById('remarks').textContent, status: document.getElementById('status').textContent, alarm: !document.getElementById('act-now').hidden, undo: !document.getElementById('undo').disabled };
  });

test('two visits in a row, interrupted: nothing of one woman is carried to the next, in 50 tries', async () => {
  const { page, context } = await open();
  const names = ['head-down-left', 'bleeding', 'twins', 'heart-not-heard', 'earlier-caesarean', 'dated-by-scan', 'back-to-back', 'does-not-agree', 'fibroid', 'no'].slice(0, 9);
  const empty = await residue(page);
  const hand = finger(page);
  for (let attempt = 0; attempt < 50; attempt++) {
    const { read } = checked(example(`${names[attempt % names.length]}.toml`));
    const some = Object.entries(read).slice(attempt % 3, 2 + (attempt % 5) + (attempt % 3));
    if (attempt % 2) await openFile(page, example(`${names[attempt % names.length]}.toml`));
    else await enter(page, hand, Object.fromEntries(some.filter(([key]) => !key.startsWith('baby.2'))));
    // Interrupted in the middle of something: a word half typed, a clock that runs, a dialog, an error.
    const stop = attempt % 5;
    await page.locator('#to-picture').click();
    await at(page, ['pulse', 'heart-counts', 'weeks', 'fundal-height', 'limbs'][stop]);
    if (stop === 0) await page.locator('#finding-pulse .typed input').pressSequentially('9');
    if (stop === 1) await page.locator('#finding-heart-counts .beat').click();
    if (stop === 2) await page.locator('#to-picture').click();
    if (stop === 2) await page.locator('#line').fill('38+0 ROA half');
    if (stop === 3) await page.locator('#finding-fundal-height .typed input').fill('thirty');
    if (stop === 4) await page.locator('#finding-limbs').getByRole('button', { name: 'could not tell', exact: true }).click();
    await page.locator('#new-visit').click();
    await page.locator('#new [data-close=so]').click();
    await nothing(page);
    const left = await residue(page);
    assert.deepEqual({ ...left, status: '' }, { ...empty, status: '' }, `try ${attempt}`);
    assert.ok(await page.locator('.end [data-take=exam]').isDisabled());
  }
  // A clock or a word that was waiting does not come later.
  await page.waitForTimeout(1000);
  assert.deepEqual({ ...(await residue(page)), status: '' }, { ...empty, status: '' });
  await context.close();
});

test('two babies: the second comes and goes', async () => {
  const { page, context } = await open();
  await at(page, 'heart');
  const babies = page.locator('[data-babies=listen]');
  await at(page, 'breech');
  await page.locator('[data-babies=grip-1] button').click();
  await settled(page);
  await at(page, 'heart');
  await page.locator('#finding-heart').getByRole('button', { name: 'hers: left, above navel', exact: true }).click();
  await settled(page);
  assert.match(await text(page), /\[\[baby\]\][^]*\[\[baby\]\]\nheart/);
  await at(page, 'heart');
  await babies.getByRole('button', { name: 'Baby 1', exact: true }).click();
  assert.equal(await page.locator('#finding-heart .now').innerText(), 'not examined');
  await at(page, 'breech');
  await page.locator('[data-babies=grip-1]').getByRole('button', { name: 'Only one baby' }).click();
  await page.locator('#one-baby [data-close=so]').click();
  await page.waitForFunction(() => !document.getElementById('line').value.includes('baby 2'));
  assert.ok(!(await page.locator('#line').inputValue()).includes('baby 2'));
  await context.close();
});

test('the teaching dial draws any position and leaves the visit alone', async () => {
  const { page, context } = await open();
  await page.locator('#open-teach').click();
  const said = page.locator('#teach-said');
  assert.match(await said.innerText(), /LOA/);
  await page.getByRole('button', { name: 'Turn the baby: one step on' }).click();
  assert.match(await said.innerText(), /LOT/);
  for (let step = 0; step < 4; step++) await page.getByRole('button', { name: 'Turn the baby: one step on' }).click();
  assert.match(await said.innerText(), /ROT/);
  await page.getByRole('button', { name: 'Head high' }).click();
  assert.match(await said.innerText(), /RST/);
  await page.getByRole('button', { name: 'Tilt the lie: one step on' }).click();
  await page.getByRole('button', { name: 'Tilt the lie: one step on' }).click();
  assert.match(await said.innerText(), /Transverse lie.*her left/);
  await page.locator('#teach [data-close]').click();
  await nothing(page);
  await context.close();
});

/** A finding of each step. */
const STEPS = ['weeks', 'movements', 'shape', 'breech', 'back', 'head', 'head-above-brim', 'heart', 'fundal-height', 'position'];

for (const theme of ['light', 'dark']) {
  for (const width of [320, 768, 1280]) {
    test(`axe finds nothing, ${theme}, ${width} px, in every state`, async () => {
      const { page, context } = await open({ colorScheme: theme, viewport: { width, height: 800 } });
      const judged = async (state) => {
        await page.evaluate(AXE);
        const { violations } = await page.evaluate(() => axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
        assert.deepEqual(violations.map(({ id, nodes }) => `${id}: ${nodes.map((node) => node.html).slice(0, 3).join(' ')}`), [], state);
        const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
        assert.ok(over <= 0, `${state}: ${over} px too wide`);
      };
      await judged('empty');
      for (const fold of await page.locator('details').all()) await fold.evaluate((own) => (own.open = true));
      await openFile(page, example('twins.toml'));
      await judged('twins');
      for (const step of STEPS) {
        await at(page, step);
        await judged(step);
      }
      for (const way of ['#to-remarks', '#to-take', '#to-picture']) {
        await page.locator(way).click();
        await judged(way);
      }
      await openFile(page, example('bleeding.toml'));
      await judged('act now');
      await line(page, '37+0 LOA 2/5');
      await judged('a question');
      await page.locator('#held').getByRole('button', { name: 'Leave these words out' }).click();
      for (const [view, button, dialog] of [['take', '.end [data-take=page]', '#read-back'], ['take', '#new-visit', '#new'], ['take', '.end [data-take=note]', '#text'], ['picture', '#open-teach', '#teach'], ['picture', '#usual', '#usual-dialog'], ['picture', '#show-her', '#her'], ['picture', '#step-now', '#steps-dialog']]) {
        await page.locator(`#to-${view}`).click();
        await page.locator(button).click();
        await judged(dialog);
        await page.keyboard.press('Escape');
      }
      await context.close();
    });
  }
}

test('targets are as large as fingers need, in every step', async () => {
  const { page, context } = await open({ viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });
  for (const fold of await page.locator('details').all()) await fold.evaluate((own) => (own.open = true));
  await openFile(page, example('head-down-left.toml'));
  const small = () =>
    page.evaluate(() =>
      [...document.querySelectorAll('button, select, input:not([type=checkbox]), textarea, summary')]
        .filter((own) => own.offsetParent && !own.closest('dialog'))
        .map((own) => [own.outerHTML.slice(0, 120), own.getBoundingClientRect()])
        // Places that lie close together are chosen by whichever is nearest to the finger, and have buttons beside.
        .filter(([html, box]) => Math.min(box.width, box.height) < (html.includes('class="spot"') ? 24 : 43.5))
        .map(([html, box]) => `${Math.round(box.width)}x${Math.round(box.height)} ${html}`),
    );
  assert.deepEqual(await small(), [], 'start');
  for (const step of STEPS) {
    await at(page, step);
    assert.deepEqual(await small(), [], step);
  }
  await page.locator('#to-take').click();
  assert.deepEqual(await small(), [], 'take');
  await context.close();
});

test('nothing of the bar is cut off, in any language, on the narrowest phone', async () => {
  const { page, context } = await open({ viewport: { width: 320, height: 640 }, hasTouch: true, isMobile: true });
  await openFile(page, example('twins.toml'));
  for (const lang of ['en', 'es', 'fr']) {
    await page.locator('#lang').selectOption(lang);
    const out = await page.evaluate(() =>
      [...document.querySelectorAll('#bar button')]
        .filter((own) => own.getBoundingClientRect().right > 320 || own.getBoundingClientRect().left < 0 || own.scrollWidth > own.clientWidth + 1)
        .map((own) => own.textContent),
    );
    assert.deepEqual(out, [], lang);
  }
  await context.close();
});

test('no screen is longer than three, on a phone and a tablet', async () => {
  for (const viewport of [{ width: 390, height: 844 }, { width: 820, height: 1180 }]) {
    const { page, context } = await open({ viewport, hasTouch: true, isMobile: true });
    await openFile(page, example('head-down-left.toml'));
    const long = async (view) => {
      const height = await page.evaluate(() => document.documentElement.scrollHeight);
      assert.ok(height <= 3 * viewport.height, `${view}: ${height} px of ${viewport.height}`);
    };
    await long('start');
    for (const step of STEPS) {
      await at(page, step);
      await long(step);
    }
    for (const way of ['remarks', 'take']) {
      await page.locator(`#to-${way}`).click();
      await long(way);
    }
    await context.close();
  }
});
