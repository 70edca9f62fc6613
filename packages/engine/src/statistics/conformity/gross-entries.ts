import {
  grossHalfWidth,
  grossMisclassification,
  netGivenGross,
  netVarianceFromPairs,
  netVarianceFromSamples,
} from '@fillwright/stats/conformity';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import { ACCEPTED, FALSE_REJECT, NET_AND_SHELL, NET_LIMITS, netAndShell, openLimits } from './fields.ts';

const SHARE = { kind: 'number', unit: '1' } as const;
const DATA = { kind: 'number', unit: 'data' } as const;
const SQUARE = { kind: 'number', unit: 'data2' } as const;
const PAIR_LAW = {
  text: 'Law of two normal values that go together; regression of one on the other',
  read: 'from memory',
} as const;
const GROSS = { key: 'gross_data', title: 'gross weights G', ...DATA, list: { min: 2, max: 100_000 } } as const;
const SHELLS = { key: 'shells_data', title: 'empty shells S', ...DATA, list: { min: 2, max: 100_000 } } as const;
const KNOWN = 'Net and shell normal, means and standard deviations taken as known and current.';

/** What gross weights say of the net. */
export const grossEntries: readonly Entry[] = [
  defineEntry({
    id: 'statistics.gross-misclassification',
    title: 'Good and bad units accepted and rejected by gross limits',
    equation:
      'G = N + S + e,\\quad P(N\\,\\text{outside},\\,G\\,\\text{inside}),\\quad P(N\\,\\text{inside},\\,G\\,\\text{outside})',
    inputs: [
      ...NET_AND_SHELL,
      ...NET_LIMITS,
      { key: 'grossLow_data', title: 'lower gross limit', ...DATA, optional: true },
      { key: 'grossHigh_data', title: 'upper gross limit', ...DATA, optional: true },
    ],
    outputs: [
      { key: 'sdGross_data', title: 'standard deviation of the gross', ...DATA },
      { key: 'correlationNetGross_ratio', title: 'correlation of net and gross', ...SHARE },
      { key: 'netInside_frac', title: 'net inside its limits', ...SHARE },
      ACCEPTED,
      { key: 'goodAccepted_frac', title: 'good and accepted, of all', ...SHARE },
      { key: 'falseAccept_frac', title: 'bad and accepted, of all', ...SHARE },
      FALSE_REJECT,
      { key: 'badRejected_frac', title: 'bad and rejected, of all', ...SHARE },
      { key: 'badAmongAccepted_frac', title: 'bad among the accepted', ...SHARE },
    ],
    sources: [PAIR_LAW],
    validity: `${KNOWN} One limit of each pair may be left out. Absolute error below 1e-12.`,
    restsOn: 'one integral over the net',
    compute: (raw) =>
      fromStats(() => {
        const found = grossMisclassification({
          ...netAndShell(raw),
          net: openLimits({ low: raw.netLow_data, high: raw.netHigh_data }),
          gross: openLimits({ low: raw.grossLow_data, high: raw.grossHigh_data }),
        });
        return {
          ...{ sdGross_data: found.sdGross, correlationNetGross_ratio: found.correlationNetGross },
          ...{ netInside_frac: found.netInside, grossAccepted_frac: found.grossAccepted },
          ...{ goodAccepted_frac: found.goodAccepted, falseAccept_frac: found.falseAccept },
          ...{ falseReject_frac: found.falseReject, badRejected_frac: found.badRejected },
          badAmongAccepted_frac: found.badAmongAccepted,
        };
      }),
  }),
  defineEntry({
    id: 'statistics.net-given-gross',
    title: 'Best estimate of one net weight from its gross weight',
    equation: 'n = \\mu_N+\\rho\\,\\frac{\\sigma_N}{\\sigma_G}(g-\\mu_G),\\quad \\sigma = \\sigma_N\\sqrt{1-\\rho^2}',
    inputs: [...NET_AND_SHELL, { key: 'gross_data', title: 'the gross weight g', ...DATA }, ...NET_LIMITS],
    outputs: [
      { key: 'mean_data', title: 'best estimate of the net n', ...DATA },
      { key: 'sd_data', title: 'its standard deviation σ', ...DATA },
      { key: 'inside_frac', title: 'probability that the net is inside its limits', ...SHARE },
      { key: 'plainEstimate_data', title: 'gross less mean shell: not the best estimate', ...DATA },
      { key: 'plainInside_frac', title: 'probability inside that goes with it', ...SHARE },
    ],
    sources: [PAIR_LAW],
    validity: `${KNOWN} After a shift of the fill the estimate leans to the old mean.`,
    restsOn: 'mean and spread of the lot as prior knowledge',
    compute: (raw) =>
      fromStats(() => {
        const net = openLimits({ low: raw.netLow_data, high: raw.netHigh_data });
        const found = netGivenGross({ ...netAndShell(raw), gross: raw.gross_data, net });
        return {
          ...{ mean_data: found.mean, sd_data: found.sd, inside_frac: found.probabilityInside },
          ...{ plainEstimate_data: found.plainEstimate, plainInside_frac: found.plainProbabilityInside },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.gross-half-width',
    title: 'Gross limits that let only so many bad units through',
    equation: 'P(N\\,\\text{outside},\\,|G-c| \\le h) = p',
    inputs: [
      ...NET_AND_SHELL,
      { key: 'netLow_data', title: 'lower net limit', ...DATA },
      { key: 'netHigh_data', title: 'upper net limit', ...DATA },
      { key: 'falseAccept_frac', title: 'bad and accepted, of all, p', ...SHARE, above: 0, below: 1 },
    ],
    outputs: [{ key: 'halfWidth_data', title: 'half width h of the gross limits', ...DATA }, FALSE_REJECT, ACCEPTED],
    sources: [PAIR_LAW],
    validity: `${KNOWN} The gross limits lie around c: middle of the net limits plus mean shell. A share that needs no limits at all is refused.`,
    restsOn: 'one integral over the net, solved for the half width',
    compute: (raw) =>
      fromStats(() => {
        const found = grossHalfWidth({
          ...netAndShell(raw),
          net: { low: raw.netLow_data, high: raw.netHigh_data },
          falseAccept: raw.falseAccept_frac,
        });
        return {
          ...{ halfWidth_data: found.halfWidth, falseReject_frac: found.falseReject },
          grossAccepted_frac: found.grossAccepted,
        };
      }),
  }),
  defineEntry({
    id: 'statistics.net-variance-from-samples',
    title: 'Net variance from gross weights and shells weighed separately',
    equation: 's_N^2 = s_G^2-s_S^2,\\quad u = \\sqrt{\\frac{2 s_G^4}{n_G-1}+\\frac{2 s_S^4}{n_S-1}}',
    inputs: [GROSS, SHELLS],
    outputs: [
      { key: 'meanNet_data', title: 'mean net', ...DATA },
      { key: 'varianceGross_data2', title: 'variance of the gross', ...SQUARE },
      { key: 'varianceShell_data2', title: 'variance of the shells', ...SQUARE },
      { key: 'varianceNet_data2', title: 'variance of the net as it comes out, negative too', ...SQUARE },
      { key: 'standardError_data2', title: 'its standard error u', ...SQUARE },
      {
        key: 'sdNet_data',
        title: 'standard deviation of the net; none if the variance is negative',
        ...DATA,
        optional: true,
      },
    ],
    sources: [PAIR_LAW],
    validity: 'Right only when fill and shell are uncorrelated; standard error for normal values.',
    restsOn: 'difference of two variances',
    compute: ({ gross_data: gross, shells_data: shells }) =>
      fromStats(() => {
        const found = netVarianceFromSamples({ gross, shells });
        return {
          ...{ meanNet_data: found.meanNet, varianceGross_data2: found.varianceGross },
          ...{ varianceShell_data2: found.varianceShell, varianceNet_data2: found.varianceNet },
          standardError_data2: found.standardError,
          ...(found.sdNet === undefined ? {} : { sdNet_data: found.sdNet }),
        };
      }),
  }),
  defineEntry({
    id: 'statistics.net-variance-from-pairs',
    title: 'Net variance from gross weights, each with its own shell',
    equation: 's_N^2 = s_G^2+s_S^2-2 s_{GS}',
    inputs: [
      { ...GROSS, list: { min: 3, max: 100_000 } },
      { ...SHELLS, title: 'shell of each, in the same order', list: { min: 3, max: 100_000 } },
    ],
    outputs: [
      { key: 'meanNet_data', title: 'mean net', ...DATA },
      { key: 'varianceNet_data2', title: 'variance of the net', ...SQUARE },
      { key: 'varianceGross_data2', title: 'variance of the gross', ...SQUARE },
      { key: 'varianceShell_data2', title: 'variance of the shells', ...SQUARE },
      { key: 'covariance_data2', title: 'covariance of gross and shell', ...SQUARE },
      { key: 'plainDifference_data2', title: 'gross less shells: what would be said without the pairs', ...SQUARE },
      {
        key: 'correlationNetShell_ratio',
        title: 'correlation of net and shell, if both vary',
        ...SHARE,
        optional: true,
      },
    ],
    sources: [PAIR_LAW],
    validity: 'Any law; the errors of both weighings are in the net variance.',
    restsOn: 'exact arithmetic up to rounding',
    compute: ({ gross_data: gross, shells_data: shells }) =>
      fromStats(() => {
        const found = netVarianceFromPairs({ gross, shells });
        const correlation = found.correlationNetShell;
        return {
          ...{ meanNet_data: found.meanNet, varianceNet_data2: found.varianceNet },
          ...{ varianceGross_data2: found.varianceGross, varianceShell_data2: found.varianceShell },
          ...{ covariance_data2: found.covarianceGrossShell, plainDifference_data2: found.plainDifference },
          ...(correlation === undefined ? {} : { correlationNetShell_ratio: correlation }),
        };
      }),
  }),
];
