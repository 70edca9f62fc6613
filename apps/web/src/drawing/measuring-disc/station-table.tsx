import type { ReactNode } from 'react';
import { FILL_WORDS } from '@fillwright/words/en';
import { fixed } from '../figures.ts';
import type { DrawnSetUp } from '../method-drawing.ts';
import { discSetUp } from './lever.ts';
import { stationView } from './station-view.ts';

const { tableColumns } = FILL_WORDS;

/** The section as a table: everything it shows, station by station. */
export function StationTable({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const { place, candidate } = setUp;
  const { prediction, settings } = candidate;
  const found = discSetUp(place, { settings, stations: prediction.stations });
  if (!found) return null;
  return (
    <table className="fill-table">
      <caption>{FILL_WORDS.tableCaption}</caption>
      <thead>
        <tr>
          {Object.entries(tableColumns).map(([key, title]) => (
            <th key={key} scope="col">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {prediction.stations.map(({ station, set_mm, reached_mm, density_g_per_mL, mass_mg }, i) => {
          const view = stationView(setUp, found, i);
          return (
            <tr key={station}>
              <th scope="row">{station}</th>
              <td>{view?.pin.reading}</td>
              <td>{fixed(set_mm, 1)}</td>
              <td>{fixed(reached_mm, 1)}</td>
              <td>{fixed(density_g_per_mL, 2)}</td>
              <td>{fixed(mass_mg, 0)}</td>
              <td>{view?.outcome.state}</td>
              <td>{[view?.keys.gain, view?.keys.gainRange].filter((text) => text !== '').join(', ')}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
