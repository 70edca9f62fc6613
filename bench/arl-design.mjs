import { measured } from './child.mjs';
import { elsewhere, ratios, requireAgreement } from './elsewhere.mjs';

/** The chart of the baseline task `t5a`, and the design searches of `t5b` and `t5m`. */
export const POINT = { lambda: 0.1, limitFactor: 2.7, shift: 0.5 };
export const SHIFTS = [0.5, 1, 1.5, 2];
export const ARL_0 = 370.4;
const axis = (from, to) => Array.from({ length: 100 }, (_, i) => from + ((to - from) * i) / 99);
export const MAP = { lambdas: axis(0.03, 1), limitFactors: axis(1.5, 4), shift: 1 };

/**
 * Mean run length at `POINT` and the sum of the four designs by the integral equation, to 1e-5: made once with 64 Gauss nodes,
 * a program apart (plain elimination, Math.exp). A faster wrong answer is none.
 */
const EXPECTED = { ewma: [28.1905396, 1e-7], designs: [44.5596097, 1e-5] };
/** A chain of 201 states is off by up to so much, relatively (limits of the method, measured against the integral equation). */
const OF_CHAIN = 1.4e-3;

/**
 * Run lengths and designs against C and NumPy: `t5a` is a chain of 201 states (LU), `t5b` the search with 48 nodes, `t5m` the
 * search with the chain. Here all of them go by the integral equation.
 */
export function round() {
  const chain = elsewhere('t5a');
  const { first, warm, values } = measured(new URL('./measured/arl-design.mjs', import.meta.url));
  const [nodes, chains] = [elsewhere('t5b'), elsewhere('t5m', { repeats: 3 })];
  const designs = values.designs.reduce((total, value) => total + value, 0);
  const here = (value) => ({ TypeScript: { value } });
  agree('one run length', { ...here(values.ewma) }, EXPECTED.ewma);
  agree('four designs', { ...here(designs), ...nodes }, EXPECTED.designs);
  agree('one run length by a chain', chain, [values.ewma, OF_CHAIN]);
  agree('four designs by a chain', chains, [designs, OF_CHAIN]);
  const one = { kind: 'cpu', limit: 10, ambitious: 3.5 };
  const four = { kind: 'cpu', limit: 5, ambitious: 1.65 };
  const against = ({ cpu_ms }, there) => ratios(cpu_ms, there);
  return [
    { figure: 'four designs, first call', unit: 'ms', ...first },
    { figure: 'one EWMA run length (t5a)', unit: 'us', ...warm.ewma, aim: one, ...against(warm.ewma, chain) },
    { figure: 'one EWMA run length in control', unit: 'us', ...warm.inControl, aim: one },
    { figure: 'one two-sided CUSUM run length', unit: 'us', ...warm.cusum, aim: one },
    { figure: 'four designs (t5b)', unit: 'ms', ...warm.designs, aim: four, ...against(warm.designs, nodes) },
    { figure: 'four designs (t5m)', unit: 'ms', ...warm.designs, ...against(warm.designs, chains) },
    {
      ...{ figure: 'map of 100 x 100, in control and shifted', unit: 'ms', ...warm.map },
      aim: { kind: 'cpu', ambitious: 50 },
    },
  ];
}

function agree(task, there, [expected, relative]) {
  requireAgreement(task, { there, expected, within: relative * expected });
}
