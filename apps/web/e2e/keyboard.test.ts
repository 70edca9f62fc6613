import { FILL_WORDS, THREAD_WORDS } from '@fillwright/words/en';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { atDesk } from './at-desk.ts';
import { bench, pin, reads } from './bench-parts.ts';

const desk = atDesk({ isDemo: true });
/** More than there are on the bench. */
const MOST_STOPS = 90;

interface Stop {
  readonly what: string;
  /** Whether a ring of 3 px is seen around it, and it stands on the screen. */
  readonly isSeen: boolean;
}

/** Goes through the page by Tab, from its beginning to its end. */
async function stops(page: Page): Promise<readonly Stop[]> {
  const found: Stop[] = [];
  const names = { thread: THREAD_WORDS.label, discs: FILL_WORDS.discs, springs: FILL_WORDS.springs };
  for (let i = 0; i < MOST_STOPS; i++) {
    await page.keyboard.press('Tab');
    const what = await page.evaluate(stopAt, names);
    if (what === undefined) break;
    found.push({ what, isSeen: await page.evaluate(isFocusSeen) });
  }
  return found;
}

/** In the page: the place that has the focus. */
function stopAt(names: { thread: string; discs: string; springs: string }): string | undefined {
  const focused = document.activeElement;
  if (!focused || focused === document.body) return undefined;
  const isIn = (selector: string): boolean => focused.closest(selector) !== null;
  const name = focused.getAttribute('data-number') ?? undefined;
  const number = name?.split(':')[0];
  const kinds: readonly (readonly [string, boolean])[] = [
    ['thread', isIn(`[aria-label="${names.thread}"]`)],
    ['parts', number === 'part'],
    ['discs', isIn('[role="radiogroup"]') && focused.matches('[aria-label^="disc"]')],
    ['springs', isIn('[role="radiogroup"]')],
    [focused.getAttribute('aria-label') ?? 'pin', focused.getAttribute('role') === 'slider'],
    ['masses', number === 'mass' || number === 'force'],
    ['station', /^(gain|density):/.test(name ?? '')],
    ['capsule', number !== undefined],
    ['candidates', focused.matches('.candidate-take')],
  ];
  return kinds.find(([, isIt]) => isIt)?.[0] ?? 'other';
}

/** In the page: whether a ring of 3 px is seen around what has the focus, and it stands on the screen. */
function isFocusSeen(): boolean {
  const focused = document.activeElement!;
  const isRinged = [focused, focused.parentElement, focused.closest('label')].some((element) => {
    const { outlineStyle, outlineWidth } = getComputedStyle(element ?? focused);
    return outlineStyle !== 'none' && parseFloat(outlineWidth) >= 3;
  });
  const { top, bottom, left, right } = focused.getBoundingClientRect();
  return isRinged && bottom > 0 && top < innerHeight && right > 0 && left < innerWidth;
}

describe('by keyboard alone', () => {
  // Order: design/screens/README.md, "Keyboard": thread, disc, pins, masses, capsule values, candidates.
  test('golden: Tab goes through the bench in the order of the work, and the focus is always seen', async () => {
    const page = await bench(desk);
    const found = await stops(page);
    expect(found.length).toBeLessThan(MOST_STOPS);
    const order = [...new Set(found.map(({ what }) => what))].filter(
      (what) => !['other', 'station', 'parts', 'springs'].includes(what),
    );
    const pins = [1, 2, 3, 4, 5].map((station) => FILL_WORDS.pinLabel(station));
    expect(order).toEqual(['thread', 'discs', ...pins, 'masses', 'capsule', 'candidates']);
    expect(found.filter(({ isSeen }) => !isSeen)).toEqual([]);
  });

  // ARIA Authoring Practices, "Keyboard navigation inside components": one stop, arrow keys, Home and End inside (from memory).
  test('golden: every number of a group is reached by arrow keys, and Enter opens it', async () => {
    const page = await bench(desk);
    const numbers = page.locator('[data-slot="disc"] [data-number]');
    const focused = (): Promise<string | null | undefined> =>
      page.evaluate(() => document.activeElement?.getAttribute('data-number'));
    const names = await numbers.evaluateAll((all) => all.map((one) => one.getAttribute('data-number')));
    expect(names.length).toBeGreaterThan(2);
    expect(await numbers.evaluateAll((all) => all.filter(({ tabIndex }) => tabIndex === 0).length)).toBe(1);
    await numbers.first().focus();
    for (const name of names.slice(1)) {
      await page.keyboard.press('ArrowDown');
      expect(await focused()).toBe(name);
    }
    await page.keyboard.press('ArrowRight');
    expect(await focused()).toBe(names.at(-1));
    await page.keyboard.press('Home');
    expect(await focused()).toBe(names[0]);
    await page.keyboard.press('End');
    await page.keyboard.press('Enter');
    await page.locator('.open-number h2').waitFor();
    await page.keyboard.press('Escape');
    await expect.poll(focused).toBe(names.at(-1));
    await page.keyboard.press('Tab');
    await page.keyboard.press('Shift+Tab');
    expect(await focused()).toBe(names.at(-1));
  });

  test('golden: from the start page to a moved lever and back without a mouse', async () => {
    const page = await desk.visit();
    await page.getByRole('link', { name: 'Fill Alder 200' }).first().waitFor();
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    await page.waitForURL('**/fill');
    const lever = pin(page, 1);
    await reads(lever, 21.5);
    for (let i = 0; i < 20 && !(await lever.evaluate((element) => element === document.activeElement)); i++)
      await page.keyboard.press('Tab');
    await page.keyboard.press('ArrowUp');
    await reads(lever, 21.4);
    await page.keyboard.press('Control+z');
    await reads(lever, 21.5);
  });
});
