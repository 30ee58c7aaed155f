// A picture of the desk with a visit in it. usage: node examples/pictures/desk.mjs FILE   (after src/desk/build)
import { join } from 'node:path';
import { ROOT, open, settled, stop } from '../../tests/desk/browser.mjs';

const { page } = await open({ colorScheme: 'light', viewport: { width: 1200, height: 800 } });
await page.locator('#file').setInputFiles(join(ROOT, 'examples/head-down-left.toml'));
await settled(page);
// The small pictures of common ways to lie come one after another.
await page.waitForFunction(() => [...document.querySelectorAll('#ways img')].every((way) => way.src && way.complete), null, { timeout: 120_000 });
await page.screenshot({ path: process.argv[2] });
await stop();
