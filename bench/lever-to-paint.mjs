import { desk, launch } from '../tools/browser/launch.mjs';
import { serve } from '../tools/browser/serve.mjs';
import { median } from './clock.mjs';

const MOVES = 240;
const WARM_UP = 40;
/** Back and forth over so many px: 40 px are about 1.9 mm, which keeps every pin of the demo product where it can go. */
const SWING_px = 40;
/** A tablet of the floor against a desk: the devtools' usual setting for a phone of the middle class. */
const SLOWER = 4;

/**
 * What one move of a dragged pin costs the main thread of a real browser, from the pointer event to the frame that shows it.
 *
 * A frame is timed in the page: from the first listener of a `pointermove` (Chromium hands it over at the beginning of a
 * frame) to a message that is posted in that frame's animation callback and arrives when style, layout and paint are
 * done. So it holds script, rendering, style, layout and the record of painting, and no waiting for the screen; raster and
 * compositing run in other threads. Simulation of probabilities runs in a worker meanwhile, as it does for a person.
 */
export async function round() {
  const [server, browser] = await Promise.all([serve({ isDemo: true }), launch()]);
  try {
    const page = await browser.newPage(desk());
    await page.goto(`${server.url}products/fw-d01/fill`);
    await page.getByRole('button', { name: '430 mg' }).first().waitFor();
    const devtools = await page.context().newCDPSession(page);
    const rows = [];
    for (const rate of [1, SLOWER]) {
      await devtools.send('Emulation.setCPUThrottlingRate', { rate });
      const times = (await dragged(page)).sort((a, b) => a - b);
      const of = rate === 1 ? 'dragging a pin' : `dragging a pin, processor ${rate} times slower`;
      rows.push(
        { figure: `${of}, work of a frame, median`, unit: 'ms', wall_ms: median(times) },
        {
          ...{ figure: `${of}, 95 % of frames`, unit: 'ms', wall_ms: times[Math.ceil(0.95 * times.length) - 1] },
          aim: { kind: 'wall', limit: 16 },
        },
      );
    }
    return rows;
  } finally {
    await browser.close();
    await server.close();
  }
}

/** Drags pin 1 back and forth. @returns ms of each frame after the first ones */
async function dragged(page) {
  await page.evaluate(timeFrames);
  const { x, y, width, height } = await page.getByRole('slider').first().boundingBox();
  const [middle, top] = [x + width / 2, y + height / 3];
  await page.mouse.move(middle, top);
  await page.mouse.down();
  for (let i = 1; i <= MOVES; i++) await page.mouse.move(middle, top + swing(i));
  await page.mouse.move(middle, top);
  await page.mouse.up();
  const times = await page.evaluate(() => globalThis.frames_ms);
  if (times.length < MOVES / 2) throw new Error(`only ${times.length} frames of ${MOVES} moves`);
  return times.slice(WARM_UP);
}

/** Up and down in steps of 2 px, between -SWING_px / 2 and SWING_px / 2. */
function swing(i) {
  const at = (2 * i + SWING_px / 2) % (2 * SWING_px);
  return Math.min(at, 2 * SWING_px - at) - SWING_px / 2;
}

/** In the page: begins a new list of times. */
function timeFrames() {
  globalThis.frames_ms = [];
  if (globalThis.isTimed) return;
  globalThis.isTimed = true;
  let isWaiting = false;
  const listen = () => {
    if (isWaiting) return;
    isWaiting = true;
    const begun = performance.now();
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel();
      port1.onmessage = () => {
        globalThis.frames_ms.push(performance.now() - begun);
        isWaiting = false;
        port1.close();
      };
      port2.postMessage(undefined);
    });
  };
  window.addEventListener('pointermove', listen, { capture: true });
}
