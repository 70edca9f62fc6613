import { memo, useRef, useState, type KeyboardEvent, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { inMm } from '../at-mm.ts';
import type { CarryOut, LeverAct } from './lever-move.ts';
import { ReadingEntry } from './reading-entry.tsx';
import { usePinDrag } from './use-pin-drag.ts';

export interface PinLeverProps {
  readonly station: number;
  readonly bore_mm: number;
  readonly width_mm: number;
  /** Upper face of the disc above the base line. */
  readonly height_mm: number;
  readonly reached_mm: number;
  readonly depth_mm: number;
  readonly reading: string;
  readonly depthText: string;
  readonly was: string | undefined;
  readonly isOutside: boolean;
  readonly valueNow: number;
  readonly valueMin: number;
  readonly valueMax: number;
  readonly valueText: string;
  /** Left out: the pin is only shown. */
  readonly carryOut: CarryOut | undefined;
}

const KEYS: Readonly<Record<string, LeverAct>> = {
  ArrowUp: { kind: 'steps', count: -1 },
  ArrowDown: { kind: 'steps', count: 1 },
  PageUp: { kind: 'steps', count: -10 },
  PageDown: { kind: 'steps', count: 10 },
  Home: { kind: 'end', end: 'shallow' },
  End: { kind: 'end', end: 'deep' },
};
/** Part of the pin above the bed that can be taken hold of, and below its face. */
const GRIP = { above_px: 92, bed_mm: 1.1, below_mm: 0.4 };
/** A pin as its own lever: drag it anywhere, step it by keys, or type a reading of the machine's scale. */
export const PinLever = memo(function PinLever(props: PinLeverProps): ReactNode {
  const { station, bore_mm, width_mm, height_mm, reached_mm, carryOut } = props;
  const { was, isOutside, reading, depthText } = props;
  const [typed, setTyped] = useState<string>();
  const lever = useRef<HTMLDivElement>(null);
  const drag = usePinDrag({
    depth_mm: props.depth_mm,
    carryOut,
    onClick: () => {
      setTyped('');
    },
  });
  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>): void => {
    const step = KEYS[event.key];
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (step) carryOut?.(step, 'settled');
    else if (/^[\d.,]$/.test(event.key)) setTyped(event.key);
    else return;
    event.preventDefault();
  };
  const top = `calc(${inMm(-height_mm - GRIP.bed_mm)} - ${GRIP.above_px}px)`;
  const height = `calc(${inMm(GRIP.bed_mm + reached_mm + GRIP.below_mm)} + ${GRIP.above_px}px)`;
  return (
    <>
      <div
        ref={lever}
        className="disc-lever"
        role="slider"
        tabIndex={0}
        aria-orientation="vertical"
        aria-label={FILL_WORDS.pinLabel(station)}
        aria-valuenow={props.valueNow}
        aria-valuemin={props.valueMin}
        aria-valuemax={props.valueMax}
        aria-valuetext={props.valueText}
        aria-readonly={carryOut ? undefined : true}
        data-station={station}
        style={{ left: inMm(bore_mm), width: inMm(width_mm), top, height }}
        onKeyDown={carryOut ? onKeyDown : undefined}
        {...drag}
      />
      <PinHead {...{ station, bore_mm, width_mm, height_mm, was, isOutside, reading, depthText }}>
        {typed === undefined ? null : (
          <ReadingEntry
            label={FILL_WORDS.typeReading(station)}
            first={typed}
            onEntered={(text) => carryOut?.({ kind: 'typed', text }, 'settled') ?? true}
            onClosed={() => {
              setTyped(undefined);
              lever.current?.focus();
            }}
          />
        )}
      </PinHead>
    </>
  );
});

type PinHeadProps = Pick<
  PinLeverProps,
  'station' | 'bore_mm' | 'width_mm' | 'height_mm' | 'was' | 'isOutside' | 'reading' | 'depthText'
> & { readonly children: ReactNode };

/** Name, reading and depth of a pin, above the bed; `children` takes the place of the reading while one is typed. */
const PinHead = memo(function PinHead(props: PinHeadProps): ReactNode {
  const { station, bore_mm, width_mm, height_mm, was, isOutside, children } = props;
  return (
    <div
      className="disc-head"
      style={{ left: inMm(bore_mm), width: inMm(width_mm), top: inMm(-height_mm - GRIP.bed_mm) }}
    >
      <span className="quiet">{was === undefined ? FILL_WORDS.pin(station) : FILL_WORDS.was(was)}</span>
      {children ?? (
        <span className={isOutside ? 'disc-reading disc-outside' : 'disc-reading'} aria-hidden="true">
          {props.reading}
        </span>
      )}
      <span className="quiet" aria-hidden="true">
        {props.depthText}
      </span>
    </div>
  );
});
