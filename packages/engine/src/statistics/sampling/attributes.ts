import {
  attributesDesign,
  averageOutgoingQuality,
  doublePlanOperation,
  probabilityOfAcceptance,
  probabilityOfAcceptanceInLot,
  qualityAtAcceptance,
  zeroAcceptanceSize,
} from '@fillwright/stats/sampling';
import { defineEntry, type Entry } from '#catalogue';
import { fromStats } from '../from-stats.ts';
import {
  ACCEPTANCE_NUMBER,
  ACCEPTED,
  CHANCE,
  COUNT,
  LAW,
  LAWS,
  LOT_SIZE,
  MIL_105,
  QUALITIES,
  SAMPLE_SIZE,
  SERIES,
  TWO_POINTS,
} from './fields.ts';

const OUTGOING = {
  key: 'outgoing_ratio',
  title: 'average outgoing quality when lots not accepted are sorted',
  kind: 'number',
  unit: '1',
  list: { min: 1, max: 1000 },
} as const;
const OPTIONAL_LOT = { ...LOT_SIZE, optional: true } as const;
const NONCONFORMING = {
  ...LOT_SIZE,
  key: 'nonconformingCount',
  title: 'nonconforming units in the lot D',
  min: 0,
} as const;
const BETA = { text: 'M. Abramowitz, I. A. Stegun (1964), 26.5.24 and 26.4.21', read: 'from memory' } as const;

