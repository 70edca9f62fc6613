import { measured } from './child.mjs';

/** One powder part, the demo product: a search in a fresh process, modules loaded, and one in a warm process. */
export function round() {
  const { first, warm } = measured(new URL('./measured/design-search.mjs', import.meta.url));
  return [
    { figure: 'first call', unit: 'ms', ...first, aim: { kind: 'wall', limit: 200 } },
    { figure: 'warm, median of 20', unit: 'ms', ...warm, aim: { kind: 'wall', limit: 50 } },
  ];
}
