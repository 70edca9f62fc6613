import { nearestName, type InputFault } from '@fillwright/engine/catalogue';
import type { z } from 'zod';
import { valueAt } from '#written';
import { fieldOf } from './field-of.ts';
import type { SourceDocument } from './source-document.ts';
import { written } from './written.ts';

const COMMA = /^[+-]?\d*,\d+$/;
/** Groups of digits with blanks, apostrophes, underscores, points or commas between them. */
const THOUSANDS = /^[+-]?[1-9]\d{0,2}([ '_,.\u00a0\u202f’]\d{3})+([.,]\d+)?$/;

/**
 * A value that its schema refuses.
 *
 * @param document - the document
 * @param issue - what the schema says; its message is what would be allowed
 * @returns the fault
 */
export function valueFault(document: SourceDocument, issue: z.core.$ZodIssue): InputFault {
  const value = valueAt(document.value, issue.path);
  const fault = { field: fieldOf(issue.path), ...written(document, issue.path), allowed: issue.message };
  if (value === undefined) return { code: 'missing', field: fault.field, allowed: fault.allowed };
  if (typeof value === 'number') return { code: numberCode(issue, value), ...fault };
  if (typeof value === 'string' && expects(issue, 'number')) return { ...fault, ...textInPlaceOfNumber(value, issue) };
  if (Array.isArray(value) && (issue.code === 'too_big' || issue.code === 'too_small'))
    return { code: 'wrong-length', ...fault, value: String(value.length) };
  if (typeof value === 'string' && choicesOf(issue).length > 0) {
    const nearest = nearestName(value, choicesOf(issue));
    return { code: 'not-a-choice', ...fault, ...(nearest === undefined ? {} : { nearest }) };
  }
  return { code: 'wrong-kind', ...fault };
}

function numberCode(issue: z.core.$ZodIssue, value: InUnitOfField): InputFault['code'] {
  if (!Number.isFinite(value)) return 'not-finite';
  if (expects(issue, 'string')) return 'quote-it';
  if (issue.code === 'invalid_value') return 'not-a-choice';
  return issue.code === 'too_big' || issue.code === 'too_small' ? 'out-of-range' : 'wrong-kind';
}

/** A number in the unit of the field. */
type InUnitOfField = number;

function textInPlaceOfNumber(value: string, issue: z.core.$ZodIssue): Pick<InputFault, 'code' | 'allowed'> {
  const text = value.trim();
  // `1,200` could be 1.2 or 1200: it is never guessed which.
  if (THOUSANDS.test(text)) return { code: 'thousands-mark', allowed: issue.message };
  if (COMMA.test(text)) return { code: 'decimal-comma', allowed: issue.message };
  const isQuoted = text !== '' && Number.isFinite(Number(text));
  return { code: 'wrong-kind', allowed: `${issue.message}${isQuoted ? ', without quotation marks' : ''}` };
}

/** Whether the value, or one of the forms in which it may be written, has to be of a kind. */
function expects(issue: z.core.$ZodIssue, kind: 'number' | 'string'): boolean {
  if (issue.code === 'invalid_type') return issue.expected === kind || (kind === 'number' && issue.expected === 'int');
  return (
    issue.code === 'invalid_union' && issue.errors.flat().some((each) => each.path.length === 0 && expects(each, kind))
  );
}

/** The words that would be allowed, where the value is one of a few. */
function choicesOf(issue: z.core.$ZodIssue): readonly string[] {
  switch (issue.code) {
    case 'invalid_value':
      return issue.values.filter((value) => typeof value === 'string');
    case 'invalid_union':
      return issue.discriminator === undefined ? issue.errors.flat().flatMap(choicesOf) : issue.message.split(', ');
    default:
      return [];
  }
}
