import type { ValuePath } from '@fillwright/contract/files';
import type { FileFault } from '@fillwright/engine/catalogue';
import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { createContext, use } from 'react';
import { type BriefDocument } from './brief-document.ts';
import { valueIn } from '../../briefs/index.ts';
import { controlId, fieldKind } from './field-path.ts';
import { faultText } from './fault-text.ts';
import { faultsAt } from './faults-at.ts';
import type { FieldLimits } from './schema-limits.ts';

/** Changes of the text that make one step of undo. */
export type Change = readonly [path: ValuePath, value: unknown];

/** What the fields of the form share. */
export interface BriefForm {
  readonly document: BriefDocument;
  readonly faults: readonly FileFault[];
  readonly limitsAt: (path: ValuePath) => FieldLimits;
  readonly change: (...changes: readonly Change[]) => void;
}

export const FormContext = createContext<BriefForm | undefined>(undefined);

export function useBriefForm(): BriefForm {
  const form = use(FormContext);
  if (!form) throw new Error('a field of the brief stands outside its form');
  return form;
}

export interface BoundField {
  readonly id: string;
  readonly label: string;
  readonly help: string;
  readonly fault: string | undefined;
  readonly isOptional: boolean;
}

/**
 * A value of the brief with everything its field needs.
 *
 * @param path - where it stands
 * @param reach - whether faults inside the value are its own
 * @returns words, limits, value, and how it is changed
 */
export function useField(
  path: ValuePath,
  reach: 'itself' | 'within' = 'itself',
): {
  readonly field: BoundField;
  readonly limits: FieldLimits;
  readonly raw: unknown;
  readonly source: string | undefined;
  readonly set: (value: unknown) => void;
} {
  const { document, faults, limitsAt, change } = useBriefForm();
  const words: Readonly<Record<string, { readonly label: string; readonly help: string } | undefined>> =
    BRIEF_PAGE_WORDS.fields;
  const { label, help } = words[fieldKind(path)] ?? { label: String(path.at(-1)), help: '' };
  const limits = limitsAt(path);
  const [fault] = faultsAt(faults, path, reach);
  return {
    field: { id: controlId(path), label, help, fault: fault && faultText(fault), isOptional: !limits.isRequired },
    limits,
    raw: valueIn(document.value, path),
    source: document.textAt(path) ?? document.textAt([...path, 'mean']),
    set: (value) => {
      change([path, value]);
    },
  };
}
