import { useId, useMemo, type ReactNode } from 'react';
import { valuesAtMeans, type Settings } from '@fillwright/engine/dosing';
import { discsFor, springSets } from '@fillwright/engine/fillers';
import { FILL_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { inMm } from '../at-mm.ts';
import { short, signed } from '../figures.ts';
import type { DrawnSetUp } from '../method-drawing.ts';
import { NumberButton } from '../number-button.tsx';
import { NumberGroup } from '../number-group.tsx';
import { discRows, ROW_mm } from './disc-rows.ts';
import { springOf_N } from './preload-of.ts';
import './disc-parts.css';

interface StockRow {
  readonly number: string;
  readonly size: string;
  readonly change: string;
  readonly label: string;
  readonly isMounted: boolean;
}

/** Discs and springs in stock as radio groups; the list of discs stands beside the faces they would bring. */
export function DiscParts({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const { filler, shell } = setUp.place.context;
  const rows = useMemo(() => discRows(discsFor(filler, shell.size)), [filler, shell.size]);
  const change = changeOf(setUp);
  const discs = rows.map(({ disc, height_mm }): StockRow => {
    const [height, number, isMounted] = [short(height_mm), disc.number, disc.mounted ?? false];
    const mg = change('disc', number);
    return {
      number,
      size: height,
      change: mg,
      isMounted,
      label: FILL_WORDS.discRow({ height, number, change: mg, isMounted }),
    };
  });
  const springs = springSets(filler).map((set): StockRow => {
    const [preload, isMounted] = [quantityForReading(springOf_N(set), 'N', { decimals: 0 }), set.mounted ?? false];
    const mg = change('springs', set.number);
    const { number, name } = set;
    return {
      number,
      size: preload,
      change: mg,
      isMounted,
      label: FILL_WORDS.springRow({ name, number, preload, change: mg, isMounted }),
    };
  });
  return (
    <>
      <div
        className="disc-list"
        style={{ marginTop: `calc(var(--above) - ${inMm((rows[0]?.at_mm ?? 0) + ROW_mm / 2)} - 26px)` }}
      >
        <Stock {...{ setUp, slot: 'disc', rows: discs, title: FILL_WORDS.discs }} />
      </div>
      <Stock {...{ setUp, slot: 'springs', rows: springs, title: FILL_WORDS.springs }} />
    </>
  );
}

/** What another part does to the mass at the same depths, at the means of everything that is uncertain. */
function changeOf({ place, candidate }: DrawnSetUp): (slot: string, number: string) => string {
  const { method, context } = place;
  const { settings, prediction } = candidate;
  return (slot, number) => {
    if (settings.parts[slot] === number) return '';
    try {
      const swapped = method.withPart(context, settings, { slot, number, readingsKept: 'none' });
      const values = valuesAtMeans(method.parameters(context, swapped));
      return signed(method.evaluator(context, swapped)(values).mass_mg - prediction.mass_mg, 0);
    } catch {
      return '\u2013';
    }
  };
}

interface StockProps {
  readonly setUp: DrawnSetUp;
  readonly slot: string;
  readonly rows: readonly StockRow[];
  readonly title: string;
}

function Stock({ setUp, slot, rows, title }: StockProps): ReactNode {
  const name = useId();
  const { place, candidate, move } = setUp;
  const swapped = (number: string): Settings =>
    place.method.withPart(place.context, candidate.settings, { slot, number, readingsKept: 'none' });
  return (
    <fieldset className="disc-stock" role="radiogroup" data-slot={slot}>
      <legend>{title}</legend>
      <NumberGroup className="disc-rows">
        {rows.map((row) => (
          <div key={row.number} className="disc-row" style={{ height: inMm(ROW_mm) }}>
            <label className="disc-row-choice">
              <input
                type="radio"
                name={name}
                value={row.number}
                checked={row.number === candidate.settings.parts[slot]}
                disabled={move === undefined}
                aria-label={row.label}
                onChange={() => move?.(swapped(row.number), 'settled')}
              />
              <span className="disc-row-size">{row.size}</span>
              <span>{row.number}</span>
            </label>
            {row.change === '' ? (
              <span className="disc-row-change">{row.isMounted ? FILL_WORDS.isMounted : FILL_WORDS.isSet}</span>
            ) : (
              <NumberButton number={`part:${slot}:${row.number}`} className="disc-row-change">
                {row.change}
              </NumberButton>
            )}
          </div>
        ))}
      </NumberGroup>
    </fieldset>
  );
}
