import type { TypedFacts, WeightsSheet } from '@fillwright/contract/documents';

/** Nothing pasted yet. */
export const EMPTY_SHEET: WeightsSheet = {
  format: 1,
  weights: '',
  shells: '',
  purpose: 'trial',
  basis: 'gross',
  isRevolution: false,
  typed: { tests: [] },
};

/**
 * The sheet in a document of weights. What cannot be read as one is a text of weights: nothing that was kept is lost.
 *
 * @param text - JSON, or nothing yet
 * @returns the sheet
 */
export function sheetIn(text: string): WeightsSheet {
  if (text === '') return EMPTY_SHEET;
  const written = parsed(text);
  if (!written) return { ...EMPTY_SHEET, weights: text };
  const { weights, shells, purpose, basis, unit, isRevolution, typed } = written;
  return {
    format: 1,
    weights: typeof weights === 'string' ? weights : '',
    shells: typeof shells === 'string' ? shells : '',
    purpose: purpose === 'release' || purpose === 'in-process' ? purpose : 'trial',
    basis: basis === 'net' ? 'net' : 'gross',
    ...(unit === 'mg' || unit === 'g' ? { unit } : {}),
    isRevolution: isRevolution === true,
    typed: { tests: [], ...(typeof typed === 'object' ? (typed as Partial<TypedFacts> | null) : {}) },
  };
}

/** Text of a document of weights. */
export function sheetText(sheet: WeightsSheet): string {
  return JSON.stringify(sheet, null, 1);
}

function parsed(text: string): Partial<Record<keyof WeightsSheet, unknown>> | undefined {
  try {
    const content: unknown = JSON.parse(text);
    return typeof content === 'object' && content !== null && !Array.isArray(content) ? content : undefined;
  } catch {
    return undefined;
  }
}
