import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { KEEPING_WORDS } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { atDesk, example } from './at-desk.ts';
import { pin } from './bench-parts.ts';

const desk = atDesk({ isDemo: false });
const FILE = 'two-shift.filler.yaml';
const FILLER = readFileSync(join(import.meta.dirname, '../../../examples/two-shift.filler.yaml'), 'utf8');

/** Keeps the next version of the filler. */
async function keepFiller(basedOn: number, text: string): Promise<void> {
  const answer = await fetch(`${desk.server().url}api/documents/filler/two-shift/versions`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ basedOn, status: 'draft', text, by: 'Kim' }),
  });
  expect(answer.status, await answer.text()).toBe(201);
}

describe('a design on an older version of a filler', () => {
  test('golden: is told with both versions; the newest is taken as a new draft', async () => {
    await keepFiller(0, FILLER);
    const id = await desk.product(example('hazel-25'));
    const page = await desk.visit({ path: `products/${id}/fill` });
    await pin(page, 1).press('ArrowDown');
    const design = (): Promise<{ text: string }> =>
      desk.server().ask(`documents/design/${id}`) as Promise<{ text: string }>;
    await expect.poll(async () => (await design()).text, { timeout: 15_000 }).toContain('"version": 1');
    const notice = page.getByText(KEEPING_WORDS.olderFile.is({ file: FILE, older: 1, version: 2 }));
    expect(await notice.count()).toBe(0);

    await keepFiller(1, `${FILLER}# read once more\n`);
    await page.reload();
    await notice.waitFor();
    await page.getByRole('link', { name: FILE }).waitFor();
    await page.getByRole('button', { name: KEEPING_WORDS.olderFile.take }).click();
    await notice.waitFor({ state: 'detached' });
    await expect.poll(async () => (await design()).text, { timeout: 15_000 }).toContain('"version": 2');
  });
});
