import { useMemo } from 'react';
import { capsuleLayout, ghostShells, type CapsuleLayout, type GhostShell } from './capsule/capsule-layout.ts';
import { callouts, type Callout } from './capsule/callouts.ts';
import type { DrawnSetUp } from './method-drawing.ts';

/** The capsule of a set-up as it is drawn; what no lever moves is kept. */
export function useCapsule({ input, place, candidate, details }: DrawnSetUp): {
  readonly layout: CapsuleLayout;
  readonly ghosts: readonly GhostShell[];
  readonly items: readonly Callout[];
} {
  const { geometry, prediction, size } = candidate;
  const { bore_mm, released_mm } = prediction;
  const { record } = place;
  const ghosts = useMemo(() => ghostShells(input, size), [input, size]);
  const layout = useMemo(
    () => capsuleLayout({ geometry, bore_mm, released_mm }, record),
    [geometry, bore_mm, released_mm, record],
  );
  const tare = details?.card?.tare;
  const items = callouts(layout, { prediction, place, tare });
  return { layout, ghosts, items };
}
