import { WEIGHTS_PAGE_WORDS, WEIGHTS_VERDICT_WORDS } from '@fillwright/words/en';
import type { NumberReference } from '../../../numbers/index.ts';
import { capsuleNumber } from './capsule-number.ts';
import type { Weighed } from './weighed.ts';

const words = WEIGHTS_VERDICT_WORDS.numbers;
const mg = WEIGHTS_PAGE_WORDS.mg;
const OF_PAGE = { words: words.origins.pasted };
const FOUND = { words: words.origins.found };
const TARE = { words: words.origins.tare };
const PASTED = { values_data: OF_PAGE, gross_data: OF_PAGE, shells_data: OF_PAGE };

/** Numbers of the sample as a whole; those that are not known are left out. */
export interface SampleNumbers {
  readonly grossMean?: NumberReference;
  readonly grossSd?: NumberReference;
  readonly tareMean?: NumberReference;
  readonly shellSd?: NumberReference;
  readonly tareError?: NumberReference;
  readonly netMean?: NumberReference;
  readonly netSd?: NumberReference;
  readonly rsd?: NumberReference;
  readonly rsdLow?: NumberReference;
  readonly rsdHigh?: NumberReference;
  readonly meanLow?: NumberReference;
  readonly meanHigh?: NumberReference;
  readonly lowest?: NumberReference;
  readonly highest?: NumberReference;
  readonly performance?: NumberReference;
  readonly performanceLow?: NumberReference;
  readonly performanceHigh?: NumberReference;
  readonly spreadIndex?: NumberReference;
}

/**
 * How the numbers of a sample were made.
 *
 * @param weighed - masses and judgement
 * @returns a reference for each
 */
export function sampleNumbers(weighed: Weighed): SampleNumbers {
  return { ...grossNumbers(weighed), ...tareNumbers(weighed), ...netNumbers(weighed), ...performance(weighed) };
}

type Summed = Pick<NumberReference, 'output' | 'title'> & { readonly value: number };

function summary(values_data: readonly number[], summed: Summed): NumberReference {
  return { entry: 'statistics.sample-summary', inputs: { values_data }, unit: 'mg', origins: PASTED, ...summed };
}

function grossNumbers({ judgement: { gross }, masses_mg }: Weighed): SampleNumbers {
  if (!gross) return {};
  return {
    grossMean: summary(masses_mg, { output: 'mean_data', title: words.grossMean, value: gross.mean.value_mg }),
    grossSd: summary(masses_mg, { output: 'sd_data', title: words.grossSd, value: gross.sd.value_mg }),
  };
}

function tareNumbers({ judgement, ownShells_mg, shells_mg }: Weighed): SampleNumbers {
  const { netFrom, card } = judgement;
  const { way, tareMean_mg, tareSd_mg, tareStandardError_mg } = netFrom;
  const shells = way === 'own-shell' ? (ownShells_mg ?? []) : shells_mg;
  if (tareMean_mg === undefined || tareSd_mg === undefined || shells.length < 2) return {};
  const tareError: SampleNumbers =
    tareStandardError_mg === undefined || !card
      ? {}
      : {
          tareError: {
            entry: 'design.limits',
            inputs: {
              ...{ target_mg: card.target_mg, limit_pct: 1, tareMean_mg, tareSd_mg, shellCount: shells.length },
            },
            ...{ output: 'tareStandardError_mg', title: words.tareError, value: tareStandardError_mg },
          },
        };
  return {
    tareMean: summary(shells, { output: 'mean_data', title: words.tareMean, value: tareMean_mg }),
    shellSd: summary(shells, { output: 'sd_data', title: words.shellSd, value: tareSd_mg }),
    ...tareError,
  };
}

function netNumbers(weighed: Weighed): SampleNumbers {
  const { net, net_mg, netFrom } = weighed.judgement;
  if (!net || !net_mg) return {};
  const mean = summary(net_mg, { output: 'mean_data', title: words.netMean, value: net.mean.value_mg });
  const { tareMean_mg } = netFrom;
  const isBlurred = netFrom.way === 'mean-tare' && tareMean_mg !== undefined;
  const [lowest, highest] = [net_mg.indexOf(net.lowest_mg), net_mg.indexOf(net.highest_mg)];
  return {
    netMean: isBlurred ? { ...mean, remark: words.remarks.lessTare(mg(tareMean_mg)) } : mean,
    netSd: netSd(weighed, net.sd.value_mg),
    ...relativeSpread(weighed),
    ...endsOfMean(weighed),
    lowest: { ...capsuleNumber(weighed, lowest), title: words.lowest },
    highest: { ...capsuleNumber(weighed, highest), title: words.highest },
  };
}

