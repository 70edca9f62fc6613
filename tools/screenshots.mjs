/** `npm run screenshots`: makes docs/img/*.png anew from the real program, one page of the app after the other. */
import { mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { desk, launch } from './browser/launch.mjs';
import { palettePng } from './browser/palette-png.mjs';
import { serve } from './browser/serve.mjs';
import { setUp } from './setup.mjs';

const FOLDER = 'docs/img';
const LONGEST_bytes = 150_000;
const ALDER = readFileSync(new URL('../examples/alder-200.brief.yaml', import.meta.url), 'utf8');
const PRODUCT = 'products/fw-d01';
const PHONE = { viewport: { width: 360, height: 800 }, hasTouch: true, isMobile: true };
/** A4 at 96 px an inch. */
const PAPER = { viewport: { width: 794, height: 1123 } };
const TABLET = { viewport: { width: 1024, height: 768 }, hasTouch: true };

/** One line a picture: how the browser stands, where it goes, and what a person does there. */
const PICTURES = {
  'bench-light': { path: `${PRODUCT}/fill`, then: onBench },
  'bench-dark': { path: `${PRODUCT}/fill`, options: { colorScheme: 'dark' }, then: onBench },
  'bench-tablet': { path: `${PRODUCT}/fill`, options: TABLET, then: onBench },
  'bench-phone': { path: `${PRODUCT}/fill`, options: PHONE, then: onBench },
  'moved-lever': { path: 'products/moved/fill', then: movedLever },
  'on-spring': { path: 'products/on-spring/fill', then: onSpring },
  'open-number': { path: `${PRODUCT}/fill`, then: openNumber },
  brief: { path: `${PRODUCT}/brief`, then: (page) => page.getByText('The brief is in order.').waitFor() },
  'refused-brief': { path: 'products/refused/brief', then: (page) => page.getByText('One thing to correct').waitFor() },
  weights: { path: 'products/moved/weights', then: exampleWeights },
  'empty-store': {
    isEmpty: true,
    path: '',
    then: (page) => page.getByRole('button', { name: /empty brief/ }).waitFor(),
  },
};

async function exampleWeights(page) {
  await page.getByRole('button', { name: /Show an example/ }).click();
  await page.getByRole('heading', { name: /column 4, which/ }).waitFor();
}

process.exitCode = setUp() ? await pictures() : 1;

async function pictures() {
  rmSync(FOLDER, { recursive: true, force: true });
  mkdirSync(FOLDER, { recursive: true });
  const [demo, empty, browser] = await Promise.all([serve({ isDemo: true }), serve(), launch()]);
  try {
    // What is moved is kept: a product of its own for each, so that no picture shows what another one left.
    for (const id of ['moved', 'on-spring']) await demo.put(id, ALDER);
    await demo.put('refused', ALDER.replace('tappedDensity_g_per_mL: 0.64', 'tappedDensity_g_per_mL: 0.44'));
    for (const [name, picture] of Object.entries(PICTURES)) {
      const page = await opened(browser, picture.isEmpty ? empty : demo, picture);
      keep(name, await page.screenshot());
      await page.context().close();
    }
    const sheet = await opened(browser, demo, { path: `${PRODUCT}/sheet`, options: PAPER, then: onPaper });
    const [front, back] = await sheet.getByRole('article').all();
    keep('sheet-front', await front.screenshot());
    keep('sheet-back', await back.screenshot());
  } finally {
    await browser.close();
    await Promise.all([demo.close(), empty.close()]);
  }
  return reported();
}

async function opened(browser, server, { path, options, then }) {
  const context = await browser.newContext(desk(options));
  const page = await context.newPage();
  // Only the dates: the page's own timers go on.
  await page.clock.setFixedTime('2026-03-02T12:00:00Z');
  await page.goto(server.url + path);
  await then(page);
  await page.waitForLoadState('networkidle');
  return page;
}

/** Drawn, and its forecast computed. */
async function onBench(page) {
  await page.locator('[data-number="mass:5"]').waitFor();
  await page.getByRole('heading', { name: /^First / }).waitFor();
}

/** Held 0.6 mm deeper: the old position stays as a thin line until it is let go. */
async function movedLever(page) {
  await onBench(page);
  const lever = page.getByRole('slider').first();
  const { x, y, width, height } = await lever.boundingBox();
  const px_per_mm = await lever.evaluate((element) => parseFloat(getComputedStyle(element).getPropertyValue('--mm')));
  await page.mouse.move(x + width / 2, y + height / 2);
  await page.mouse.down();
  await page.mouse.move(x + width / 2, y + height / 2 + 0.62 * px_per_mm, { steps: 6 });
  await settled(page);
}

async function onSpring(page) {
  await onBench(page);
  await page.getByRole('radio', { name: /^springs S30/ }).click({ force: true });
  await page
    .getByRole('button', { name: /on spring/ })
    .first()
    .waitFor();
  await settled(page);
}

async function openNumber(page) {
  await onBench(page);
  await page.locator('[data-number="mass:4"]').click();
  await page.getByRole('heading', { name: /after station 4/ }).waitFor();
  await settled(page);
}

/** The worker has answered. */
function settled(page) {
  return page.waitForTimeout(3000);
}

async function onPaper(page) {
  await page.getByRole('article').nth(1).waitFor();
  await page.emulateMedia({ media: 'print' });
}

function keep(name, png) {
  writeFileSync(`${FOLDER}/${name}.png`, palettePng(png));
}

/** Prints what was made. @returns exit code: 1 when a picture is too large for the repository */
function reported() {
  const made = readdirSync(FOLDER).map((name) => ({ name, bytes: statSync(`${FOLDER}/${name}`).size }));
  for (const { name, bytes } of made) console.log(`${(bytes / 1000).toFixed(0).padStart(4)} kB  ${FOLDER}/${name}`);
  return made.every(({ bytes }) => bytes <= LONGEST_bytes) ? 0 : 1;
}
