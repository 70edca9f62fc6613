import { readFile } from 'node:fs/promises';
import { BRIEF_PAGE_WORDS, FILL_WORDS, KEEPING_WORDS } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { ALDER, atDesk, example } from './at-desk.ts';
import { brief, briefText, field, goTo, says, textArea } from './brief-parts.ts';

const desk = atDesk({ isDemo: false });
const words = BRIEF_PAGE_WORDS;

describe('the page of the brief', () => {
  test('golden: a change in the form stands in the text, is kept, and the old version can be read and taken back', async () => {
    const page = await brief(desk);
    await field(page, 'Name').fill('Alder 210');
    await field(page, 'Name').press('Tab');
    expect(await briefText(page)).toBe(ALDER.replace('name: Alder 200', 'name: Alder 210'));
    await says(page, KEEPING_WORDS.kept(2));
    await goTo(page, 'history');
    await page.getByRole('button', { name: words.history.read(1) }).click();
    const compared = page.getByRole('region', { name: words.compared.label });
    await compared.getByText('name: Alder 200').waitFor();
    await compared.getByText('name: Alder 210').waitFor();
    await page.getByRole('button', { name: words.history.take(1) }).click();
    expect(await briefText(page)).toBe(ALDER);
    await says(page, KEEPING_WORDS.kept(3));
  });

  test('refuses: a fault is named by its field, leads there, and the bench says so', async () => {
    const page = await brief(desk);
    await goTo(page, 'text');
    await textArea(page).fill(ALDER.replace('tappedDensity_g_per_mL: 0.64', 'tappedDensity_g_per_mL: 0.44'));
    const state = page.getByRole('complementary', { name: words.state });
    await state.getByRole('heading', { name: words.correct(1) }).waitFor();
    await goTo(page, 'form');
    await state.getByRole('button', { name: /Tapped density/ }).click();
    await expect
      .poll(() => field(page, 'Tapped density').evaluate((input) => input === document.activeElement))
      .toBe(true);
    await page.goto(page.url().replace(/brief$/, 'fill'));
    await page.getByText(FILL_WORDS.faulty(1)).waitFor();
    await page.getByRole('link', { name: FILL_WORDS.toBrief }).click();
    await page.waitForURL('**/brief');
  });

  test('refuses: a text that is no YAML closes the form with words; undo brings the form back', async () => {
    const page = await brief(desk);
    await goTo(page, 'text');
    await textArea(page).fill('parts: [');
    await goTo(page, 'form');
    await page.getByText(words.unreadable).waitFor();
    await page.getByRole('button', { name: words.undo }).click();
    await expect.poll(() => field(page, 'Name').inputValue()).toBe('Alder 200');
  });

  test('golden: another version of the same product opens from a file, and undo brings the old one back', async () => {
    const page = await brief(desk);
    const asked = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: words.openFile }).click();
    const text = ALDER.replace('total_mg: 430', 'total_mg: 420');
    await (await asked).setFiles({ name: 'alder.brief.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) });
    await expect.poll(() => field(page, 'Total').inputValue()).toBe('420');
    await page.getByRole('button', { name: words.undo }).click();
    await expect.poll(() => field(page, 'Total').inputValue()).toBe('430');
  });

  test('golden: what is saved as a file is the text to the last character', async () => {
    const page = await brief(desk);
    await goTo(page, 'text');
    await textArea(page).fill(`${ALDER}# µ – “quoted”\n`);
    await says(page, KEEPING_WORDS.kept(2));
    const started = page.waitForEvent('download');
    await page.getByRole('button', { name: words.saveFile }).click();
    const file = await started;
    expect(file.suggestedFilename()).toMatch(/\.brief\.yaml$/);
    expect(await readFile(await file.path(), 'utf8')).toBe(`${ALDER}# µ – “quoted”\n`);
  });

  test('golden: an example opens as a product of its own', async () => {
    const page = await brief(desk);
    await page.getByText(words.examples, { exact: true }).click();
    await page.getByRole('button', { name: 'Hazel 25' }).click();
    await expect.poll(() => page.title()).toBe('Fillwright: Hazel 25');
    expect(await briefText(page)).toBe(example('hazel-25'));
  });
});
