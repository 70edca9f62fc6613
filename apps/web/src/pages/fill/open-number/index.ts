export { useOpenNumber } from './open-number-context.ts';
export { OpenNumberPanel, usePanelAhead } from './lazy-panel.tsx';
export { OpenNumberProvider } from './open-number-provider.tsx';
