/** Names of settings, parts and parameters of the measuring disc. */

export const DISC_SLOT = 'disc';
export const SPRING_SLOT = 'springs';

/** Key of the depth of the pin of a station (1 is the first). @returns for example `pin1Depth_mm` */
export const pinKey = (station: number): string => `pin${station}Depth_mm`;

/** Key of what a pin's setting may be off. @returns for example `pin1Offset_mm` */
export const offsetKey = (station: number): string => `pin${station}Offset_mm`;
