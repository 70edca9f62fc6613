import { describe, expect, test } from 'vitest';
import { choiceOfPath } from './use-fillers.ts';

const CHOICES = ['./works-2.filler.yaml', './two-shift.filler.yaml'].map((value) => ({ value, text: value }));

describe('choiceOfPath', () => {
  test.each([
    ['./works-2.filler.yaml', './works-2.filler.yaml'],
    ['../machines/Works-2.filler.yaml', './works-2.filler.yaml'],
    ['two-shift.filler.yaml', './two-shift.filler.yaml'],
    ['./works_2.filler.yaml', undefined],
    ['./other.filler.yaml', undefined],
    ['works-2', undefined],
    ['', undefined],
  ])('golden: %s is the choice %s', (path, choice) => {
    expect(choiceOfPath(CHOICES, path)).toBe(choice);
  });
});
