// Every example entered by tapping alone, some on a phone, and by the keyboard alone, gives byte for byte the pictures of the program.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { ROOT, checked, downloaded, open, stop, written } from './browser.mjs';
import { enter, finger, give, keyboard } from './enter.mjs';

const EXAMPLES = readdirSync(join(ROOT, 'examples')).filter((name) => name.endsWith('.toml') && name !== 'clinic.toml');
after(stop);

const PHONE = { hasTouch: true, isMobile: true, viewport: { width: 360, height: 740 } };
const WAYS = [
  ['tapping', finger, EXAMPLES, { hasTouch: true }],
  ['tapping on a phone', finger, ['head-down-left.toml', 'twelve-weeks.toml'], PHONE],
  ['the keyboard', keyboard, EXAMPLES, {}],
];

for (const [way, hand, examples, screen] of WAYS) {
  for (const example of examples) {
    test(`${example} by ${way} alone`, async () => {
      const file = join('examples', example);
      const { read } = checked(file);
      const { page, context, requested, faults } = await open(screen);
      const own = hand(page);
      await enter(page, own, read);
      const { bytes } = await downloaded(page, () => give(page, 'exam'));
      const again = join(process.env.TMPDIR ?? '/tmp', `desk-${process.pid}.toml`);
      await (await import('node:fs/promises')).writeFile(again, bytes);
      assert.deepEqual(checked(again).read, read, bytes.toString());
      for (const format of ['svg', 'png', 'pdf']) {
        const made = await downloaded(page, async () => {
          await give(page, format);
          await page.locator('#read-back-so').click();
        });
        assert.ok(made.bytes.equals(written(format, 'draw', file)), `${format} differs`);
      }
      assert.deepEqual(faults, []);
      assert.equal(requested.filter((address) => !/^(blob|data):/.test(address)).length, 1, requested.join(' '));
      await context.close();
    });
  }
}
