import { describe, expect, test } from 'vitest';
import { standingText } from './standing-text.ts';

describe('standingText', () => {
  test('golden: one line for the shell, each part and each lever, in one order', () => {
    const choice = { size: '0', parts: { disc: 'D-17' }, values: { pin2Depth_mm: 1.25, pin1Depth_mm: 4 } };
    expect(standingText(JSON.stringify(choice))).toBe(
      ['shell size 0', 'disc D-17', 'pin 1 (pin1Depth_mm): 4', 'pin 2 (pin2Depth_mm): 1.25'].join('\n'),
    );
  });
  test('refuses: a text that is no design is shown as it is', () => {
    expect(standingText('{"size":')).toBe('{"size":');
    expect(standingText('null')).toBe('null');
    expect(standingText('{"format":1}')).toBe('{"format":1}');
  });
});
