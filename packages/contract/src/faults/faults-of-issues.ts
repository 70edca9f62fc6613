import type { InputFault } from '@fillwright/engine/catalogue';
import type { z } from 'zod';
import { valueAt } from '#written';
import type { SourceDocument } from './source-document.ts';
import { unknownKeyFault } from './unknown-key-fault.ts';
import { valueFault } from './value-fault.ts';

type Issue = z.core.$ZodIssue;

/** More is no slip of a person, and each is looked up in the whole text: a file of nothing else would take minutes. */
const MOST_FAULTS = 200;

/**
 * What is wrong with a document, from the issues of its schema. The schemas of this package put into the message of an
 * issue what would be allowed; for a mapping that is the list of its keys.
 *
 * @param issues - issues of the schema
 * @param document - the document that was read
 * @returns one fault for each thing that is wrong, up to some hundreds; a misspelt key is not reported as missing once more
 */
export function faultsOfIssues(issues: readonly Issue[], document: SourceDocument): InputFault[] {
  const faults = issues.slice(0, MOST_FAULTS).flatMap((issue) => faultsOf(issue, document));
  const meant = new Set(
    faults.flatMap(({ field, nearest }) => (nearest === undefined ? [] : [beside(field, nearest)])),
  );
  return faults.filter(({ code, field }) => !(code === 'missing' && meant.has(field)));
}

function faultsOf(issue: Issue, document: SourceDocument): readonly InputFault[] {
  if (issue.code === 'unrecognized_keys') {
    const known = issue.message.split(', ');
    return issue.keys
      .slice(0, MOST_FAULTS)
      .map((key) => unknownKeyFault(document, { path: [...issue.path, key], known }));
  }
  if (issue.code === 'invalid_union') {
    const inner = innerIssues(issue, valueAt(document.value, issue.path));
    if (inner) return inner.flatMap((each) => faultsOf(each, document));
  }
  return [valueFault(document, issue)];
}

/**
 * A value may be written in several forms: when it is a mapping, what is wrong with the form that it resembles most is
 * said; else what would be allowed.
 */
function innerIssues(issue: z.core.$ZodIssueInvalidUnion, value: unknown): readonly Issue[] | undefined {
  if (typeof value !== 'object' || value === null) return undefined;
  const forms = issue.errors.filter(
    (errors) => !errors.some(({ path, code }) => path.length === 0 && isOtherKind(code)),
  );
  const fewest = [...forms].sort((a, b) => a.length - b.length)[0];
  return fewest?.map((each) => ({ ...each, path: [...issue.path, ...each.path] }));
}

function isOtherKind(code: Issue['code']): boolean {
  return code === 'invalid_type' || code === 'invalid_value';
}

/** `a.b` and `c` -> `a.c`. */
function beside(field: string, key: string): string {
  return [...field.split('.').slice(0, -1), key].join('.');
}
