export type {
  InputOrigin,
  Letter,
  LetterPlace,
  NumberKey,
  NumberReference,
  NumberReferences,
} from './number-reference.ts';
export { useOpenNumber, type OpenNumber } from './open-number-context.ts';
export { OpenNumberPanel, usePanelAhead } from './lazy-panel.tsx';
export { OpenNumberProvider } from './open-number-provider.tsx';
export { numberReferences } from './references/number-references.ts';
