import { useCallback, useLayoutEffect, useRef, useState, type ReactNode } from 'react';
import { atMm, inMm } from '../at-mm.ts';
import { AttentionMark } from '../attention-mark.tsx';
import type { DrawnSetUp } from '../method-drawing.ts';
import { NumberButton } from '../number-button.tsx';
import { NumberGroup } from '../number-group.tsx';
import { leverMove, type CarryOut, type LeverAct } from './lever-move.ts';
import { discSetUp, type DiscSetUp, type Lever } from './lever.ts';
import { PinLever } from './pin-lever.tsx';
import { ScaleNumbers } from './scale-numbers.tsx';
import { stationLayout, type StationPlace } from './station-layout.ts';
import { StationOutcome, StepKeys } from './station-texts.tsx';
import { stationView, type StationView } from './station-view.ts';
import './measuring-disc.css';

/** Carries an act out on the pin of a station; gives back why it was refused. */
type Act = (station: number, act: LeverAct, phase: 'moving' | 'settled') => string | undefined;

/** Texts and levers over the section: readings, step keys, densities, and what each station leaves. */
export function DiscLevers({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const { place, candidate } = setUp;
  const { prediction, settings } = candidate;
  const found = discSetUp(place, { settings, stations: prediction.stations });
  const act = useAct(setUp, found);
  if (!found) return null;
  const { places } = stationLayout({ stationCount: prediction.stations.length, bore_mm: found.bore_mm });
  const stations = found.levers.flatMap((lever, i) => {
    const at = places[i];
    const view = stationView(setUp, found, i);
    return at && view ? [{ at, lever, view, key: lever.station }] : [];
  });
  return (
    <>
      {stations.map(({ key, ...station }) => (
        <Station key={key} {...station} act={act} height_mm={found.height_mm} />
      ))}
      {stations.map(({ key, at: { bore_mm, end_mm }, view }) => (
        <StationOutcome key={key} {...view.outcome} bore_mm={bore_mm} width_mm={end_mm - bore_mm} />
      ))}
    </>
  );
}

interface StationProps {
  readonly at: StationPlace;
  readonly height_mm: number;
  readonly lever: Lever;
  readonly view: StationView;
  readonly act: Act | undefined;
}

function Station({ at, height_mm, lever, view, act }: StationProps): ReactNode {
  const { bore_mm, axis_mm, end_mm } = at;
  const { station } = lever;
  const [note, setNote] = useState<string>();
  const carry = useCallback<CarryOut>(
    (what, phase) => {
      const why = act?.(station, what, phase);
      setNote(why);
      return why === undefined;
    },
    [act, station],
  );
  const carryOut = act ? carry : undefined;
  const half_mm = axis_mm - bore_mm;
  const noteAt = { x_mm: bore_mm, y_mm: lever.depth_mm + 1.2 - height_mm };
  return (
    <NumberGroup>
      <PinLever {...view.pin} {...{ bore_mm, height_mm, carryOut }} width_mm={half_mm} />
      <StepKeys {...view.keys} {...{ axis_mm, height_mm, carryOut }} width_mm={end_mm - axis_mm} />
      <ScaleNumbers {...{ axis_mm, height_mm, lever }} />
      <span
        className="disc-density"
        style={{ ...atMm({ x_mm: bore_mm, y_mm: -0.45 * height_mm }), width: inMm(half_mm) }}
      >
        <NumberButton number={`density:${lever.station}`}>{view.density}</NumberButton>
        {view.unit === '' ? null : <span>{view.unit}</span>}
      </span>
      {note === undefined ? null : (
        <p className="disc-note" role="alert" style={atMm(noteAt)}>
          <AttentionMark /> {note}
        </p>
      )}
    </NumberGroup>
  );
}

/** Carries acts out on the newest set-up with one function that never changes, so that no pin renders for another. */
function useAct(setUp: DrawnSetUp, found: DiscSetUp | undefined): Act | undefined {
  const newest = useRef({ setUp, found });
  useLayoutEffect(() => {
    newest.current = { setUp, found };
  });
  const [act] = useState((): Act => (station, what, phase) => {
    const now = newest.current;
    const lever = now.found?.levers.find((one) => one.station === station);
    if (!lever) return undefined;
    const move = leverMove(lever, what);
    const go = (depth_mm: number): void => {
      const { settings } = now.setUp.candidate;
      now.setUp.move?.({ ...settings, values: { ...settings.values, [lever.key]: depth_mm } }, phase);
    };
    if (move.kind === 'to') {
      if (move.depth_mm !== lever.depth_mm || phase === 'settled') go(move.depth_mm);
      return undefined;
    }
    // A drag that is let go beyond the machine settles where the pin stands.
    if (what.kind === 'drag' && phase === 'settled') go(lever.depth_mm);
    return move.why;
  });
  return setUp.move ? act : undefined;
}
