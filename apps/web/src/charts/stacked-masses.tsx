import type { ReactNode } from 'react';
import type { MassAxis } from './mass-axis.ts';

interface StackProps {
  readonly bars: { readonly low_mg: number; readonly width_mg: number; readonly counts: readonly number[] };
  readonly odd: ReadonlySet<number>;
  readonly masses_mg: readonly number[];
  readonly axis: MassAxis;
  readonly from_px: number;
  readonly to_px: number;
}

/** Widest a dot of the stack takes. */
const DOT_px = 7;
/** Thinner dots are drawn as bars. */
const LEAST_DOT_px = 4;

/** The masses stacked by weight: dots while they can be counted, else bars. */
export function StackedMasses({ axis, bars, odd, masses_mg, from_px, to_px }: StackProps): ReactNode {
  const { low_mg, width_mg, counts } = bars;
  const high = Math.max(1, ...counts);
  const row_px = Math.abs(axis.y(low_mg) - axis.y(low_mg + width_mg));
  const dot_px = Math.min(DOT_px, (to_px - from_px) / high, row_px);
  if (dot_px < LEAST_DOT_px) {
    const scale = (to_px - from_px - 4) / high;
    return counts.map((count, i) => (
      <rect
        key={i}
        className="plot-bar"
        x={from_px}
        y={axis.y(low_mg + (i + 1) * width_mg) + 0.5}
        width={count * scale}
        height={Math.max(0.5, row_px - 1)}
      />
    ));
  }
  const oddCounts = oddOf({ bars, odd, masses_mg });
  const paths = counts.map((count, i) => {
    const y = axis.y(low_mg + (i + 0.5) * width_mg).toFixed(1);
    const x = (at: number): string => (from_px + (at + 0.5) * dot_px).toFixed(1);
    const places = Array.from({ length: count }, (_, at) => at);
    const oddCount = oddCounts[i] ?? 0;
    return {
      odd: places
        .slice(0, oddCount)
        .map((at) => `M${x(at)} ${y}m0-3l3 5.4h-6z`)
        .join(''),
      dots: places
        .slice(oddCount)
        .map((at) => `M${x(at)} ${y}h0`)
        .join(''),
    };
  });
  return (
    <>
      <path className="plot-dots" strokeWidth={dot_px * 0.86} d={paths.map(({ dots }) => dots).join('')} />
      <path className="plot-odd" d={paths.map((path) => path.odd).join('')} />
    </>
  );
}

/** How many of the odd ones each bar holds. */
function oddOf({ bars, odd, masses_mg }: Pick<StackProps, 'bars' | 'odd' | 'masses_mg'>): readonly number[] {
  const found = bars.counts.map(() => 0);
  for (const index of odd) {
    const place = Math.floor(((masses_mg[index] ?? NaN) - bars.low_mg) / bars.width_mg + 1e-9);
    const at = Math.max(0, Math.min(found.length - 1, place));
    found[at] = Math.min((found[at] ?? 0) + 1, bars.counts[at] ?? 0);
  }
  return found;
}
