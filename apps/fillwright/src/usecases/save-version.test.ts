import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { DocumentKind, NewVersion } from '@fillwright/contract/documents';
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
  kind: DocumentKind,
  { id = `fw-${++count}`, ...sent }: Pick<NewVersion, 'text' | 'status'> & Partial<NewVersion> & { id?: string },
): Promise<SaveOutcome> {
  return saveVersion(store, { kind, id }, { basedOn: 0, by: 'ada', at: '2026-03-02T08:00:00.000Z', ...sent });
}
const example = (name: string): string => readFileSync(new URL(name, EXAMPLES_FOLDER), 'utf8');
const SHELL = "format: 1\nsize: '1'\nsource: weighed by us\nbodyVolume_mm3: 680\n";
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
  test('golden: a design says which version of which file it rests on; one of an example has none', async () => {
    const filler = { file: './two-shift.filler.yaml', kind: 'filler', id: 'two-shift' };
    for (const files of [[], [filler], [{ ...filler, version: 3 }]])
      expect(await save('design', { status: 'saved', text: JSON.stringify({ ...DESIGN, files }) })).toMatchObject({
        outcome: 'kept',
      });
    for (const change of [{ version: 0 }, { kind: 'brief' }, { id: 'A' }, { file: '' }, { more: 1 }])
      expect(
        await save('design', {
          status: 'saved',
          text: JSON.stringify({ ...DESIGN, files: [{ ...filler, ...change }] }),
        }),
      ).toMatchObject({ outcome: 'not-in-order' });
  });
  test('golden: a filler and a shell are kept; a draft may have faults', async () => {
    const text = example('two-shift.filler.yaml');
    expect(await save('filler', { status: 'saved', text })).toMatchObject({ outcome: 'kept', version: { text } });
    expect(await save('shell', { status: 'saved', text: SHELL })).toMatchObject({ outcome: 'kept' });
    expect(await save('filler', { status: 'draft', text: 'carriers: [' })).toMatchObject({ outcome: 'kept' });
  });
  test('refuses: a saved filler or shell with faults, each in a sentence; and one for the other', async () => {
    const text = example('two-shift.filler.yaml').replace('carrierCount: 10', 'carrierCount: 0');
    expect(await save('filler', { status: 'saved', text })).toMatchObject({
      ...{ outcome: 'not-in-order', sentences: [expect.stringContaining('carriers.carrierCount') as string] },
    });
    expect(await save('shell', { status: 'saved', text: SHELL.replace('680', '680,5') })).toMatchObject({
      ...{ outcome: 'not-in-order', sentences: [expect.stringContaining('bodyVolume_mm3') as string] },
    });
    for (const [kind, other] of [
      ['shell', example('two-shift.filler.yaml')],
      ['filler', SHELL],
      ['filler', example('alder-200.brief.yaml')],
    ] as const)
      expect(await save(kind, { status: 'saved', text: other })).toMatchObject({ outcome: 'not-in-order' });
  });
  test('golden: a brief may name files that are kept here, by whatever path', async () => {
    const text = example('alder-200.brief.yaml')
      .replace('filler: generic', 'filler: ../fillers/Beech-7.filler.yaml')
      .replace("size: '1' }", "size: '1', record: ./own-1.shell.yaml }");
    expect(await save('brief', { status: 'saved', text })).toMatchObject({ outcome: 'not-in-order' });
    await save('filler', { id: 'beech-7', status: 'saved', text: example('two-shift.filler.yaml') });
    await save('shell', { id: 'own-1', status: 'saved', text: SHELL });
    expect(await save('brief', { status: 'saved', text })).toMatchObject({ outcome: 'kept' });
  });
  test('golden: what is kept counts before the example of the same name, the newest version first', async () => {
    const brief = example('hazel-25.brief.yaml');
    const [id, filler] = ['two-shift', example('two-shift.filler.yaml')];
    const faulty = filler.replace('carrierCount: 10', 'carrierCount: 0');
    await save('filler', { id, status: 'draft', text: faulty });
    expect(await save('brief', { status: 'saved', text: brief })).toMatchObject({
      ...{ outcome: 'not-in-order', sentences: [expect.stringContaining('carriers.carrierCount') as string] },
    });
    await save('filler', { id, status: 'draft', text: filler, basedOn: 1 });
    expect(await save('brief', { status: 'saved', text: brief })).toMatchObject({ outcome: 'kept' });
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
