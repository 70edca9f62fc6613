import type { ContentOutlook, RankedCandidate, TestOutlook } from '@fillwright/engine/design';
import {
  adjusterName,
  BASIS_WORDS,
  DESIGN_WORDS,
  HALVED_BY_WORDS,
  PARAMETER_NAMES,
  TEST_WORDS,
} from '@fillwright/words/en';
import { columns, wrapped } from '../layout.ts';
import { fixed, percent } from './shown.ts';

/** From here on a probability says nothing but "surely". */
const SURELY = 0.999;
/** Smaller shares of the interval are not worth a line. */
const LEAST_SHARE = 0.005;
const LONGEST_BASIS = Math.max(...Object.values(BASIS_WORDS).map((word) => word.length));

/**
 * What the dossier's tests would say after set-up, the spread by cause, and what the mean rests on.
 *
 * @param candidate - the set-up
 * @returns the lines
 */
export function outlookText(candidate: RankedCandidate): string {
  const { contents, tests, bindingIndex } = candidate.outlook;
  const { interval, prediction } = candidate;
  const causes = prediction.spread.components.filter(({ sd_pct }) => sd_pct > 0);
  return [
    DESIGN_WORDS.outlook,
    ...contents.map((content) => wrapped('  ', contentTold(content))),
    ...tests.map((test, i) => wrapped('  ', told(test, i === bindingIndex))),
    `${DESIGN_WORDS.spread}: ${fixed(prediction.spread.unit_pct)} ±${fixed(prediction.spread.unsure_pct)} (${BASIS_WORDS[prediction.spread.basis]})`,
    columns(
      causes.map(({ cause, sd_pct }) => [DESIGN_WORDS.causes[cause] ?? cause, fixed(sd_pct, 2)]),
      '  ',
    ),
    DESIGN_WORDS.gapLoss(fixed(prediction.gapLoss_pct.mean), fixed(prediction.gapLoss_pct.sd)),
    DESIGN_WORDS.interval({
      ...{ mean: fixed(interval.mean_mg), low: fixed(interval.low90_mg, 0), high: fixed(interval.high90_mg, 0) },
    }),
    ...sharesTold(candidate.interval.shares),
  ].join('\n');
}

/** Shares that count, each with the measurement that would halve it. */
function sharesTold(shares: RankedCandidate['interval']['shares']): readonly string[] {
  const counting = shares.filter(({ share_frac }) => share_frac >= LEAST_SHARE);
  const rows = counting.map(({ key, share_frac, basis }) => [
    PARAMETER_NAMES[key] ?? adjusterName(key),
    percent(share_frac, 0),
    BASIS_WORDS[basis].padEnd(LONGEST_BASIS),
  ]);
  const lines = columns(rows, '  ').split('\n');
  return counting.map(({ halvedBy }, i) => {
    const line = lines[i] ?? '';
    if (halvedBy === undefined) return line;
    const width = Math.max(...lines.map((one) => one.length));
    return wrapped(`${line.padEnd(width)}  `, DESIGN_WORDS.narrowed(HALVED_BY_WORDS[halvedBy] ?? halvedBy));
  });
}

function contentTold({ substance, mean_pct, unit_pct, acceptanceValue, isContentAssumed }: ContentOutlook): string {
  const told = DESIGN_WORDS.content({ substance, mean: fixed(mean_pct), unit: fixed(unit_pct) });
  const value = DESIGN_WORDS.acceptanceValue(fixed(acceptanceValue.median_pct), fixed(acceptanceValue.p95_pct));
  return [told, value, ...(isContentAssumed ? [DESIGN_WORDS.contentAssumed] : [])].join('; ');
}

function told(outlook: TestOutlook, isBinding: boolean): string {
  const { test, substance, pass_frac, acceptanceValue, isContentAssumed } = outlook;
  const parts = [
    pass_frac === undefined ? DESIGN_WORDS.noModel : passWords(pass_frac),
    acceptanceValue
      ? DESIGN_WORDS.acceptanceValue(fixed(acceptanceValue.median_pct), fixed(acceptanceValue.p95_pct))
      : '',
    isContentAssumed ? DESIGN_WORDS.contentAssumed : '',
    isBinding ? DESIGN_WORDS.binds : '',
  ].filter((part) => part !== '');
  return `${TEST_WORDS[test]}${substance === undefined ? '' : `, ${substance}`}: ${parts.join('; ')}`;
}

/** Never 1.0000: a probability that says nothing is not printed. */
function passWords(pass_frac: number): string {
  return pass_frac >= SURELY ? DESIGN_WORDS.surely : DESIGN_WORDS.pass(fixed(pass_frac, 3));
}
