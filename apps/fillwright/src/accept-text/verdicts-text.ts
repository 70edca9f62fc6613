import type { LimitVerdict, NamedCapsule, TestVerdict, WeightsJudgement } from '@fillwright/engine/weights';
import {
  ACCEPT_WORDS,
  LIMIT_REASON_WORDS,
  TEST_REASON_WORDS,
  testArithmetic,
  WEIGHT_TEST_NAMES,
} from '@fillwright/words/en';
import { fixed, percent } from '../design-text/shown.ts';
import { wrapped } from '../layout.ts';

/** Capsules named one by one; more are counted. */
const MOST_NAMED = 12;

/**
 * Each limit and each test with its verdict, its arithmetic, its reasons and who is outside; then what it assures.
 *
 * @param judgement - limits, tests and assurance
 * @returns the lines; empty when nothing was asked
 */
export function verdictsText({ limits, tests, assurance }: WeightsJudgement): string {
  const assured = assurance.map(({ test, substance, confidence_frac, lowerBound_frac, atEstimate_frac }) =>
    wrapped(
      '  ',
      ACCEPT_WORDS.assurance({
        name: withSubstance(test, substance),
        confidence: percent(confidence_frac, 0),
        ...(lowerBound_frac === undefined ? {} : { bound: share(lowerBound_frac) }),
        atEstimate: share(atEstimate_frac),
      }),
    ),
  );
  return [
    ...(limits.length > 0 ? [ACCEPT_WORDS.limits, ...limits.flatMap(limitLines)] : []),
    ...(tests.length > 0 ? [ACCEPT_WORDS.tests, ...tests.flatMap(testLines)] : []),
    ...(assured.length > 0 ? [ACCEPT_WORDS.assurances, ...assured] : []),
  ].join('\n');
}

function limitLines(limit: LimitVerdict): string[] {
  const { what, verdict, reasons, value_mg, outside, alerts } = limit;
  const gross =
    limit.grossLow_mg === undefined || limit.grossHigh_mg === undefined
      ? ''
      : ACCEPT_WORDS.grossLimits(fixed(limit.grossLow_mg), fixed(limit.grossHigh_mg));
  const range = `${fixed(limit.netLow_mg)} to ${fixed(limit.netHigh_mg)} mg net${gross}`;
  const value = value_mg === undefined ? '' : `${fixed(value_mg)} mg; `;
  const why = reasons.map((reason) => LIMIT_REASON_WORDS[reason]).join('; ');
  return [
    wrapped(
      `  ${ACCEPT_WORDS.verdicts[verdict].padEnd(12)}`,
      `${ACCEPT_WORDS.limitOf[what]}: ${value}${range}${why && ` (${why})`}`,
    ),
    ...named(ACCEPT_WORDS.outside, outside),
    ...named(ACCEPT_WORDS.alerts, alerts),
  ];
}

function testLines({
  test,
  substance,
  verdict,
  wouldBe,
  reasons,
  numbers,
  outside,
  source,
  lookInto,
}: TestVerdict): string[] {
  const arithmetic = testArithmetic(numbers);
  const indent = ' '.repeat(14);
  return [
    wrapped(`  ${ACCEPT_WORDS.verdicts[verdict].padEnd(12)}`, withSubstance(test, substance)),
    ...(arithmetic === undefined ? [] : [wrapped(indent, arithmetic)]),
    ...reasons.map((reason) => wrapped(indent, TEST_REASON_WORDS[reason])),
    ...(wouldBe === undefined ? [] : [wrapped(indent, ACCEPT_WORDS.wouldBe(ACCEPT_WORDS.verdicts[wouldBe]))]),
    ...named(ACCEPT_WORDS.outside, outside),
    ...(lookInto === undefined ? [] : [wrapped(indent, ACCEPT_WORDS.lookInto(lookInto))]),
    wrapped(indent, ACCEPT_WORDS.source(source)),
  ];
}

function named(title: string, capsules: readonly NamedCapsule[]): string[] {
  if (capsules.length === 0) return [];
  const texts = capsules
    .slice(0, MOST_NAMED)
    .map(({ index, line, net_mg, deviation_pct }) =>
      ACCEPT_WORDS.capsule({ number: index + 1, line, mass: fixed(net_mg), deviation: fixed(deviation_pct) }),
    );
  const more = capsules.length - texts.length;
  return [wrapped(' '.repeat(14), `${title}: ${texts.join(', ')}${more > 0 ? ACCEPT_WORDS.more(more) : ''}`)];
}

function withSubstance(test: TestVerdict['test'], substance: string | undefined): string {
  return substance === undefined ? WEIGHT_TEST_NAMES[test] : `${WEIGHT_TEST_NAMES[test]}, ${substance}`;
}

/** Never 1: a sample of some capsules leaves some doubt. */
function share(value_frac: number): string {
  return value_frac > 0.9999 ? '> 99.99 %' : percent(value_frac, 2);
}
