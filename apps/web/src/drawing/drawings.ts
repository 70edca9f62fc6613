import { measuringDiscDrawing } from './measuring-disc/index.ts';
import type { MethodDrawing } from './method-drawing.ts';

/** Drawings by the id of the dosing method; the only place that names one. */
const DRAWINGS: Readonly<Record<string, MethodDrawing>> = { 'measuring-disc': measuringDiscDrawing };

/** @returns the drawing of a dosing method, or undefined when nobody has drawn it yet */
export function drawingOf(method: string): MethodDrawing | undefined {
  return Object.hasOwn(DRAWINGS, method) ? DRAWINGS[method] : undefined;
}
