// The page for a telephone, as the program writes it: axe finds nothing in it at three widths, in light and in dark; nothing is
// asked for and nothing refused by its policy; nothing is wider than the screen; on paper it takes its two sides.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { after, test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { AXE, ROOT, blank, stop } from './browser.mjs';

const PROGRAM = process.env.HANDSPAN ?? resolve(ROOT, process.env.CARGO_TARGET_DIR ?? 'target', 'debug/handspan');
const directory = mkdtempSync(join(tmpdir(), 'handspan-phone-'));
const PAGES = [
  ['head-down-left', []],
  ['probably-breech', ['--layout', 'picture-first']],
  ['twins', ['--invite-listening']],
  ['crosswise', ['--lang', 'es', '--draft']],
];
for (const [name, options] of PAGES) {
  const file = join(directory, `${name}.html`);
  execFileSync(PROGRAM, ['family-page', `examples/${name}.toml`, '--clinic', 'examples/clinic.toml', ...options, '-o', file], { cwd: ROOT, stdio: 'ignore' });
}
after(stop);

/** A page in the browser, and what it asked for and what went wrong. */
async function shown(name, options) {
  const { page, requested, faults } = await blank(options);
  await page.goto(pathToFileURL(join(directory, `${name}.html`)).href);
  return { page, requested, faults };
}

for (const [name] of PAGES) {
  for (const colorScheme of ['light', 'dark']) {
    for (const [width, height] of [[390, 844], [768, 1024], [1280, 900]]) {
      test(`axe finds nothing in ${name}, ${colorScheme}, ${width} px`, async () => {
        // The policy lets no script run in the page; the tool that judges it comes in beside it.
        const { page, requested, faults } = await shown(name, { colorScheme, viewport: { width, height }, bypassCSP: true });
        await page.evaluate(AXE);
        const { violations, passes } = await page.evaluate(() => axe.run(document, { runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] }));
        assert.deepEqual(violations.map((one) => `${one.id}: ${one.nodes.map((node) => node.html).slice(0, 3).join(' | ')}`), []);
        assert.ok(passes.length > 15, 'it looked');
        const wide = await page.evaluate(() => document.documentElement.scrollWidth);
        assert.ok(wide <= width, `${wide} px wide`);
        assert.equal(requested.length, 1, requested.join(' '));
        assert.deepEqual(faults, []);
        await page.context().close();
      });
    }
  }
}

test('its own policy refuses nothing of it, and lets no script in', async () => {
  const { page, requested, faults } = await shown('head-down-left', { viewport: { width: 390, height: 844 } });
  assert.deepEqual(faults, []);
  // Its style is in force: the number stands where it is always seen, large enough to be pressed.
  const bar = page.locator('.bar');
  assert.equal(await bar.evaluate((node) => getComputedStyle(node).position), 'sticky');
  await page.evaluate(() => scrollTo(0, document.body.scrollHeight));
  const [number, emergency] = await bar.locator('a').all();
  const box = await number.boundingBox();
  assert.ok(box.y >= 0 && box.y < 60 && box.height >= 44, JSON.stringify(box));
  assert.equal(await number.getAttribute('href'), 'tel:01632960123');
  assert.equal(await emergency.getAttribute('href'), 'tel:999');
  await page.evaluate(() => {
    const script = document.createElement('script');
    script.textContent = 'document.title = "changed"';
    document.head.append(script);
  });
  assert.notEqual(await page.title(), 'changed');
  assert.equal(requested.length, 1);
  await page.context().close();
});

test('labels of the picture can be read without a zoom', async () => {
  const { page } = await shown('twins', { viewport: { width: 390, height: 844 } });
  const sizes = await page.evaluate(() => {
    const picture = document.querySelector('.picture svg');
    const scale = picture.getBoundingClientRect().width / picture.viewBox.baseVal.width;
    return [...picture.querySelectorAll('text')].map((text) => text.getAttribute('font-size') * scale);
  });
  assert.ok(sizes.length > 5 && Math.min(...sizes) >= 12, sizes.join(' '));
  await page.context().close();
});

for (const [name, options] of PAGES) {
  test(`${name} takes as many sides of paper as the paper page`, async () => {
    const { page } = await shown(name, {});
    const sides = (bytes) => bytes.toString('latin1').match(/\/Type\s*\/Page\b/g).length;
    const printed = sides(await page.pdf({ preferCSSPageSize: true }));
    const articles = await page.locator('article').count();
    const file = join(directory, `${name}.pdf`);
    execFileSync(PROGRAM, ['family-page', `examples/${name}.toml`, '--clinic', 'examples/clinic.toml', ...options, '-o', file], { cwd: ROOT, stdio: 'ignore' });
    // Two languages stand side by side on the paper page, one after the other here.
    assert.equal(printed, articles * sides(readFileSync(file)), 'sides of paper');
    await page.context().close();
  });
}
