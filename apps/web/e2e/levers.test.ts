import { FILL_WORDS } from '@fillwright/words/en';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { atDesk } from './at-desk.ts';
import { bench, dose, mass_mg, onStop_mg, pin, px_per_mm, reads } from './bench-parts.ts';

const desk = atDesk({ isDemo: true });

declare global {
  var announced: string[];
}

/** Collects what a screen reader is told. */
async function listen(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate(() => {
    globalThis.announced = [];
    const place = document.querySelector('[aria-live="polite"]')!;
    new MutationObserver(() => globalThis.announced.push(place.textContent)).observe(place, {
      ...{ subtree: true, childList: true, characterData: true },
    });
  });
  return () => page.evaluate(() => globalThis.announced);
}

describe('the bench', () => {
  // practice.md, section 7: pins 3.5/2.2/1.3/.8/flush leave 351, 392, 416 and 430.5 mg.
  test('golden: the demo product opens from the start page with the masses of its worked example', async () => {
    const page = await desk.visit();
    await page.getByRole('link', { name: 'Fill Alder 200' }).click();
    await dose(page, 430.45);
    expect(await Promise.all([1, 2, 3].map((station) => mass_mg(page, station)))).toEqual([351, 392, 416]);
    expect(await page.title()).toBe('Fillwright: Alder 200');
  });

  test('golden: dragging pin 1 one millimetre deeper moves its face and every mass after it', async () => {
    const page = await bench(desk);
    const lever = pin(page, 1);
    const told = await listen(page);
    const scale = await px_per_mm(lever);
    const before = (await lever.boundingBox())!;
    const [x, y] = [before.x + before.width / 2, before.y + before.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x, y + 1.02 * scale, { steps: 12 });
    await page.mouse.up();
    await reads(lever, 22.5);
    await dose(page, onStop_mg([4.5, 2.2, 1.3, 0.8]));
    const after = (await lever.boundingBox())!;
    expect((after.height - before.height) / scale).toBeCloseTo(1, 1);
    await expect.poll(told).toHaveLength(1);
    await page.waitForTimeout(700);
    expect(await told()).toEqual([expect.stringMatching(/^pin 1 22\.5, 449 milligrams, \d\.\d millimetres free$/)]);
  });

  test('golden: arrows step by 0.1, page keys by ten, Home and End go to the validated ends', async () => {
    const page = await bench(desk);
    const lever = pin(page, 1);
    await lever.focus();
    for (const [key, depth_mm] of [
      ['ArrowDown', 3.6],
      ['ArrowUp', 3.5],
      ['PageDown', 4.5],
      ['PageUp', 3.5],
      ['Home', 0],
    ] as const) {
      await lever.press(key);
      await reads(lever, Number((18 + depth_mm).toFixed(1)));
      await dose(page, onStop_mg([depth_mm, 2.2, 1.3, 0.8]));
    }
    await lever.press('End');
    await reads(lever, 23);
  });

  test('golden: a typed reading with a decimal comma counts; the step keys step', async () => {
    const page = await bench(desk);
    const lever = pin(page, 1);
    await lever.focus();
    await page.keyboard.type('21,2');
    await page.keyboard.press('Enter');
    await reads(lever, 21.2);
    await dose(page, onStop_mg([3.2, 2.2, 1.3, 0.8]));
    expect(await lever.evaluate((element) => element === document.activeElement)).toBe(true);
    await page.getByRole('button', { name: FILL_WORDS.deeper(1) }).click();
    await page.getByRole('button', { name: FILL_WORDS.deeper(1) }).click();
    await page.getByRole('button', { name: FILL_WORDS.higher(1) }).click();
    await reads(lever, 21.3);
    await dose(page, onStop_mg([3.3, 2.2, 1.3, 0.8]));
  });

  test.each([
    ['12,34', FILL_WORDS.offStep({ text: '12,34', step: '0.1', lower: '12.3', upper: '12.4' })],
    ['99', FILL_WORDS.beyondMachine({ station: 1, low: '18.0', high: '26.0' })],
    ['..', FILL_WORDS.notAReading('..')],
  ])('refuses: reading %s is told in words, and the pin stays', async (typed, sentence) => {
    const page = await bench(desk);
    const lever = pin(page, 1);
    await lever.focus();
    await page.keyboard.type(typed);
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('alert').allInnerTexts()).toEqual([expect.stringContaining(sentence)]);
    await page.keyboard.press('Escape');
    await reads(lever, 21.5);
  });

  test('golden: undo and redo, by their keys and by their buttons', async () => {
    const page = await bench(desk);
    const lever = pin(page, 2);
    await lever.press('PageUp');
    await reads(lever, 19.3);
    await lever.press('Control+z');
    await reads(lever, 20.3);
    await page.getByRole('button', { name: FILL_WORDS.redo }).click();
    await reads(lever, 19.3);
    await page.getByRole('button', { name: FILL_WORDS.undo }).click();
    await reads(lever, 20.3);
  });
});
