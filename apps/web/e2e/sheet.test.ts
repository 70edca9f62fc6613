import { OPEN_NUMBER_WORDS, SHEET_WORDS } from '@fillwright/words/en';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { atDesk } from './at-desk.ts';
import { printedPages, type PrintedPage } from './printed-pages.ts';

const { visit } = atDesk({ isDemo: true });
const SHEET = 'products/fw-d01/sheet';

async function sheet(colorScheme: 'light' | 'dark'): Promise<Page> {
  const page = await visit({ path: SHEET, colorScheme });
  await page.getByRole('button', { name: SHEET_WORDS.print }).waitFor();
  return page;
}

describe('setting sheet and limit card, printed', () => {
  let pages: readonly PrintedPage[];
  let colours: readonly string[];
  beforeAll(async () => {
    const page = await sheet('dark');
    pages = printedPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    await page.emulateMedia({ media: 'print' });
    colours = await page.evaluate(() => {
      const { color } = getComputedStyle(document.body);
      return [color, getComputedStyle(document.documentElement).backgroundColor];
    });
  });

  // ISO 216: A4 is 210 mm x 297 mm.
  test('golden: two pages of A4, no raster image, light also where the screen is dark', () => {
    expect(pages.map(({ width_mm, height_mm }) => [Math.round(width_mm), Math.round(height_mm)])).toEqual([
      [210, 297],
      [210, 297],
    ]);
    expect(pages.map(({ imageCount }) => imageCount)).toEqual([0, 0]);
    expect(colours).toEqual(['rgb(0, 0, 0)', 'rgb(255, 255, 255)']);
  });

  test('golden: the line to check the printer with is 100.0 mm long', () => {
    const line = pages[0]!.lines.find(({ dx_mm, dy_mm }) => dx_mm > 90 && dx_mm < 110 && dy_mm === 0);
    expect(line?.dx_mm).toBeCloseTo(100, 1);
  });

  // Size 0 of the trade's chart: body 18.44 x 7.34 mm, cap 10.72 x 7.64 mm.
  test.each([1, 3])('golden: the shell is drawn at %i : 1', (scale) => {
    const drawn = pages[0]!.paths.map(({ dx_mm, dy_mm }) => [dx_mm, dy_mm] as const);
    for (const [width_mm, length_mm] of wallsAt(scale))
      expect(
        drawn.some(([dx, dy]) => Math.abs(dx - width_mm) < TOLERANCE_mm && Math.abs(dy - length_mm) < TOLERANCE_mm),
        `${width_mm.toFixed(2)} mm x ${length_mm.toFixed(2)} mm`,
      ).toBe(true);
  });

  // practice.md, section 7, and arithmetic: 430 mg -3 % = 417.1, +7.5 % = 462.25, 97 mg of shell on top for gross.
  test('golden: readings, masses and limits of the worked example stand in the text', () => {
    const [front, back] = pages.map(({ text }) => text.split('\n'));
    expect(front).toEqual(expect.arrayContaining(['21.5', '351', '392', '416', '430', 'flush', '417.1', '442.9']));
    expect(front!.join('\n')).toContain('430\u202fmg');
    expect(back).toEqual(
      expect.arrayContaining(['417.1', '514.1', '442.9', '539.9', '430.0', '527.0', '408.5', '505.5']),
    );
  });
});

/** Widest a printer's grid of 1/300 inch can be off at either end. */
const TOLERANCE_mm = 0.1;

function wallsAt(scale: number): readonly (readonly [width_mm: number, length_mm: number])[] {
  return [
    [7.34 * scale, 18.44 * scale],
    [7.64 * scale, 10.72 * scale],
  ];
}

describe('the page of the sheet', () => {
  test('golden: its button prints, and a link leads back to the bench', async () => {
    const page = await sheet('light');
    await page.evaluate(() => {
      globalThis.print = () => void (document.title = 'printed');
    });
    await page.getByRole('button', { name: SHEET_WORDS.print }).click();
    expect(await page.title()).toBe('printed');
    await page.getByRole('link', { name: SHEET_WORDS.toBench }).click();
    await page.waitForURL('**/fill');
  });
});

describe('a number of the sheet', () => {
  test.each(['click', 'Enter'])(
    'golden: opens by %s under the page; Esc closes it and gives the focus back',
    async (by) => {
      const page = await sheet('light');
      const number = page.locator('.sheet-axis [data-number="gross-alert-low"]');
      if (by === 'click') await number.click();
      else await number.press('Enter');
      const title = page.getByRole('heading', {
        name: OPEN_NUMBER_WORDS.titles.limits.alert({ kind: 'gross', end: 'low' }),
      });
      await title.waitFor();
      // By hand: 430 mg -5 % and 97 mg of shell.
      expect(await title.innerText()).toMatch(/^505\.5\smg /);
      const [shown, dock] = await Promise.all([number.boundingBox(), page.locator('.number-dock').boundingBox()]);
      expect(shown!.y + shown!.height).toBeLessThanOrEqual(dock!.y);
      await page.keyboard.press('Escape');
      await expect.poll(() => title.isVisible()).toBe(false);
      await expect.poll(() => number.evaluate((element) => element === document.activeElement)).toBe(true);
    },
  );

  test('golden: every one opens, and the catalogue gives what is printed', async () => {
    const page = await sheet('light');
    const names = await page.evaluate(() => [
      ...new Set([...document.querySelectorAll<HTMLElement>('[data-number]')].map((one) => one.dataset['number']!)),
    ]);
    expect(names.length).toBeGreaterThan(20);
    for (const name of names) {
      await page.locator(`[data-number="${name}"]`).first().click();
      await page.locator('.open-number h2').waitFor();
      expect(await page.locator('.open-number .attention').allInnerTexts(), name).toEqual([]);
      await page.keyboard.press('Escape');
      await page.locator('.number-dock').waitFor({ state: 'detached' });
    }
  });

  test('golden: on paper nothing of it is left', async () => {
    const page = await sheet('light');
    await page.locator('[data-number="gain:1"]').first().click();
    await page.locator('.open-number h2').waitFor();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.number-dock').isVisible()).toBe(false);
    const lines = await page
      .locator('.sheet button.number')
      .evaluateAll((all) => all.map((one) => getComputedStyle(one).textDecorationLine));
    expect(new Set(lines)).toEqual(new Set(['none']));
    expect(printedPages(await page.pdf({ preferCSSPageSize: true })).length).toBe(2);
  });
});
