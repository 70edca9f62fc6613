import { grossCheck, sortingByGross } from '@fillwright/stats/conformity';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { ACCEPTED, FALSE_REJECT, NET_AND_SHELL, netAndShell, openLimits } from './fields.ts';

const SHARE = { kind: 'number', unit: '1' } as const;
const DATA = { kind: 'number', unit: 'data' } as const;
const BOTH_NET_LIMITS = [
  { key: 'netLow_data', title: 'lower net limit', ...DATA },
  { key: 'netHigh_data', title: 'upper net limit', ...DATA },
] as const;
const PAIR_LAW = {
  text: 'Law of two normal values that go together; the normal law cut off at both ends',
  read: 'from memory',
} as const;
const KNOWN = 'Net and shell normal, means and standard deviations taken as known and current.';
const SORTING_REASONS = ['nothing-kept', 'leaves-too-many-bad', 'no-limits-reach-it', 'good-enough-unsorted'] as const;
const CHECK_REASONS = ['shells-fill-the-limits', 'rejects-more-good-than-bad', 'fault-not-seen'] as const;

/** What a sorter by gross weight can do, and when a gross check is honest. */
export const sortingEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.sorting-by-gross',
    title: 'Sorting a lot by gross weight: yield, what stays bad, and whether it can help',
    equation: 'P(g_L \\le G \\le g_U),\\quad P(N\\,\\text{outside} \\mid g_L \\le G \\le g_U)',
    inputs: [
      ...NET_AND_SHELL,
      ...BOTH_NET_LIMITS,
      { key: 'grossLow_data', title: 'lower gross limit of the sorter g_L', ...DATA, optional: true },
      { key: 'grossHigh_data', title: 'upper gross limit of the sorter g_U', ...DATA, optional: true },
      { key: 'allowedBad_frac', title: 'bad ones that the kept part may hold', ...SHARE, above: 0, below: 1 },
    ],
    outputs: [
      { key: 'isHelp', title: 'sorting between these limits helps', kind: 'flag' },
      {
        key: 'reasons',
        title: 'why it does not',
        kind: 'choice',
        choices: SORTING_REASONS,
        list: { min: 0, max: SORTING_REASONS.length },
      },
      { ...ACCEPTED, title: 'kept: the yield' },
      { key: 'badBefore_frac', title: 'bad before sorting', ...SHARE },
      { key: 'badAmongKept_frac', title: 'bad among the kept', ...SHARE },
      { key: 'goodLost_frac', title: 'good ones thrown away, of the good', ...SHARE },
      { key: 'keptMean_data', title: 'mean net of the kept', ...DATA, optional: true },
      { key: 'keptSd_data', title: 'standard deviation of the net of the kept', ...DATA, optional: true },
      { key: 'leastBad_frac', title: 'bad that stay however narrow the sorter', ...SHARE },
      {
        key: 'widestHalfWidth_data',
        title: 'half width of the widest gross limits that leave no more than allowed, if any do',
        ...DATA,
        optional: true,
      },
      { key: 'widestYield_frac', title: 'yield between them', ...SHARE, optional: true },
    ],
    sources: [PAIR_LAW],
    validity: `${KNOWN} Empty shells and double fills are counted apart. Mass says nothing of content: a wrong blend stays wrong.`,
    restsOn: 'one integral over the net; quality assurance decides whether a lot may be sorted',
    compute: (raw) =>
      fromStats(() => {
        const found = sortingByGross({
          ...netAndShell(raw),
          net: { low: raw.netLow_data, high: raw.netHigh_data },
          gross: openLimits({ low: raw.grossLow_data, high: raw.grossHigh_data }),
          allowedBad: raw.allowedBad_frac,
        });
        const { kept, widest } = found;
        return {
          ...{ isHelp: found.isHelp, reasons: found.reasons, grossAccepted_frac: found.yield },
          ...{ badBefore_frac: found.badBefore, badAmongKept_frac: found.badAmongKept },
          ...{ goodLost_frac: found.goodLost, leastBad_frac: found.leastBad },
          ...(kept && { keptMean_data: kept.mean, keptSd_data: kept.sd }),
          ...(widest && { widestHalfWidth_data: widest.halfWidth, widestYield_frac: widest.yield }),
        };
      }),
  }),
  defineEntry({
    id: 'statistics.gross-check',
    title: 'When a gross check of single units is honest',
    equation:
      'h-2\\sqrt{\\sigma_S^2(1-\\rho_{NS}^2)+\\sigma_e^2} > 0,\\quad P(|G-\\mu_G| > 3\\,\\sigma_G \\mid \\text{fault})',
    inputs: [
      ...NET_AND_SHELL,
      ...BOTH_NET_LIMITS,
      {
        key: 'fault_data',
        title: 'change of the net that must be seen, for example a missing tablet; not 0',
        ...DATA,
        optional: true,
      },
    ],
    outputs: [
      { key: 'grade', title: 'grade', kind: 'choice', choices: ['honest', 'blurred', 'blind'] },
      {
        key: 'reasons',
        title: 'why it is not honest',
        kind: 'choice',
        choices: CHECK_REASONS,
        list: { min: 0, max: CHECK_REASONS.length },
      },
      { key: 'scatter_data', title: 'standard deviation of a gross weight about its net', ...DATA },
      { key: 'notFill_frac', title: 'share of the gross variance that is not fill', ...SHARE },
      { key: 'guardedHalfWidth_data', title: 'half width h of the net limits less twice the scatter', ...DATA },
      { key: 'falseAccept_frac', title: 'bad and accepted at the moved net limits, of all', ...SHARE },
      FALSE_REJECT,
      { key: 'badRejected_frac', title: 'bad and rejected, of all', ...SHARE },
      { key: 'fault_ratio', title: 'the fault in standard deviations of the gross', ...SHARE, optional: true },
      { key: 'faultSeen_frac', title: 'how often it is seen', ...SHARE, optional: true },
    ],
    sources: [
      { text: 'JCGM 106:2012, 8.3: guard band of twice the standard uncertainty', read: 'from memory' },
      {
        text: 'alarm at 3 standard deviations, a fault seen in 95 of 100, one good in a thousand rejected',
        read: 'common practice, no source',
      },
    ],
    validity: `${KNOWN} Single units. The mean of several is another check: its scatter falls with their number.`,
    restsOn: 'one integral over the net; the grade on thresholds of common practice',
    compute: (raw) =>
      fromStats(() => {
        const found = grossCheck({
          ...netAndShell(raw),
          net: { low: raw.netLow_data, high: raw.netHigh_data },
          ...(raw.fault_data === undefined ? {} : { fault: raw.fault_data }),
        });
        const { fault } = found;
        return {
          ...{ grade: found.grade, reasons: found.reasons, scatter_data: found.scatter, notFill_frac: found.notFill },
          ...{ guardedHalfWidth_data: found.guardedHalfWidth, falseAccept_frac: found.falseAccept },
          ...{ falseReject_frac: found.falseReject, badRejected_frac: found.badRejected },
          ...(fault && { fault_ratio: fault.inSd, faultSeen_frac: fault.seen }),
        };
      }),
  }),
];
