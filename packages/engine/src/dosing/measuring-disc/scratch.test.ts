import { test } from 'vitest';
import { GENERIC_FILLER } from '#fillers';
import { completedPowder } from '#materials';
import { singleMeasurement } from '#quantity';
import { findShellSize, shellGeometry } from '#shells';
import { DOSING_METHODS, gains, intervalOfMean } from '#dosing';
const d = (value: number) => singleMeasurement({ value, kind: 'density' });
test('scratch', () => {
  const material = completedPowder({
    bulkDensity_g_per_mL: d(0.5),
    tappedDensity_g_per_mL: d(0.64),
    feedDensity_g_per_mL: d(0.54),
    compression: {
      law: 'kawakita',
      a_frac: singleMeasurement({ value: 0.55, kind: 'law-constant' }),
      b_per_MPa: singleMeasurement({ value: 1.6, kind: 'law-constant' }),
      initialDensity_g_per_mL: 0.54,
    },
    slug: { isHeld: true, force_N: 50 },
  });
  const shell = shellGeometry(findShellSize('0')!);
  if (shell.kind !== 'known') throw new Error();
  const context = {
    material,
    filler: GENERIC_FILLER,
    shell,
    below_mm3: 0,
    validated: { pinDepth: { min_mm: 0, max_mm: 5 } },
  };
  const m = DOSING_METHODS[0]!;
  for (const springs of ['S50', 'S30']) {
    const settings = {
      parts: { disc: 'D66-155', springs },
      values: { pin1Depth_mm: 3.5, pin2Depth_mm: 2.2, pin3Depth_mm: 1.3, pin4Depth_mm: 0.8, pin5Depth_mm: 0 },
    };
    const p = m.predict(context, settings);
    console.log(JSON.stringify(p, (k, v) => (typeof v === 'number' ? Math.round(v * 1e4) / 1e4 : v), 1));
    const parameters = m.parameters(context, settings);
    console.log(intervalOfMean({ parameters, evaluate: m.evaluator(context, settings), seed: 1 }));
    console.log(JSON.stringify(gains({ method: m, context, settings, seed: 1 }), null, 1));
  }
  for (const s of m.solve(context, 430)) console.log(JSON.stringify(s));
  const t = performance.now();
  m.solve(context, 430);
  console.log(performance.now() - t);
});
