import { tareOfShells } from './tare-of-shells.ts';
import type { NetFromGross } from './weights-judgement.ts';
import type { WeightsInput } from './weights-input.ts';

/** Net masses in the order weighed, with the shell that was taken off each. */
export interface NetMasses {
  readonly net_mg: readonly number[];
  readonly shells_mg: readonly number[];
}

/** How net is found from what was weighed, before any spread is computed. */
export interface TareOfWeights {
  readonly way: NetFromGross['way'];
  readonly tare?: ReturnType<typeof tareOfShells>;
  /** Left out when no tare is known. */
  readonly masses?: NetMasses;
}

/**
 * Net masses: as given, gross less each capsule's own shell, or gross less the mean tare.
 *
 * @param input - capsules, shells weighed or the tare of a brief; own shells come before shells of the lot, these before a tare
 * @returns the way, the tare with its standard error, and the net masses where a tare is known
 * @throws nothing
 * @source net = gross - shell; a guessed tare has its whole spread as standard error (this project's choice)
 * @validity one shell lot; a mean tare blurs every single net mass by the spread of the shells
 */
export function netMasses(input: WeightsInput): TareOfWeights {
  const { capsules, basis } = input;
  const masses = capsules.map(({ mass_mg }) => mass_mg);
  if (basis === 'net') return { way: 'net-given', masses: { net_mg: masses, shells_mg: masses.map(() => 0) } };
  if (capsules.length > 0 && capsules.every(({ shell_mg }) => shell_mg !== undefined)) {
    const shells_mg = capsules.map(({ shell_mg = NaN }) => shell_mg);
    return { way: 'own-shell', tare: tareOfShells(shells_mg), masses: lessShells(masses, shells_mg) };
  }
  const tare = tareOf(input);
  if (!tare) return { way: 'no-tare' };
  return {
    way: 'mean-tare',
    tare,
    masses: lessShells(
      masses,
      masses.map(() => tare.mean_mg),
    ),
  };
}

function lessShells(masses_mg: readonly number[], shells_mg: readonly number[]): NetMasses {
  return { net_mg: masses_mg.map((mass_mg, i) => mass_mg - shells_mg[i]!), shells_mg };
}

function tareOf({ shells_mg = [], tare }: WeightsInput): TareOfWeights['tare'] {
  if (shells_mg.length > 1) return tareOfShells(shells_mg);
  if (!tare) return undefined;
  const { mean_mg, sd_mg, shellCount, standardError_mg = sd_mg } = tare;
  return { mean_mg, sd_mg, shellCount, standardError_mg };
}
