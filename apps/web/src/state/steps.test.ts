import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { NO_STEPS, redone, stepped, undone, type Step, type Steps } from './steps.ts';

describe('steps', () => {
  test('property: undoing everything and redoing everything ends where it began', () => {
    fc.assert(
      fc.property(fc.array(fc.string(), { minLength: 1, maxLength: 30 }), (texts) => {
        let now: Step = { text: 'first' };
        let steps: Steps = NO_STEPS;
        for (const text of texts) [steps, now] = [stepped(steps, now), { text }];
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
    const back = undone(stepped(NO_STEPS, { text: 'a' }), { text: 'b' });
    expect(back && stepped(back.steps, back.to).future).toEqual([]);
  });
});
