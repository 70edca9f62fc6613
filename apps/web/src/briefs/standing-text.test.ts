import { describe, expect, test } from 'vitest';
import { standingText } from './standing-text.ts';

describe('standingText', () => {
  test('golden: one line for the shell, each part and each lever, in one order', () => {
    const values = { pin2Depth_mm: 1.25, pin1Depth_mm: 4, pin3Depth_mm: 0 };
    const files = [{ kind: 'filler', id: 'own', file: 'own.filler.yaml', version: 2 }];
    const choice = { size: '0', parts: { disc: 'D-17' }, values, files };
    expect(standingText(JSON.stringify(choice))).toBe(
      [
        ...['shell size 0', 'disc D-17'],
        'pin 1: 4\u202Fmm below the face of the disc',
        'pin 2: 1.25\u202Fmm below the face of the disc',
        'pin 3: flush with the face of the disc',
        'computed from own.filler.yaml, version 2',
      ].join('\n'),
    );
  });
  test('refuses: a text that is no design is shown as it is', () => {
    expect(standingText('{"size":')).toBe('{"size":');
    expect(standingText('null')).toBe('null');
    expect(standingText('{"format":1}')).toBe('{"format":1}');
  });
});
