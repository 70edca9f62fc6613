import { baseline, whyNoBaseline } from './baseline.mjs';
import { measured } from './child.mjs';

/** Acceptance limits at 301 sample means by the exact probability: the first table (contour and rays) and each further one. */
export function round() {
  const inC = whyNoBaseline() === undefined ? baseline('t2').cpu_ms : undefined;
  const { first, warm, further } = measured(new URL('./measured/acceptance-table.mjs', import.meta.url));
  return [
    { figure: 'first call', unit: 'ms', ...first },
    {
      ...{ figure: 'first table, warm', unit: 'ms', ...warm, aim: { kind: 'cpu', limit: 40 } },
      ...(inC === undefined ? {} : { ratio: warm.cpu_ms / inC }),
    },
    { figure: 'each further table', unit: 'ms', ...further, aim: { kind: 'cpu', limit: 1 } },
  ];
}
