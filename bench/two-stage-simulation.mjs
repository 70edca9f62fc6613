import { measured } from './child.mjs';
import { elsewhere, ratios, requireAgreement } from './elsewhere.mjs';

const TESTS = 1e6;

/** A million simulated two-stage tests at mean 96, sd 5.5, as the task `t1mc`; and with three kinds of units. */
export function round() {
  const there = elsewhere('t1mc');
  const { one, mixture, pass_frac, exact_frac } = measured(
    new URL('./measured/two-stage-simulation.mjs', import.meta.url),
  );
  const within = 5 * Math.sqrt((exact_frac * (1 - exact_frac)) / TESTS);
  const all = { ...there, TypeScript: { value: pass_frac } };
  requireAgreement('two-stage-simulation', { there: all, expected: exact_frac, within });
  // 12 million tests a second; ambitious: 25 million on two cores.
  const aim = { kind: 'cpu', limit: 83, ratioToC: 1.7, ambitious: 80 };
  return [
    { figure: 'one kind, per test', unit: 'ns', ...one, aim, ...ratios(one.cpu_ms * TESTS, there) },
    { figure: 'three kinds, per test', unit: 'ns', ...mixture },
  ];
}
