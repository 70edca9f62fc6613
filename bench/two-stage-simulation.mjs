import { baseline, whyNoBaseline } from './baseline.mjs';
import { measured } from './child.mjs';

const TESTS = 1e6;

/** A million simulated two-stage tests at mean 96, sd 5.5, as the baseline task `t1mc`; and with three kinds of units. */
export function round() {
  const inC = whyNoBaseline() === undefined ? baseline('t1mc').cpu_ms / TESTS : undefined;
  const { one, mixture } = measured(new URL('./measured/two-stage-simulation.mjs', import.meta.url));
  return [
    {
      // 12 million tests a second.
      ...{ figure: 'one kind, per test', unit: 'ns', ...one, aim: { kind: 'cpu', limit: 83 } },
      ...(inC === undefined ? {} : { ratio: one.cpu_ms / inC }),
    },
    { figure: 'three kinds, per test', unit: 'ns', ...mixture },
  ];
}
