import {
  DOSAGE_UNIT_LIMITS,
  uniformityOfDosageUnitsByMass,
  uniformityOfMass,
  uniformityOfSupplementMass,
  type Conduct,
  type DosageUnitJudgement,
  type MassJudgement,
  type SupplementJudgement,
} from '@fillwright/stats/decisions';
import { areAllEqual } from './are-all-equal.ts';
import { namedCapsule } from './limit-verdicts.ts';
import type { NetMasses, TareOfWeights } from './net-masses.ts';
import type { NamedCapsule, TestReason, TestVerdict, Verdict } from './weights-judgement.ts';
import type { WeighedSubstance, WeightsInput, WeightTest } from './weights-input.ts';

/** Capsules of stage 1 and of the supplements' first step. */
const FIRST = { 'dosage-units-by-mass': 10, 'supplement-mass': 20 } as const;

type NumbersOf = Pick<TestVerdict, 'numbers' | 'outside'>;
type Judged = Omit<TestVerdict, 'test' | 'substance'>;
type AnyJudgement = Pick<TestVerdict, 'verdict' | 'reasons' | 'next' | 'source' | 'lookInto'>;
type Outcome = AnyJudgement & NumbersOf;

/**
 * Every test that is named, on these weights, under the rules of conduct: purpose, route and loads, a mean tare, lines that
 * could not be read. Where conduct forbids a verdict, `wouldBe` says what the numbers alone say.
 *
 * @param input - weights, purpose and tests
 * @param tared - net masses
 * @param isRevolution - the weights are one full revolution
 * @returns one verdict for each test, for dosage units one for each substance
 * @throws StatsError "out-of-range" (an assay, a target or loadCount out of range)
 * @source the chapters through package stats; conduct: practice of this project
 * @validity each test asks for its own number of capsules; another number is cannot-tell
 */
export function testVerdicts(input: WeightsInput, tared: TareOfWeights, isRevolution: boolean): readonly TestVerdict[] {
  return input.tests.flatMap((test): TestVerdict[] => {
    if (test === 'dosage-units-by-content' || test === 'uniformity-of-content')
      return [
        { test, ...withoutNumbers('needs-content-of-units', 'the content of single capsules, by assay of each') },
      ];
    const { masses } = tared;
    // Every bore once, at one moment: no sample of a lot, whatever it is called.
    if (isRevolution) return [{ test, ...withoutNumbers('one-revolution') }];
    if (!masses) return [{ test, ...withoutNumbers('net-not-known') }];
    if (test !== 'dosage-units-by-mass') return [{ test, ...judged(input, tared, { test, masses }) }];
    if (!input.substances || input.substances.length === 0) return [{ test, ...withoutNumbers('content-not-known') }];
    return input.substances.map((substance) => ({
      ...{ test, substance: substance.name },
      ...judged(input, tared, { test, masses, substance }),
    }));
  });
}

interface Applied {
  readonly test: Exclude<WeightTest, 'dosage-units-by-content' | 'uniformity-of-content'>;
  readonly masses: NetMasses;
  readonly substance?: WeighedSubstance;
}

function judged(input: WeightsInput, tared: TareOfWeights, applied: Applied): Judged {
  const { purpose, tests, route = tests, loadCount = 1 } = input;
  const { verdict, reasons, next, ...rest } = applyTest(input, applied, { purpose, route, loadCount });
  const isBlurred = tared.way === 'mean-tare' && needsShells(rest);
  const barred = barredBy(input, isBlurred);
  if (barred.length === 0 && verdict !== 'cannot-tell') {
    const beside: TestReason[] = isBlurred ? ['mean-tare-only'] : [];
    return { verdict, reasons: [...reasons, ...beside], next, ...rest };
  }
  const isOpen = verdict === 'cannot-tell';
  const alone = loadCount > 1 ? 'cannot-tell' : wouldBeOf(input, applied);
  return {
    ...{ verdict: 'cannot-tell', reasons: [...barred, ...(isOpen ? reasons : [])], next: isOpen ? next : 'none' },
    ...(alone === 'cannot-tell' ? {} : { wouldBe: alone }),
    ...rest,
  };
}

/** What bars a verdict whatever the numbers say. */
function barredBy(input: WeightsInput, isBlurred: boolean): TestReason[] {
  const { purpose, unreadCount = 0 } = input;
  const always: TestReason[] = areAllEqual(input) ? ['all-equal'] : [];
  if (purpose !== 'release') return always;
  return [
    ...always,
    ...(unreadCount > 0 ? (['weights-not-read'] as const) : []),
    ...(isBlurred ? (['mean-tare-only'] as const) : []),
  ];
}

/** The gross step of supplements takes no shell off. */
function needsShells({ numbers }: NumbersOf): boolean {
  return numbers['grossBeyond10Count'] !== 0;
}

/** What the numbers say by themselves: as if the dossier named the test and the data were no trial's. */
function wouldBeOf(input: WeightsInput, applied: Applied): Verdict {
  return applyTest(input, applied, { purpose: 'in-process', route: [applied.test] }).verdict;
}

