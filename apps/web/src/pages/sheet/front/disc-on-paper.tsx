import type { StationTrace } from '@fillwright/engine/dosing';
import { SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { scaleText } from '../../../drawing/index.ts';
import { powderShade } from '../../../drawing/powder-shade.ts';
import type { DiscPlaces } from '../paper/disc-places.ts';
import { readingSize_mm } from '../paper/reading-size.ts';
import { short, type SheetFacts } from '../sheet-facts.ts';

interface DiscOnPaperProps {
  readonly facts: SheetFacts;
  readonly places: DiscPlaces;
  readonly scale: number;
  /** Base plate below the top of the paper drawing. */
  readonly base_mm: number;
  readonly height_mm: number;
}

/** From the reading to the disc's face. */
const READING_mm = 9;
const NAME_mm = 3;
const PLATE_mm = 1.2;

/** Whole bores in section with their pins where they stand, and what is set above each. Lengths in mm of paper. */
export function DiscOnPaper({ facts, places, scale, base_mm, height_mm }: DiscOnPaperProps): ReactNode {
  const { bore_mm, stations } = facts.candidate.prediction;
  const top = base_mm - scale * height_mm;
  const width = scale * places.width_mm;
  const readings = stations.map((trace) => readingOf(facts, trace));
  const pitch_mm = scale * ((places.lefts_mm[1] ?? Infinity) - (places.lefts_mm[0] ?? 0));
  const size_mm = readingSize_mm(readings, pitch_mm);
  return (
    <g>
      <pattern id="sheet-hatch" width="1.6" height="1.6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <rect width="1.6" height="1.6" className="drawing-hatch-ground" />
        <path d="M0 0V1.6" className="sheet-hatch-line" />
      </pattern>
      <rect className="sheet-hatched" x="0" y={short(top)} width={short(width)} height={short(base_mm - top)} />
      {stations.map((trace, i) => (
        <Station
          key={trace.station}
          {...{ facts, trace, scale, top, base_mm }}
          reading={readings[i] ?? ''}
          reading_mm={size_mm}
          left={scale * (places.lefts_mm[i] ?? 0)}
          width={scale * bore_mm}
        />
      ))}
      <path
        className="drawing-edge"
        d={`M0 ${short(top)}V${short(base_mm)}M${short(width)} ${short(top)}V${short(base_mm)}`}
      />
      <rect className="sheet-hatched" x="0" y={short(base_mm)} width={short(width)} height={PLATE_mm} />
      <path className="drawing-edge" d={`M0 ${short(base_mm)}H${short(width)}`} />
    </g>
  );
}

/** What is set above a pin. */
function readingOf({ details }: SheetFacts, { station, set_mm }: StationTrace): string {
  const line = details.sheet.find((one) => one.station === station);
  return set_mm === 0 ? SHEET_WORDS.flush : scaleText(line?.reading_division ?? NaN, line?.step_division ?? NaN);
}

interface StationProps {
  readonly facts: SheetFacts;
  readonly trace: StationTrace;
  readonly reading: string;
  /** Size of its letters. */
  readonly reading_mm: number;
  readonly scale: number;
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly base_mm: number;
}

function Station({ facts, trace, reading, reading_mm, scale, left, width, top, base_mm }: StationProps): ReactNode {
  const { station, set_mm, reached_mm, density_g_per_mL } = trace;
  const face = top + scale * reached_mm;
  const middle = short(left + width / 2);
  const [x, right] = [short(left), short(left + width)];
  return (
    <g>
      <rect
        x={x}
        y={short(face)}
        width={short(width)}
        height={short(base_mm - face)}
        style={{ fill: powderShade(facts.place.context.material, density_g_per_mL) }}
      />
      <rect
        className="sheet-pin"
        x={x}
        y={short(top - READING_mm + 4)}
        width={short(width)}
        height={short(face - top + READING_mm - 4)}
      />
      <path
        className="drawing-edge"
        d={`M${x} ${short(top - READING_mm + 4)}V${short(base_mm)}M${right} ${short(top - READING_mm + 4)}V${short(base_mm)}`}
      />
      {reached_mm < set_mm ? <path className="sheet-set" d={`M${x} ${short(top + scale * set_mm)}H${right}`} /> : null}
      <path className="sheet-face" d={`M${x} ${short(face)}H${right}`} />
      <text
        className="sheet-svg-reading"
        style={{ fontSize: `${short(reading_mm)}px` }}
        x={middle}
        y={short(top - READING_mm)}
        textAnchor="middle"
      >
        {reading}
      </text>
      <text className="sheet-svg-text" x={middle} y={short(top - NAME_mm + 1.2)} textAnchor="middle">
        {SHEET_WORDS.pin(station)}
      </text>
    </g>
  );
}
