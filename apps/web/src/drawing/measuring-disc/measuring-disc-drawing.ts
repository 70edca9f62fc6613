import { discHeight_mm, discsFor } from '@fillwright/engine/fillers';
import type { DrawnSetUp, MethodDrawing, SectionRoom } from '../method-drawing.ts';
import { discLetters } from './disc-letters.ts';
import { DiscLevers } from './disc-levers.tsx';
import { DiscParts } from './disc-parts.tsx';
import { DiscSection } from './disc-section.tsx';
import { LargestSlugsAxis } from './largest-slugs-axis.tsx';
import { StationTable } from './station-table.tsx';
import { stationLayout } from './station-layout.ts';

/** Measuring disc and pins in section: the parts are the levers. */
export const measuringDiscDrawing: MethodDrawing = {
  room,
  Section: DiscSection,
  Levers: DiscLevers,
  Parts: DiscParts,
  letters: discLetters,
  Shells: LargestSlugsAxis,
  Table: StationTable,
};

function room({ place, candidate }: DrawnSetUp): SectionRoom {
  const { context } = place;
  const { prediction, settings } = candidate;
  const discs = discsFor(context.filler, context.shell.size);
  const mounted = discs.find(({ number }) => number === settings.parts['disc']);
  const face_mm = mounted ? discHeight_mm(mounted) : 0;
  return {
    width_mm: stationLayout({ stationCount: prediction.stations.length, bore_mm: prediction.bore_mm }).width_mm,
    highest_mm: Math.max(face_mm, ...discs.map(discHeight_mm)),
    face_mm,
  };
}
