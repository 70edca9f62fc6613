import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { build, type Rolldown } from 'vite';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import snapshot from '../../../packages/stats/snapshots/same-bits.json' with { type: 'json' };
import { desk, launch } from '../../../tools/browser/launch.mjs';
import type * as Entry from './same-bits-entry.ts';

const ROOT = join(import.meta.dirname, '../../..');
/** Answered by the test itself; a loopback address, since only there a page may hash without https. */
const PLACE = 'http://localhost/';
const START = `<script type="module">import * as entry from '/entry.js'; globalThis.entry = entry;</script>`;

declare global {
  var entry: typeof Entry;
}

let browser: Browser;
let page: Page;

/** The entry as the app itself is built: same plugins, same minifier. */
async function bundle(): Promise<string> {
  const built = (await build({
    configFile: join(import.meta.dirname, '../vite.config.ts'),
    logLevel: 'warn',
    build: {
      write: false,
      minify: true,
      lib: { entry: join(import.meta.dirname, 'same-bits-entry.ts'), formats: ['es'] },
    },
  })) as Rolldown.RolldownOutput[];
  const [chunk, ...others] = built[0]!.output;
  if (others.length > 0) throw new Error(`one file expected, there are ${others.length} more`);
  return chunk.code;
}

beforeAll(async () => {
  const [code, opened] = await Promise.all([bundle(), launch()]);
  browser = opened;
  page = await browser.newPage(desk());
  await page.route(`${PLACE}**`, (route) =>
    route.fulfill(
      route.request().url() === PLACE
        ? { contentType: 'text/html', body: START }
        : { contentType: 'text/javascript', body: code },
    ),
  );
  await page.goto(PLACE);
});
afterAll(() => browser.close());

/** Texts of the examples by their path from the root, as a person gives it to the command. */
const NAMES = readdirSync(join(ROOT, 'examples'));
const TEXTS = Object.fromEntries(
  NAMES.map((name) => [`examples/${name}`, readFileSync(join(ROOT, 'examples', name), 'utf8')]),
);
const BRIEFS = Object.keys(TEXTS).filter((path) => path.endsWith('.brief.yaml'));

function printedByNode({ path, seed }: { path: string; seed: number }): string {
  const args = ['apps/fillwright/bin/fillwright.mjs', 'design', path, '--json', '--seed', String(seed)];
  const { stdout, stderr } = spawnSync(process.execPath, args, { cwd: ROOT, encoding: 'utf8' });
  expect(stderr).toBe('');
  return stdout;
}

describe('the browser and Node give the same bytes', () => {
  test('regression: of every result of statistics', async () => {
    expect(await page.evaluate(() => globalThis.entry.statisticsHashes())).toEqual(snapshot.sha256);
  });
  // Expected: what the command prints, from its own build of the same source.
  test.each(BRIEFS.flatMap((path) => [1, 42].map((seed) => ({ path, seed }))))(
    'golden: of the design of $path with seed $seed',
    async ({ path, seed }) => {
      const json = await page.evaluate((input) => globalThis.entry.designJson(input), { path, seed, texts: TEXTS });
      expect(`${json}\n`).toBe(printedByNode({ path, seed }));
    },
  );
});
