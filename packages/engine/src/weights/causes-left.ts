import type { Grid_mg } from './grid-fit.ts';
import type { CauseLeft } from './weights-judgement.ts';
import type { PossibleCause } from './weights-input.ts';

/** What any filler can have: one column, one group or one bore off by whatever fits. */
const ANY_CAUSES: readonly PossibleCause[] = [{ kind: 'column' }, { kind: 'group' }, { kind: 'bore' }];
/** A known change explains what is seen when it is within this share of it, and leaves less than half unexplained. */
const ALIKE_SHARE = 0.25;
const MOST_LEFT_frac = 0.5;

/**
 * What each cause would leave on the grid at the place where it fits best, ranked by what it leaves unexplained. Never a
 * probability: two causes with the same pattern leave the same.
 *
 * @param cells_mg - the revolution
 * @param causes - with the change they make where that is known (a pin that does not go down)
 * @returns one for each cause, the best first; `isLikely` for at most the first
 * @throws nothing
 * @source least squares of one indicator beside the mean; this project's choice
 */
export function causesLeft(cells_mg: Grid_mg, causes: readonly PossibleCause[] = []): readonly CauseLeft[] {
  const masses = cells_mg.flat().filter((mass_mg) => mass_mg !== null);
  const mean_mg = masses.reduce((sum, mass_mg) => sum + mass_mg, 0) / masses.length;
  const total = masses.reduce((sum, mass_mg) => sum + (mass_mg - mean_mg) * (mass_mg - mean_mg), 0);
  const fitted = [...causes, ...ANY_CAUSES].map((cause) => bestOf(cells_mg, { cause, total }));
  const ranked = fitted.sort((a, b) => a.residual_frac - b.residual_frac);
  // A named cause whose change fits comes before the bare pattern, which can only fit as well or better.
  const named = ranked.find(({ cause, residual_frac, fit_mg }) => {
    const { change_mg } = cause;
    if (change_mg === undefined || residual_frac >= MOST_LEFT_frac) return false;
    return Math.abs(fit_mg - change_mg) <= ALIKE_SHARE * Math.abs(change_mg);
  });
  const order = named ? [named, ...ranked.filter((each) => each !== named)] : ranked;
  return order.map(({ fit_mg: _fit, ...left }) => ({ ...left, isLikely: left.cause === named?.cause }));
}

type Fitted = Omit<CauseLeft, 'isLikely'> & { readonly fit_mg: number };
type Here = { readonly group?: number; readonly column?: number };

function bestOf(
  cells_mg: Grid_mg,
  { cause, total }: { readonly cause: PossibleCause; readonly total: number },
): Fitted {
  const places = placesOf(cells_mg, cause.kind);
  const fits = places.map((place) => fitAt(cells_mg, { cause, total, place }));
  return fits.reduce((best, fit) => (fit.residual_frac < best.residual_frac ? fit : best));
}

function placesOf(cells_mg: Grid_mg, kind: PossibleCause['kind']): readonly Here[] {
  const groups = cells_mg.map((_, g): Here => ({ group: g + 1 }));
  const columns = (cells_mg[0] ?? []).map((_, c): Here => ({ column: c + 1 }));
  if (kind === 'group') return groups;
  if (kind === 'column') return columns;
  return groups.flatMap((group) => columns.map((column) => ({ ...group, ...column })));
}

/** Mean of the others, and the change where the cause acts: known, or fitted. */
function fitAt(
  cells_mg: Grid_mg,
  { cause, total, place }: { readonly cause: PossibleCause; readonly total: number; readonly place: Here },
): Fitted {
  const acts = (g: number, c: number): boolean => (place.group ?? g + 1) === g + 1 && (place.column ?? c + 1) === c + 1;
  const [here, others] = [sums(), sums()];
  cells_mg.forEach((row, g) => {
    row.forEach((mass_mg, c) => {
      if (mass_mg !== null) add(acts(g, c) ? here : others, mass_mg);
    });
  });
  const fit_mg = here.sum / here.count - others.sum / others.count;
  const change_mg = cause.change_mg ?? fit_mg;
  // With a known change the mean is fitted to all cells after the change is taken out.
  const mean_mg = (here.sum - here.count * change_mg + others.sum) / (here.count + others.count);
  const left = squaresAbout(here, mean_mg + change_mg) + squaresAbout(others, mean_mg);
  const expected_mg = cells_mg.map((row, g) => row.map((_, c) => (acts(g, c) ? change_mg : 0)));
  return { cause, ...place, change_mg, expected_mg, residual_frac: total > 0 ? left / total : 1, fit_mg };
}

interface Sums {
  sum: number;
  squares: number;
  count: number;
}

function sums(): Sums {
  return { sum: 0, squares: 0, count: 0 };
}

function add(to: Sums, mass_mg: number): void {
  to.sum += mass_mg;
  to.squares += mass_mg * mass_mg;
  to.count += 1;
}

function squaresAbout({ sum, squares, count }: Sums, at_mg: number): number {
  return Math.max(squares - 2 * at_mg * sum + count * at_mg * at_mg, 0);
}
