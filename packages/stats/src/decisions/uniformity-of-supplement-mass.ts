import type { Conduct, Judgement } from './conduct.ts';
import { underConduct } from './conduct.ts';
import { massDeviations } from './mass-deviations.ts';

/** 20 filled capsules; their emptied shells in the same order, and 40 more of both, once they are called for. */
export interface SupplementMasses {
  readonly gross: readonly number[];
  readonly shells?: readonly number[];
  readonly furtherGross?: readonly number[];
  readonly furtherShells?: readonly number[];
  readonly conduct: Conduct;
}

export type SupplementReason =
  | 'not-twenty-gross'
  | 'not-twenty-shells'
  | 'not-forty-further-capsules'
  | 'mass-not-a-number'
  | 'mean-not-positive'
  | 'shells-needed'
  | 'further-units-needed'
  | 'further-units-not-called-for'
  | 'too-many-beyond-10-percent'
  | 'beyond-25-percent';

/** Net masses of 20 or of 60: mean, and the units beyond 10 % and beyond 25 % of it, numbered from 1. */
export interface NetStep {
  readonly mean: number;
  readonly beyond10: readonly number[];
  readonly beyond25: readonly number[];
}

export interface SupplementNumbers {
  readonly meanGross: number;
  readonly grossBeyond10: readonly number[];
  readonly net?: NetStep;
  readonly netOf60?: NetStep;
  /** The step that the verdict rests on. */
  readonly decidedBy: 'gross' | 'net' | 'net-of-60';
}
export type SupplementJudgement = Judgement<SupplementReason, SupplementNumbers>;

const SOURCE = 'USP <2091>';
const MOST_OF_20 = 2;
const MOST_OF_20_FOR_40_MORE = 6;
const MOST_OF_60 = 6;

/**
 * Mass variation of hard capsules of a dietary supplement. Gross step: all 20 within 90 to 110 % of their mean. Net step: at
 * most 2 of 20 differ from the mean net mass by more than 10 %, none by more than 25 %; with 3 to 6 beyond 10 %, 40 more are
 * weighed, then at most 6 of 60 beyond 10 % of the new mean, none beyond 25 %.
 *
 * @param sample - gross: 20; shells: 20; furtherGross, furtherShells: 40 each, in the unit of the data; conduct: purpose and route
 * @returns verdict, reasons, what follows, and the numbers of each step; "cannot-tell" for other counts, for a value that is not
 *   a number, when shells or further capsules are needed, and under the rules of conduct
 * @throws StatsError "not-finite", "out-of-range" (loadCount)
 * @source USP <2091>, hard shell capsules (USP 32 and 2019)
 * @validity supplements only. With a heavy shell the gross step is lenient: 10 % of 196 mg gross is 16 % of 120 mg fill
 */
export function uniformityOfSupplementMass(sample: SupplementMasses): SupplementJudgement {
  const obstacle = obstacleOf(sample);
  const judged: Judged = obstacle === undefined ? grossStep(sample) : cannotTell(obstacle);
  return underConduct('supplement-mass', sample.conduct, { ...judged, source: SOURCE });
}

type Judged = Omit<SupplementJudgement, 'source'>;
type GrossNumbers = Pick<SupplementNumbers, 'meanGross' | 'grossBeyond10'>;

function grossStep(sample: SupplementMasses): Judged {
  const { mean: meanGross, beyond } = massDeviations(sample.gross);
  const grossBeyond10 = beyond(10);
  const numbers: GrossNumbers = { meanGross, grossBeyond10 };
  if (grossBeyond10.length > 0) return netStep(sample, numbers);
  const reasons: SupplementReason[] = sample.furtherGross ? ['further-units-not-called-for'] : [];
  return { verdict: 'pass', reasons, next: 'none', numbers: { ...numbers, decidedBy: 'gross' } };
}

function netStep({ gross, shells, furtherGross, furtherShells }: SupplementMasses, found: GrossNumbers): Judged {
  if (!shells)
    return { ...cannotTell('shells-needed'), next: 'weigh-shells', numbers: { ...found, decidedBy: 'gross' } };
  const net = netOf(gross, shells);
  if (!(net.mean > 0)) return cannotTell('mean-not-positive');
  const numbers: SupplementNumbers = { ...found, net, decidedBy: 'net' };
  const outcome = reasonsOf(net, MOST_OF_20_FOR_40_MORE);
  if (outcome.length > 0) return { verdict: 'fail', reasons: outcome, next: 'investigate', numbers };
  if (net.beyond10.length <= MOST_OF_20) {
    const reasons: SupplementReason[] = furtherGross ? ['further-units-not-called-for'] : [];
    return { verdict: 'pass', reasons, next: 'none', numbers };
  }
  if (!furtherGross || !furtherShells)
    return { ...cannotTell('further-units-needed'), next: 'test-further-units', numbers };
  const netOf60 = netOf([...gross, ...furtherGross], [...shells, ...furtherShells]);
  if (!(netOf60.mean > 0)) return cannotTell('mean-not-positive');
  const reasons = reasonsOf(netOf60, MOST_OF_60);
  const isPass = reasons.length === 0;
  return {
    ...{ verdict: isPass ? 'pass' : 'fail', reasons, next: isPass ? 'none' : 'investigate' },
    numbers: { ...numbers, netOf60, decidedBy: 'net-of-60' },
  };
}

function netOf(gross: readonly number[], shells: readonly number[]): NetStep {
  const { mean, beyond } = massDeviations(gross.map((mass, i) => mass - shells[i]!));
  return { mean, beyond10: beyond(10), beyond25: beyond(25) };
}

function reasonsOf({ beyond10, beyond25 }: NetStep, most: number): SupplementReason[] {
  const reasons: SupplementReason[] = [];
  if (beyond10.length > most) reasons.push('too-many-beyond-10-percent');
  if (beyond25.length > 0) reasons.push('beyond-25-percent');
  return reasons;
}

function cannotTell(reason: SupplementReason): Judged {
  return { verdict: 'cannot-tell', reasons: [reason], next: 'none' };
}

function obstacleOf({ gross, shells, furtherGross, furtherShells }: SupplementMasses): SupplementReason | undefined {
  if (gross.length !== 20) return 'not-twenty-gross';
  if (shells && shells.length !== 20) return 'not-twenty-shells';
  const further = [furtherGross, furtherShells].filter((list) => list !== undefined);
  if (further.length === 1 || further.some((list) => list.length !== 40)) return 'not-forty-further-capsules';
  const all = [...gross, ...(shells ?? []), ...further.flat()];
  if (!all.every(Number.isFinite)) return 'mass-not-a-number';
  return massDeviations(gross).mean > 0 ? undefined : 'mean-not-positive';
}
