export { measuringDiscDrawing } from './measuring-disc-drawing.ts';
