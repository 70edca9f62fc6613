export { ChoiceField, type Choice, type ChoiceFieldProps } from './choice-field.tsx';
export { FieldFault, type FieldProps } from './field-frame.tsx';
export { FlagField, type FlagFieldProps } from './flag-field.tsx';
export { judgedNumber, type NumberKind } from './judged-number.ts';
export { ListField, type ListFieldProps } from './list-field.tsx';
export { NumberField, type NumberFieldProps } from './number-field.tsx';
export type { NumberRange } from './number-range.ts';
export { parseTypedNumber, type NumberRefusal, type TypedInto, type TypedNumber } from './parse-typed-number.ts';
export { QuantityField, type QuantityFieldProps } from './quantity-field.tsx';
export { SourceMark } from './source-mark.tsx';
export { sourceText } from './source-text.ts';
export { steppedNumber } from './stepped-number.ts';
export { TextField, type TextFieldProps } from './text-field.tsx';
export { unitText } from './unit-text.ts';
export { useNumberDraft, type NumberEntry } from './use-number-draft.ts';
export {
  markOf,
  writtenOf,
  writtenQuantity,
  type SourceMarkKind,
  type WrittenQuantity,
  type WrittenSpread,
} from './written-quantity.ts';
export { usePageHidden } from './use-page-hidden.ts';
export { useDraft, type DraftText } from './use-draft.ts';
