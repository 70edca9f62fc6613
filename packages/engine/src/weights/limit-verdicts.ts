import { limitCard, type LimitCard } from '#design';
import { areAllEqual } from './are-all-equal.ts';
import { leastCount } from './least-count.ts';
import type { LimitReason, LimitVerdict, NamedCapsule } from './weights-judgement.ts';
import type { TareOfWeights } from './net-masses.ts';
import type { WeightsInput } from './weights-input.ts';

/** Two-sided 95 % of a normal law: closer to a limit than this many standard errors of the tare, the tare decides. */
const Z_95 = 1.959963984540054;

/**
 * The in-process limits of the dossier on this sample: its mean, and each capsule.
 *
 * @param input - weights with target and limits
 * @param tared - tare and net masses
 * @returns a verdict for the mean and one for the single capsules, with limits net and gross; none without target or limits
 * @throws nothing
 * @source limits from the dossier; an edge is inside (common practice, no source)
 * @validity a mean closer to its limit than 1.96 standard errors of the tare cannot be told
 */
export function limitVerdicts(input: WeightsInput, tared: TareOfWeights): readonly LimitVerdict[] {
  const { target_mg, limits, capsules } = input;
  if (target_mg === undefined || !limits) return [];
  const tare = { mean_mg: 0, sd_mg: 0, shellCount: 0, basis: 'measured', ...tared.tare } as const;
  const card = limitCard({ target_mg, limits, tare });
  const both = (pair: LimitCard['meanAction']): LimitPairOf => ({
    netLow_mg: pair.netLow_mg,
    netHigh_mg: pair.netHigh_mg,
    ...(tared.tare ? { grossLow_mg: pair.grossLow_mg, grossHigh_mg: pair.grossHigh_mg } : {}),
  });
  const nothing = { outside: [], alerts: [] };
  const [mean, single] = [both(card.meanAction), both(card.individualAction)];
  if (!tared.masses || capsules.length === 0) {
    const verdict = 'cannot-tell' as const;
    const reasons: LimitReason[] = ['net-not-known'];
    return [
      { what: 'mean', verdict, reasons, ...mean, ...nothing },
      { what: 'single', verdict, reasons, ...single, ...nothing },
    ];
  }
  const { net_mg } = tared.masses;
  const named = (index: number): NamedCapsule => namedCapsule(input, { index, net_mg: net_mg[index]!, target_mg });
  const outside = beyond(net_mg, card.individualAction).map(named);
  const isAction = new Set(outside.map(({ index }) => index));
  const alerts = beyond(net_mg, card.individualAlert)
    .filter((index) => !isAction.has(index))
    .map(named);
  return [
    { what: 'mean', ...meanVerdict(input, { card, tared, net_mg }), ...mean, ...nothing },
    {
      ...{ what: 'single', verdict: outside.length > 0 ? 'fail' : 'pass' },
      ...{ reasons: outside.length > 0 ? ['outside-limits'] : [], ...single, outside, alerts },
    },
  ];
}

type LimitPairOf = Pick<LimitVerdict, 'netLow_mg' | 'netHigh_mg' | 'grossLow_mg' | 'grossHigh_mg'>;

/**
 * A capsule that is named in a result, with its distance from a reference.
 *
 * @param input - the weights
 * @param of - which capsule, its net mass and the reference
 * @returns index, line and deviation
 * @throws nothing
 * @source bookkeeping
 */
export function namedCapsule(
  { capsules }: Pick<WeightsInput, 'capsules'>,
  of: { readonly index: number; readonly net_mg: number; readonly target_mg: number },
): NamedCapsule {
  const line = capsules[of.index]?.line;
  const deviation_pct = (100 * (of.net_mg - of.target_mg)) / of.target_mg;
  return { index: of.index, net_mg: of.net_mg, deviation_pct, ...(line === undefined ? {} : { line }) };
}

function beyond(net_mg: readonly number[], limits: LimitCard['meanAction']): number[] {
  return net_mg.flatMap((mass_mg, i) => (mass_mg < limits.netLow_mg || mass_mg > limits.netHigh_mg ? [i] : []));
}

interface MeanFacts {
  readonly card: LimitCard;
  readonly tared: TareOfWeights;
  readonly net_mg: readonly number[];
}

function meanVerdict(
  input: WeightsInput,
  { card, tared, net_mg }: MeanFacts,
): Pick<LimitVerdict, 'verdict' | 'reasons' | 'value_mg'> {
  const value_mg = net_mg.reduce((sum, mass_mg) => sum + mass_mg, 0) / net_mg.length;
  const { netLow_mg, netHigh_mg } = card.meanAction;
  const isOfPlan = net_mg.length === card.sampleCount;
  const plan: LimitReason[] = isOfPlan ? [] : ['count-not-of-plan'];
  const nothing: LimitReason | undefined =
    net_mg.length < leastCount(input) ? 'too-few' : areAllEqual(input) ? 'all-equal' : undefined;
  if (nothing) return { verdict: 'cannot-tell', reasons: [nothing], value_mg };
  const blur_mg = tared.way === 'mean-tare' ? Z_95 * (tared.tare?.standardError_mg ?? 0) : 0;
  const toLimit_mg = Math.min(Math.abs(value_mg - netLow_mg), Math.abs(value_mg - netHigh_mg));
  if (toLimit_mg < blur_mg) return { verdict: 'cannot-tell', reasons: [...plan, 'tare-not-sure'], value_mg };
  const isInside = value_mg >= netLow_mg && value_mg <= netHigh_mg;
  return { verdict: isInside ? 'pass' : 'fail', reasons: isInside ? plan : [...plan, 'outside-limits'], value_mg };
}
