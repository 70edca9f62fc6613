import { baseline, whyNoBaseline } from './baseline.mjs';
import { measured } from './child.mjs';

const NUMBERS_IN_C = 1e7;

/** Standard normal numbers of two words each, time per number against C (one word of twice the length). */
export function round() {
  const inC = whyNoBaseline() === undefined ? baseline('rngn').cpu_ms / NUMBERS_IN_C : undefined;
  const warm = measured(new URL('./measured/normals.mjs', import.meta.url));
  const ratio = inC === undefined ? {} : { ratio: warm.cpu_ms / inC };
  return [{ figure: 'warm, per number', unit: 'ns', ...warm, ...ratio }];
}
