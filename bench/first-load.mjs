import { desk, launch } from '../tools/browser/launch.mjs';
import { serve } from '../tools/browser/serve.mjs';

/**
 * Bytes that come over the line until a page stands there, cache empty, as the server packs them (headers and texts of the
 * interface counted): the first page of an empty store, before the parts that a product loads; and the bench of the demo
 * product with its numbers. What was asked for before it stood counts: the worker's scripts and the fonts too. What the
 * bench fetches ahead once it stands (the panel of an open number) is a row of its own, without an aim; what is loaded only
 * when it is asked for (the sheet, the brief) is in none.
 */
export async function round() {
  const [server, empty, browser] = await Promise.all([serve({ isDemo: true }), serve(), launch()]);
  try {
    const start = await load(browser, empty.url, (page) => page.getByRole('button', { name: /empty brief/ }));
    const bench = await load(browser, `${server.url}products/fw-d01/fill`, (page) =>
      page.getByRole('heading', { name: /^First / }),
    );
    const sum_kB = (isCounted) => bench.filter(isCounted).reduce((all, { bytes }) => all + bytes, 0) / 1000;
    const part_kB = (isCounted) => sum_kB((one) => one.isEarly && isCounted(one));
    const start_kB = start.reduce((all, { bytes, isEarly }) => all + (isEarly ? bytes : 0), 0) / 1000;
    return [
      { figure: 'first page of an empty store, until it stands', unit: 'kB', size_kB: start_kB, aim: AIM },
      { figure: 'bench, until it stands', unit: 'kB', size_kB: part_kB(() => true), aim: AIM },
      {
        figure: 'bench, scripts of the page',
        unit: 'kB',
        size_kB: part_kB(({ kind, isOfWorker }) => kind === 'script' && !isOfWorker),
      },
      { figure: 'bench, script of the worker', unit: 'kB', size_kB: part_kB(({ isOfWorker }) => isOfWorker) },
      { figure: 'bench, fonts', unit: 'kB', size_kB: part_kB(({ kind }) => kind === 'font') },
      { figure: 'bench, fetched ahead once it stands', unit: 'kB', size_kB: sum_kB(({ isEarly }) => !isEarly) },
    ];
  } finally {
    await browser.close();
    await Promise.all([server.close(), empty.close()]);
  }
}

/** Loads a page in a browser that has nothing yet. @returns what was asked for, and whether before the page stood */
async function load(browser, address, whatStands) {
  const context = await browser.newContext(desk());
  const page = await context.newPage();
  const [asked, early] = [[], new Set()];
  let hasStood = false;
  context.on('request', (request) => {
    if (!hasStood) early.add(request);
  });
  context.on('requestfinished', (request) => asked.push(request));
  await page.goto(address);
  await whatStands(page).waitFor();
  hasStood = true;
  await page.waitForTimeout(AHEAD_ms);
  await page.waitForLoadState('networkidle');
  const sizes = await Promise.all(asked.map(async (one) => ({ ...(await sizeOf(one)), isEarly: early.has(one) })));
  await context.close();
  return sizes;
}

/** Longer than the page waits before it fetches ahead. */
const AHEAD_ms = 3000;
const AIM = { kind: 'size', limit: 200 };

async function sizeOf(request) {
  const { responseBodySize, responseHeadersSize } = await request.sizes();
  // Of a worker's script the browser reports the head only.
  const packed = Number((await (await request.response()).headerValue('content-length')) ?? 0);
  const isOfWorker = /-worker-[^/]*\.js$/.test(request.url());
  return { kind: request.resourceType(), isOfWorker, bytes: Math.max(responseBodySize, packed) + responseHeadersSize };
}
