import { FILL_WORDS, SHEET_WORDS } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { atDesk } from './at-desk.ts';
import { goTo, says } from './brief-parts.ts';
import { pin, reads } from './bench-parts.ts';

const desk = atDesk({ isDemo: true });

describe('the page', () => {
  test('golden: asks nobody but its own server, on any of its pages, and keeps nothing running in the browser', async () => {
    const page = await desk.visit();
    const hosts = new Set<string>();
    page.context().on('request', (request) => hosts.add(new URL(request.url()).host));
    await page.getByRole('link', { name: 'Fill Alder 200' }).click();
    await reads(pin(page, 1), 21.5);
    await page.locator('[data-number="mass:1"]').click();
    await page.keyboard.press('Escape');
    await page.getByRole('link', { name: FILL_WORDS.settingSheet }).click();
    await page.getByRole('button', { name: SHEET_WORDS.print }).waitFor();
    await page.goto(new URL('products/fw-d01/brief', desk.server().url).href);
    await says(page, 'version 1');
    await goTo(page, 'history');
    await page.waitForLoadState('networkidle');
    expect([...hosts]).toEqual([new URL(desk.server().url).host]);
    expect(await page.evaluate(async () => (await navigator.serviceWorker.getRegistrations()).length)).toBe(0);
    expect(await page.context().cookies()).toEqual([]);
  });
});
