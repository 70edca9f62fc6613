export { AttentionMark } from './attention-mark.tsx';
export { drawingOf } from './drawings.ts';
export { fixed, inMillimetres, short, signed } from './figures.ts';
export { atMm, inMm } from './at-mm.ts';
export type { DrawnSetUp, MethodDrawing, SectionRoom } from './method-drawing.ts';
export { SetUpDrawing } from './set-up-drawing.tsx';
export { CapsuleDrawing, MachineDrawing } from './split-drawings.tsx';
export { OpeningContext, type DrawnLetter, type NumberName, type Opening } from './opening.ts';
