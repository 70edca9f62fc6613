import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decisionZones, type DecisionEdges } from './decision-zones.ts';

const told = (edges: DecisionEdges): readonly string[] =>
  decisionZones(edges).map(({ decision, from_mg, to_mg }) => `${decision} ${from_mg}-${to_mg}`);
const axis = { from_mg: 350, to_mg: 500 };

// Expected by the rule of the setting sheet: outside the first numbers stop; inside turn towards the mean limits; between them
// leave the machine alone.
describe('decisionZones', () => {
  test('golden: a wide forecast around the limits has five zones', () => {
    expect(told({ ...axis, low_mg: 380, high_mg: 475, meanLow_mg: 417, meanHigh_mg: 443 })).toEqual([
      'stop 350-380',
      'deeper 380-417',
      'leave-alone 417-443',
      'higher 443-475',
      'stop 475-500',
    ]);
  });
  test('golden: a narrow forecast: outside of it stop, also between the limits', () => {
    expect(told({ ...axis, low_mg: 425, high_mg: 435, meanLow_mg: 417, meanHigh_mg: 443 })).toEqual([
      'stop 350-425',
      'leave-alone 425-435',
      'stop 435-500',
    ]);
  });
  test('golden: a setting that does not aim at the target: nowhere is the machine left alone', () => {
    expect(told({ ...axis, low_mg: 360, high_mg: 400, meanLow_mg: 417, meanHigh_mg: 443 })).toEqual([
      'stop 350-360',
      'deeper 360-400',
      'stop 400-500',
    ]);
  });
  test('refuses: a forecast that is not a number: stop everywhere', () => {
    expect(told({ ...axis, low_mg: NaN, high_mg: NaN, meanLow_mg: 417, meanHigh_mg: 443 })).toEqual(['stop 350-500']);
  });
  test('property: zones cover the axis without gap, and neighbours differ', () => {
    const pair = fc.tuple(fc.integer({ min: 300, max: 550 }), fc.integer({ min: 300, max: 550 }));
    fc.assert(
      fc.property(pair, pair, (forecast, mean) => {
        const zones = decisionZones({
          ...axis,
          ...{ low_mg: Math.min(...forecast), high_mg: Math.max(...forecast) },
          ...{ meanLow_mg: Math.min(...mean), meanHigh_mg: Math.max(...mean) },
        });
        expect(zones[0]?.from_mg).toBe(350);
        expect(zones.at(-1)?.to_mg).toBe(500);
        zones.slice(1).forEach((zone, i) => {
          expect(zone.from_mg).toBe(zones[i]?.to_mg);
          expect(zone.decision).not.toBe(zones[i]?.decision);
        });
      }),
      { seed: 1 },
    );
  });
});
