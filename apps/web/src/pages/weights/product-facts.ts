import { targetFill } from '@fillwright/engine/brief';
import type { Brief, Correction } from '@fillwright/engine/design';
import type { PossibleCause, Purpose, StepOfPin, WeightTest, WheelOfRevolution } from '@fillwright/engine/weights';
import type { WorkbenchState } from '../../state/index.ts';
import type { WeightsFacts } from '../../state/weights-calls.ts';

/** What brief and design know. */
export interface ProductFacts {
  readonly name: string;
  readonly facts: (purpose: Purpose) => WeightsFacts;
  readonly wheel: WheelOfRevolution;
}

/**
 * What a product says about its weights: target, limits and tests of the brief, tare, steps and causes of the design.
 *
 * @param state - of the workbench
 * @returns the facts; undefined while the brief is not in order
 */
export function productFacts({ brief, candidate, details }: WorkbenchState): ProductFacts | undefined {
  if (brief.kind !== 'sound') return undefined;
  const { brief: written, filler } = brief.input;
  const target = targetFill(written.parts[0].target);
  const substances = target.substances.flatMap(({ name, content_pct }) =>
    content_pct === undefined ? [] : [{ name, content_pct }],
  );
  const { groupCount, columnCount } = filler.disc;
  const tare = details?.card?.tare;
  const corrections = stepsOf(details?.expected.under, details?.expected.over);
  return {
    name: written.product.name,
    wheel: { groupCount, columnCount, carrierCount: filler.carriers.carrierCount },
    facts: (purpose) => {
      const tests = testsFor(written, purpose);
      return {
        ...{ purpose, tests, route: tests, target_mg: target.fill_mg, limits: written.inProcess },
        ...(substances.length > 0 ? { substances, contentAt_mg: target.fill_mg } : {}),
        ...(tare ? { tare } : {}),
        ...(corrections ? { corrections } : {}),
        causes: causesOf(candidate?.settings.values, details?.gains.settings),
      };
    },
  };
}

/** The dossier fixes the tests; of a trial all of them are looked at and decide nothing. */
function testsFor({ route }: Brief, purpose: Purpose): readonly WeightTest[] {
  const named = route.filter(({ use }) => purpose === 'trial' || use === purpose).map(({ test }) => test);
  return [...new Set(named)];
}

function stepsOf(under: Correction | undefined, over: Correction | undefined): WeightsFacts['corrections'] {
  if (!under && !over) return undefined;
  const step = ({ adjuster, change_mg_per_step, step_mm }: Correction): StepOfPin => ({
    ...{ adjuster, change_mg_per_step, step_mm },
  });
  return { ...(under ? { under: step(under) } : {}), ...(over ? { over: step(over) } : {}) };
}

interface Gain {
  readonly key: string;
  readonly step_mm: number;
  readonly median_mg_per_step: number;
}

/** A pin that does not go down leaves out what its depth brings; besides, a bore or a group may be odd by anything. */
function causesOf(
  values: Readonly<Record<string, number>> | undefined,
  gains: readonly Gain[] | undefined,
): readonly PossibleCause[] {
  const stuck = (gains ?? []).flatMap(({ key, step_mm, median_mg_per_step }): PossibleCause[] => {
    const depth_mm = values?.[key] ?? 0;
    const change_mg = -(depth_mm * median_mg_per_step) / step_mm;
    return change_mg < 0 ? [{ adjuster: key, kind: 'column', change_mg }] : [];
  });
  return [...stuck, { kind: 'bore' }, { kind: 'group' }];
}
