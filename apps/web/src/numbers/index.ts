export { numbersInSentence } from './numbers-in-sentence.tsx';
export type { NumberKey, NumberReference } from './number-reference.ts';
export { NumberDock } from './number-dock.tsx';
export { numberOfEdge } from './number-of-edge.ts';
export { PageNumber } from './page-number.tsx';
export { useOpenNumber } from './open-number-context.ts';
export { OpenNumberPanel, usePanelAhead } from './lazy-panel.tsx';
export { OpenNumberProvider } from './open-number-provider.tsx';
export { halfWidth_mg, narrowings } from './narrowings.ts';
