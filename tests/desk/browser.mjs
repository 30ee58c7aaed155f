// A browser with the page in it. In: where the page is opened from. Out: a fresh profile each time, every request it made, and
// what went wrong in it.
import { execFileSync } from 'node:child_process';
import { createServer } from 'node:http';
import { createRequire } from 'node:module';
import { existsSync, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';

export const ROOT = resolve(import.meta.dirname, '../..');
const TARGET = resolve(ROOT, process.env.CARGO_TARGET_DIR ?? 'target');
const tools = createRequire(join(TARGET, 'outside/desk/'));
const { chromium } = tools('playwright-core');
export const AXE = readFileSync(tools.resolve('axe-core/axe.min.js'), 'utf8');
export const PAGE = join(ROOT, 'target/desk/handspan.html');
const PROGRAM = process.env.HANDSPAN ?? join(TARGET, 'debug/handspan');
const BROWSER = ['/usr/bin/chromium', '/usr/bin/google-chrome'].find((path) => existsSync(path));

let launched;
let server;

/** The browser; started once. */
async function browser() {
  launched ??= await chromium.launch({ executablePath: BROWSER, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
  return launched;
}

export async function stop() {
  await launched?.close();
  server?.close();
  launched = server = undefined;
}

/** The page as a server of this machine gives it. */
export async function served() {
  server ??= await new Promise((ready) => {
    const own = createServer((_, answer) => {
      answer.setHeader('Content-Type', 'text/html; charset=utf-8');
      answer.end(readFileSync(PAGE));
    });
    own.listen(0, '127.0.0.1', () => ready(own));
  });
  return `http://127.0.0.1:${server.address().port}/`;
}

/** The page from disk. */
export const fromDisk = pathToFileURL(PAGE).href;

/** An empty page in a fresh profile: `page`, and what it `requested` and `faults`. */
export async function blank(options = {}) {
  const context = await (await browser()).newContext({ acceptDownloads: true, locale: 'en-US', viewport: { width: 1280, height: 900 }, ...options });
  // A machine may have other work.
  context.setDefaultTimeout(120_000);
  const page = await context.newPage();
  const requested = [];
  const faults = [];
  page.on('request', (request) => requested.push(request.url()));
  page.on('pageerror', (fault) => faults.push(String(fault)));
  page.on('console', (message) => message.type() === 'error' && faults.push(message.text()));
  return { page, context, requested, faults };
}

/** Open the page: as `blank`. `before` runs in it first; `clock`: time is the test's. */
export async function open({ address = fromDisk, before, clock, ...options } = {}) {
  const { page, context, requested, faults } = await blank(options);
  if (clock) await page.clock.install();
  if (before) await page.addInitScript(before);
  await page.goto(address);
  await page.waitForSelector('html.ready');
  return { page, context, requested, faults };
}

/** Every tap is worked out, and its picture drawn. */
export async function settled(page) {
  await page.waitForFunction(() => !document.documentElement.classList.contains('busy'));
}

/** The program, for what the page must equal. */
export function program(...words) {
  return execFileSync(PROGRAM, words, { cwd: ROOT, stdio: ['ignore', 'pipe', 'ignore'] });
}

const before = new Map();

/** What the program writes to a file, whatever its exit code says of the exam; asked once. */
export function written(ending, ...words) {
  const asked = [ending, ...words].join(' ');
  if (!before.has(asked)) before.set(asked, write(ending, ...words));
  return before.get(asked);
}

function write(ending, ...words) {
  const file = join(mkdtempSync(join(tmpdir(), 'desk-')), `out.${ending}`);
  try {
    program(...words, '-o', file);
  } catch (fault) {
    if (![1, 3].includes(fault.status)) throw fault;
  }
  return readFileSync(file);
}

/** What the program reads in an exam: `{read, ...}`. */
export function checked(file) {
  try {
    return JSON.parse(program('check', '--json', file));
  } catch (fault) {
    return JSON.parse(fault.stdout);
  }
}

/** The bytes of what a button gives. */
export async function downloaded(page, act) {
  const [download] = await Promise.all([page.waitForEvent('download'), act()]);
  return { name: download.suggestedFilename(), bytes: readFileSync(await download.path()) };
}
