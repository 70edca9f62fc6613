export type {
  InputOrigin,
  Letter,
  LetterPlace,
  NumberKey,
  NumberReference,
  NumberReferences,
} from './number-reference.ts';
export { useOpenNumber, type OpenNumber } from './open-number-context.ts';
