import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { NewVersion } from '@fillwright/contract/documents';
import { startEngine, type Engine } from '../../fixtures/engine.ts';
import { openStore } from '../store/open-store.ts';
import { EXAMPLES_FOLDER } from './examples-folder.ts';
import type { Store } from './open-documents.ts';
import { saveVersion, type SaveOutcome } from './save-version.ts';

let engine: Engine;
let store: Store;
let count = 0;
beforeAll(async () => {
  engine = await startEngine('embedded');
  store = await openStore(await engine.fresh());
});
afterAll(async () => {
  await store.close();
  await engine.stop();
});

function save(
  kind: 'brief' | 'design',
  sent: Pick<NewVersion, 'text' | 'status'> & Partial<NewVersion>,
): Promise<SaveOutcome> {
  return saveVersion(
    store,
    { kind, id: `fw-${++count}` },
    { basedOn: 0, by: 'ada', at: '2026-03-02T08:00:00.000Z', ...sent },
  );
}
const example = (name: string): string => readFileSync(new URL(name, EXAMPLES_FOLDER), 'utf8');
const DESIGN = { format: 1, briefVersion: 1, size: '0', method: 'disc-stations', parts: {}, values: {}, seed: 1 };

describe('saveVersion', () => {
  test.each(['alder-200', 'hazel-25'])(
    'golden: the example %s is kept as it is, with the files it names',
    async (name) => {
      const text = example(`${name}.brief.yaml`);
      expect(await save('brief', { status: 'saved', text })).toMatchObject({
        outcome: 'kept',
        version: { text, version: 1 },
      });
    },
  );
  test('golden: a draft may have faults: nothing typed is lost', async () => {
    const text = 'format: 1\nproduct: {';
    expect(await save('brief', { status: 'draft', text })).toMatchObject({ outcome: 'kept', version: { text } });
  });
  test('refuses: a saved brief with faults, each in a sentence', async () => {
    const text = example('alder-200.brief.yaml').replace('total_mg: 430', 'total_mg: -430');
    const saved = await save('brief', { status: 'saved', text });
    expect(saved).toMatchObject({
      outcome: 'not-in-order',
      sentences: [expect.stringContaining('total_mg') as string],
    });
  });
  test('refuses: a saved brief that names a file which is not there', async () => {
    const text = example('alder-200.brief.yaml').replace('filler: generic', 'filler: ./nowhere.filler.yaml');
    expect(await save('brief', { status: 'saved', text })).toMatchObject({ outcome: 'not-in-order' });
  });
  test('golden: a design is kept when it is one', async () => {
    expect(await save('design', { status: 'saved', text: JSON.stringify(DESIGN) })).toMatchObject({ outcome: 'kept' });
    for (const text of ['{', '[]', JSON.stringify({ ...DESIGN, seed: -1 })])
      expect(await save('design', { status: 'saved', text })).toMatchObject({ outcome: 'not-in-order' });
  });
  test.each(['a\0b', 'a\ud800b', '\udc00'])('refuses: a text with a character that is none: %j', async (text) => {
    expect(await save('brief', { status: 'draft', text })).toMatchObject({ outcome: 'not-in-order' });
  });
  test('refuses: a version on one that is not here', async () => {
    const saved = await save('brief', { status: 'draft', text: 'x', basedOn: 3 });
    expect(saved).toMatchObject({
      outcome: 'not-in-order',
      sentences: [expect.stringContaining('version 3') as string],
    });
  });
});