/** With a mean tare the shells' own spread is taken out, where that leaves something. */
function netSd(weighed: Weighed, value: number): NumberReference {
  const { judgement, masses_mg, shells_mg } = weighed;
  const { net_mg = [], netFrom } = judgement;
  const given = { unit: 'mg', title: words.netSd, value } as const;
  const isRoot = netFrom.way === 'mean-tare' && Math.abs((netFrom.netSd_mg ?? NaN) - value) < 1e-9 * value;
  if (!isRoot) return summary(net_mg, { output: 'sd_data', ...given });
  if (shells_mg.length > 1) {
    const inputs = { gross_data: masses_mg, shells_data: shells_mg };
    return { entry: 'statistics.net-variance-from-samples', inputs, output: 'sdNet_data', origins: PASTED, ...given };
  }
  return { ...byMeanTare(weighed, 'sd_mg'), ...given };
}

/** Gross masses less one mean tare, the tare's own doubt in it. */
function byMeanTare(
  { judgement }: Weighed,
  output: 'sd_mg' | 'low_mg' | 'high_mg',
): Pick<NumberReference, 'entry' | 'inputs' | 'output' | 'origins'> {
  const { net, netFrom, gross } = judgement;
  const { tareSd_mg, shellCount = 0, tareStandardError_mg } = netFrom;
  const [mean_mg, confidence_frac] = [net?.mean.value_mg, net?.confidence_frac];
  const of = { capsuleCount: gross?.capsuleCount, mean_mg, grossSd_mg: gross?.sd.value_mg, tareSd_mg, shellCount };
  return {
    ...{ entry: 'weights.net-by-mean-tare', inputs: { ...of, tareStandardError_mg, confidence_frac }, output },
    origins: { mean_mg: FOUND, grossSd_mg: FOUND, tareSd_mg: TARE, tareStandardError_mg: TARE },
  };
}

/** Spread over mean, and how far either way it may lie. */
function relativeSpread({ judgement: { net } }: Weighed): SampleNumbers {
  if (!net) return {};
  const { rsd, sd, mean, degreesOfFreedomCount: degreesOfFreedom, confidence_frac } = net;
  const common = {
    entry: 'weights.relative-spread',
    inputs: { mean_mg: mean.value_mg, sd_mg: sd.value_mg, degreesOfFreedom, confidence_frac },
    ...{ unit: '%', origins: { mean_mg: FOUND, sd_mg: FOUND } },
  };
  return {
    rsd: { ...common, output: 'relative_pct', title: words.rsd, value: rsd.value_pct },
    rsdLow: { ...common, output: 'low_pct', title: words.rsdLow, value: rsd.low_pct },
    rsdHigh: { ...common, output: 'high_pct', title: words.rsdHigh, value: rsd.high_pct },
  };
}

function endsOfMean(weighed: Weighed): SampleNumbers {
  const { net, net_mg: values_data, netFrom } = weighed.judgement;
  if (!net) return {};
  const ends = { meanLow: net.mean.low_mg, meanHigh: net.mean.high_mg };
  const reference = (name: keyof typeof ends): NumberReference => {
    const given = { unit: 'mg', title: words[name], value: ends[name] };
    const output = name === 'meanLow' ? 'low_data' : 'high_data';
    if (netFrom.way !== 'mean-tare')
      return { entry: 'statistics.one-sample-t', inputs: { values_data }, output, origins: PASTED, ...given };
    return { ...byMeanTare(weighed, name === 'meanLow' ? 'low_mg' : 'high_mg'), ...given };
  };
  return { meanLow: reference('meanLow'), meanHigh: reference('meanHigh') };
}

function performance({ judgement: { capability, card, net } }: Weighed): SampleNumbers {
  if (!capability || !card || !net) return {};
  const { netLow_mg, netHigh_mg } = card.individualAction;
  const isLower = net.mean.value_mg - netLow_mg <= netHigh_mg - net.mean.value_mg;
  const common = {
    entry: 'statistics.capability-indices',
    inputs: {
      ...{ unitCount: net.capsuleCount, mean_data: net.mean.value_mg, sd_data: net.sd.value_mg },
      ...{ lower_data: netLow_mg, upper_data: netHigh_mg, confidence_frac: capability.confidence_frac },
    },
    unit: 'mg',
  };
  const { ppkLow_ratio, ppkHigh_ratio, pp_ratio, ppk_ratio } = capability;
  return {
    performance: {
      ...{ ...common, output: isLower ? 'cpl_ratio' : 'cpu_ratio', title: words.performance, value: ppk_ratio },
    },
    performanceLow: { ...common, output: 'cpk.low_ratio', title: words.performanceLow, value: ppkLow_ratio },
    performanceHigh: { ...common, output: 'cpk.high_ratio', title: words.performanceHigh, value: ppkHigh_ratio },
    spreadIndex: { ...common, output: 'cp.value_ratio', title: words.spreadIndex, value: pp_ratio },
  };
}
