import type { SubstanceAtTarget, TargetFill } from '#brief';
import { acceptanceOutlook, type AcceptanceOutlook } from './acceptance-outlook.ts';
import type { Brief, RouteTest } from './brief.ts';
import { dosageUnitsOutlook_frac } from './dosage-units-outlook.ts';
import { massOutlook_frac } from './mass-outlook.ts';
import { unitSdOfLot_pct, type LotOfUnits } from './unit-sd-of-lot.ts';
import type { UncertainSpread } from './weighed-spreads.ts';

/** What the dossier's test would say of a lot made after set-up. */
export interface TestOutlook {
  readonly test: RouteTest['test'];
  readonly use: RouteTest['use'];
  /** Each substance is judged by itself; left out for tests of mass. */
  readonly substance?: string;
  /** Probability of passing, averaged over what is not known; left out where no model is found. */
  readonly pass_frac?: number;
  readonly acceptanceValue?: AcceptanceOutlook;
  /** No load of the blend is known: a mean of 100 % was taken. */
  readonly isContentAssumed?: true;
  readonly verdict: 'computed' | 'cannot-tell';
}

/** Content of the units of one substance, whatever the route: what weighing alone does not show. */
export interface ContentOutlook {
  readonly substance: string;
  readonly mean_pct: number;
  /** Spread between units: fill and concentration, % of the claim. */
  readonly unit_pct: number;
  /** What moves the whole lot: assay, set-up, differences between times; one sd. */
  readonly bias_pct: number;
  /** Of the spread between units what the concentration of the blend gives. */
  readonly blend_pct: number;
  readonly acceptanceValue: AcceptanceOutlook;
  /** No load of the blend is known: a mean of 100 % was taken. */
  readonly isContentAssumed?: true;
}

export interface RouteOutlook {
  readonly contents: readonly ContentOutlook[];
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

/** Spread of the concentration between units of fill, 1 to 4 % in practice. @source common practice, no source */
const GUESSED_BLEND_pct = 2;
/** What an assay may be off for a whole lot. @source common practice, no source */
const GUESSED_ASSAY_pct = 1;
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
  const contents = input.target.substances.map((substance) => contentOutlook(input, substance));
  const tests = input.brief.route.flatMap((route) => outlooksOf(route, input));
  const known = tests.map((outlook) => outlook.pass_frac ?? Infinity);
  const lowest = Math.min(...known);
  return { contents, tests, ...(Number.isFinite(lowest) ? { bindingIndex: known.indexOf(lowest) } : {}) };
}

function outlooksOf(route: RouteTest, input: OutlookInput): readonly TestOutlook[] {
  switch (route.test) {
    case 'uniformity-of-mass':
      return [{ ...route, verdict: 'computed', pass_frac: massOutlook_frac(input.target.fill_mg, input.unit) }];
    case 'uniformity-of-content':
      return [{ ...route, verdict: 'cannot-tell' }];
    case 'dosage-units-by-content':
    case 'dosage-units-by-mass': {
      const lotOf = route.test === 'dosage-units-by-content' ? lotByContent : lotByMass;
      return input.target.substances.map((substance): TestOutlook => {
        const lot = lotOf(input, substance);
        return {
          ...{ ...route, substance: substance.name, verdict: 'computed', ...assumedContent(substance) },
          ...{
            acceptanceValue: acceptanceOutlook(lot, input.unit),
            pass_frac: dosageUnitsOutlook_frac(lot, input.unit),
          },
        };
      });
    }
  }
}

function lotByContent(input: OutlookInput, substance: SubstanceAtTarget): LotOfUnits {
  const [part] = input.brief.parts;
  const assay_pct = part.assayError_pct ?? GUESSED_ASSAY_pct;
  const squares = [assay_pct, input.setUp_pct, input.betweenTimes_pct].map((sd_pct) => sd_pct * sd_pct);
  return {
    mean_pct: substance.content_pct ?? CONTENT_WHEN_UNKNOWN_pct,
    bias_pct: Math.sqrt(squares.reduce((sum, square) => sum + square, 0)),
    judged: 'by-content',
    blend_pct: part.blendRsd_pct?.mean ?? GUESSED_BLEND_pct,
  };
}

/** The fill gives the spread, the assay the mean. */
function lotByMass(input: OutlookInput, substance: SubstanceAtTarget): LotOfUnits {
  return {
    mean_pct: substance.content_pct ?? CONTENT_WHEN_UNKNOWN_pct,
    bias_pct: input.brief.parts[0].assayError_pct ?? GUESSED_ASSAY_pct,
    judged: 'by-mass-variation',
    blend_pct: 0,
  };
}

function contentOutlook(input: OutlookInput, substance: SubstanceAtTarget): ContentOutlook {
  const lot = lotByContent(input, substance);
  const { mean_pct, bias_pct, blend_pct } = lot;
  return {
    ...{
      substance: substance.name,
      mean_pct,
      unit_pct: unitSdOfLot_pct(lot, input.unit.mean_pct),
      bias_pct,
      blend_pct,
    },
    ...{ acceptanceValue: acceptanceOutlook(lot, input.unit), ...assumedContent(substance) },
  };
}

function assumedContent(substance: SubstanceAtTarget): { isContentAssumed?: true } {
  return substance.content_pct === undefined ? { isContentAssumed: true } : {};
}
