import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults } from 'axe-core';
import type { Page } from 'playwright-core';
import { screenFaults } from './screen-faults.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const SCREENS = [
  { name: 'desktop', width: 1440, height: 900, isTouch: false },
  { name: 'tablet', width: 1024, height: 768, isTouch: true },
  { name: 'phone', width: 360, height: 800, isTouch: true },
];

declare global {
  var axe: { readonly run: (options: object) => Promise<AxeResults> };
}

/**
 * What axe and our own rules find wrong with a page, on a desktop, a tablet and a phone, in light and dark.
 *
 * @param page - as it stands
 * @returns one line for each finding; none is what is wanted
 */
export async function findings(page: Page): Promise<readonly string[]> {
  const found: string[] = [];
  const devtools = await page.context().newCDPSession(page);
  // By the devtools, since the pages' own policy lets no foreign script in.
  await devtools.send('Runtime.evaluate', { expression: AXE });
  for (const { name, width, height, isTouch } of SCREENS) {
    await devtools.send('Emulation.setTouchEmulationEnabled', { enabled: isTouch });
    await page.setViewportSize({ width, height });
    const faults = [...(await axe(page, 'light')), ...(await screenFaults(page)), ...(await axe(page, 'dark'))];
    found.push(...faults.map((fault) => `${name}: ${fault}`));
  }
  return found;
}

/** In dark only the colours can differ. */
async function axe(page: Page, colorScheme: 'light' | 'dark'): Promise<readonly string[]> {
  await page.emulateMedia({ colorScheme });
  const options = colorScheme === 'dark' ? { runOnly: ['color-contrast'] } : {};
  const { violations } = await page.evaluate((how) => globalThis.axe.run(how), options);
  return violations.flatMap(({ id, nodes }) =>
    nodes.map(({ target, failureSummary = '' }) => `${colorScheme}, ${id}: ${target.join(' ')} ${failureSummary}`),
  );
}
