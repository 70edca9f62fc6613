import { requireWhole } from '#elementary';

/** Tests on single capsules that a dossier may name. */
export type DossierTest =
  | 'dosage-units-by-content'
  | 'dosage-units-by-mass'
  | 'uniformity-of-mass'
  | 'uniformity-of-content'
  | 'supplement-mass';

/** What the sample was taken for, and what the dossier says of it. */
export interface Conduct {
  /** The tests that the dossier names for this purpose. */
  readonly route: readonly DossierTest[];
  readonly purpose: 'release' | 'in-process' | 'trial';
  /** Separate loads in one capsule (powder and a tablet: 2); left out: 1. */
  readonly loadCount?: number;
}

export type ConductReason = 'trial-data' | 'test-not-in-dossier' | 'several-loads';

/** What to do now. A failed test opens an investigation; none of them says: repeat. */
export type NextStep = 'none' | 'test-further-units' | 'weigh-shells' | 'investigate';

/** Outcome of a test: a verdict with reasons, the numbers it rests on, what follows, and the text. */
export interface Judgement<Reason extends string, Numbers> {
  readonly verdict: 'pass' | 'fail' | 'cannot-tell';
  readonly reasons: readonly (Reason | ConductReason)[];
  readonly next: NextStep;
  /** Absent when nothing could be computed. */
  readonly numbers?: Numbers;
  readonly source: string;
  /** The text that settles what this function does not know. */
  readonly lookInto?: string;
}

const MASS_TESTS: readonly DossierTest[] = ['dosage-units-by-mass', 'uniformity-of-mass', 'supplement-mass'];

/**
 * The outcome of a test under the rules of conduct: data of a trial decide no lot, the dossier names the test, and the mass
 * of several loads together proves nothing about any of them. Numbers stay, the verdict becomes "cannot-tell".
 *
 * @param test - the test that was applied
 * @param conduct - purpose, route and loads
 * @param outcome - what the numbers alone say
 * @returns the outcome itself, or one without a verdict and with all the reasons why
 * @throws StatsError "not-finite", "not-whole", "out-of-range" (loadCount)
 * @source common practice, no source (release data and trial data are kept apart; the dossier fixes the test)
 */
export function underConduct<Reason extends string, Numbers>(
  test: DossierTest,
  conduct: Conduct,
  outcome: Judgement<Reason, Numbers>,
): Judgement<Reason, Numbers> {
  const { route, purpose, loadCount = 1 } = conduct;
  requireWhole({ loadCount }, { min: 1 });
  const reasons: ConductReason[] = [];
  // Whatever is not said to be release or in-process is a trial: a slip of the caller never releases a lot.
  if (purpose !== 'release' && purpose !== 'in-process') reasons.push('trial-data');
  if (!route.includes(test)) reasons.push('test-not-in-dossier');
  if (loadCount > 1 && MASS_TESTS.includes(test)) reasons.push('several-loads');
  if (reasons.length === 0) return outcome;
  const kept = outcome.verdict === 'cannot-tell' ? outcome.reasons : [];
  return { ...outcome, verdict: 'cannot-tell', reasons: [...reasons, ...kept], next: 'none' };
}
