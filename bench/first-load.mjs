import { desk, launch } from '../tools/browser/launch.mjs';
import { serve } from '../tools/browser/serve.mjs';

/**
 * Bytes that come over the line until the bench of the demo product stands there, cache empty, as the server packs them
 * (headers and texts of the interface counted), and how many of them are scripts. The worker's scripts count; the fonts
 * count; what is loaded when it is asked for (open numbers, the sheet, the brief) does not.
 */
export async function round() {
  const [server, browser] = await Promise.all([serve({ isDemo: true }), launch()]);
  try {
    const page = await browser.newPage(desk());
    const asked = [];
    page.context().on('requestfinished', (request) => asked.push(request));
    await page.goto(`${server.url}products/fw-d01/fill`);
    await page.getByRole('heading', { name: /^First / }).waitFor();
    await page.waitForLoadState('networkidle');
    const sizes = await Promise.all(asked.map(sizeOf));
    const sum_kB = (isCounted) => sizes.filter(isCounted).reduce((all, { bytes }) => all + bytes, 0) / 1000;
    return [
      { figure: 'bench, everything', unit: 'kB', size_kB: sum_kB(() => true), aim: AIM },
      {
        figure: 'bench, scripts of the page',
        unit: 'kB',
        size_kB: sum_kB(({ kind, isOfWorker }) => kind === 'script' && !isOfWorker),
      },
      { figure: 'bench, script of the worker', unit: 'kB', size_kB: sum_kB(({ isOfWorker }) => isOfWorker) },
      { figure: 'bench, fonts', unit: 'kB', size_kB: sum_kB(({ kind }) => kind === 'font') },
    ];
  } finally {
    await browser.close();
    await server.close();
  }
}
const AIM = { kind: 'size', limit: 200 };

async function sizeOf(request) {
  const { responseBodySize, responseHeadersSize } = await request.sizes();
  // Of a worker's script the browser reports the head only.
  const packed = Number((await (await request.response()).headerValue('content-length')) ?? 0);
  const isOfWorker = /-worker-[^/]*\.js$/.test(request.url());
  return { kind: request.resourceType(), isOfWorker, bytes: Math.max(responseBodySize, packed) + responseHeadersSize };
}
