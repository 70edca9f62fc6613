import type { Adjuster, DosingContext, DosingMethod, ParameterValues, PartSwap, Settings } from './dosing.ts';
import type { MeanInterval } from './interval-of-mean.ts';
import { valuesAtMeans } from './parameter-values.ts';
import { stepGain, type StepGain } from './step-gain.ts';

/** What one turn of an adjuster does to the mass. */
export interface SettingGain extends StepGain {
  readonly key: string;
  readonly step_mm: number;
  /** Share of the draws in which a part works in another regime than at the means. */
  readonly otherRegime_frac: number;
}

/** What the next part in stock does to the mass. */
export interface PartGain {
  readonly slot: string;
  readonly from: string;
  readonly to: string;
  /** At the same depths, pins zeroed again. */
  readonly change_mg: number;
  /** With the readings of the working pins left as they are, where that moves them; a flush pin set flush again. */
  readonly changeWorkingKept_mg: number;
  /** With every reading left, that of the flush pin too. */
  readonly changeAllKept_mg: number;
}

export interface Gains {
  readonly settings: readonly SettingGain[];
  readonly parts: readonly PartGain[];
}

interface GainInput {
  readonly method: DosingMethod;
  readonly context: DosingContext;
  readonly settings: Settings;
  /** From `parameterDraws` of the method's parameters at these settings. */
  readonly draws: readonly ParameterValues[];
  /** From `intervalOfMean` of the same draws. */
  readonly interval: Pick<MeanInterval, 'otherRegime_frac'>;
}

/**
 * Milligrams per step of every adjuster that works, and per next part in stock.
 *
 * @param input - method, context, settings, the draws and their interval
 * @returns gains of settings (a flush pin has none) and of the neighbouring parts
 * @throws DomainError as the method's own evaluation
 * @source central difference over +-1 machine step under the draws of the interval; this project's choice
 * @validity at these settings; across the change from stop to spring the gain drops at once
 */
export function gains(input: GainInput): Gains {
  const { method, context, settings } = input;
  const adjusters = method.adjusters(context, settings);
  return {
    settings: adjusters.flatMap((adjuster) =>
      adjuster.kind === 'setting' && !adjuster.isIdle ? [settingGain(input, adjuster)] : [],
    ),
    parts: adjusters.flatMap((adjuster) => (adjuster.kind === 'part' ? partGains(input, adjuster) : [])),
  };
}

function settingGain(
  { method, context, settings, draws, interval }: GainInput,
  { key, step_mm, machineRange }: Extract<Adjuster, { kind: 'setting' }>,
): SettingGain {
  const gain = stepGain({
    evaluatorAt: (depth_mm) =>
      method.evaluator(context, { ...settings, values: { ...settings.values, [key]: depth_mm } }),
    ...{ at_mm: settings.values[key] ?? NaN, step_mm, range: machineRange, draws },
  });
  return { key, step_mm, ...gain, otherRegime_frac: interval.otherRegime_frac };
}

function partGains(
  { method, context, settings }: GainInput,
  adjuster: Extract<Adjuster, { kind: 'part' }>,
): readonly PartGain[] {
  const { slot, inStock } = adjuster;
  const at = inStock.findIndex(({ number }) => number === settings.parts[slot]);
  const from = inStock[at]?.number ?? '';
  const mass_mg = (changed: Settings): number => {
    const values = valuesAtMeans(method.parameters(context, changed));
    return method.evaluator(context, changed)(values).mass_mg;
  };
  const now_mg = mass_mg(settings);
  return [inStock[at - 1], inStock[at + 1]].flatMap((neighbour) => {
    if (!neighbour) return [];
    const change_mg = (readingsKept: PartSwap['readingsKept']): number =>
      mass_mg(method.withPart(context, settings, { slot, number: neighbour.number, readingsKept })) - now_mg;
    const kept = { changeWorkingKept_mg: change_mg('working'), changeAllKept_mg: change_mg('all') };
    return [{ slot, from, to: neighbour.number, change_mg: change_mg('none'), ...kept }];
  });
}
