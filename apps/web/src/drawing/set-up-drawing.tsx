import { useMemo, type CSSProperties, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { inMm, rounded as r } from './at-mm.ts';
import { capsuleLayout, ghostShells } from './capsule/capsule-layout.ts';
import { CalloutLines, CalloutTexts, type CalloutRoom } from './capsule/callout-texts.tsx';
import { callouts } from './capsule/callouts.ts';
import { CapsuleSection } from './capsule/capsule-section.tsx';
import { CapsuleTexts } from './capsule/capsule-texts.tsx';
import { drawingRoom, type DrawingRoom } from './drawing-room.ts';
import type { DrawnSetUp, MethodDrawing } from './method-drawing.ts';
import { Ruler, RulerNumbers } from './ruler.tsx';
import './drawing.css';

/** Heights of the values beside the capsule, as shares of the way from its top to the base line. */
const CALLOUTS_AT = [0.08, 0.29, 0.47, 0.66, 0.9];

/** The machine's section and the capsule on one scale, projected into each other; the parts are the levers. */
export function SetUpDrawing(props: {
  readonly setUp: DrawnSetUp;
  readonly drawing: MethodDrawing;
  /** What stands left of the drawing under the parts. */
  readonly beside?: ReactNode;
  /** Capsule and machine apart: a phone. */
  readonly isSplit?: boolean;
}): ReactNode {
  const { setUp, drawing, beside } = props;
  const { input, place, candidate } = setUp;
  const { geometry, prediction, size } = candidate;
  const { Section, Levers, Parts } = drawing;
  const ghosts = useMemo(() => ghostShells(input, size), [input, size]);
  const { record } = place;
  const { bore_mm, released_mm } = prediction;
  const layout = useMemo(
    () => capsuleLayout({ geometry, bore_mm, released_mm }, record),
    [geometry, bore_mm, released_mm, record],
  );
  const section = drawing.room(setUp);
  const room = drawingRoom(section, { layout, ghosts });
  const items = callouts(layout, prediction);
  const calloutRoom = calloutRoomOf(room);
  return (
    <div className="drawing" style={scaleOf(room)}>
      <div className="drawing-sheet">
        <div className="drawing-parts">
          <Parts setUp={setUp} />
        </div>
        <div className="drawing-stage">
          <div className="drawing-origin">
            <Svg room={room} label={FILL_WORDS.drawing(size)}>
              <Section setUp={setUp} />
              <Ruler at_mm={room.ruler_mm} tip_mm={layout.tipBelow_mm} closed_mm={layout.shell.closed_mm} />
              <Projection section={section} room={room} slugRadius_mm={layout.slugRadius_mm} />
              <g transform={`translate(${r(room.axis_mm)} 0)`}>
                <CapsuleSection
                  {...{ layout, ghosts }}
                  profile={prediction.profile}
                  powder={place.context.material}
                  beforeTop_mm={topBefore_mm(setUp)}
                />
              </g>
              <CalloutLines items={items} room={calloutRoom} />
            </Svg>
            <Levers setUp={setUp} />
            <RulerNumbers at_mm={room.ruler_mm} tip_mm={layout.tipBelow_mm} closed_mm={layout.shell.closed_mm} />
            <CapsuleTexts {...{ setUp, layout, ghosts, room }} />
            <CalloutTexts items={items} room={calloutRoom} />
          </div>
        </div>
        <div className="drawing-beside">{beside}</div>
      </div>
    </div>
  );
}

function scaleOf({ width_mm, left_mm, highest_mm, capsule_mm }: DrawingRoom): CSSProperties {
  return {
    '--width': r(width_mm),
    '--left': r(left_mm),
    '--highest': r(highest_mm),
    '--capsule': r(capsule_mm),
  } as CSSProperties;
}

function calloutRoomOf({ axis_mm, callouts_mm, capsule_mm }: DrawingRoom): CalloutRoom {
  return { axis_mm, left_mm: callouts_mm, at_mm: CALLOUTS_AT.map((share) => -capsule_mm * (1 - share)) };
}

function topBefore_mm({ before, candidate }: DrawnSetUp): number | undefined {
  const top_mm = before?.prediction.released_mm;
  return top_mm === candidate.prediction.released_mm ? undefined : top_mm;
}

function Svg(props: { readonly room: DrawingRoom; readonly label: string; readonly children: ReactNode }): ReactNode {
  const width_mm = r(props.room.width_mm);
  return (
    <svg
      className="drawing-svg"
      role="img"
      aria-label={props.label}
      viewBox={`0 0 ${width_mm} 1`}
      style={{ width: inMm(width_mm), height: inMm(1) }}
    >
      <defs>
        <pattern
          id="drawing-hatch"
          width="0.27"
          height="0.27"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <rect width="0.27" height="0.27" className="drawing-hatch-ground" />
          <path d="M0 0V0.27" className="drawing-hatch-line" />
        </pattern>
      </defs>
      {props.children}
    </svg>
  );
}

/** Dotted lines carry the faces of the mounted part into the shell. */
function Projection(props: {
  readonly section: { readonly width_mm: number; readonly face_mm: number };
  readonly room: DrawingRoom;
  readonly slugRadius_mm: number;
}): ReactNode {
  const { section, room, slugRadius_mm } = props;
  const [from, left, right] = [
    r(section.width_mm + 0.1),
    r(room.axis_mm - slugRadius_mm),
    r(room.axis_mm + slugRadius_mm),
  ];
  const face = r(-section.face_mm);
  return (
    <path className="drawing-projection" d={`M${from} 0H${left}M${from} ${face}H${left}M${left} ${face}H${right}`} />
  );
}
