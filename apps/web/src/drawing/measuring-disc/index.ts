export { scaleText } from './scale-text.ts';
export { largestSlugs } from './largest-slugs.ts';
export { measuringDiscDrawing } from './measuring-disc-drawing.ts';
