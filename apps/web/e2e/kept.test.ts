import { BRIEF_PAGE_WORDS, KEEPING_WORDS } from '@fillwright/words/en';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { ALDER, atDesk } from './at-desk.ts';
import { pin, reads } from './bench-parts.ts';
import { brief, briefText, field, goTo, says, textArea } from './brief-parts.ts';

const desk = atDesk({ isDemo: false });
const words = BRIEF_PAGE_WORDS;
const SILENT = /Failed to load resource|ERR_/;

interface Kept {
  readonly version: number;
  readonly text: string;
}

/** Product that a page shows. */
const idOf = (page: Page): string => /products\/([^/]+)/.exec(page.url())?.[1] ?? '';

/** Newest version of a product by the server. */
const newest = (id: string): Promise<Kept> => desk.server().ask(`documents/brief/${id}`) as Promise<Kept>;

describe('nothing typed is lost', () => {
  test('golden: by a reload right after the last key, in the form and in the text', async () => {
    const page = await brief(desk);
    await field(page, 'Name').fill('Alder 201');
    await page.reload();
    await expect.poll(() => field(page, 'Name').inputValue()).toBe('Alder 201');
    await expect.poll(async () => (await newest(idOf(page))).text).toContain('name: Alder 201');
    await goTo(page, 'text');
    await textArea(page).press('Control+End');
    await textArea(page).pressSequentially('# last');
    await page.reload();
    expect(await briefText(page)).toMatch(/\n# last$/);
    await expect.poll(async () => (await newest(idOf(page))).text).toMatch(/\n# last$/);
  });

  test('golden: by two people on one brief; the second sees both texts and chooses', async () => {
    const kim = await brief(desk);
    const path = new URL(kim.url()).pathname.slice(1);
    const jo = await desk.visit({ path, provoked: /status of 409/ });
    await says(jo, KEEPING_WORDS.kept(1));
    await kim.getByRole('textbox', { name: 'Your name' }).fill('Kim');
    await field(kim, 'Name').fill('Alder of Kim');
    await field(kim, 'Name').press('Tab');
    await says(kim, KEEPING_WORDS.kept(2));
    await field(jo, 'Name').fill('Alder of Jo');
    await field(jo, 'Name').press('Tab');
    await jo.getByRole('heading', { name: KEEPING_WORDS.conflict.title.brief(2, 'Kim') }).waitFor();
    const both = jo.getByRole('region', { name: words.compared.label });
    await both.getByText('Alder of Kim').waitFor();
    await both.getByText('Alder of Jo').waitFor();
    await jo.getByRole('button', { name: KEEPING_WORDS.conflict.takeMine }).click();
    await says(jo, KEEPING_WORDS.kept(3));
    const { text } = await newest(idOf(jo));
    expect(text).toBe(ALDER.replace('name: Alder 200', 'name: Alder of Jo'));
    const second = (await desk.server().ask(`documents/brief/${idOf(jo)}/versions/2`)) as Kept;
    expect(second.text).toContain('Alder of Kim');
  });

  test('golden: by taking the other text, which leaves the own one in undo', async () => {
    const kim = await brief(desk);
    const path = new URL(kim.url()).pathname.slice(1);
    const jo = await desk.visit({ path, provoked: /status of 409/ });
    await says(jo, KEEPING_WORDS.kept(1));
    await field(kim, 'Total').fill('425');
    await field(kim, 'Total').press('Tab');
    await says(kim, KEEPING_WORDS.kept(2));
    await field(jo, 'Total').fill('435');
    await field(jo, 'Total').press('Tab');
    await jo.getByRole('button', { name: KEEPING_WORDS.conflict.takeTheirs(2) }).click();
    await expect.poll(() => field(jo, 'Total').inputValue()).toBe('425');
    await jo.getByRole('button', { name: words.undo }).click();
    await expect.poll(() => field(jo, 'Total').inputValue()).toBe('435');
  });

  test('golden: by two people on one set-up; the second reads both in words and takes one', async () => {
    const id = await desk.product();
    const path = `products/${id}/fill`;
    const [kim, jo] = [await desk.visit({ path }), await desk.visit({ path, provoked: /status of 409/ })];
    await reads(pin(kim, 1), 21.5);
    await reads(pin(jo, 1), 21.5);
    await kim.getByRole('textbox', { name: 'Your name' }).fill('Kim');
    await pin(kim, 1).press('ArrowDown');
    const designs = (): Promise<readonly { id: string }[]> =>
      desk.server().ask('documents/design') as Promise<readonly { id: string }[]>;
    await expect.poll(async () => (await designs()).some((one) => one.id === id), { timeout: 15_000 }).toBe(true);
    await pin(jo, 2).press('ArrowDown');
    await jo.getByRole('heading', { name: KEEPING_WORDS.conflict.title.design(1, 'Kim') }).waitFor();
    const both = jo.getByRole('region', { name: words.compared.label });
    // practice.md, section 7: pins 3.5 and 2.2 mm deep; a step is 0.1 mm.
    const { depth } = KEEPING_WORDS.standing;
    await both.getByText(depth('pin 1', '3.6\u202Fmm')).waitFor();
    await both.getByText(depth('pin 2', '2.3\u202Fmm')).waitFor();
    expect(await both.innerText()).not.toMatch(/_mm|Depth/);
    await jo.getByRole('button', { name: KEEPING_WORDS.conflict.takeTheirs(1) }).click();
    await reads(pin(jo, 1), 21.6);
    await reads(pin(jo, 2), 20.3);
  });

  test('golden: by a lost connection', async () => {
    const page = await brief(desk, { provoked: SILENT });
    await page.context().setOffline(true);
    await field(page, 'Name').fill('Alder on a train');
    await field(page, 'Name').press('Tab');
    await says(page, KEEPING_WORDS.offline);
    expect((await newest(idOf(page))).text).toBe(ALDER);
    await page.context().setOffline(false);
    await expect
      .poll(async () => (await newest(idOf(page))).text, { timeout: 15_000 })
      .toBe(ALDER.replace('name: Alder 200', 'name: Alder on a train'));
    await says(page, KEEPING_WORDS.kept(2));
  });

  test('golden: by a server that is killed while somebody types', async () => {
    const page = await brief(desk, { provoked: SILENT });
    await goTo(page, 'text');
    await textArea(page).press('Control+End');
    await textArea(page).pressSequentially('# one');
    await expect.poll(async () => (await newest(idOf(page))).text, { timeout: 15_000 }).toMatch(/\n# one$/);
    await textArea(page).pressSequentially(' two');
    await desk.server().kill();
    await textArea(page).pressSequentially(' three');
    await says(page, KEEPING_WORDS.offline);
    await textArea(page).pressSequentially(' four');
    await desk.server().restart();
    await expect
      .poll(async () => (await newest(idOf(page))).text, { timeout: 30_000 })
      .toMatch(/\n# one two three four$/);
    const { version } = await newest(idOf(page));
    await says(page, KEEPING_WORDS.kept(version));
    const versions = Array.from({ length: version }, (_, index) => index + 1);
    const texts = await Promise.all(
      versions.map(
        (each) => desk.server().ask(`documents/brief/${idOf(page)}/versions/${String(each)}`) as Promise<Kept>,
      ),
    );
    expect(texts[0]?.text).toBe(ALDER);
    expect(texts.some(({ text }) => text.endsWith('\n# one'))).toBe(true);
  });
});
