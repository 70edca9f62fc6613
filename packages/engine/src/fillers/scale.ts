import { DomainError } from '#catalogue';
import type { PinAxis, StationScale } from './filler.ts';

interface Mounted {
  readonly axis: PinAxis;
  readonly scale: StationScale;
  /** Measured height of the disc that is mounted now. */
  readonly discHeight_mm: number;
}

/**
 * Depth of a pin's face below the top face of the mounted disc, from a scale reading.
 *
 * depth = (H - H_zero) + sign x pitch x (reading - zero); the first term only where pins are referred to the base.
 *
 * @param mounted - axis, scale of the station, height of the mounted disc in mm
 * @param reading_division - what is read at the machine
 * @returns depth below the disc's top face, mm
 * @throws DomainError "scale-unknown" (referred to the base, but no disc height at the zero check)
 * @source geometry; this project's convention (depth is positive downwards)
 * @validity approached always from the same side
 */
export function depthOfReading_mm(mounted: Mounted, reading_division: number): number {
  const { scale } = mounted;
  const travel_mm = scale.deeperIs * scale.pitch_mm_per_division * (reading_division - scale.zeroReading_division);
  return discShift_mm(mounted) + travel_mm;
}

/**
 * Scale reading at which a pin's face stands at a depth below the top face of the mounted disc.
 *
 * @param mounted - axis, scale of the station, height of the mounted disc in mm
 * @param depth_mm - wanted depth below the disc's top face
 * @returns reading in divisions, not rounded to the step
 * @throws DomainError "scale-unknown" (referred to the base, but no disc height at the zero check)
 * @source inverse of `depthOfReading_mm`
 * @validity approached always from the same side
 */
export function readingOfDepth_division(mounted: Mounted, depth_mm: number): number {
  const { scale } = mounted;
  const travel_mm = depth_mm - discShift_mm(mounted);
  return scale.zeroReading_division + travel_mm / (scale.deeperIs * scale.pitch_mm_per_division);
}

function discShift_mm({ axis, scale, discHeight_mm }: Mounted): number {
  if (axis.referredTo === 'disc-top') return 0;
  if (axis.zeroDiscHeight_mm === undefined) throw new DomainError('scale-unknown', { station: scale.station });
  return discHeight_mm - axis.zeroDiscHeight_mm;
}
