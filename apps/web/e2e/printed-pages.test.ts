import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Browser } from 'playwright-core';
import { desk, launch } from '../../../tools/browser/launch.mjs';
import { printedPages } from './printed-pages.ts';

let browser: Browser;
beforeAll(async () => void (browser = await launch()));
afterAll(() => browser.close());

async function printed(html: string): Promise<ReturnType<typeof printedPages>> {
  const page = await browser.newPage(desk());
  await page.setContent(html);
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  await page.close();
  return printedPages(pdf);
}

// Expected: what stands in the HTML; A4 is 210 mm x 297 mm (ISO 216).
describe('printedPages', () => {
  test('golden: size, text and lines of two pages', async () => {
    const [first, second, ...others] = await printed(`<style>@page { size: A4; margin: 0 }</style>
      <p>430.5\u202fmg – “été” ≤ 4</p>
      <svg width="190mm" height="50mm" viewBox="0 0 190 50"><path d="M10 10h100m5 5v20" stroke="#000" stroke-width="0.2"/>
      <path d="M150 40V20a10 10 0 0 1 20 0V40Z"/>
      <text x="3" y="45" font-size="4">1 : 1</text></svg>
      <p style="break-before: page">µ <b>bold</b> (in \\ brackets)</p>`);
    expect(others).toEqual([]);
    expect(first!.width_mm).toBeCloseTo(210, 0);
    expect(first!.height_mm).toBeCloseTo(297, 0);
    expect(first!.text).toContain('430.5\u202fmg – “été” ≤ 4\n1 : 1');
    expect(second!.text.replaceAll('\n', '')).toContain('µ bold (in \\ brackets)');
    expect(first!.lines.map(({ dx_mm, dy_mm }) => [dx_mm.toFixed(1), dy_mm.toFixed(1)])).toEqual([
      ['100.0', '0.0'],
      ['0.0', '20.0'],
      ['0.0', '20.0'],
      ['0.0', '20.0'],
      ['20.0', '0.0'],
    ]);
    // A half circle of radius 10 on a square of 20.
    expect(first!.paths.at(-1)!.dx_mm).toBeCloseTo(20, 1);
    expect(first!.paths.at(-1)!.dy_mm).toBeCloseTo(30, 1);
    expect([first!.imageCount, second!.imageCount]).toEqual([0, 0]);
  });
  test('golden: a raster image is counted', async () => {
    const pixel = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==';
    const [page] = await printed(`<img width="50" height="50" src="data:image/png;base64,${pixel}">`);
    expect(page!.imageCount).toBe(1);
  });
  test('refuses: what is no PDF', () => {
    expect(() => printedPages(new TextEncoder().encode('nothing'))).toThrow('no page');
  });
});
