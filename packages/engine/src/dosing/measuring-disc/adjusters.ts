import { discHeight_mm, discsFor, springSets, type DiscPart, type Range_mm } from '#fillers';
import type { Adjuster, DosingContext, Settings } from '../dosing.ts';
import { DISC_SLOT, pinKey, SPRING_SLOT } from './keys.ts';
import { LEAST_PLUG_mm } from './run-of-values.ts';

/**
 * What a person can turn or swap on a filler with a measuring disc: the depth of every pin, the disc, the springs.
 *
 * @param context - filler and shell
 * @param settings - present depths; a pin at 0 is flush and idle
 * @returns pins in station order, then the disc and the spring set
 * @throws nothing
 * @source the filler's own data
 */
export function adjusters(context: DosingContext, settings: Settings): readonly Adjuster[] {
  const { filler, shell } = context;
  const mounted = discsFor(filler, shell.size).find(({ number }) => number === settings.parts[DISC_SLOT]);
  const reachable = reachableDepths(filler.pins.machineRange, mounted);
  const pins = filler.pins.scales.map(({ station, step_division, pitch_mm_per_division }): Adjuster => {
    const key = pinKey(station);
    return {
      kind: 'setting',
      key,
      machineRange: reachable,
      validatedRange: validatedDepths(context),
      step_mm: step_division * pitch_mm_per_division,
      isIdle: settings.values[key] === 0,
    };
  });
  const stock = (
    parts: readonly { number: string; mounted?: true }[],
  ): Extract<Adjuster, { kind: 'part' }>['inStock'] =>
    parts.map(({ number, mounted }) => ({ number, isMounted: mounted ?? false }));
  return [
    ...pins,
    { kind: 'part', slot: DISC_SLOT, inStock: stock(discsFor(filler, shell.size)) },
    { kind: 'part', slot: SPRING_SLOT, inStock: stock(springSets(filler)) },
  ];
}

/** A pin never reaches the base of the disc, whatever the machine allows. */
function reachableDepths(machine: Range_mm, disc: DiscPart | undefined): Range_mm {
  const base_mm = disc ? discHeight_mm(disc) - LEAST_PLUG_mm : Infinity;
  return { min_mm: machine.min_mm, max_mm: Math.min(machine.max_mm, base_mm) };
}

/**
 * The range of pin depths validated for this product: the filler's own, narrowed by the brief's.
 *
 * @param context - filler and the product's validated ranges (`pinDepth`)
 * @returns range of depths, mm
 * @throws nothing
 * @source the filler's and the brief's own data
 */
export function validatedDepths({ filler, validated }: DosingContext): Range_mm {
  const ranges = [filler.pins.machineRange, filler.pins.validatedRange, validated?.['pinDepth']].filter(
    (range) => range !== undefined,
  );
  return {
    min_mm: Math.max(...ranges.map((range) => range.min_mm)),
    max_mm: Math.min(...ranges.map((range) => range.max_mm)),
  };
}
