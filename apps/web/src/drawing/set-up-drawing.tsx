import { useContext, useDeferredValue, useMemo, type ComponentType, type CSSProperties, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { rounded as r } from './at-mm.ts';
import { CalloutLines, CalloutTexts } from './capsule/callout-texts.tsx';
import { capsuleLetters } from './capsule/capsule-letters.ts';
import { CapsuleSection } from './capsule/capsule-section.tsx';
import { CapsuleTexts } from './capsule/capsule-texts.tsx';
import { calloutRoom, drawingRoom, type DrawingRoom } from './drawing-room.ts';
import { DrawingSvg } from './drawing-svg.tsx';
import { LetterLines, LetterTexts } from './letters.tsx';
import { Legend } from './legend.tsx';
import type { DrawnSetUp, MethodDrawing } from './method-drawing.ts';
import { OpeningContext } from './opening.ts';
import { Ruler, RulerNumbers } from './ruler.tsx';
import { useAtRest } from './use-at-rest.ts';
import { useCapsule } from './use-capsule.ts';
import './drawing.css';

/** Heights of the values beside the capsule, as shares of the way from its top to the base line. */
const CALLOUTS_AT = [0.07, 0.26, 0.42, 0.6, 0.86];

/** The machine's section and the capsule on one scale, projected into each other; the parts are the levers. */
export function SetUpDrawing(props: {
  readonly setUp: DrawnSetUp;
  readonly drawing: MethodDrawing;
  /** What stands left of the drawing under the parts. */
  readonly beside?: ReactNode;
}): ReactNode {
  const { setUp, drawing, beside } = props;
  const { place, candidate } = setUp;
  const { Section, Levers, Parts, Shells } = drawing;
  const { layout, ghosts, items } = useCapsule(setUp);
  const section = drawing.room(setUp);
  const room = drawingRoom(section, { layout, ghosts });
  const texts = calloutRoom(room, CALLOUTS_AT);
  const letters = useContext(OpeningContext)?.letters ?? [];
  const placed = [...drawing.letters(setUp, letters), ...capsuleLetters(letters, { layout, axis_mm: room.axis_mm })];
  const ruler = { at_mm: room.ruler_mm, tip_mm: layout.tipBelow_mm, closed_mm: layout.shell.closed_mm };
  return (
    <div className="drawing" style={scaleOf(room)}>
      <div className="drawing-sheet">
        <div className="drawing-parts">
          <AfterTheMove setUp={setUp} Shown={Parts} />
        </div>
        <div className="drawing-stage">
          <div className="drawing-origin">
            <DrawingSvg width_mm={room.callouts_mm} label={FILL_WORDS.drawing(candidate.size)}>
              <Section setUp={setUp} />
              <Ruler {...ruler} />
              <Projection section={section} room={room} slugRadius_mm={layout.slugRadius_mm} />
              <g transform={`translate(${r(room.axis_mm)} 0)`}>
                <CapsuleSection
                  {...{ layout, ghosts }}
                  profile={candidate.prediction.profile}
                  powder={place.context.material}
                  beforeTop_mm={topBefore_mm(setUp)}
                />
              </g>
              <CalloutLines items={items} room={texts} />
              <LetterLines letters={placed} />
            </DrawingSvg>
            <Levers setUp={setUp} />
            <RulerNumbers {...ruler} />
            <CapsuleTexts {...{ setUp, layout, ghosts, room }} />
            <CalloutTexts items={items} room={texts} />
            <LetterTexts letters={placed} />
          </div>
          <Legend />
          {Shells ? (
            <div className="drawing-shells">
              <AfterTheMove setUp={setUp} Shown={Shells} />
            </div>
          ) : null}
        </div>
        <div className="drawing-beside">{beside}</div>
      </div>
    </div>
  );
}

/** What need not follow a lever in the same frame waits, in the second ink, until the lever is let go. */
export function AfterTheMove({ setUp, Shown }: AfterProps): ReactNode {
  const shown = useDeferredValue(useAtRest(setUp, setUp.isMoving));
  const content = useMemo(() => <Shown setUp={shown} />, [Shown, shown]);
  return <div className={setUp.isMoving ? 'drawing-waits' : undefined}>{content}</div>;
}

interface AfterProps {
  readonly setUp: DrawnSetUp;
  readonly Shown: ComponentType<{ readonly setUp: DrawnSetUp }>;
}

/** @returns numbers of the room for the style sheet, which makes the scale of them */
export function scaleOf({ callouts_mm, highest_mm, capsule_mm }: DrawingRoom): CSSProperties {
  return { '--width': r(callouts_mm), '--highest': r(highest_mm), '--capsule': r(capsule_mm) } as CSSProperties;
}

/** @returns top of the slug before the move, where it was another one */
export function topBefore_mm({ before, candidate }: DrawnSetUp): number | undefined {
  const top_mm = before?.prediction.released_mm;
  return top_mm === candidate.prediction.released_mm ? undefined : top_mm;
}

/** Dotted lines carry the faces of the mounted part into the shell. */
function Projection(props: {
  readonly section: { readonly width_mm: number; readonly face_mm: number };
  readonly room: DrawingRoom;
  readonly slugRadius_mm: number;
}): ReactNode {
  const { section, room, slugRadius_mm } = props;
  const from = r(section.width_mm + 0.1);
  const left = r(room.axis_mm - slugRadius_mm);
  const right = r(room.axis_mm + slugRadius_mm);
  const face = r(-section.face_mm);
  return (
    <path className="drawing-projection" d={`M${from} 0H${left}M${from} ${face}H${left}M${left} ${face}H${right}`} />
  );
}
