import type { SearchInput } from '@fillwright/engine/design';
import { knownOfBrief, knownOfSetUp, type Purpose, type WheelOfRevolution } from '@fillwright/engine/weights';
import type { WorkbenchState } from '../../state/index.ts';
import type { WeightsFacts } from '../../state/weights-calls.ts';

/** What brief and design know. */
export interface ProductFacts {
  readonly name: string;
  /** What holds for a purpose, with the assay of the lot where a person typed it. */
  readonly facts: (of: { readonly purpose: Purpose; readonly assay_pct: number | undefined }) => WeightsFacts;
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
  const { input } = brief;
  const { groupCount, columnCount } = input.filler.disc;
  const size = candidate ? { size: candidate.size } : {};
  const tare = details?.card?.tare;
  const setUp = candidate && details ? knownOfSetUp(input, { ...candidate, ...details }) : {};
  return {
    name: input.brief.product.name,
    wheel: { groupCount, columnCount, carrierCount: input.filler.carriers.carrierCount },
    facts: ({ purpose, assay_pct }) => {
      const known = knownOfBrief({ brief: input.brief, purpose, ...size });
      const names = namesOf(input);
      return {
        ...{ ...known, ...(tare ? { tare } : {}), ...setUp, purpose },
        ...(assay_pct === undefined ? {} : { substances: names.map((name) => ({ name, content_pct: assay_pct })) }),
      };
    },
  };
}

/** Substances that the assay of the lot holds for. */
function namesOf({ brief }: SearchInput): readonly string[] {
  const names = brief.parts[0].target.substances.map(({ name }) => name);
  return names.length > 0 ? names : [''];
}
