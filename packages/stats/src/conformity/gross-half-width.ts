import { requireWithin, StatsError } from '#elementary';
import { bracketedRoot } from '#numerics';
import type { NetAndShell } from './gross-law.ts';
import { grossLaw } from './gross-law.ts';
import { grossMisclassification } from './gross-misclassification.ts';

/**
 * Half width of gross limits that let no more than a given share of bad units through. The limits lie around the middle of
 * the net limits plus the mean shell.
 *
 * @param input - laws of net and shell; net: both limits; falseAccept: share of all that may be bad and accepted, above 0
 * @returns half width, share of good units rejected, share accepted
 * @throws StatsError "not-finite", "out-of-range" (too large a share: all may be accepted, the share then stands under `below`)
 * @source design reference "Gross-weight control"; root of `grossMisclassification`
 * @validity half width to 1e-10 of the sd of the gross
 */
export function grossHalfWidth(
  input: NetAndShell & { readonly net: { readonly low: number; readonly high: number }; readonly falseAccept: number },
): { halfWidth: number; falseReject: number; grossAccepted: number } {
  const { net, falseAccept } = input;
  requireWithin({ falseAccept }, { above: 0, below: 1 });
  const { meanGross, sdGross } = grossLaw(input);
  const centre = 0.5 * (net.low + net.high) + input.meanShell;
  const at = (half: number) => grossMisclassification({ ...input, gross: { low: centre - half, high: centre + half } });
  const widest = Math.abs(centre - meanGross) + 10 * sdGross;
  const most = at(widest).falseAccept;
  if (falseAccept >= most) throw new StatsError('out-of-range', { falseAccept, below: most });
  const halfWidth = bracketedRoot((half) => (half === 0 ? -falseAccept : at(half).falseAccept - falseAccept), {
    ...{ from: 0, to: widest, tolerance: 1e-10 * sdGross },
  });
  const { falseReject, grossAccepted } = at(halfWidth);
  return { halfWidth, falseReject, grossAccepted };
}
