import { exampleWeights, STRUCK_WORDS, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { atDesk } from './at-desk.ts';
import { printedPages } from './printed-pages.ts';
import { findings } from './screens.ts';

const desk = atDesk({ isDemo: false });
const words = WEIGHTS_PAGE_WORDS;
const { weights, shells } = exampleWeights();

/** As a clipboard hands it over. */
async function paste(page: Page, part: 'weights' | 'shells', text: string): Promise<void> {
  const box = page.getByRole('textbox', { name: words[part], exact: true });
  await box.waitFor();
  await box.evaluate((element, pasted) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    element.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, text);
}

async function ofProduct(): Promise<Page> {
  return desk.visit({ path: `products/${await desk.product()}/weights` });
}

async function withRevolution(): Promise<Page> {
  const page = await ofProduct();
  await page.getByRole('button', { name: words.empty.example }).click();
  await conclusion(page, /column 4/);
  return page;
}

const conclusion = (page: Page, text: string | RegExp): Promise<void> =>
  page.locator('.weights-conclusion').filter({ hasText: text }).waitFor();

describe('the page of weights', () => {
  // By hand: 527.9 + 531.1 + 525.0 + ten times 527 and 529, less 97 mg of shell; 430 mg within 3 % is left alone.
  test('golden: decimal commas; a mean inside its limits is left alone', async () => {
    const page = await ofProduct();
    await paste(page, 'weights', ['527,9 mg', '531,1 mg', ...Array<string>(9).fill('527,0 mg\n529,0 mg')].join('\r\n'));
    await conclusion(page, /^\s*Leave it alone/);
    await page.getByText(words.counts({ lines: 20, weights: 20, struck: 0 })).waitFor();
  });
  test('golden: a bad row is struck with row, value and what to do', async () => {
    const page = await ofProduct();
    await paste(page, 'weights', ['527,9 mg', '1.053,2 mg', ...Array<string>(11).fill('528,4 mg')].join('\n'));
    const { mark, todo = '' } = STRUCK_WORDS['thousands-mark'];
    await page.getByText(words.lineToDo({ line: 2, raw: '1.053,2 mg', mark, todo })).waitFor();
    await page.getByText(words.counts({ lines: 13, weights: 12, struck: 1 })).waitFor();
  });
  test('golden: ten thousand weights are read, judged and drawn; undo takes the paste back', async () => {
    const page = await ofProduct();
    const many = Array.from({ length: 10_000 }, (_, i) => `${(520 + ((i * 7919) % 140) / 10).toFixed(1)} mg`);
    await paste(page, 'weights', many.join('\n'));
    await conclusion(page, /./);
    await page.getByText(words.counts({ lines: 10_000, weights: 10_000, struck: 0 })).waitFor();
    expect(await page.locator('.raw-line').count()).toBeLessThan(200);
    await page.getByRole('button', { name: words.undo }).click();
    await page.getByRole('heading', { name: words.empty.title }).waitFor();
  });
  // The example is the program's own scenario: column 4 was made 65 mg light, what pin 1 of the demo set-up brings.
  test('golden: a revolution with column 4 light names column 4 and marks it in the grid', async () => {
    const page = await withRevolution();
    await conclusion(page, /pin 1 of column 4/);
    await page.locator('th.grid-odd', { hasText: '4' }).first().waitFor();
    await page.getByRole('heading', { name: words.revolution.causes }).waitFor();
  });
  test('golden: what was pasted is there again after a reload, as it came', async () => {
    const page = await ofProduct();
    await paste(page, 'weights', weights);
    await paste(page, 'shells', shells);
    await conclusion(page, /./);
    await page.reload();
    await conclusion(page, /./);
    await page.getByText(words.shellCounts({ lines: 50, shells: 50, struck: 0 })).waitFor();
  });
  // ISO 216: A4 is 210 mm x 297 mm.
  test('golden: verdicts and limit card are one page of A4', async () => {
    const page = await withRevolution();
    const pages = printedPages(await page.pdf({ preferCSSPageSize: true, printBackground: true }));
    expect(pages.map(({ width_mm, height_mm }) => [Math.round(width_mm), Math.round(height_mm)])).toEqual([[210, 297]]);
    expect(pages[0]!.text).toContain('417.1');
  });
  test('golden: the empty page is sound on every screen, in light and dark', async () => {
    const page = await ofProduct();
    await page.getByRole('heading', { name: words.empty.title }).waitFor();
    expect(await findings(page)).toEqual([]);
  });
  test('golden: a revolution is sound on every screen, in light and dark', async () => {
    expect(await findings(await withRevolution())).toEqual([]);
  });
  test('golden: without a product, target and limits are typed', async () => {
    const page = await desk.visit({ path: 'weights' });
    await page.getByRole('button', { name: words.empty.example }).click();
    await conclusion(page, /column 4/);
    expect(await findings(page)).toEqual([]);
  });
});
