import { describe, expect, test } from 'vitest';
import { compressibilityIndex_pct } from './compressibility-index.ts';
import { flowFunctionGrade } from './flow-function-grade.ts';
import { FLOW_FUNCTION_GRADES, FLOW_FUNCTION_SCALE } from './flow-function-scale.table.ts';
import { flowGradeByIndex } from './flow-grade-by-index.ts';
import { flowGradeByRepose } from './flow-grade-by-repose.ts';
import { FLOW_GRADES, FLOW_SCALE } from './flow-scale.table.ts';

describe('flowGradeByIndex', () => {
  test.each([
    [8, 'excellent'],
    [12.5, 'good'],
    [18, 'fair'],
    [23, 'passable'],
    [28, 'poor'],
    [35, 'very poor'],
    [41, 'very, very poor'],
  ])('golden: %s %% is %s (USP <1174>, USP 29-NF 24 text)', (index, grade) => {
    expect(flowGradeByIndex(index)).toBe(grade);
  });
  test.each([
    [0, 'excellent'],
    [10, 'excellent'],
    [10.01, 'good'],
    [15.5, 'fair'],
    [37, 'very poor'],
    [37.5, 'very, very poor'],
  ])('limit: %s %% is %s, gaps of the printed scale closed upward', (index, grade) => {
    expect(flowGradeByIndex(index)).toBe(grade);
  });
  test('limit: rounding of doubles moves no powder over a limit', () => {
    // In doubles 100 (1 - .69) / 1 is 31.000000000000004; on paper it is 31.
    const pair = { bulkDensity_g_per_mL: 0.69, tappedDensity_g_per_mL: 1 };
    expect(compressibilityIndex_pct(pair)).toBeGreaterThan(31);
    expect(flowGradeByIndex(compressibilityIndex_pct(pair))).toBe('poor');
  });
  test.each([
    [NaN, 'not-a-number'],
    [-1, 'out-of-range'],
    [100, 'out-of-range'],
  ])('refuses: an index of %s %% -> %s', (index, code) => {
    expect(() => flowGradeByIndex(index)).toThrow(code);
  });
});

describe('flowGradeByRepose', () => {
  test.each([
    [28, 'excellent'],
    [33, 'good'],
    [38, 'fair'],
    [43, 'passable'],
    [50, 'poor'],
    [60, 'very poor'],
    [70, 'very, very poor'],
  ])('golden: %s degrees are %s (USP <1174>, USP 29-NF 24 text)', (repose, grade) => {
    expect(flowGradeByRepose(repose)).toBe(grade);
  });
  test.each([
    [30, 'excellent'],
    [30.5, 'good'],
    [65, 'very poor'],
    [65.5, 'very, very poor'],
  ])('limit: %s degrees are %s', (repose, grade) => {
    expect(flowGradeByRepose(repose)).toBe(grade);
  });
  test.each([
    [NaN, 'not-a-number'],
    [0, 'not-positive'],
    [90, 'out-of-range'],
  ])('refuses: %s degrees -> %s', (repose, code) => {
    expect(() => flowGradeByRepose(repose)).toThrow(code);
  });
});

describe('flowFunctionGrade', () => {
  test.each([
    [0.8, 'not flowing'],
    [1.5, 'very cohesive'],
    [3, 'cohesive'],
    [6, 'easy-flowing'],
    [12, 'free-flowing'],
  ])('golden: %s is %s (Jenike 1964, Schulze 2008, from memory)', (flowFunction, grade) => {
    expect(flowFunctionGrade(flowFunction)).toBe(grade);
  });
  test.each([
    [1, 'very cohesive'],
    [2, 'very cohesive'],
    [4, 'cohesive'],
    [10, 'easy-flowing'],
  ])('limit: %s is %s', (flowFunction, grade) => {
    expect(flowFunctionGrade(flowFunction)).toBe(grade);
  });
  test.each([
    [NaN, 'not-a-number'],
    [0, 'not-positive'],
    [Infinity, 'not-a-number'],
  ])('refuses: %s -> %s', (flowFunction, code) => {
    expect(() => flowFunctionGrade(flowFunction)).toThrow(code);
  });
});

describe('FLOW_SCALE, FLOW_FUNCTION_SCALE', () => {
  test('property: one band per grade, in the order of the grades', () => {
    expect(FLOW_SCALE.map((band) => band.grade)).toEqual(FLOW_GRADES);
    expect(FLOW_FUNCTION_SCALE.map((band) => band.grade)).toEqual(FLOW_FUNCTION_GRADES);
  });
  test('property: every band starts above the end of the one before', () => {
    for (const [i, band] of FLOW_SCALE.slice(1).entries()) {
      const before = FLOW_SCALE[i];
      expect(band.compressibilityIndexLower_pct).toBe((before?.compressibilityIndexUpper_pct ?? NaN) + 1);
      expect(band.reposeLower_deg).toBe((before?.reposeUpper_deg ?? NaN) + 1);
      expect(band.hausnerLower_ratio).toBeCloseTo((before?.hausnerUpper_ratio ?? NaN) + 0.01, 12);
    }
  });
});