function applyTest(input: WeightsInput, applied: Applied, conduct: Conduct): Outcome {
  const { net_mg, shells_mg } = applied.masses;
  const gross_mg = input.capsules.map(({ mass_mg }) => mass_mg);
  switch (applied.test) {
    case 'uniformity-of-mass': {
      const found = uniformityOfMass({ contents: net_mg, conduct });
      return outcome(found, massNumbers(input, net_mg, found));
    }
    case 'supplement-mass': {
      const split = splitAt(FIRST['supplement-mass'], { gross_mg, shells_mg });
      const found = uniformityOfSupplementMass({ ...split, conduct });
      return outcome(found, supplementNumbers(input, net_mg, found));
    }
    case 'dosage-units-by-mass': {
      const { content_pct, target_pct } = applied.substance!;
      const found = uniformityOfDosageUnitsByMass({
        ...splitAt(FIRST['dosage-units-by-mass'], { gross_mg, shells_mg }),
        ...{ assay_pct: content_pct, rounding: input.rounding ?? 'unrounded', conduct },
        ...(target_pct === undefined ? {} : { target: target_pct }),
      });
      return outcome(found, dosageUnitNumbers(input, { net_mg, assay_pct: content_pct }, found));
    }
  }
}

function outcome({ verdict, reasons, next, source, lookInto }: AnyJudgement, found: NumbersOf): Outcome {
  return { verdict, reasons, next, ...found, source, ...(lookInto === undefined ? {} : { lookInto }) };
}

interface Split {
  readonly gross: readonly number[];
  readonly shells: readonly number[];
  readonly furtherGross?: readonly number[];
  readonly furtherShells?: readonly number[];
}

function splitAt(
  count: number,
  { gross_mg, shells_mg }: { readonly gross_mg: readonly number[]; readonly shells_mg: readonly number[] },
): Split {
  const first = { gross: gross_mg.slice(0, count), shells: shells_mg.slice(0, count) };
  if (gross_mg.length <= count) return first;
  return { ...first, furtherGross: gross_mg.slice(count), furtherShells: shells_mg.slice(count) };
}

function massNumbers(input: WeightsInput, net_mg: readonly number[], { numbers: found }: MassJudgement): NumbersOf {
  if (!found) return { numbers: {}, outside: [] };
  const { mean, limit_pct, beyondLimit, beyondLimitCount, beyondTwiceCount, largestDeviation_pct } = found;
  const edge_mg = (times: number): number => mean * (1 + (times * limit_pct) / 100);
  return {
    numbers: {
      ...{ capsuleCount: net_mg.length, mean_mg: mean, limit_pct, low_mg: edge_mg(-1), high_mg: edge_mg(1) },
      ...{
        lowTwice_mg: edge_mg(-2),
        highTwice_mg: edge_mg(2),
        beyondLimitCount,
        beyondTwiceCount,
        largestDeviation_pct,
      },
    },
    outside: namedUnits(input, net_mg, { units: beyondLimit, mean_mg: mean }),
  };
}

function supplementNumbers(
  input: WeightsInput,
  net_mg: readonly number[],
  { numbers: found }: SupplementJudgement,
): NumbersOf {
  if (!found) return { numbers: {}, outside: [] };
  const step = found.netOf60 ?? found.net;
  const net = step && {
    ...{ mean_mg: step.mean, beyond10Count: step.beyond10.length, beyond25Count: step.beyond25.length },
  };
  const numbers = { meanGross_mg: found.meanGross, grossBeyond10Count: found.grossBeyond10.length, ...net };
  const outside = step ? namedUnits(input, net_mg, { units: step.beyond10, mean_mg: step.mean }) : [];
  return { numbers: { capsuleCount: net_mg.length, ...numbers }, outside };
}

function dosageUnitNumbers(
  input: WeightsInput,
  { net_mg, assay_pct }: { readonly net_mg: readonly number[]; readonly assay_pct: number },
  { numbers: found }: DosageUnitJudgement,
): NumbersOf {
  if (!found) return { numbers: {}, outside: [] };
  const stage = found.stage2 ?? found.stage1;
  const taken_mg = net_mg.slice(0, stage.n);
  const mean_mg = taken_mg.reduce((sum, mass_mg) => sum + mass_mg, 0) / stage.n;
  return {
    numbers: {
      ...{ stageCount: found.stage2 ? 2 : 1, capsuleCount: stage.n, meanNet_mg: mean_mg, assay_pct },
      ...{ mean_pct: stage.mean, sd_pct: stage.sd, reference_pct: stage.reference, factor_ratio: stage.factor },
      ...{ acceptanceValue_pct: stage.acceptanceValue, roundedAcceptanceValue_pct: stage.roundedAcceptanceValue },
      ...{
        limit_pct: DOSAGE_UNIT_LIMITS.acceptanceValue,
        lowestUnit_pct: stage.lowestUnit,
        highestUnit_pct: stage.highestUnit,
      },
      ...(found.stage2 ? { stage1AcceptanceValue_pct: found.stage1.acceptanceValue } : {}),
    },
    outside: namedUnits(input, net_mg, { units: stage.outside.map(({ unit }) => unit), mean_mg }),
  };
}

/** Units numbered from 1, against their mean. */
function namedUnits(
  input: WeightsInput,
  net_mg: readonly number[],
  { units, mean_mg }: { readonly units: readonly number[]; readonly mean_mg: number },
): NamedCapsule[] {
  return units.map((unit) => namedCapsule(input, { index: unit - 1, net_mg: net_mg[unit - 1]!, target_mg: mean_mg }));
}

function withoutNumbers(reason: TestReason, lookInto?: string): Judged {
  return {
    ...{ verdict: 'cannot-tell', reasons: [reason], next: 'none', numbers: {}, outside: [], source: 'the dossier' },
    ...(lookInto === undefined ? {} : { lookInto }),
  };
}
