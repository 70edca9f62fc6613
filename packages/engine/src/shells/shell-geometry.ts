import { requireWithin } from '#catalogue';
import { bodyVolume_mm3 } from './body-volume.ts';
import { capHeadroom } from './cap-headroom.ts';
import type { InUnitOfKey } from './figure.ts';
import { innerRadius_mm } from './inner-radius.ts';
import type { ShellRecord } from './shell-record.ts';
import type { ShellInside } from './slug-between-domes.ts';

/** The inside of a locked shell with its volumes. */
export interface KnownGeometry extends ShellInside {
  readonly kind: 'known';
  readonly size: string;
  readonly closedLength_mm: number;
  /** Cylinder on a hemisphere, up to the rim: decides whether a slug fits. */
  readonly bodyVolume_mm3: number;
  /** As printed or measured: struck levels and fill percentages use this one. */
  readonly chartVolume_mm3: number;
}

export type ShellGeometry =
  KnownGeometry | { readonly kind: 'cannot-tell'; readonly size: string; readonly missing: readonly string[] };

const NEEDED = [
  'bodyVolume_mm3',
  'bodyLength_mm',
  'closedLength_mm',
  'bodyOuterDiameter_mm',
  'capOuterDiameter_mm',
  'bodyDoubleWall_mm',
  'capDoubleWall_mm',
] as const;

/**
 * Inside dimensions of a locked shell from its record, at the middle value of every figure.
 *
 * @param record - a size of the table or the user's own measured shell
 * @returns the geometry, or `cannot-tell` with the keys of the figures that are missing
 * @throws DomainError "not-a-number", "not-positive", "out-of-range" (figures that contradict each other)
 * @source geometry
 * @validity hemispherical ends; the spread of the figures is not carried on
 * @example shellGeometry({ size: 'own' }).kind // 'cannot-tell'
 */
export function shellGeometry(record: ShellRecord): ShellGeometry {
  const { size } = record;
  const missing = NEEDED.filter((key) => record[key] === undefined);
  if (missing.length > 0) return { kind: 'cannot-tell', size, missing };
  const value = (key: (typeof NEEDED)[number]): InUnitOfKey => record[key]?.value ?? NaN;
  const body = {
    bodyLength_mm: value('bodyLength_mm'),
    bodyOuterDiameter_mm: value('bodyOuterDiameter_mm'),
    bodyDoubleWall_mm: value('bodyDoubleWall_mm'),
  };
  const cap = { capOuterDiameter_mm: value('capOuterDiameter_mm'), capDoubleWall_mm: value('capDoubleWall_mm') };
  const closedLength_mm = value('closedLength_mm');
  const chartVolume_mm3 = value('bodyVolume_mm3');
  requireWithin({ chartVolume_mm3 }, { above: 0 });
  return {
    kind: 'known',
    size,
    bodyInnerRadius_mm: innerRadius_mm({
      outerDiameter_mm: body.bodyOuterDiameter_mm,
      doubleWall_mm: body.bodyDoubleWall_mm,
    }),
    capInnerRadius_mm: innerRadius_mm({
      outerDiameter_mm: cap.capOuterDiameter_mm,
      doubleWall_mm: cap.capDoubleWall_mm,
    }),
    bodyWall_mm: body.bodyDoubleWall_mm / 2,
    bodyLength_mm: body.bodyLength_mm,
    capHeadroom_mm: capHeadroom({ ...cap, closedLength_mm, bodyLength_mm: body.bodyLength_mm }).headroom_mm,
    closedLength_mm,
    bodyVolume_mm3: bodyVolume_mm3(body),
    chartVolume_mm3,
  };
}
