import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { newBox } from '../../fixtures/box.ts';
import { newBrowser } from '../../fixtures/browser.ts';
import { begun, changed, isKept, isThere, move, ownBrief, saveOf, useProgram } from '../../fixtures/product.ts';
import { until } from '../../fixtures/until.ts';
import { newestVersion, versionsOf } from './documents-client.ts';
import { HeldDocument } from './held-document.ts';
import { KeptTexts } from './kept-texts.ts';
import { wouldBeLost } from './would-be-lost.ts';

const way = useProgram({ beforeAll, beforeEach, afterAll });

describe('HeldDocument: a lost connection', () => {
  test('regression: text and levers of a time without a server survive a reload and reach it later', async () => {
    const first = newBrowser().tab();
    const { id, text } = await begun(first);
    way.line = 'down';
    first.desk.setText(changed(text, '431'));
    await until(isThere(first));
    const values = move(first, -0.1);
    await until(() => first.desk.state().choiceSave.kind === 'offline' && saveOf(first).kind === 'offline');
    const tab = first.reload();
    await tab.desk.open(id);
    expect(tab.desk.state().text).toBe(changed(text, '431'));
    expect(tab.desk.state().choice?.settings.values).toEqual(values);
    way.line = 'up';
    await until(() => isKept(tab)() && tab.desk.state().choiceSave.kind === 'kept');
    expect((await newestVersion('brief', id)).text).toBe(changed(text, '431'));
    expect(JSON.parse((await newestVersion('design', id)).text)).toMatchObject({ values });
  });
  test('regression: a version whose answer was lost is nobody else’s, also after more was typed', async () => {
    const tab = newBrowser().tab();
    const { id, text } = await begun(tab);
    way.line = 'lost';
    tab.desk.setText(changed(text, '431'));
    await until(() => saveOf(tab).kind === 'offline');
    tab.desk.setText(changed(text, '432'));
    const again = tab.reload();
    way.line = 'up';
    await again.desk.open(id);
    await until(isKept(again));
    expect((await versionsOf('brief', id)).map(({ version }) => version)).toEqual([1, 2, 3]);
    expect((await newestVersion('brief', id)).text).toBe(changed(text, '432'));
  });
  test('golden: nothing is lost when the server ends and starts again', async () => {
    const tab = newBrowser().tab();
    const { id, text } = await begun(tab);
    const restarted = way.program().restart();
    tab.desk.setText(changed(text, '431'));
    await until(() => saveOf(tab).kind === 'offline' || saveOf(tab).kind === 'kept');
    await restarted;
    await until(isKept(tab));
    expect((await newestVersion('brief', id)).text).toBe(changed(text, '431'));
  });
  test('regression: two products begun without a server do not take each other’s place', async () => {
    const browser = newBrowser();
    const text = ownBrief();
    way.line = 'down';
    const ids = [await browser.tab().desk.create(text), await browser.tab().desk.create(`${text}# other\n`)];
    expect(new Set(ids).size).toBe(2);
  });
});

describe('HeldDocument: opened again while the last message of the closed one is on its way', () => {
  test.each(['down', 'up'] as const)(
    'regression: line %s: what was typed since stays in this browser',
    async (next) => {
      const texts = new KeptTexts(newBox(), 'tab');
      const name = { kind: 'brief', id: `again-${next}` } as const;
      const holding = { name, texts, isSame: Object.is, tell: () => undefined };
      way.line = 'held';
      const closed = new HeldDocument(holding, { mine: undefined, newest: 'none' });
      closed.touch('a');
      closed.close();
      const open = new HeldDocument(holding, { mine: texts.take(name), newest: 'none' });
      open.touch('ab');
      way.line = next;
      await closed.sendDraft();
      expect(texts.take(name)?.text).toBe('ab');
      open.close();
      way.line = 'up';
      await open.sendDraft();
    },
  );
});

describe('HeldDocument: a browser that keeps nothing', () => {
  test.each(['off', 'full'] as const)(
    'regression: storage %s: everything works, and what would be lost is known',
    async (mode) => {
      const browser = newBrowser();
      browser.mode = mode;
      const tab = browser.tab();
      const { id, text } = await begun(tab);
      way.line = 'down';
      tab.desk.setText(changed(text, '431'));
      await until(() => saveOf(tab).kind === 'offline');
      expect(tab.desk.state().isKeptHere).toBe(false);
      expect(wouldBeLost(tab.desk.state())).toBe(true);
      way.line = 'up';
      await until(isKept(tab));
      expect(wouldBeLost(tab.desk.state())).toBe(false);
      expect((await newestVersion('brief', id)).text).toBe(changed(text, '431'));
    },
  );
  test('limit: what this browser keeps is not lost with the page', async () => {
    const tab = newBrowser().tab();
    const { text } = await begun(tab);
    way.line = 'down';
    tab.desk.setText(changed(text, '431'));
    await until(() => saveOf(tab).kind === 'offline');
    expect(wouldBeLost(tab.desk.state())).toBe(false);
  });
});
