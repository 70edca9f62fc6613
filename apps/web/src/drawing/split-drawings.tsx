import type { ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { rounded as r } from './at-mm.ts';
import { CalloutLines, CalloutTexts } from './capsule/callout-texts.tsx';
import { CapsuleSection } from './capsule/capsule-section.tsx';
import { CapsuleTexts } from './capsule/capsule-texts.tsx';
import { calloutRoom, capsuleRoom } from './drawing-room.ts';
import { DrawingSvg } from './drawing-svg.tsx';
import type { DrawnSetUp, MethodDrawing } from './method-drawing.ts';
import { AfterTheMove, scaleOf, topBefore_mm } from './set-up-drawing.tsx';
import { useCapsule } from './use-capsule.ts';
import './drawing.css';

/** Evenly from top to tip: each value has two lines. */
const CALLOUTS_AT = [0.04, 0.27, 0.49, 0.71, 0.95];

/** The capsule by itself with its values, for a narrow page. */
export function CapsuleDrawing({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const { place, candidate } = setUp;
  const { layout, ghosts, items } = useCapsule(setUp);
  const room = capsuleRoom({ layout, ghosts });
  const texts = calloutRoom(room, CALLOUTS_AT);
  return (
    <div className="drawing" style={scaleOf(room)}>
      <div className="drawing-sheet drawing-capsule">
        <div className="drawing-stage">
          <div className="drawing-origin">
            <DrawingSvg width_mm={room.callouts_mm} label={FILL_WORDS.capsule(candidate.size)}>
              <g transform={`translate(${r(room.axis_mm)} 0)`}>
                <CapsuleSection
                  {...{ layout, ghosts }}
                  profile={candidate.prediction.profile}
                  powder={place.context.material}
                  beforeTop_mm={topBefore_mm(setUp)}
                />
              </g>
              <CalloutLines items={items} room={texts} />
            </DrawingSvg>
            <CapsuleTexts {...{ setUp, layout, ghosts, room }} />
            <CalloutTexts items={items} room={texts} />
          </div>
        </div>
      </div>
    </div>
  );
}

/** Machine above, capsule beside its parts: for a page higher than wide, where the levers still are the parts. */
export function UprightDrawing(props: {
  readonly setUp: DrawnSetUp;
  readonly drawing: MethodDrawing;
  readonly beside: ReactNode;
}): ReactNode {
  const { setUp, drawing, beside } = props;
  return (
    <>
      <MachineDrawing {...{ setUp, drawing }} />
      <div className="drawing-split">
        <CapsuleDrawing setUp={setUp} />
        <div className="drawing">
          <AfterTheMove setUp={setUp} Shown={drawing.Parts} />
          {beside}
        </div>
      </div>
    </>
  );
}

/** The machine's section by itself, to be scrolled sideways on a narrow page. */
export function MachineDrawing(props: { readonly setUp: DrawnSetUp; readonly drawing: MethodDrawing }): ReactNode {
  const { setUp, drawing } = props;
  const { Section, Levers } = drawing;
  const section = drawing.room(setUp);
  const room = { ruler_mm: 0, axis_mm: 0, callouts_mm: section.width_mm, highest_mm: section.face_mm, capsule_mm: 0 };
  return (
    <div className="drawing" style={scaleOf(room)}>
      <div
        className={setUp.move ? 'drawing-sheet drawing-machine drawing-levers' : 'drawing-sheet drawing-machine'}
        tabIndex={0}
        role="group"
        aria-label={FILL_WORDS.machine}
      >
        <div className="drawing-stage">
          <div className="drawing-origin">
            <DrawingSvg width_mm={section.width_mm} label={FILL_WORDS.machine}>
              <Section setUp={setUp} />
            </DrawingSvg>
            <Levers setUp={setUp} />
          </div>
        </div>
      </div>
    </div>
  );
}
