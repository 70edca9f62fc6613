import { memo, type ReactNode } from 'react';
import { discsFor } from '@fillwright/engine/fillers';
import { rounded as r } from '../at-mm.ts';
import type { DrawnSetUp } from '../method-drawing.ts';
import { powderShade } from '../powder-shade.ts';
import { discRows } from './disc-rows.ts';
import { discSetUp } from './lever.ts';
import { CUT_mm, stationLayout } from './station-layout.ts';
import { StationSection } from './station-section.tsx';
import './measuring-disc.css';

/** How far the bed of powder is drawn above the disc, and the base plate below it. */
const BED_mm = 1;
const PLATE_mm = 0.35;
/** From the left end of the disc to the list of discs: the leader lines of the list lie here. */
const FAN_mm = { from: -1.9, bend: -0.6 };

/** Bed, disc, base plate and every station in half section, mm from the left end of the base plate. */
export function DiscSection({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const { place, candidate, before } = setUp;
  const { prediction, settings } = candidate;
  const { stations } = prediction;
  const found = discSetUp(place, { settings, stations });
  if (!found) return null;
  const { height_mm, bore_mm, levers } = found;
  const { places } = stationLayout({ stationCount: stations.length, bore_mm });
  const powder = place.context.material;
  return (
    <g className="disc">
      <DiscBody stationCount={stations.length} bore_mm={bore_mm} height_mm={height_mm} feed={feedShade(setUp)} />
      {stations.map((trace, i) => {
        const at = places[i];
        const lever = levers[i];
        if (!at || !lever) return null;
        const { depth_mm } = lever;
        const old = before?.prediction.stations[i];
        return (
          <StationSection
            key={trace.station}
            bore_mm={at.bore_mm}
            axis_mm={at.axis_mm}
            height_mm={height_mm}
            set_mm={depth_mm}
            reached_mm={trace.reached_mm}
            isYielding={trace.regime === 'on-spring' || trace.regime === 'limited'}
            shade={powderShade(powder, trace.density_g_per_mL)}
            lever={lever}
            before_mm={old && old.set_mm !== depth_mm ? old.set_mm : undefined}
          />
        );
      })}
      <DiscFan place={place} chosen={settings.parts['disc']} />
    </g>
  );
}

function feedShade({ place }: DrawnSetUp): string {
  const { material } = place.context;
  return powderShade(material, material.feedDensity_g_per_mL.mean);
}

interface DiscBodyProps {
  readonly stationCount: number;
  readonly bore_mm: number;
  readonly height_mm: number;
  readonly feed: string;
}

/** Everything of the disc that no lever moves. */
const DiscBody = memo(function DiscBody({ stationCount, bore_mm, height_mm, feed }: DiscBodyProps): ReactNode {
  const { places, width_mm } = stationLayout({ stationCount, bore_mm });
  const cuts = [0, ...places.map(({ end_mm }) => end_mm - CUT_mm)];
  const ends = [...places.map(({ bore_mm: left_mm }) => left_mm), width_mm];
  return (
    <>
      <path className="disc-bed" style={{ fill: feed }} d={bedPath({ width_mm, height_mm })} />
      <rect className="disc-metal" x="0" y={r(-height_mm)} width={r(width_mm)} height={r(height_mm)} />
      {cuts.map((from_mm, i) => (
        <rect
          key={from_mm}
          className="drawing-hatch"
          x={r(from_mm)}
          y={r(-height_mm)}
          width={r((ends[i] ?? from_mm) - from_mm)}
          height={r(height_mm)}
        />
      ))}
      <path className="disc-outline" d={`M0 0V${r(-height_mm)}H${r(width_mm)}V0`} />
      <rect className="drawing-hatch" x="-0.35" y="0" width={r(width_mm + 0.7)} height={PLATE_mm} />
      <path className="drawing-edge" d={`M-0.35 0H${r(width_mm + 0.35)}`} />
    </>
  );
});

/** The bed is broken off at its top by a wave. */
function bedPath({ width_mm, height_mm }: { readonly width_mm: number; readonly height_mm: number }): string {
  const waves = Math.round(width_mm / 1.4);
  const half = width_mm / waves / 2;
  const wave = `q${r(half / 2)} -0.22 ${r(half)} 0t${r(half)} 0`;
  return `M0 ${r(-height_mm - BED_mm)}${wave.repeat(waves)}V${r(-height_mm)}H0Z`;
}

/** Leader lines from the rows of the list to the faces the discs would bring. */
const DiscFan = memo(function DiscFan(props: {
  readonly place: DrawnSetUp['place'];
  readonly chosen: string | undefined;
}): ReactNode {
  const { place, chosen } = props;
  const { filler, shell } = place.context;
  const rows = discRows(discsFor(filler, shell.size));
  return (
    <g className="disc-fan">
      {rows.map(({ disc, height_mm, at_mm }) => (
        <path
          key={disc.number}
          className={disc.number === chosen ? 'drawing-edge' : 'drawing-lead'}
          d={`M${FAN_mm.from} ${r(-at_mm)}L${FAN_mm.bend} ${r(-height_mm)}H0`}
        />
      ))}
    </g>
  );
});
