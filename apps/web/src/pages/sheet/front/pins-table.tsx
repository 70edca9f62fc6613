import type { SheetLine } from '@fillwright/engine/dosing';
import { readingOfDepth_division } from '@fillwright/engine/fillers';
import { FILL_WORDS, SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { NumberGroup, scaleText } from '../../../drawing/index.ts';
import { numbersInSentence, PageNumber } from '../../../numbers/index.ts';
import { Blank } from '../page-parts.tsx';
import { fixed, short, type SheetFacts } from '../sheet-facts.ts';

/** What is set at each pin: scale value and mm, the validated range on the same scale, what one step does. */
export function PinsTable({ facts }: { readonly facts: SheetFacts }): ReactNode {
  const { pinColumns } = SHEET_WORDS;
  const pins = facts.details.sheet.filter(({ station }) => station !== undefined);
  return (
    <NumberGroup as="table" className="sheet-table sheet-pins">
      <thead>
        <tr>
          <th scope="col">{pinColumns.pin}</th>
          {[pinColumns.scale, pinColumns.below, pinColumns.validated, pinColumns.step].map((title) => (
            <th key={title} scope="col" className="sheet-figure">
              {title}
            </th>
          ))}
          {[pinColumns.state, pinColumns.zero, pinColumns.asSet, pinColumns.checked].map((title) => (
            <th key={title} scope="col">
              {title}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {pins.map((line) => (
          <PinRow key={line.adjuster} facts={facts} line={line} />
        ))}
      </tbody>
    </NumberGroup>
  );
}

function PinRow({ facts, line }: { readonly facts: SheetFacts; readonly line: SheetLine }): ReactNode {
  const { station = NaN, depth_mm = NaN, reading_division = NaN, step_division = NaN } = line;
  const trace = facts.candidate.prediction.stations.find((one) => one.station === station);
  const scale = facts.place.context.filler.pins.scales.find((one) => one.station === station);
  const isFlush = depth_mm === 0;
  const depth = `${short(depth_mm)}\u202Fmm`;
  return (
    <tr>
      <th scope="row">{station}</th>
      <td className="sheet-figure sheet-reading">{scaleText(reading_division, step_division)}</td>
      <td className="sheet-figure">
        {isFlush ? SHEET_WORDS.flush : <PageNumber number={`scale:${station}`}>{depth}</PageNumber>}
      </td>
      <td className="sheet-figure">{isFlush ? SHEET_WORDS.flush : validatedText(facts, line)}</td>
      <td className="sheet-figure">{stepText(facts, line)}</td>
      <td>{trace ? FILL_WORDS.regimes[trace.regime] : ''}</td>
      <td>{scale?.zeroCheckedOn ?? <Blank width_mm={16} />}</td>
      <td>
        <Blank width_mm={15} />
      </td>
      <td>
        <Blank width_mm={15} />
      </td>
    </tr>
  );
}

/** The validated range in the words of the scale; a setting outside it says what that means. */
export function validatedText(
  facts: SheetFacts,
  { adjuster, station, step_division = NaN, depth_mm = NaN }: SheetLine,
): string {
  const found = facts.adjusters.find((one) => one.kind === 'setting' && one.key === adjuster);
  if (found?.kind !== 'setting') return '';
  const { min_mm, max_mm } = found.validatedRange;
  if (depth_mm < min_mm || depth_mm > max_mm) return SHEET_WORDS.notValidated;
  const ends = [min_mm, max_mm].map((end) => readingAt(facts, station, end)).sort((a, b) => a - b);
  return ends.map((end) => scaleText(end, step_division)).join('–');
}

function readingAt({ place, details }: SheetFacts, station: number | undefined, depth_mm: number): number {
  const axis = place.context.filler.pins;
  const scale = axis.scales.find((one) => one.station === station);
  const discHeight_mm = details.sheet.find(({ size }) => size?.['discHeight_mm'] !== undefined)?.size?.[
    'discHeight_mm'
  ];
  if (!scale || discHeight_mm === undefined) return NaN;
  return readingOfDepth_division({ axis, scale, discHeight_mm }, depth_mm);
}

function stepText({ details }: SheetFacts, { adjuster, station, step_division = NaN }: SheetLine): ReactNode {
  const gain = details.gains.settings.find(({ key }) => key === adjuster);
  if (!gain || station === undefined) return SHEET_WORDS.noGain;
  const text = `${fixed(gain.median_mg_per_step, 2)}\u202Fmg`;
  return numbersInSentence(({ mass }) => SHEET_WORDS.perStep({ step: short(step_division), mass }), {
    mass: { text, number: `gain:${station}` },
  });
}
