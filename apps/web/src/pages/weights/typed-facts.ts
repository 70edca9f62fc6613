import type { WeightsSheet } from '@fillwright/contract/documents';
import type { WheelOfRevolution } from '@fillwright/engine/weights';
import type { WeightsFacts } from '../../state/weights-calls.ts';

/** What a person typed where no product says it. */
export function typedFacts({ typed, purpose }: WeightsSheet): WeightsFacts {
  const { target_mg, meanAction_pct, individualAction_pct, content_pct, tests } = typed;
  const areLimits = meanAction_pct !== undefined && individualAction_pct !== undefined;
  return {
    ...{ purpose, tests, route: tests },
    ...(target_mg === undefined ? {} : { target_mg }),
    ...(areLimits ? { limits: { meanAction_pct, individualAction_pct } } : {}),
    ...(content_pct === undefined ? {} : { substances: [{ name: '', content_pct }] }),
    causes: [{ kind: 'column' }, { kind: 'bore' }, { kind: 'group' }],
  };
}

/** The wheel that was typed; undefined until both counts are. */
export function typedWheel({ groupCount, columnCount }: WeightsSheet['typed']): WheelOfRevolution | undefined {
  return groupCount === undefined || columnCount === undefined ? undefined : { groupCount, columnCount };
}
