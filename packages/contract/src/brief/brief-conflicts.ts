import type { InputFault } from '@fillwright/engine/catalogue';
import { conflictAt, rangeConflicts } from '#faults';
import { itemsAt, meanAt, repeatsIn, textAt } from '#written';
import { powderConflicts } from './powder-conflicts.ts';
import { shellConflicts, type OwnShells } from './shell-conflicts.ts';
import { targetConflicts } from './target-conflicts.ts';

/**
 * Everything in a brief that contradicts something else in it. Works on data of any form, so that contradictions are
 * found beside other faults.
 *
 * @param raw - a brief of any form
 * @param own - records of shells that were read from files
 * @returns the conflicts
 */
export function briefConflicts(raw: unknown, own: OwnShells): readonly InputFault[] {
  const partCount = itemsAt(raw, ['parts']).length;
  return [
    ...(partCount > 1 ? [conflictAt('one-part-only', ['parts'], { partCount })] : []),
    ...targetConflicts(raw),
    ...powderConflicts(raw),
    ...shellConflicts(raw, own),
    ...rangeConflicts(raw, [
      ['validated', 'pinDepth'],
      ['validated', 'discHeight'],
    ]),
    ...limitConflicts(raw),
    ...routeConflicts(raw),
  ];
}

function limitConflicts(raw: unknown): readonly InputFault[] {
  const alert_pct = meanAt(raw, ['inProcess', 'individualAlert_pct']);
  const action_pct = meanAt(raw, ['inProcess', 'individualAction_pct']);
  if (alert_pct === undefined || action_pct === undefined || alert_pct <= action_pct) return [];
  return [conflictAt('alert-above-action', ['inProcess', 'individualAlert_pct'], { alert_pct, action_pct })];
}

/** The same test may be used for release and in process, but only once for each. */
function routeConflicts(raw: unknown): readonly InputFault[] {
  const uses = itemsAt(raw, ['route']).map((item) => {
    const [test, use] = [textAt(item, ['test']), textAt(item, ['use'])];
    return test === undefined || use === undefined ? undefined : `${test} (${use})`;
  });
  return repeatsIn(uses).map(({ name, index }) => conflictAt('test-twice', ['route', index], { test: name }));
}
