import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { desk, launch } from '../../../tools/browser/launch.mjs';
import { palettePng } from '../../../tools/browser/palette-png.mjs';

let browser: Browser;
beforeAll(async () => void (browser = await launch()));
afterAll(() => browser.close());

/** Every pixel of a PNG as a browser decodes it. */
async function pixels(png: Buffer): Promise<readonly number[]> {
  const page = await browser.newPage(desk());
  const found = await page.evaluate(async (base64) => {
    const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${base64}`)).blob());
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
    context.drawImage(bitmap, 0, 0);
    return [...context.getImageData(0, 0, bitmap.width, bitmap.height).data];
  }, png.toString('base64'));
  await page.close();
  return found;
}

async function screenshot(background: string): Promise<Buffer> {
  const page = await browser.newPage(desk({ viewport: { width: 160, height: 90 } }));
  await page.setContent(`<body style="background: ${background}"><h1>430 mg</h1>`);
  const png = await page.screenshot();
  await page.close();
  return png;
}

describe('palettePng', () => {
  // Expected: the colours of the original, as the browser itself decodes both files.
  test('golden: up to 256 colours every pixel stays as it was, in fewer bytes', async () => {
    const png = await screenshot('#e3dfd5');
    const small = palettePng(png);
    expect(small.length).toBeLessThan(png.length);
    expect(await pixels(small)).toEqual(await pixels(png));
  });
  test('limit: of more colours 256 stay', async () => {
    const png = await screenshot('linear-gradient(45deg, #f00, #0f0, #00f)');
    const colours = (found: readonly number[]): number =>
      new Set(Array.from({ length: found.length / 4 }, (_, i) => found.slice(4 * i, 4 * i + 3).join())).size;
    expect(colours(await pixels(png))).toBeGreaterThan(256);
    expect(colours(await pixels(palettePng(png)))).toBe(256);
  });
  test('refuses: what is no such PNG', () => {
    expect(() => palettePng(Buffer.from('nothing of the kind'))).toThrow();
  });
});
