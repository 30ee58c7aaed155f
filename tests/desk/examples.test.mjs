// Every example entered by tapping alone, and by the keyboard alone, gives byte for byte the picture of the program.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { after, test } from 'node:test';
import { ROOT, checked, downloaded, open, stop, written } from './browser.mjs';
import { enter, finger, keyboard } from './enter.mjs';

const EXAMPLES = readdirSync(join(ROOT, 'examples')).filter((name) => name.endsWith('.toml') && name !== 'clinic.toml');
after(stop);

for (const [way, hand] of [['tapping', finger], ['the keyboard', keyboard]]) {
  for (const example of EXAMPLES) {
    test(`${example} by ${way} alone`, async () => {
      const file = join('examples', example);
      const { read } = checked(file);
      const { page, context, requested, faults } = await open(way === 'tapping' ? { hasTouch: true } : {});
      const own = hand(page);
      await enter(page, own, read);
      const { bytes } = await downloaded(page, () => page.locator('[data-take=exam]').click());
      const again = join(process.env.TMPDIR ?? '/tmp', `desk-${process.pid}.toml`);
      await (await import('node:fs/promises')).writeFile(again, bytes);
      assert.deepEqual(checked(again).read, read, bytes.toString());
      for (const format of ['svg', 'png', 'pdf']) {
        const made = await downloaded(page, async () => {
          await page.locator(`[data-take=${format}]`).click();
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
