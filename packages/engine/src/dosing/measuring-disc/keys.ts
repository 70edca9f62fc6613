/** Names of settings, parts and parameters of the measuring disc. */

export const DISC_SLOT = 'disc';
export const SPRING_SLOT = 'springs';

/**
 * Key of the depth of the pin of a station.
 *
 * @param station - 1 is the first
 * @returns for example `pin1Depth_mm`
 * @throws nothing
 * @source none: bookkeeping
 */
export const pinKey = (station: number): string => `pin${station}Depth_mm`;

/**
 * Key of what a pin's setting may be off.
 *
 * @param station - 1 is the first
 * @returns for example `pin1Offset_mm`
 * @throws nothing
 * @source none: bookkeeping
 */
export const offsetKey = (station: number): string => `pin${station}Offset_mm`;
