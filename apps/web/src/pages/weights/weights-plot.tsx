import type { WeightsJudgement, WheelOfRevolution } from '@fillwright/engine/weights';
import { WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { ComponentProps, ReactNode } from 'react';
import { DotPlot } from '../../charts/index.ts';
import { oddIndices } from './odd-indices.ts';

interface WeightsPlotProps {
  readonly judgement: WeightsJudgement;
  readonly wheel: WheelOfRevolution | undefined;
  readonly width_px: number;
  readonly height_px: number;
}

/** The net masses against the limits; undefined net masses are not drawn. */
export function WeightsPlot({ judgement, wheel, width_px, height_px }: WeightsPlotProps): ReactNode {
  const { net_mg, net, histogram, limits, netFrom, revolution } = judgement;
  if (!net_mg || !histogram) return null;
  const odd = oddIndices(judgement, wheel);
  const words = WEIGHTS_PAGE_WORDS;
  // One weight has no summary.
  const [only_mg = NaN] = net_mg;
  const { mean, lowest_mg, highest_mg } = net ?? {
    mean: { value_mg: only_mg },
    lowest_mg: only_mg,
    highest_mg: only_mg,
  };
  const mean_mg = mean.value_mg;
  const isWithTare = netFrom.way === 'mean-tare';
  return (
    <DotPlot
      {...{ width_px, height_px, mean_mg, odd }}
      masses_mg={net_mg}
      bars={histogram}
      limits={limitsOf(limits)}
      tare_mg={isWithTare ? netFrom.tareMean_mg : undefined}
      groupSize={revolution ? wheel?.columnCount : undefined}
      words={{
        ...words.plot,
        mass: (mass_mg) => words.mg(mass_mg),
        label: words.plot.label({
          ...{ count: net_mg.length, mean: words.mg(mean_mg), odd: odd.size },
          ...{ low: words.mg(lowest_mg), high: words.mg(highest_mg) },
        }),
      }}
    />
  );
}

function limitsOf(limits: WeightsJudgement['limits']): ComponentProps<typeof DotPlot>['limits'] {
  const [mean, single] = (['mean', 'single'] as const).map((what) => limits.find((limit) => limit.what === what));
  if (!mean || !single) return undefined;
  return {
    ...{ singleLow_mg: single.netLow_mg, singleHigh_mg: single.netHigh_mg },
    ...{ meanLow_mg: mean.netLow_mg, meanHigh_mg: mean.netHigh_mg },
  };
}
