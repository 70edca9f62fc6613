import { requireWithin, StatsError } from '#elementary';
import { sampleMoments } from './sample-moments.ts';

/** Filled capsules, their emptied shells in the same order, and the assay of the batch in % of claim. */
export interface WeighedCapsules {
  readonly gross: readonly number[];
  readonly shells: readonly number[];
  readonly assay_pct: number;
}

/**
 * Contents of hard capsules by mass: x_i = w_i A / mean(w), with the net masses w_i = gross - shell. Their mean is the assay
 * A whatever the fill: off-target fill does not show.
 *
 * @param weighed - gross, shells: equally many, at least 2, in the unit of the data; assay_pct: A, above 0
 * @returns net masses, their mean, and contents in % of claim
 * @throws StatsError "sample-size", "wrong-length", "not-finite", "out-of-range" (a mass below 0, a mean net mass not above 0)
 * @source Ph. Eur. 2.9.40, USP <905>, mass (weight) variation, hard capsules
 * @validity one load, and a drug concentration that is the same in the whole fill; a weighing below zero net is kept
 */
export function contentsByMass({ gross, shells, assay_pct }: WeighedCapsules): {
  readonly net: readonly number[];
  readonly meanNet: number;
  readonly contents: readonly number[];
} {
  requireWithin({ assay_pct }, { above: 0 });
  if (gross.length < 2) throw new StatsError('sample-size', { n: gross.length });
  if (gross.length !== shells.length)
    throw new StatsError('wrong-length', { gross: gross.length, shells: shells.length });
  const net = gross.map((grossMass, i) => {
    const shellMass = shells[i]!;
    requireWithin({ grossMass, shellMass }, { min: 0 });
    return grossMass - shellMass;
  });
  const meanNet = sampleMoments(net).mean;
  requireWithin({ meanNet }, { above: 0 });
  return { net, meanNet, contents: net.map((mass) => (mass * assay_pct) / meanNet) };
}
