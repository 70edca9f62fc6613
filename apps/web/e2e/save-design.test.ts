import { FILL_WORDS } from '@fillwright/words/en';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { atDesk } from './at-desk.ts';
import { bench, pin, reads } from './bench-parts.ts';

const desk = atDesk({ isDemo: false });

interface Head {
  readonly version: number;
  readonly status: string;
  readonly reason?: string;
}

function designs(page: Page): Promise<readonly Head[]> {
  const id = /products\/([^/]+)/.exec(page.url())?.[1] ?? '';
  return desk.server().ask(`documents/design/${id}/versions`) as Promise<readonly Head[]>;
}

const saveButton = (page: Page): ReturnType<Page['getByRole']> =>
  page.getByRole('button', { name: FILL_WORDS.save }).first();

describe('saving a design', () => {
  test('golden: a reason is asked only where a saved design is superseded', async () => {
    const page = await bench(desk, { provoked: /status of 422|status of 400/ });
    const dialog = page.getByRole('dialog', { name: FILL_WORDS.reasonTitle });
    await saveButton(page).click();
    await page.getByText(FILL_WORDS.saved).waitFor();
    expect(await dialog.isVisible()).toBe(false);
    expect((await designs(page)).filter(({ status }) => status === 'saved')).toHaveLength(1);

    await pin(page, 1).press('ArrowDown');
    await reads(pin(page, 1), 21.6);
    await saveButton(page).click();
    await dialog.waitFor();
    await dialog.getByRole('button', { name: FILL_WORDS.save }).click();
    await dialog.getByText(FILL_WORDS.reasonShort).waitFor();
    await dialog.getByRole('textbox', { name: FILL_WORDS.reasonLabel }).fill('trial 1 was 4 mg light');
    await dialog.getByRole('button', { name: FILL_WORDS.save }).click();
    await expect.poll(() => dialog.isVisible()).toBe(false);
    const saved = (await designs(page)).filter(({ status }) => status === 'saved');
    expect(saved.at(-1)).toMatchObject({ reason: 'trial 1 was 4 mg light' });
    expect(saved).toHaveLength(2);
  });

  test('golden: without a server it is said that the design is kept here', async () => {
    const page = await bench(desk, { provoked: /Failed to load resource|ERR_/ });
    await page.context().setOffline(true);
    await saveButton(page).click();
    await page.getByText(FILL_WORDS.savedOffline).waitFor();
    await page.context().setOffline(false);
  });
});
