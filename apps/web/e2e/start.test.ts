import { KEEPING_WORDS, START_WORDS } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { ALDER, atDesk } from './at-desk.ts';

const { server, visit } = atDesk({ isDemo: false });

/** Names of the ways to begin, as far as the first test finds the store empty. */
const WAYS = [START_WORDS.demo, START_WORDS.open, START_WORDS.empty];

async function briefsOnServer(): Promise<readonly string[]> {
  return ((await server().ask('documents/brief')) as readonly { id: string }[]).map(({ id }) => id);
}

describe('the start page', () => {
  test('golden: an empty store greets with three ways to begin', async () => {
    const page = await visit();
    await page.getByRole('heading', { level: 1, name: START_WORDS.titleEmpty }).waitFor();
    for (const way of WAYS) await page.getByRole('button', { name: way }).waitFor();
    expect(await page.title()).toBe('Fillwright');
  });

  test('golden: the demo product is designed by one click, and is in the store then', async () => {
    const page = await visit();
    await page.getByRole('button', { name: START_WORDS.demo }).click();
    await page.waitForURL('**/products/fw-d01/fill');
    await expect.poll(() => page.title()).toBe('Fillwright: Alder 200');
    expect(await server().ask('documents/brief')).toMatchObject([{ id: 'fw-d01', version: 1 }]);
    await page.goto(server().url);
    await page.getByRole('heading', { level: 1, name: START_WORDS.title }).waitFor();
    await page.getByRole('link', { name: START_WORDS.toFill('Alder 200') }).waitFor();
  });

  test('golden: a brief file opens as a product of its own', async () => {
    const page = await visit();
    const asked = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: START_WORDS.open }).click();
    const text = ALDER.replace('code: FW-D01, name: Alder 200', 'code: OUR-7, name: Our powder');
    await (await asked).setFiles({ name: 'ours.brief.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) });
    await page.waitForURL('**/products/our-7/brief');
    await expect.poll(() => page.title()).toBe('Fillwright: Our powder');
    expect(await server().ask('documents/brief/our-7')).toMatchObject({ version: 1, text });
  });

  test('golden: an empty brief begins as a template with its comments', async () => {
    const page = await visit();
    await page.getByRole('button', { name: START_WORDS.empty }).click();
    await page.waitForURL('**/brief');
    await page.getByRole('tab', { name: 'Text' }).click();
    expect(await page.getByRole('textbox', { name: 'Text of the brief' }).inputValue()).toMatch(
      /^# .*\n(?:.*\n)*format: 1\n/,
    );
    const id = /products\/([^/]+)/.exec(page.url())![1]!;
    await expect.poll(briefsOnServer, { timeout: 15_000 }).toContain(id);
  });

  test('golden: a product begun without a server, its tab closed before it was sent, is listed and opened', async () => {
    const first = await visit({ provoked: /Failed to load resource|ERR_/ });
    await first.getByRole('button', { name: START_WORDS.empty }).waitFor();
    // Only what is asked of the server is lost: a browser without any connection could not fetch the next page either.
    await first.route('**/api/**', (route) => route.abort());
    await first.getByRole('button', { name: START_WORDS.empty }).click();
    await first.waitForURL('**/brief');
    await first.getByText(KEEPING_WORDS.offline).first().waitFor();
    const id = /products\/([^/]+)/.exec(first.url())![1]!;
    const browser = first.context();
    await first.close();

    const next = await browser.newPage();
    await next.goto(server().url);
    const listed = next.getByRole('region', { name: START_WORDS.unsentTitle });
    await listed.getByText(`${id}, ${START_WORDS.unsent}`).waitFor();
    expect(await briefsOnServer()).not.toContain(id);
    await listed.getByRole('link', { name: 'New product' }).click();
    await next.waitForURL(`**/products/${id}/brief`);
    await expect.poll(briefsOnServer, { timeout: 15_000 }).toContain(id);
    await next.goto(server().url);
    await next
      .getByRole('link', { name: START_WORDS.toFill('New product') })
      .last()
      .waitFor();
    expect(await listed.count()).toBe(0);
  });

  test('refuses: a file that is no brief is told in words, and nothing begins', async () => {
    const page = await visit();
    const asked = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: START_WORDS.open }).click();
    await (
      await asked
    ).setFiles({ name: 'photo.png', mimeType: 'image/png', buffer: Buffer.from([0x89, 0x50, 0, 0xff]) });
    await page.getByRole('alert').filter({ hasText: 'photo.png' }).waitFor();
    expect(page.url()).toBe(server().url);
  });

  test('refuses: an address without a product or a page is told in words', async () => {
    const page = await visit({ path: 'products/nobody/fill', provoked: /status of 404/ });
    await page.getByText('No product "nobody" is in this store.').waitFor();
    await page.goto(`${server().url}nowhere`);
    await page.getByRole('link', { name: 'To all products' }).click();
    await page.waitForURL(server().url);
  });
});
