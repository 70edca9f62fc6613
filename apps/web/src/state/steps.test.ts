import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Choice } from './workbench-state.ts';
import { NO_STEPS, redone, stepped, undone, type Step, type Steps } from './steps.ts';

describe('steps', () => {
  test('property: undoing everything and redoing everything ends where it began', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { minLength: 1, maxLength: 30 }), (texts) => {
        let now: Step = { text: 'first' };
        let steps: Steps = NO_STEPS;
        let at_ms = 0;
        for (const text of texts)
          [steps, now] = [stepped(steps, { before: now, after: { text }, at_ms: (at_ms += 1000) }), { text }];
        const last = now;
        for (let back = undone(steps, now); back; back = undone(steps, now)) [steps, now] = [back.steps, back.to];
        expect(now.text).toBe('first');
        for (let forth = redone(steps, now); forth; forth = redone(steps, now)) [steps, now] = [forth.steps, forth.to];
        expect(now).toEqual(last);
      }),
      { seed: 1 },
    );
  });
  test('limit: a new step forgets what could be redone', () => {
    const made = { before: { text: 'a' }, after: { text: 'b' }, at_ms: 0 };
    const back = undone(stepped(NO_STEPS, made), made.after);
    expect(back && stepped(back.steps, made).future).toEqual([]);
  });
  /** Types one key after the other at the end of a line. */
  const typed = (pause_ms: number): Steps =>
    [
      ['n:', 'n: 1'],
      ['n: 1', 'n: 12'],
      ['n: 12', 'n: 123'],
    ].reduce((steps, [before = '', after = ''], index) => {
      const at_ms = index * pause_ms;
      return stepped(steps, { before: { text: before }, after: { text: after }, at_ms });
    }, NO_STEPS);
  test('regression: keys typed in one go are one step, with pauses between them each is one', () => {
    expect(typed(120).past).toEqual([{ text: 'n:' }]);
    expect(typed(1500).past).toHaveLength(3);
  });
  test('limit: another line, another lever or more than one line is a step of its own, however fast', () => {
    const choice = (a: number, b: number): Choice => ({
      size: '0',
      method: 'm',
      settings: { parts: {}, values: { a, b } },
    });
    const texts = ['a\nb', 'ax\nb', 'ax\nbx', 'whole\nother'].map((text) => ({ text }));
    const levers = [choice(1, 1), choice(2, 1), choice(3, 1), choice(3, 2)].map((each) => ({ text: '', choice: each }));
    const count = (all: readonly Step[]): number =>
      all.slice(1).reduce((steps, after, i) => stepped(steps, { before: all[i] ?? after, after, at_ms: i }), NO_STEPS)
        .past.length;
    expect(count(texts)).toBe(3);
    expect(count(levers)).toBe(2);
  });
});