const series: readonly Entry[] = [
  defineEntry({
    id: 'statistics.attribute-acceptance',
    title: 'Operating characteristic of a single plan by attributes',
    equation: 'P_a = P(X \\le Ac),\\quad AOQ = P_a\\,p\\,\\frac{N-n}{N}',
    inputs: [SAMPLE_SIZE, ACCEPTANCE_NUMBER, QUALITIES, LAW, OPTIONAL_LOT],
    outputs: [ACCEPTED, OUTGOING],
    sources: [LAWS, MIL_105],
    validity: `${SERIES} Printed tables use the binomial law up to n = 80 and the Poisson law above (from memory). Without N the lot is large against the sample.`,
    restsOn: 'quality of the process; sorting that finds everything',
    compute: ({ sampleSize, acceptanceNumber, qualities_ratio, law, lotSize }) =>
      fromStats(() => {
        const plans = qualities_ratio.map((quality) => ({ n: sampleSize, ac: acceptanceNumber, quality, law }));
        return {
          accepted_frac: plans.map(probabilityOfAcceptance),
          outgoing_ratio: plans.map((plan) =>
            averageOutgoingQuality(lotSize === undefined ? plan : { ...plan, lotSize }),
          ),
        };
      }),
  }),
  defineEntry({
    id: 'statistics.attribute-quality',
    title: 'Quality that a single plan by attributes accepts with a given probability',
    equation: 'P(X \\le Ac \\mid p) = P_a',
    inputs: [SAMPLE_SIZE, ACCEPTANCE_NUMBER, { ...CHANCE, key: 'accepted_frac', title: 'probability to accept' }, LAW],
    outputs: [
      { key: 'quality_ratio', title: 'nonconforming units or nonconformities per unit', kind: 'number', unit: '1' },
    ],
    sources: [BETA],
    validity: `${SERIES} 0.95 gives the producer's point, 0.10 the consumer's.`,
    restsOn: 'exact quantiles of the beta and gamma laws',
    compute: ({ sampleSize, acceptanceNumber, accepted_frac, law }) => ({
      quality_ratio: fromStats(() =>
        qualityAtAcceptance({ n: sampleSize, ac: acceptanceNumber, accepted: accepted_frac, law }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.attribute-design',
    title: 'Smallest single plan by attributes through two points',
    equation: 'P_a(p_1) \\ge 1-\\alpha,\\quad P_a(p_2) \\le \\beta',
    inputs: [...TWO_POINTS, LAW],
    outputs: [
      SAMPLE_SIZE,
      ACCEPTANCE_NUMBER,
      { key: 'acceptedAtProducer_frac', title: 'probability to accept the first quality', kind: 'number', unit: '1' },
      { key: 'acceptedAtConsumer_frac', title: 'probability to accept the second quality', kind: 'number', unit: '1' },
    ],
    sources: [{ text: 'W. C. Guenther, J. Quality Technol. 1 (1969) 105-109', read: 'from memory' }],
    validity: `${SERIES} Risks up to 0.5, Ac up to 1000, n up to a million.`,
    restsOn: 'exact search over the acceptance number',
    compute: ({ producerQuality_frac, producerRisk_frac, consumerQuality_frac, consumerRisk_frac, law }) =>
      fromStats(() => {
        const { n, ac, acceptedAtProducer, acceptedAtConsumer } = attributesDesign({
          ...{ producerQuality: producerQuality_frac, producerRisk: producerRisk_frac },
          ...{ consumerQuality: consumerQuality_frac, consumerRisk: consumerRisk_frac, law },
        });
        return {
          ...{ sampleSize: n, acceptanceNumber: ac },
          ...{ acceptedAtProducer_frac: acceptedAtProducer, acceptedAtConsumer_frac: acceptedAtConsumer },
        };
      }),
  }),
  defineEntry({
    id: 'statistics.double-plan-acceptance',
    title: 'Operating characteristic of a double plan by attributes',
    equation: 'P_a = P(X_1 \\le Ac_1) + \\sum_x P(X_1 = x)\\,P(X_2 < Re_2 - x),\\quad ASN = n_1 + n_2\\,(1 - P_1)',
    inputs: [
      { ...SAMPLE_SIZE, key: 'firstSampleSize', title: 'first sample' },
      { ...SAMPLE_SIZE, key: 'secondSampleSize', title: 'second sample' },
      { ...COUNT, key: 'firstAcceptanceNumber', title: 'accepted on the first sample up to this count' },
      { ...COUNT, key: 'firstRejectionNumber', title: 'not accepted on the first sample from this count' },
      { ...COUNT, key: 'secondAcceptanceNumber', title: 'both samples accepted up to this sum' },
      { ...COUNT, key: 'secondRejectionNumber', title: 'both samples not accepted from this sum' },
      QUALITIES,
      LAW,
      OPTIONAL_LOT,
    ],
    outputs: [
      ACCEPTED,
      { ...ACCEPTED, key: 'decidedAtFirst_frac', title: 'probabilities that the first sample decides P_1' },
      { ...ACCEPTED, key: 'averageSampleCount', title: 'mean numbers of units inspected per lot' },
      OUTGOING,
    ],
    sources: [LAWS, MIL_105],
    validity: `${SERIES} Each sample is inspected to its end. A sum between the second numbers counts as accepted.`,
    restsOn: 'direct summation over the first sample; sorting that finds everything',
    compute: (given) =>
      fromStats(() => {
        const { lotSize, law } = given;
        const found = given.qualities_ratio.map((quality) =>
          doublePlanOperation({
            ...{ n1: given.firstSampleSize, n2: given.secondSampleSize, quality, law },
            ...{ ac1: given.firstAcceptanceNumber, re1: given.firstRejectionNumber },
            ...{ ac2: given.secondAcceptanceNumber, re2: given.secondRejectionNumber },
            ...(lotSize === undefined ? {} : { lotSize }),
          }),
        );
        return {
          accepted_frac: found.map((one) => one.accepted),
          decidedAtFirst_frac: found.map((one) => one.decidedAtFirst),
          averageSampleCount: found.map((one) => one.averageSampleCount),
          outgoing_ratio: found.map((one) => one.averageOutgoingQuality),
        };
      }),
  }),
];

const oneLot: readonly Entry[] = [
  defineEntry({
    id: 'statistics.attribute-acceptance-in-lot',
    title: 'Probability to accept one lot of known size by attributes',
    equation: 'P_a = P(X \\le Ac \\mid N, D, n)',
    inputs: [LOT_SIZE, NONCONFORMING, { ...SAMPLE_SIZE, max: 1e9 }, ACCEPTANCE_NUMBER],
    outputs: [{ key: 'accepted_frac', title: 'probability to accept', kind: 'number', unit: '1' }],
    sources: [LAWS],
    validity: 'One lot, units drawn at random without replacement (hypergeometric law).',
    restsOn: 'exact sum',
    compute: ({ lotSize, nonconformingCount, sampleSize, acceptanceNumber }) => ({
      accepted_frac: fromStats(() =>
        probabilityOfAcceptanceInLot({ lotSize, nonconformingCount, n: sampleSize, ac: acceptanceNumber }),
      ),
    }),
  }),
  defineEntry({
    id: 'statistics.zero-acceptance-size',
    title: 'Sample size of a zero-acceptance plan',
    equation: 'P(X = 0 \\mid N, D, n) \\le \\beta',
    inputs: [
      LOT_SIZE,
      { ...NONCONFORMING, title: 'nonconforming units in a lot that must not be accepted D', min: 1 },
      { ...CHANCE, key: 'acceptedAtMost_frac', title: 'largest probability to accept it' },
    ],
    outputs: [
      { ...SAMPLE_SIZE, title: 'smallest sample n', max: 1e9 },
      { key: 'accepted_frac', title: 'probability to accept with it', kind: 'number', unit: '1' },
      { key: 'acceptedOneLess_frac', title: 'probability to accept with one unit less', kind: 'number', unit: '1' },
      { ...SAMPLE_SIZE, key: 'seriesSampleSize', title: 'sample for a series of lots of this quality', max: 1e9 },
    ],
    sources: [LAWS],
    validity:
      'One lot, units drawn at random without replacement; accepted only when nothing is found. An exact ratio that equals the limit counts as met. Good lots with a few nonconforming units are often not accepted by such a plan.',
    restsOn: 'exact search with the hypergeometric law; the sample for a series with the binomial law',
    compute: ({ lotSize, nonconformingCount, acceptedAtMost_frac }) =>
      fromStats(() => {
        const found = zeroAcceptanceSize({ lotSize, nonconformingCount, acceptedAtMost: acceptedAtMost_frac });
        return {
          ...{ sampleSize: found.n, accepted_frac: found.accepted },
          ...{ acceptedOneLess_frac: found.acceptedOneLess, seriesSampleSize: found.nOfSeries },
        };
      }),
  }),
];

/** Entries: what plans by attributes do. */
export const attributeEntries: readonly Entry[] = [...series, ...oneLot];
