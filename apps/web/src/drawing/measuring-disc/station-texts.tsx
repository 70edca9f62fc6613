import { memo, type ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { atMm, inMm } from '../at-mm.ts';
import { AttentionMark } from '../attention-mark.tsx';
import { NumberButton } from '../number-button.tsx';
import type { CarryOut } from './lever-move.ts';

export interface StepKeysProps {
  readonly station: number;
  readonly axis_mm: number;
  readonly width_mm: number;
  readonly height_mm: number;
  readonly gain: string;
  readonly gainRange: string;
  readonly isPending: boolean;
  readonly carryOut: CarryOut | undefined;
}

/** One step up, one step down, and what a step does to the mass. */
export const StepKeys = memo(function StepKeys(props: StepKeysProps): ReactNode {
  const { station, axis_mm, width_mm, height_mm, gain, gainRange, isPending, carryOut } = props;
  const key = (count: 1 | -1): ReactNode =>
    carryOut === undefined ? null : (
      <button
        type="button"
        className="disc-key"
        tabIndex={-1}
        aria-label={count < 0 ? FILL_WORDS.higher(station) : FILL_WORDS.deeper(station)}
        onClick={() => {
          carryOut({ kind: 'steps', count }, 'settled');
        }}
      >
        <svg viewBox="0 0 14 9" aria-hidden="true">
          <path d={count < 0 ? 'M1 8l6-6.5L13 8' : 'M1 1l6 6.5L13 1'} />
        </svg>
      </button>
    );
  return (
    <div className="disc-keys" style={{ left: inMm(axis_mm), width: inMm(width_mm), top: inMm(-height_mm - 1.1) }}>
      {key(-1)}
      <div className={isPending ? 'disc-gain quiet' : 'disc-gain'}>
        {gain === '' ? null : (
          <>
            <NumberButton number={`gain:${station}`}>{gain}</NumberButton>
            {gainRange === '' ? null : <span className="quiet">{gainRange}</span>}
            <span className="quiet">{FILL_WORDS.perStep}</span>
          </>
        )}
      </div>
      {key(1)}
    </div>
  );
});

export interface StationOutcomeProps {
  readonly station: number;
  readonly bore_mm: number;
  readonly width_mm: number;
  readonly mass: string;
  readonly added: string;
  readonly was: string | undefined;
  readonly state: string;
  /** Neither stop nor flush: the spring rules. */
  readonly isYielding: boolean;
  readonly isFlush: boolean;
  /** Outside the validated range. */
  readonly isOutside: boolean;
  /** Force as a share of the bar, and where the spring begins to yield. */
  readonly force_frac: number;
  readonly preload_frac: number;
}

/** What a station leaves in the bore: mass, gain, force against the preload, and what the pin does. */
export const StationOutcome = memo(function StationOutcome(props: StationOutcomeProps): ReactNode {
  const { station, bore_mm, width_mm, mass, added, was, state, isYielding, isFlush } = props;
  return (
    <div className="disc-outcome" style={{ ...atMm({ x_mm: bore_mm, y_mm: 0 }), width: inMm(width_mm) }}>
      <div>
        <NumberButton number={`mass:${station}`} className="disc-mass">
          {mass}
        </NumberButton>{' '}
        <span className="quiet">{was === undefined ? added : FILL_WORDS.was(was)}</span>
      </div>
      {isFlush ? (
        <span className="disc-idle quiet">{FILL_WORDS.levels}</span>
      ) : (
        <>
          <svg className="disc-bar" viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
            <path className="disc-bar-track" d="M0 5H100" />
            <path
              className={isYielding ? 'disc-bar-force disc-bar-yields' : 'disc-bar-force'}
              d={`M0 5H${(100 * props.force_frac).toFixed(1)}`}
            />
            <path className="disc-bar-preload" d={`M${(100 * props.preload_frac).toFixed(1)} 0V10`} />
          </svg>
          <NumberButton number={`force:${station}`} className={isYielding ? 'attention' : ''}>
            {isYielding ? <AttentionMark /> : null}
            {isYielding ? ' ' : null}
            {state}
          </NumberButton>
        </>
      )}
      {props.isOutside ? (
        <div className="attention">
          <AttentionMark /> {FILL_WORDS.toBeApproved}
        </div>
      ) : null}
    </div>
  );
});
