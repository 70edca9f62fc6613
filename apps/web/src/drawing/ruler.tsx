import { memo, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { atMm, rounded as r } from './at-mm.ts';

interface RulerProps {
  readonly at_mm: number;
  /** Outer tip of the shell below the base line: the ruler's 0. */
  readonly tip_mm: number;
  readonly closed_mm: number;
}

/** One ruler for machine and capsule, in mm from the tip of the shell. */
export const Ruler = memo(function Ruler({ at_mm, tip_mm, closed_mm }: RulerProps): ReactNode {
  const marks = Array.from({ length: Math.floor(closed_mm) + 1 }, (_, i) => {
    const length_mm = i % 5 === 0 ? 0.45 : 0.25;
    return `M${r(at_mm)} ${r(tip_mm - i)}h${-length_mm}`;
  });
  return <path className="drawing-tick" d={marks.join('')} />;
});

/** Numbers of the ruler, every 5 mm. */
export const RulerNumbers = memo(function RulerNumbers({ at_mm, tip_mm, closed_mm }: RulerProps): ReactNode {
  const last = Math.floor(closed_mm / 5);
  return (
    <>
      {Array.from({ length: last + 1 }, (_, i) => (
        <span
          key={i}
          className="drawing-ruler"
          aria-hidden="true"
          style={atMm({ x_mm: at_mm - 0.55, y_mm: tip_mm - 5 * i })}
        >
          {5 * i}
        </span>
      ))}
      <span
        className="drawing-ruler"
        aria-hidden="true"
        style={atMm({ x_mm: at_mm - 0.55, y_mm: tip_mm - 5 * last - 1.6 })}
      >
        {FILL_WORDS.mm}
      </span>
    </>
  );
});
