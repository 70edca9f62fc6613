import { BRIEF_PAGE_WORDS, FIELD_WORDS } from '@fillwright/words/en';
import type { Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { atDesk } from './at-desk.ts';
import { briefText, brief, field } from './brief-parts.ts';

const desk = atDesk({ isDemo: false });

async function typed(page: Page, label: string, text: string): Promise<Locator> {
  const found = field(page, label);
  await found.fill('');
  await found.pressSequentially(text);
  await found.press('Tab');
  return found;
}

describe('a number field', () => {
  test('golden: 12,5 is 12.5 and never 125', async () => {
    const page = await brief(desk);
    await typed(page, 'Pressed with', '12,5');
    expect(await briefText(page)).toContain('slug: { isHeld: true, force_N: 12.5 }');
  });

  test.each([
    ['1.250,5', FIELD_WORDS.refused['thousands-mark']('1.250,5')],
    ['1,250', FIELD_WORDS.refused.ambiguous('1,250')],
    ['430 g', FIELD_WORDS.refused['other-unit']('430 g', 'mg')],
    ['12 13', FIELD_WORDS.refused['several-numbers']('12 13')],
  ])('refuses: %s in words, and keeps what was typed', async (text, sentence) => {
    const page = await brief(desk);
    const total = await typed(page, 'Total', text);
    await page.getByRole('tabpanel').getByText(sentence).first().waitFor();
    expect(await total.inputValue()).toBe(text);
    expect(await total.getAttribute('aria-invalid')).toBe('true');
    expect(await briefText(page)).not.toMatch(/total_mg: (?:1250|1250\.5|1\.25|0\.43|1213|430)$/m);
  });

  test('refuses: a value out of range in words, and does not clamp it', async () => {
    const page = await brief(desk);
    const water = await typed(page, 'Water', '250');
    await page.getByRole('tabpanel').getByText('250 is out of range').first().waitFor();
    expect(await water.inputValue()).toBe('250');
    expect(await briefText(page)).toContain('water_pct: 250');
  });

  test('golden: arrows step, with Shift by ten; Esc gives back what was there', async () => {
    const page = await brief(desk);
    const total = field(page, 'Total');
    const first = Number(await total.inputValue());
    await total.press('ArrowUp');
    const step = Number(await total.inputValue()) - first;
    expect(step).toBeGreaterThan(0);
    await total.press('Shift+ArrowDown');
    expect(Number(await total.inputValue())).toBeCloseTo(first + step - 10 * step, 9);
    await total.pressSequentially('7');
    await total.press('Escape');
    expect(Number(await total.inputValue())).toBeCloseTo(first - 9 * step, 9);
  });

  test('golden: a pasted cell is cleaned', async () => {
    const page = await brief(desk, { permissions: ['clipboard-read', 'clipboard-write'] });
    const feed = field(page, 'Tapped density');
    await page.evaluate(() => navigator.clipboard.writeText(' 0,66 g/mL\r\n'));
    await feed.selectText();
    await page.keyboard.press('Control+V');
    await feed.press('Enter');
    expect(await briefText(page)).toContain('tappedDensity_g_per_mL: 0.66');
  });

  test('golden: Enter hands on and undo takes it back, once', async () => {
    const page = await brief(desk);
    const total = await typed(page, 'Total', '440');
    await page.getByRole('button', { name: BRIEF_PAGE_WORDS.undo }).click();
    await expect.poll(() => total.inputValue()).toBe('430');
    expect(await page.getByRole('button', { name: BRIEF_PAGE_WORDS.undo }).isDisabled()).toBe(true);
  });
});
