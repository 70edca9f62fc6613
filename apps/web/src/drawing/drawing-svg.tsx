import type { ReactNode } from 'react';
import { inMm, rounded as r } from './at-mm.ts';

/** Made once: a lever renders the drawing in every frame, and an element that stays the same is passed over. */
const HATCH = (
  <defs>
    <pattern id="drawing-hatch" width="0.27" height="0.27" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
      <rect width="0.27" height="0.27" className="drawing-hatch-ground" />
      <path d="M0 0V0.27" className="drawing-hatch-line" />
    </pattern>
  </defs>
);

/** An SVG whose unit is the millimetre, laid so that its origin is that of the texts over it. */
export function DrawingSvg(props: {
  readonly width_mm: number;
  readonly label: string;
  readonly children: ReactNode;
}): ReactNode {
  const width_mm = r(props.width_mm);
  return (
    <svg
      className="drawing-svg"
      role="img"
      aria-label={props.label}
      viewBox={`0 0 ${width_mm} 1`}
      style={{ width: inMm(width_mm), height: inMm(1) }}
    >
      {HATCH}
      {props.children}
    </svg>
  );
}
