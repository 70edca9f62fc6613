import { normalNodes } from '@fillwright/stats/distributions';
import {
  acceptanceValueQuantiles,
  probabilityOfPassingDosageUnits,
  probabilityOfPassingUniformityOfMass,
} from '@fillwright/stats/decisions';
import type { SubstanceAtTarget, TargetFill } from '#brief';
import type { Brief, RouteTest } from './brief.ts';
import { weighedSpreads, type UncertainSpread } from './weighed-spreads.ts';

/** What the dossier's test would say of a lot made after set-up. */
export interface TestOutlook {
  readonly test: RouteTest['test'];
  readonly use: RouteTest['use'];
  /** Each substance is judged by itself; left out for tests of mass. */
  readonly substance?: string;
  /** Probability of passing, averaged over what is not known; left out where no model is found. */
  readonly pass_frac?: number;
  readonly acceptanceValue?: { readonly median_pct: number; readonly p95_pct: number };
  /** No load of the blend is known: a mean of 100 % was taken. */
  readonly isContentAssumed?: true;
  readonly verdict: 'computed' | 'cannot-tell';
}

export interface RouteOutlook {
  readonly tests: readonly TestOutlook[];
  /** Index of the test with the lowest probability of passing; left out when none could be computed. */
  readonly bindingIndex?: number;
}

export interface OutlookInput {
  readonly brief: Brief;
  readonly target: TargetFill;
  /** Spread of the fill between capsules, % of the mass. */
  readonly unit: UncertainSpread;
  /** What set-up leaves, one standard deviation, % of the target. */
  readonly setUp_pct: number;
  readonly betweenTimes_pct: number;
}

/** @source common practice, no source: blend RSD 2 % (1 to 4), assay 1 % */
export const GUESSED_CONTENT = { blend: { mean_pct: 2, sd_pct: 0.75 }, assay_pct: 1 } as const;
const CONTENT_WHEN_UNKNOWN_pct = 100;

/**
 * Outlook for every test that the brief's route names.
 *
 * Content of a unit: CV^2 = CV_fill^2 + CV_concentration^2. Lot-wide bias: assay and, by content, what set-up leaves and
 * what differs between times. By mass variation x_i = w_i A / mean(w), so blend and off-target mass drop out.
 *
 * @param input - brief, target, spread of the fill and what set-up leaves
 * @returns one outlook per test and substance, and which of them binds
 * @throws StatsError (a spread that is not a number above 0)
 * @source USP <905> / Ph. Eur. 2.9.40 / JP 6.02 and Ph. Eur. 2.9.5 through package stats; the split of bias and spread is
 *   this project's choice
 * @validity normal fills; a failed test opens an investigation, no probability here is a reason to repeat one
 */
export function routeOutlook(input: OutlookInput): RouteOutlook {
  const tests = input.brief.route.flatMap((route) => outlooksOf(route, input));
  const known = tests.map((outlook) => outlook.pass_frac ?? Infinity);
  const lowest = Math.min(...known);
  return Number.isFinite(lowest) ? { tests, bindingIndex: known.indexOf(lowest) } : { tests };
}

function outlooksOf(route: RouteTest, input: OutlookInput): readonly TestOutlook[] {
  switch (route.test) {
    case 'uniformity-of-mass':
      return [{ ...route, verdict: 'computed', pass_frac: passesMass(input) }];
    case 'uniformity-of-content':
      return [{ ...route, verdict: 'cannot-tell' }];
    case 'dosage-units-by-content':
    case 'dosage-units-by-mass':
      return input.target.substances.map((substance) => dosageUnits(route, { input, substance }));
  }
}

function passesMass({ target, unit }: OutlookInput): number {
  return weighedSpreads(unit).reduce(
    (sum, { value_pct, weight }) =>
      sum + weight * probabilityOfPassingUniformityOfMass({ mean: target.fill_mg, relativeSd_pct: value_pct }),
    0,
  );
}

function dosageUnits(route: RouteTest, of: { input: OutlookInput; substance: SubstanceAtTarget }): TestOutlook {
  const { input, substance } = of;
  const [part] = input.brief.parts;
  const byContent = route.test === 'dosage-units-by-content';
  const mean_pct = substance.content_pct ?? CONTENT_WHEN_UNKNOWN_pct;
  const assay_pct = part.assayError_pct ?? GUESSED_CONTENT.assay_pct;
  const lot_pct2 = byContent ? input.setUp_pct * input.setUp_pct + input.betweenTimes_pct * input.betweenTimes_pct : 0;
  const bias_pct = Math.sqrt(assay_pct * assay_pct + lot_pct2);
  const blend_pct = byContent ? (part.blendRsd_pct?.mean ?? GUESSED_CONTENT.blend.mean_pct) : 0;
  const unitSd_pct = (fill_pct: number): number => {
    const sd_pct = Math.sqrt(fill_pct * fill_pct + blend_pct * blend_pct);
    return byContent ? sd_pct : (sd_pct * mean_pct) / 100;
  };
  const meanSd_pct = unitSd_pct(input.unit.mean_pct);
  const [median_pct, p95_pct] = acceptanceValueQuantiles({
    ...{ mean: mean_pct, sd: meanSd_pct, biasSd: bias_pct, probabilities: [0.5, 0.95] },
  });
  const assumed = substance.content_pct === undefined ? { isContentAssumed: true as const } : {};
  return {
    ...{ ...route, substance: substance.name, verdict: 'computed', ...assumed },
    acceptanceValue: { median_pct: median_pct ?? NaN, p95_pct: p95_pct ?? NaN },
    pass_frac: passesDosageUnits(input.unit, { mean_pct, bias_pct, unitSd_pct }),
  };
}

/** Probability of passing, averaged over the lot's bias and over how unsure the spread is. */
function passesDosageUnits(
  unit: UncertainSpread,
  lot: { mean_pct: number; bias_pct: number; unitSd_pct: (fill_pct: number) => number },
): number {
  const { nodes, weights } = normalNodes;
  let pass_frac = 0;
  for (const { value_pct, weight } of weighedSpreads(unit)) {
    const sd = lot.unitSd_pct(value_pct);
    nodes.forEach((z, i) => {
      const mean = lot.mean_pct + z * lot.bias_pct;
      pass_frac += weight * (weights[i] ?? NaN) * probabilityOfPassingDosageUnits({ mean, sd });
    });
  }
  return pass_frac;
}
