import {
  BRIEF_PAGE_WORDS,
  FILL_WORDS,
  KEEPING_WORDS,
  OPEN_NUMBER_WORDS,
  SHEET_WORDS,
  START_WORDS,
} from '@fillwright/words/en';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { ALDER, atDesk, example } from './at-desk.ts';
import { bench, pin, reads } from './bench-parts.ts';
import { brief, field, goTo, says, textArea } from './brief-parts.ts';
import { findings } from './screens.ts';

const desk = atDesk({ isDemo: false });
const FAULTY = ALDER.replace('tappedDensity_g_per_mL: 0.64', 'tappedDensity_g_per_mL: 0.44');

async function at(path: string, text?: string): Promise<Page> {
  return desk.visit({ path: `products/${await desk.product(text)}/${path}` });
}

/** Where a person can stand. The empty store comes first: the others fill it. */
const PLACES: Readonly<Record<string, () => Promise<Page>>> = {
  'the empty store': async () => {
    const page = await desk.visit();
    await page.getByRole('heading', { name: START_WORDS.titleEmpty }).waitFor();
    return page;
  },
  'the list of products': async () => {
    await desk.product();
    const page = await desk.visit();
    await page
      .getByRole('link', { name: START_WORDS.toFill('Alder 200') })
      .first()
      .waitFor();
    return page;
  },
  'the bench': () => bench(desk),
  'the bench with a lever moved outside what is validated': async () => {
    const page = await bench(desk);
    await pin(page, 1).press('End');
    await pin(page, 1).press('ArrowDown');
    await reads(pin(page, 1), 23.1);
    return page;
  },
  'the bench where nothing fits': async () => {
    const page = await at('fill', example('juniper-too-much'));
    await page.getByText(FILL_WORDS.none).waitFor();
    return page;
  },
  'the bench of a refused brief': async () => {
    const page = await at('fill', FAULTY);
    await page.getByText(FILL_WORDS.faulty(1)).waitFor();
    return page;
  },
  'an open number': async () => {
    const page = await bench(desk);
    await page.locator('[data-number="mass:4"]').click();
    await page.getByRole('heading', { name: OPEN_NUMBER_WORDS.titles.mass(4) }).waitFor();
    return page;
  },
  'the form of the brief': () => brief(desk),
  'the form of a refused brief': async () => {
    const page = await at('brief', FAULTY);
    await page.getByRole('heading', { name: BRIEF_PAGE_WORDS.correct(1) }).waitFor();
    return page;
  },
  'the text of the brief': async () => {
    const page = await brief(desk);
    await goTo(page, 'text');
    await textArea(page).waitFor();
    return page;
  },
  'the history of the brief': async () => {
    const page = await brief(desk);
    await goTo(page, 'history');
    await page.getByRole('button', { name: BRIEF_PAGE_WORDS.history.read(1) }).click();
    await page.getByRole('region', { name: BRIEF_PAGE_WORDS.compared.label }).waitFor();
    return page;
  },
  'a brief that two people changed': async () => {
    const kim = await brief(desk);
    const path = new URL(kim.url()).pathname.slice(1);
    const jo = await desk.visit({ path, provoked: /status of 409/ });
    await says(jo, KEEPING_WORDS.kept(1));
    for (const [page, name] of [
      [kim, 'Alder of Kim'],
      [jo, 'Alder of Jo'],
    ] as const) {
      await field(page, 'Name').fill(name);
      await field(page, 'Name').press('Tab');
      if (page === kim) await says(kim, KEEPING_WORDS.kept(2));
    }
    await jo.getByRole('button', { name: KEEPING_WORDS.conflict.takeMine }).waitFor();
    return jo;
  },
  'the setting sheet': async () => {
    const page = await at('sheet');
    await page.getByRole('button', { name: SHEET_WORDS.print }).waitFor();
    return page;
  },
};

// Rules: axe-core 4.14.1 (WCAG 2.2 and good practice); WCAG 2.2 criteria 1.4.10 (reflow) and 2.5.8 (targets of 24 px).
describe('screens', () => {
  test.each(Object.keys(PLACES))('golden: %s is sound on every screen, in light and dark', async (place) => {
    const page = await PLACES[place]!();
    expect(await findings(page)).toEqual([]);
  });
});
