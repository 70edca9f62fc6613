import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { newBrowser } from '../../fixtures/browser.ts';
import { begun, changed, isKept, isThere, move, saveOf, useProgram } from '../../fixtures/product.ts';
import { until } from '../../fixtures/until.ts';
import { newestVersion, versionsOf } from './documents-client.ts';

const way = useProgram({ beforeAll, beforeEach, afterAll });

describe('OpenProduct: two tabs and two people', () => {
  test('regression: the acknowledgement of one tab does not forget the text of the other', async () => {
    const browser = newBrowser();
    const [one, two] = [browser.tab(), browser.tab()];
    const { id, text } = await begun(one);
    await two.desk.open(id);
    way.line = 'down';
    one.desk.setText(changed(text, '431'));
    await until(() => saveOf(one).kind === 'offline');
    way.line = 'up';
    two.desk.setText(changed(text, '432'));
    await until(isKept(two));
    const again = one.reload();
    await again.desk.open(id);
    expect(saveOf(again)).toMatchObject({
      kind: 'conflict',
      current: { text: changed(text, '432') },
      yours: changed(text, '431'),
    });
  });
  test('regression: a tab with nothing unsent takes over what the other kept, text and levers, and can undo it', async () => {
    const browser = newBrowser();
    const [one, two] = [browser.tab(), browser.tab()];
    const { id, text } = await begun(one);
    await two.desk.open(id);
    await until(isThere(two));
    one.desk.setText(changed(text, '431'));
    await until(() => two.desk.state().text === changed(text, '431'));
    const values = move(one, -0.1);
    await until(
      () => two.desk.state().choice?.settings.values[Object.keys(values)[0] ?? ''] === Object.values(values)[0],
    );
    expect(saveOf(two)).toEqual(saveOf(one));
    two.desk.undo();
    two.desk.undo();
    expect(two.desk.state().text).toBe(text);
  });
  test('regression: coming back to a tab shows what somebody kept elsewhere', async () => {
    const [one, two] = [newBrowser().tab(), newBrowser().tab()];
    const { id, text } = await begun(one);
    await two.desk.open(id);
    one.desk.setText(changed(text, '431'));
    await until(isKept(one));
    two.focus();
    await until(() => two.desk.state().text === changed(text, '431'));
    expect(two.desk.state().canUndo).toBe(true);
  });
  test.each(['mine', 'theirs'] as const)(
    'golden: two people move the levers, the second sees both and takes %s',
    async (side) => {
      const [one, two] = [newBrowser().tab(), newBrowser().tab()];
      const { id } = await begun(one);
      await two.desk.open(id);
      await until(isThere(two));
      const theirs = move(one, -0.1);
      await until(() => one.desk.state().choiceSave.kind === 'kept');
      const mine = move(two, -0.2);
      await until(() => two.desk.state().choiceSave.kind === 'conflict');
      two.desk.resolve('design', side);
      await until(() => two.desk.state().choiceSave.kind === 'kept');
      const values = side === 'mine' ? mine : theirs;
      expect(two.desk.state().choice?.settings.values).toEqual(values);
      expect(JSON.parse((await newestVersion('design', id)).text)).toMatchObject({ values });
      if (side === 'theirs') two.desk.undo();
      expect(two.desk.state().choice?.settings.values).toEqual(mine);
    },
  );
  test('regression: a conflict stays one while typing goes on, and over a reload', async () => {
    const [one, two] = [newBrowser().tab(), newBrowser().tab()];
    const { id, text } = await begun(one);
    await two.desk.open(id);
    one.desk.setText(changed(text, '431'));
    await until(isKept(one));
    two.desk.setText(changed(text, '432'));
    await until(() => saveOf(two).kind === 'conflict');
    two.desk.setText(changed(text, '433'));
    expect(saveOf(two)).toMatchObject({ kind: 'conflict', yours: changed(text, '433') });
    const again = two.reload();
    await again.desk.open(id);
    expect(saveOf(again)).toMatchObject({ kind: 'conflict', yours: changed(text, '433') });
    again.desk.resolve('brief', 'theirs');
    expect(again.desk.state().text).toBe(changed(text, '431'));
    again.desk.undo();
    expect(again.desk.state().text).toBe(changed(text, '433'));
    await until(isKept(again));
    expect((await versionsOf('brief', id)).map(({ version }) => version)).toEqual([1, 2, 3]);
  });
});
