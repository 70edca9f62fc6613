import { readFileSync } from 'node:fs';
import { PROBLEM_STATUS, problemSchema, type ProblemCode } from '@fillwright/contract/problems';
import { SERVER_PROBLEMS } from '@fillwright/words/en';
import { describe, expect, test } from 'vitest';
import { ProblemError } from './problem-error.ts';
import { problemOf } from './problem-of.ts';

const CODES = Object.keys(PROBLEM_STATUS) as ProblemCode[];
const clientError = (statusCode: number): Error => Object.assign(new Error('text of the framework'), { statusCode });

describe('problemOf', () => {
  test.each(CODES)('property: %s has its status and members of RFC 9457 only, in whole sentences', (code) => {
    const problem = problemSchema.parse(problemOf(new ProblemError(code)));
    expect(problem).toEqual({
      type: `/problems/${code}`,
      title: SERVER_PROBLEMS[code].title,
      status: PROBLEM_STATUS[code],
      detail: SERVER_PROBLEMS[code].todo,
    });
    expect(problem.detail).toMatch(/^[A-Z].*[^.]\.$/);
  });
  // RFC 9110, section 15.5: the codes of the 400s, and RFC 6585, section 4, for 429
  test.each([
    [404, 'unknown-address'],
    [413, 'body-too-large'],
    [415, 'media-type'],
    [429, 'too-many-requests'],
    [400, 'unreadable-request'],
    [406, 'unreadable-request'],
  ] as const)('golden: status %i of the framework is %s, without its text', (status, code) => {
    const problem = problemOf(clientError(status));
    expect(problem).toMatchObject({ type: `/problems/${code}`, status: PROBLEM_STATUS[code] });
    expect(JSON.stringify(problem)).not.toContain('framework');
  });
  test.each([new Error('password=x'), clientError(500), clientError(NaN), 'text', undefined, null])(
    'refuses: %s is told by an id alone',
    (error) => {
      const { instance, ...problem } = problemSchema.parse(problemOf(error));
      expect(problem).toEqual(problemOf(new ProblemError('internal-error')));
      // RFC 9562: form of a UUID, version 4
      expect(instance).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    },
  );
});

describe('docs/problems.md', () => {
  test('property: lists every problem of the server once with its status, and no other', () => {
    const text = readFileSync(new URL('../../../../docs/problems.md', import.meta.url), 'utf8');
    const rows = [...text.matchAll(/^\| `([a-z-]+)` *\| (\d+) *\| ([^|]+) \| ([^|]+) \|$/gm)];
    expect(rows.map(([, code, status]) => [code, Number(status)])).toEqual(Object.entries(PROBLEM_STATUS));
    for (const [, , , meaning, solution] of rows) {
      expect(meaning?.trim()).not.toBe('');
      expect(solution?.trim()).not.toBe('');
    }
  });
});
