import { FILL_WORDS } from '@fillwright/words/en';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { AtDesk, Visit } from './at-desk.ts';

/** A copy of the demo product on the bench. */
export async function bench({ visit, product }: Pick<AtDesk, 'visit' | 'product'>, options?: Visit): Promise<Page> {
  const page = await visit({ path: `products/${await product()}/fill`, ...options });
  await reads(pin(page, 1), 21.5);
  return page;
}

/** The lever of a station. */
export function pin(page: Page, station: number): Locator {
  return page.getByRole('slider', { name: FILL_WORDS.pinLabel(station) });
}

/** What a station leaves in the bore, as it is shown: a whole number of mg. */
export async function mass_mg(page: Page, station: number): Promise<number> {
  return parseFloat(await page.locator(`[data-number="mass:${String(station)}"]`).innerText());
}

/** Mass in the bore of FW-D01 after its last station, as long as every pin stands on its stop. */
export function onStop_mg(depths_mm: readonly number[]): number {
  const filled_mm = depths_mm.reduce((sum, depth_mm) => sum + depth_mm, DISC.height_mm);
  return FEED_g_per_mL * (Math.PI / 4) * DISC.bore_mm ** 2 * filled_mm;
}
/** practice.md, section 7: disc 6.6 x 15.5, feed .54 g/mL; each refill adds feed density x bore x depth (model.md, section 4). */
const DISC = { bore_mm: 6.6, height_mm: 15.5 };
const FEED_g_per_mL = 0.54;

/** Waits until the mass of the dose is shown, to the mg that is shown. */
export async function dose(page: Page, expected_mg: number): Promise<void> {
  await expect.poll(() => mass_mg(page, 5), { timeout: 10_000 }).toBe(Math.round(expected_mg));
}

/** mm of a part in px of the screen. */
export function px_per_mm(of: Locator): Promise<number> {
  return of.evaluate((element) => parseFloat(getComputedStyle(element).getPropertyValue('--mm')));
}

/** Waits until the lever stands at a reading. */
export async function reads(lever: Locator, reading: number): Promise<void> {
  await expect.poll(() => lever.getAttribute('aria-valuenow'), { timeout: 10_000 }).toBe(String(reading));
}
