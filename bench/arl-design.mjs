import { baseline, whyNoBaseline } from './baseline.mjs';
import { measured } from './child.mjs';

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

/**
 * Run lengths and designs against C: `t5a` is a chain of 201 states (LU), `t5b` the search with 48 nodes, `t5m` the search with
 * the chain. Here all of them go by the integral equation.
 */
export function round() {
  const { first, warm, values } = measured(new URL('./measured/arl-design.mjs', import.meta.url));
  const sum = values.designs.reduce((total, value) => total + value, 0);
  requireAgreement({ ewma: values.ewma, designs: sum });
  const inC = (task) => (whyNoBaseline() === undefined ? baseline(task).cpu_ms : undefined);
  const aims = {
    one: { kind: 'cpu', limit: 10, ambitious: 3.5 },
    designs: { kind: 'cpu', limit: 5, ambitious: 1.65 },
    map: { kind: 'cpu', limit: 50 },
  };
  return [
    { figure: 'four designs, first call', unit: 'ms', ...first },
    { figure: 'one EWMA run length (t5a)', unit: 'us', ...warm.ewma, aim: aims.one, ...ratio(warm.ewma, inC('t5a')) },
    { figure: 'one EWMA run length in control', unit: 'us', ...warm.inControl, aim: aims.one },
    { figure: 'one two-sided CUSUM run length', unit: 'us', ...warm.cusum, aim: aims.one },
    {
      figure: 'four designs (t5b)',
      unit: 'ms',
      ...warm.designs,
      aim: aims.designs,
      ...ratio(warm.designs, inC('t5b')),
    },
    { figure: 'four designs (t5m)', unit: 'ms', ...warm.designs, ...ratio(warm.designs, inC('t5m')) },
    { figure: 'map of 100 x 100, in control and shifted', unit: 'ms', ...warm.map, aim: aims.map },
  ];
}

function ratio({ cpu_ms }, inC) {
  return inC === undefined ? {} : { ratio: cpu_ms / inC };
}

function requireAgreement(found) {
  for (const [name, [expected, tolerance]] of Object.entries(EXPECTED))
    if (!(Math.abs(found[name] / expected - 1) < tolerance))
      throw new Error(`${name}: ${found[name]} here, ${expected} expected`);
}
