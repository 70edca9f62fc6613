import type { ShellRecord } from './shell-record.ts';

/** From the largest to the smallest; `el` = elongated. */
export const SHELL_SIZE_NAMES = ['000', '00el', '00', '0el', '0', '1el', '1', '2el', '2', '3', '4', '5'] as const;

export type ShellSizeName = (typeof SHELL_SIZE_NAMES)[number];

const CHART = 'trade size charts, secondary copies, makers not recorded; common practice, no source';
const CHART_GUESSED_SPREAD = `${CHART}; spread not printed, guess`;
const PRINTED_WALL = 'middle of the range on a trade page, pharmacopoeial text not seen; common practice, no source';
const GUESS = 'guess; common practice, no source';

export interface ShellSizeRecord extends ShellRecord {
  readonly size: ShellSizeName;
}

/**
 * Sizes of hard two-piece shells. No pharmacopoeia standardises them: charts differ by up to 10 % of the volume and by
 * up to half a millimetre of the closed length. Volumes: greatest distance to a printed value as spread; masses,
 * lengths and diameters: usual tolerance.
 *
 * @source see the figures and SOURCES.md
 */
export const SHELL_SIZES: {
  readonly status: 'trade custom, replace by your own measurement';
  readonly records: readonly ShellSizeRecord[];
} = {
  status: 'trade custom, replace by your own measurement',
  records: [
    {
      size: '000',
      bodyVolume_mm3: { value: 1370, plusMinus: 10, source: CHART },
      gelatinMass_mg: { value: 160, plusMinus: 10, source: CHART },
      hpmcMass_mg: { value: 163, plusMinus: 13, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 22.2, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 12.95, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 26.1, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 9.55, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 9.91, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.015, source: GUESS },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.015, source: GUESS },
    },
    {
      size: '00el',
      bodyVolume_mm3: { value: 1010, plusMinus: 10, source: CHART },
      gelatinMass_mg: { value: 143, plusMinus: 10, source: CHART },
      hpmcMass_mg: { value: 152, plusMinus: 12, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 22.2, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 12.95, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 25.4, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 8.25, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 8.58, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.015, source: GUESS },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.015, source: GUESS },
    },
    {
      size: '00',
      bodyVolume_mm3: { value: 950, plusMinus: 50, source: CHART },
      gelatinMass_mg: { value: 123, plusMinus: 7, source: CHART },
      hpmcMass_mg: { value: 136, plusMinus: 11, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 20.2, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 11.8, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 23.5, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 8.2, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 8.54, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.015, source: GUESS },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.015, source: GUESS },
    },
    {
      size: '0el',
      bodyVolume_mm3: { value: 780, plusMinus: 80, source: CHART },
      gelatinMass_mg: { value: 107, plusMinus: 7, source: CHART },
      hpmcMass_mg: { value: 107, plusMinus: 9, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 20.19, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 11.68, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 23.5, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 7.36, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 7.65, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.015, source: GUESS },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.015, source: GUESS },
    },
    {
      size: '0',
      bodyVolume_mm3: { value: 680, plusMinus: 10, source: CHART },
      gelatinMass_mg: { value: 97, plusMinus: 6, source: CHART },
      hpmcMass_mg: { value: 105, plusMinus: 8, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 18.44, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 10.72, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 21.7, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 7.34, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 7.64, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.018, source: PRINTED_WALL },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.018, source: PRINTED_WALL },
    },
    {
      size: '1el',
      bodyVolume_mm3: { value: 540, plusMinus: 54, source: CHART_GUESSED_SPREAD },
      closedLength_mm: { value: 20.4, plusMinus: 0.3, source: CHART },
      capOuterDiameter_mm: { value: 6.93, plusMinus: 0.06, source: CHART },
    },
    {
      size: '1',
      bodyVolume_mm3: { value: 500, plusMinus: 20, source: CHART },
      gelatinMass_mg: { value: 76, plusMinus: 5, source: CHART },
      hpmcMass_mg: { value: 79, plusMinus: 6, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 16.61, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 9.78, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 19.4, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 6.63, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 6.91, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.015, source: GUESS },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.015, source: GUESS },
    },
    {
      size: '2el',
      bodyVolume_mm3: { value: 410, plusMinus: 41, source: CHART_GUESSED_SPREAD },
      closedLength_mm: { value: 19.3, plusMinus: 0.3, source: CHART },
      capOuterDiameter_mm: { value: 6.37, plusMinus: 0.06, source: CHART },
    },
    {
      size: '2',
      bodyVolume_mm3: { value: 370, plusMinus: 10, source: CHART },
      gelatinMass_mg: { value: 61, plusMinus: 4, source: CHART },
      hpmcMass_mg: { value: 63, plusMinus: 5, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 15.27, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 8.94, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 18, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 6.07, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 6.35, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.191, plusMinus: 0.018, source: PRINTED_WALL },
      capDoubleWall_mm: { value: 0.198, plusMinus: 0.018, source: PRINTED_WALL },
    },
    {
      size: '3',
      bodyVolume_mm3: { value: 300, plusMinus: 30, source: CHART },
      gelatinMass_mg: { value: 48, plusMinus: 3, source: CHART },
      hpmcMass_mg: { value: 50, plusMinus: 4, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 13.59, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 8.08, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 15.9, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 5.57, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 5.82, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.188, plusMinus: 0.018, source: PRINTED_WALL },
      capDoubleWall_mm: { value: 0.196, plusMinus: 0.018, source: PRINTED_WALL },
    },
    {
      size: '4',
      bodyVolume_mm3: { value: 210, plusMinus: 10, source: CHART },
      gelatinMass_mg: { value: 38, plusMinus: 3, source: CHART },
      hpmcMass_mg: { value: 40, plusMinus: 3, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 12.19, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 7.21, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 14.3, plusMinus: 0.3, source: CHART },
      bodyOuterDiameter_mm: { value: 5.05, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 5.32, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.015, source: GUESS },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.015, source: GUESS },
    },
    {
      size: '5',
      bodyVolume_mm3: { value: 130, plusMinus: 30, source: CHART },
      gelatinMass_mg: { value: 28, plusMinus: 2, source: CHART },
      hpmcMass_mg: { value: 30, plusMinus: 2.4, source: CHART_GUESSED_SPREAD },
      bodyLength_mm: { value: 9.3, plusMinus: 0.35, source: CHART },
      capLength_mm: { value: 6.2, plusMinus: 0.35, source: CHART },
      closedLength_mm: { value: 11.1, plusMinus: 0.4, source: CHART },
      bodyOuterDiameter_mm: { value: 4.68, plusMinus: 0.06, source: CHART },
      capOuterDiameter_mm: { value: 4.91, plusMinus: 0.06, source: CHART },
      bodyDoubleWall_mm: { value: 0.195, plusMinus: 0.015, source: GUESS },
      capDoubleWall_mm: { value: 0.205, plusMinus: 0.015, source: GUESS },
    },
  ],
};
