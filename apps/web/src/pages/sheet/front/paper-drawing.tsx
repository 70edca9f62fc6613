import { SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { scaleText } from '../../../drawing/index.ts';
import { capsuleLayout, type CapsuleLayout } from '../../../drawing/capsule/capsule-layout.ts';
import { CapsuleSection } from '../../../drawing/capsule/capsule-section.tsx';
import { paperScale } from '../paper/paper-scale.ts';
import { discPlaces } from '../paper/disc-places.ts';
import { short, type SheetFacts } from '../sheet-facts.ts';
import { DiscOnPaper } from './disc-on-paper.tsx';
import { MassesOnPaper } from './masses-on-paper.tsx';
import '../../../drawing/drawing.css';

/** Room on the page, mm of paper. */
const ROOM = { width_mm: 184, height_mm: 66, gaps_mm: 22 };
/** Readings above the disc's face, masses and scales below the base. */
const HEAD_mm = 15.5;
const FOOT_mm = 13;
const GAP_mm = 9;

interface PaperDrawingProps {
  readonly facts: SheetFacts;
  /** See `paperScale`. */
  readonly smallerBy: number;
}

/** Stations and capsule to scale, the capsule in true size beside them. */
export function PaperDrawing({ facts, smallerBy }: PaperDrawingProps): ReactNode {
  const { candidate, details, place } = facts;
  const { geometry, prediction, size } = candidate;
  const { bore_mm, released_mm, stations } = prediction;
  const layout = capsuleLayout({ geometry, bore_mm, released_mm }, place.record);
  const discHeight_mm =
    details.sheet.find((line) => line.size?.['discHeight_mm'] !== undefined)?.size?.['discHeight_mm'] ?? 0;
  const disc = discPlaces({ stationCount: stations.length, bore_mm });
  const shell = layout.shell;
  const aboveBase_mm = Math.max(discHeight_mm, shell.closed_mm - layout.tipBelow_mm);
  const capsuleWidth_mm = 2 * shell.capOuter_mm;
  const scale = paperScale(
    { disc_mm: disc.width_mm, capsuleWidth_mm, highest_mm: aboveBase_mm },
    { ...ROOM, smallerBy },
  );
  const base_mm = Math.max(HEAD_mm + scale * discHeight_mm, scale * (shell.closed_mm - layout.tipBelow_mm) + 1);
  const axis_mm = scale * disc.width_mm + GAP_mm + scale * shell.capOuter_mm;
  const small_mm = axis_mm + scale * shell.capOuter_mm + GAP_mm + shell.capOuter_mm;
  const paper = { width_mm: small_mm + shell.capOuter_mm + 1, height_mm: base_mm + FOOT_mm };
  const readings = details.sheet.flatMap(({ reading_division, step_division = NaN }) =>
    reading_division === undefined ? [] : [scaleText(reading_division, step_division)],
  );
  return (
    <div className="sheet-drawing">
      <svg
        role="img"
        aria-label={SHEET_WORDS.drawingLabel({ readings: readings.join(', '), size })}
        viewBox={`0 0 ${short(paper.width_mm)} ${short(paper.height_mm)}`}
        style={{ width: `${short(paper.width_mm)}mm`, height: `${short(paper.height_mm)}mm` }}
      >
        <DiscOnPaper {...{ facts, scale, base_mm }} height_mm={discHeight_mm} places={disc} />
        <path
          className="drawing-projection"
          d={`M${scale * disc.width_mm} ${base_mm - scale * discHeight_mm}H${axis_mm} M${scale * disc.width_mm} ${base_mm}H${axis_mm}`}
        />
        <Capsule {...{ facts, layout, scale, base_mm }} at_mm={axis_mm} />
        <Capsule {...{ facts, layout, base_mm }} scale={1} at_mm={small_mm} />
      </svg>
      <MassesOnPaper {...{ facts, scale, base_mm }} places={disc} />
    </div>
  );
}

interface CapsuleProps {
  readonly facts: SheetFacts;
  readonly layout: CapsuleLayout;
  readonly scale: number;
  readonly at_mm: number;
  readonly base_mm: number;
}

function Capsule({ facts, layout, scale, at_mm, base_mm }: CapsuleProps): ReactNode {
  const { candidate, place } = facts;
  return (
    <>
      <g transform={`translate(${short(at_mm)} ${short(base_mm)}) scale(${scale})`}>
        <CapsuleSection
          {...{ layout }}
          ghosts={[]}
          profile={candidate.prediction.profile}
          powder={place.context.material}
          beforeTop_mm={undefined}
        />
      </g>
      <text className="sheet-svg-text" x={short(at_mm)} y={short(base_mm + FOOT_mm - 1)} textAnchor="middle">
        {SHEET_WORDS.scaleOf(short(scale))}
      </text>
    </>
  );
}
