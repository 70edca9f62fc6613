import type { DosingContext, Prediction } from '../dosing.ts';
import type { Finding } from '../finding.ts';
import { validatedDepths } from './adjusters.ts';
import { DISC_SUITABILITY } from './accepts.ts';
import type { DiscRun } from './disc-run.ts';

/** Loose powder on top of the slug that the last refill may leave. @source common practice, no source */
const LOOSEST_REFILL_mm = 1;
/** Above this compressibility index the level of the bed counts. @source common practice; see `spread` */
const POOR_FLOW_ABOVE_pct = 25;
/** Force of shop guidance for a slug; research plugs go to 200 N. @source trade article, 30 to 75 N (seen); research 50 to 200 N (from memory) */
const STRONGEST_RESEARCHED_N = 200;

interface Seen extends Omit<Prediction, 'warnings'> {
  readonly run: DiscRun;
  readonly index_pct: number;
}

/**
 * What a practitioner should know about a prediction, as codes with numbers and the rule behind each.
 *
 * @param context - the material and the validated range
 * @param seen - the prediction without its warnings, the station model's input, and the compressibility index
 * @returns the warnings, in the order of the machine
 * @throws nothing
 * @source each rule names its own
 */
export function discWarnings(context: DosingContext, seen: Seen): readonly Finding[] {
  return [...stationWarnings(context, seen), ...slugWarnings(context, seen), ...flowWarnings(seen)];
}

function stationWarnings(context: DosingContext, { stations }: Seen): readonly Finding[] {
  const validated = validatedDepths(context);
  return stations.flatMap(({ station, regime, set_mm, reached_mm, force_N }) => {
    const numbers = { station, set_mm, reached_mm, ...(force_N === undefined ? {} : { force_N }) };
    const found: Finding[] = [];
    if (regime === 'on-spring' || regime === 'limited')
      found.push({ code: regime, numbers, rule: 'dosing.disc-stations' });
    if ((force_N ?? 0) > STRONGEST_RESEARCHED_N)
      found.push({
        code: 'force-beyond-record',
        numbers: { ...numbers, limit_N: STRONGEST_RESEARCHED_N },
        rule: 'tamp-force',
      });
    if (set_mm > validated.max_mm || set_mm < validated.min_mm)
      found.push({ code: 'outside-validated', numbers: { station, set_mm, ...validated }, rule: 'validated-range' });
    return found;
  });
}

function slugWarnings(context: DosingContext, seen: Seen): readonly Finding[] {
  const { stations, run, released_mm, longest_mm, width_mm, fit } = seen;
  const found: Finding[] = [];
  const springback_frac = context.material.axialSpringback_pct.mean / 100;
  const refilled = run.isRefilledAfterLastPin ? stations : stations.slice(0, -1);
  const last = [...refilled].reverse().find((station) => station.regime !== 'flush');
  if (last) {
    const loose_mm = last.reached_mm - springback_frac * (run.discHeight_mm - last.reached_mm);
    if (loose_mm > LOOSEST_REFILL_mm)
      found.push({
        code: 'loose-last-refill',
        numbers: { station: last.station, loose_mm, limit_mm: LOOSEST_REFILL_mm },
        rule: 'last-refill',
      });
  }
  if (fit !== 'rigid') found.push({ code: fit, numbers: { released_mm, longest_mm }, rule: 'shells.slug-fit' });
  const body_mm = 2 * context.shell.bodyInnerRadius_mm;
  if (width_mm >= body_mm)
    found.push({ code: 'slug-wider-than-body', numbers: { width_mm, body_mm }, rule: 'radial-springback' });
  return found;
}

function flowWarnings({ index_pct }: Seen): readonly Finding[] {
  if (index_pct > POOR_FLOW_ABOVE_pct)
    return [{ code: 'bed-level-counts', numbers: { index_pct, limit_pct: POOR_FLOW_ABOVE_pct }, rule: 'bed-level' }];
  if (index_pct < DISC_SUITABILITY.freest_pct)
    return [
      {
        code: 'leaks-under-disc',
        numbers: { index_pct, limit_pct: DISC_SUITABILITY.freest_pct },
        rule: 'disc-suitability',
      },
    ];
  return [];
}
