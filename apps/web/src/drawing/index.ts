export { AttentionMark } from './attention-mark.tsx';
export { drawingOf } from './drawings.ts';
export { fixed, inMillimetres, short } from './figures.ts';
export { largestSlugs } from './measuring-disc/index.ts';
export type { DrawnSetUp } from './method-drawing.ts';
export { SetUpDrawing } from './set-up-drawing.tsx';
export { CapsuleDrawing, MachineDrawing, UprightDrawing } from './split-drawings.tsx';
export { useAtRest } from './use-at-rest.ts';
export { OpeningContext, type Opening } from './opening.ts';
