import { memo, type ReactNode } from 'react';
import { quantityForReading } from '@fillwright/words/numbers';
import { atMm, inMm } from '../at-mm.ts';
import type { DrawingRoom } from '../drawing-room.ts';
import type { DrawnSetUp } from '../method-drawing.ts';
import { NumberButton } from '../number-button.tsx';
import type { CapsuleLayout, GhostShell } from './capsule-layout.ts';

interface CapsuleTextsProps {
  readonly setUp: DrawnSetUp;
  readonly layout: CapsuleLayout;
  readonly ghosts: readonly GhostShell[];
  readonly room: DrawingRoom;
}

/** Density in the slug, and the names of the shells drawn behind. */
export function CapsuleTexts({ setUp, layout, ghosts, room }: CapsuleTextsProps): ReactNode {
  const { density_g_per_mL } = setUp.candidate.prediction;
  const [number, unit] = quantityForReading(density_g_per_mL, 'g/mL', { decimals: 2 }).split('\u202F');
  const width_mm = 2 * layout.slugRadius_mm;
  return (
    <>
      <div
        className="capsule-density"
        style={{
          ...atMm({ x_mm: room.axis_mm - layout.slugRadius_mm, y_mm: -layout.slugTop_mm / 2 }),
          width: inMm(width_mm),
        }}
      >
        <NumberButton number="density" className="capsule-density-number">
          {number}
        </NumberButton>
        <span>{unit}</span>
      </div>
      {ghosts.map((ghost) => (
        <GhostName key={ghost.size} ghost={ghost} axis_mm={room.axis_mm} tip_mm={layout.tipBelow_mm} />
      ))}
    </>
  );
}

const GhostName = memo(function GhostName(props: {
  readonly ghost: GhostShell;
  readonly axis_mm: number;
  readonly tip_mm: number;
}): ReactNode {
  const { capOuter_mm, closed_mm } = props.ghost.section;
  const at = { x_mm: props.axis_mm - 0.62 * capOuter_mm, y_mm: props.tip_mm - closed_mm + 0.22 * capOuter_mm };
  return (
    <span className="capsule-ghost-name" aria-hidden="true" style={atMm(at)}>
      {props.ghost.size}
    </span>
  );
});
