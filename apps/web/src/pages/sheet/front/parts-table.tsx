import type { SheetLine } from '@fillwright/engine/dosing';
import { SHEET_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import type { ReactNode } from 'react';
import { Blank, Box } from '../page-parts.tsx';
import type { SheetFacts } from '../sheet-facts.ts';

/** Parts by number, counted out and in. */
export function PartsTable({ facts }: { readonly facts: SheetFacts }): ReactNode {
  const { partColumns, partNames, partChecks, mounted, toFit } = SHEET_WORDS;
  const parts = facts.details.sheet.filter(({ part }) => part !== undefined);
  return (
    <table className="sheet-table">
      <thead>
        <tr>
          <th scope="col">{partColumns.part}</th>
          <th scope="col">{partColumns.number}</th>
          <th scope="col">{partColumns.size}</th>
          <th scope="col" className="sheet-figure">
            {partColumns.count}
          </th>
          <th scope="col">{partColumns.out}</th>
          <th scope="col">{partColumns.in}</th>
          <th scope="col">{partColumns.clean}</th>
          <th scope="col">{partColumns.check}</th>
        </tr>
      </thead>
      <tbody>
        {parts.map((line) => (
          <tr key={line.adjuster}>
            <th scope="row">{partNames[line.adjuster] ?? line.adjuster}</th>
            <td>
              <strong>{line.part}</strong>, {line.isMounted ? mounted : toFit}
            </td>
            <td>{sizeText(line)}</td>
            <td className="sheet-figure">{countOf(facts, line)}</td>
            {['out', 'in', 'clean'].map((column) => (
              <td key={column}>
                <Box />
              </td>
            ))}
            <td>
              {partChecks[line.adjuster]}{' '}
              {line.adjuster === 'disc' ? FOUR.map((point) => <Blank key={point} width_mm={6.5} />) : <Box />}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

const FOUR = [1, 2, 3, 4];

function sizeText({ size }: SheetLine): string {
  return Object.entries(size ?? {})
    .map(([key, value]) => quantityForReading(value, unitOf(key), { upToSignificantDigits: 5 }))
    .join(' × ');
}

/** `rate_N_per_mm` is in N/mm. */
function unitOf(key: string): string {
  return key.slice(key.indexOf('_') + 1).replace('_per_', '/');
}

/** One disc; a spring behind every pin of every column. */
function countOf({ place }: SheetFacts, { adjuster }: SheetLine): number {
  const { pins, disc } = place.context.filler;
  return adjuster === 'springs' ? pins.scales.length * disc.columnCount : 1;
}
