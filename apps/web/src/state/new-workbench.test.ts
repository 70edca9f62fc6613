import { afterAll, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { newBrowser, thread } from '../../fixtures/browser.ts';
import { begun, changed, isKept, isThere, move, ownBrief, saveOf, useProgram } from '../../fixtures/product.ts';
import { until } from '../../fixtures/until.ts';
import { newestVersion, versionsOf } from './documents-client.ts';

const way = useProgram({ beforeAll, beforeEach, afterAll });

describe('newWorkbench: saving', () => {
  test('regression: a reason is asked when a saved design is superseded, and only then', async () => {
    const tab = newBrowser().tab();
    const { id } = await begun(tab);
    expect(await tab.desk.saveDesign()).toEqual({ kind: 'kept' });
    expect(await tab.desk.saveDesign()).toEqual({ kind: 'kept' });
    move(tab, -0.1);
    expect(await tab.desk.saveDesign()).toEqual({ kind: 'reason-needed' });
    await until(() => tab.desk.state().choiceSave.kind === 'kept');
    expect(await tab.desk.saveDesign('heavier than the target')).toEqual({ kind: 'kept' });
    expect((await versionsOf('design', id)).map(({ status, reason }) => [status, reason])).toEqual([
      ['saved', null],
      ['draft', null],
      ['saved', 'heavier than the target'],
    ]);
    expect((await versionsOf('brief', id)).map(({ status }) => status)).toEqual(['draft', 'saved']);
  });
  test('refuses: a draft that the server does not take is said with its reason, and sent again when it is changed', async () => {
    const tab = newBrowser().tab();
    const { id, text } = await begun(tab);
    tab.desk.setText('');
    await until(() => saveOf(tab).kind === 'refused');
    expect(saveOf(tab)).toMatchObject({ why: expect.stringContaining('a text of 1 to 262144 characters') as string });
    expect(tab.reload().desk.state().text).toBe('');
    tab.desk.setText(changed(text, '431'));
    await until(isKept(tab));
    expect((await newestVersion('brief', id)).text).toBe(changed(text, '431'));
  });
  test('regression: an answer that it cannot be kept now is said in the server’s words, and the text is sent again', async () => {
    const tab = newBrowser().tab();
    const { id, text } = await begun(tab);
    // More than the server takes from one machine in a minute.
    for (let i = 0; i < 700; i++) await fetch('/api/health');
    tab.desk.setText(changed(text, '431'));
    await until(() => saveOf(tab).kind === 'trouble');
    expect(saveOf(tab)).toMatchObject({ why: 'Too many requests: Wait a minute; nothing that was kept is lost.' });
    await way.program().restart();
    await until(isKept(tab));
    expect((await newestVersion('brief', id)).text).toBe(changed(text, '431'));
  });
  test('regression: a brief with faults is not saved, but still kept as a draft', async () => {
    const tab = newBrowser().tab();
    const { id, text } = await begun(tab);
    tab.desk.setText(changed(text, 'many'));
    expect(await tab.desk.saveDesign()).toMatchObject({
      kind: 'refused',
      why: expect.stringContaining('total_mg') as string,
    });
    await until(isKept(tab));
    expect(await newestVersion('brief', id)).toMatchObject({ status: 'draft', text: changed(text, 'many') });
  });
  test('regression: what is typed and taken back at once is not pending for ever', async () => {
    const tab = newBrowser().tab();
    const { text } = await begun(tab);
    tab.desk.setText(changed(text, '431'));
    tab.desk.setText(text);
    expect(saveOf(tab).kind).toBe('kept');
  });
});

describe('newWorkbench: one product after the other', () => {
  test('regression: what is typed while another product is being opened goes into neither', async () => {
    const tab = newBrowser().tab();
    const one = await begun(tab);
    const two = await begun(tab);
    const opening = tab.desk.open(one.id);
    tab.desk.setText('lost in between');
    tab.desk.setValue(['product', 'name'], 'Elsewhere');
    await opening;
    expect(tab.desk.state().text).toBe(one.text);
    await until(isThere(tab));
    expect((await newestVersion('brief', two.id)).text).toBe(two.text);
    await tab.desk.open(two.id);
    expect(tab.desk.state().text).toBe(two.text);
  });
  test('regression: a value set just before another product is opened does not land there', async () => {
    const tab = newBrowser().tab();
    const one = await begun(tab);
    const two = await begun(tab);
    tab.desk.setValue(['product', 'name'], 'Elsewhere');
    await tab.desk.open(one.id);
    expect(tab.desk.state().text).toBe(one.text);
    expect((await newestVersion('brief', one.id)).text).toBe(one.text);
    expect((await newestVersion('brief', two.id)).text).toBe(two.text);
    await tab.desk.open(two.id);
    expect(tab.desk.state().text).toBe(two.text);
  });
  test('regression: what was typed in the last second reaches the server when another product is opened', async () => {
    const tab = newBrowser().tab();
    const one = await begun(tab);
    const two = await begun(tab);
    tab.desk.setText(changed(two.text, '431'));
    await tab.desk.open(one.id);
    await tab.desk.open(two.id);
    await until(isKept(tab));
    expect(tab.desk.state().text).toBe(changed(two.text, '431'));
    expect((await newestVersion('brief', two.id)).text).toBe(changed(two.text, '431'));
  });
  test('regression: an opening that failed is tried again', async () => {
    const tab = newBrowser().tab();
    const { id, text } = await begun(tab);
    const other = newBrowser().tab();
    way.line = 'down';
    await expect(other.desk.open(id)).rejects.toThrow();
    way.line = 'up';
    await other.desk.open(id);
    expect(other.desk.state().text).toBe(text);
  });
  test('regression: figures do not stay pending when the worker breaks, and the next call gets another one', async () => {
    let isBroken = true;
    const tab = newBrowser(() => {
      if (isBroken) throw new Error('no worker');
      return thread();
    }).tab();
    const text = ownBrief();
    await tab.desk.create(text);
    expect(tab.desk.state()).toMatchObject({ isSearching: false, areDetailsPending: false });
    expect(tab.desk.state().failure).toContain('nothing you typed is lost');
    isBroken = false;
    tab.desk.setText(changed(text, '431'));
    await until(() => tab.desk.state().details !== undefined);
    expect(tab.desk.state().failure).toBeUndefined();
  });
});
