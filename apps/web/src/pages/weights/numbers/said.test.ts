import { describe, expect, test } from 'vitest';
import { plainText } from './plain-text.ts';
import { said } from './said.ts';

const NUMBER = { entry: '', inputs: {}, output: '', title: 'is the mean' };

describe('said', () => {
  test('golden: numbers with a reference are pieces of their own, the rest is text', () => {
    const pieces = said(({ a, b }) => `${a} of ${b} mg`, { a: '3', b: ['430', NUMBER] });
    expect(pieces).toEqual(['3', ' of ', { text: '430', number: NUMBER }, ' mg']);
    expect(plainText(pieces)).toBe('3 of 430 mg');
  });
  test('limit: what has no reference is text', () => {
    expect(said(({ a }) => a, { a: ['430', undefined] })).toEqual(['430']);
  });
});
