import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import type { AtDesk, Visit } from './at-desk.ts';

const words = BRIEF_PAGE_WORDS;

/** A copy of the demo product on the page of the brief. */
export async function brief({ visit, product }: Pick<AtDesk, 'visit' | 'product'>, options?: Visit): Promise<Page> {
  const page = await visit({ path: `products/${await product()}/brief`, ...options });
  await page.getByText(words.inOrder).waitFor();
  return page;
}

/** The first field of the form whose label begins like this. */
export function field(page: Page, label: string): Locator {
  return page
    .getByRole('tabpanel')
    .getByRole('textbox', { name: new RegExp(`^${label}`) })
    .first();
}

export async function goTo(page: Page, tab: keyof typeof words.tabs): Promise<void> {
  await page.getByRole('tab', { name: words.tabs[tab] }).click();
}

/** The field of the whole text. */
export function textArea(page: Page): Locator {
  return page.getByRole('textbox', { name: words.text });
}

/** Text of the brief as its page shows it. */
export async function briefText(page: Page): Promise<string> {
  await goTo(page, 'text');
  return textArea(page).inputValue();
}

/** Waits until the toolbar says this of what is kept. */
export async function says(page: Page, sentence: string): Promise<void> {
  await expect
    .poll(() => page.getByText(sentence, { exact: false }).first().isVisible(), { timeout: 15_000 })
    .toBe(true);
}
