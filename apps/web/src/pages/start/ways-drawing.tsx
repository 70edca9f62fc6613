import type { ReactElement } from 'react';

/** Millimetres of a size 0 shell of the trade's chart, and of the demo filler's disc: an idea of the bench, not a figure. */
const BORE = { width: 6.6, height: 15.5, pin: 3.5 };
const BODY = { radius: 3.67, length: 18.4 };
const CAP = { radius: 3.82, from: 10.9, top: 21.7 };
const FLOOR = 24;

/** Powder under a pin, and the slug it becomes in the shell: on one scale, one projected into the other. */
export function WaysDrawing(): ReactElement {
  const face = FLOOR - BORE.height;
  const dome = 1.9;
  const bottom = FLOOR - dome;
  return (
    <svg className="ways-drawing" viewBox="0 0 40 26" aria-hidden="true">
      <rect className="ways-drawing-metal" x="1" y={face} width="5" height={BORE.height} />
      <rect className="ways-drawing-metal" x={6 + BORE.width} y={face} width="5" height={BORE.height} />
      <rect
        className="ways-drawing-powder"
        x="6"
        y={face + BORE.pin}
        width={BORE.width}
        height={BORE.height - BORE.pin}
      />
      <rect className="ways-drawing-pin" x="6" y="1" width={BORE.width} height={face + BORE.pin - 1} />
      <path className="ways-drawing-edge" d={`M1 ${String(FLOOR)}H18`} />
      <path className="ways-drawing-dots" d={`M18 ${String(face)}H36M18 ${String(FLOOR - 2.2)}H36`} />
      <g transform="translate(30 0)">
        <rect
          className="ways-drawing-powder"
          x={-BORE.width / 2}
          y={face - 0.8}
          width={BORE.width}
          height={BORE.height - 1.4}
        />
        <path className="ways-drawing-wall" d={shellPath({ ...BODY, top: bottom + dome - BODY.length, bottom })} />
        <path
          className="ways-drawing-wall"
          d={`M${String(-CAP.radius)} ${String(FLOOR - CAP.from)}V${String(FLOOR - CAP.top + CAP.radius)}a${String(CAP.radius)} ${String(CAP.radius)} 0 0 1 ${String(2 * CAP.radius)} 0V${String(FLOOR - CAP.from)}`}
        />
      </g>
    </svg>
  );
}

function shellPath({ radius, top, bottom }: { radius: number; top: number; bottom: number }): string {
  const [r, low] = [String(radius), String(bottom - radius + 1.9)];
  return `M${String(-radius)} ${String(top)}V${low}a${r} ${r} 0 0 0 ${String(2 * radius)} 0V${String(top)}`;
}
