import type { WeightsRead } from '@fillwright/contract/weights';
import type { MassSummary, WeightsJudgement } from '@fillwright/engine/weights';
import { ACCEPT_WORDS } from '@fillwright/words/en';
import { fixed } from '../design-text/shown.ts';
import { columns } from '../layout.ts';

/**
 * Number, mean, spread and range, gross and net, and how net was found.
 *
 * @param read - the lines
 * @param judgement - the summaries
 * @returns the lines
 */
export function summaryText(
  read: WeightsRead,
  { gross, net, netFrom, outliers, capability }: WeightsJudgement,
): string {
  const struckCount = read.lines.filter(({ kind }) => kind === 'struck').length;
  const rows = [...(gross ? [row('gross', gross)] : []), ...(net ? [row('net', net)] : [])];
  const { tareMean_mg, tareSd_mg, shellCount = 0, tareStandardError_mg } = netFrom;
  const tare =
    tareMean_mg === undefined
      ? []
      : [
          `  ${ACCEPT_WORDS.tare({
            ...{ way: netFrom.way, mean: fixed(tareMean_mg), count: shellCount },
            ...(tareSd_mg === undefined ? {} : { sd: fixed(tareSd_mg, 2) }),
            ...(tareStandardError_mg === undefined ? {} : { error: fixed(tareStandardError_mg, 2) }),
          })}`,
        ];
  const spread =
    gross && netFrom.netSd_mg !== undefined && tareSd_mg !== undefined
      ? [`  ${ACCEPT_WORDS.netSpread(fixed(gross.sd.value_mg, 2), fixed(tareSd_mg, 2), fixed(netFrom.netSd_mg, 2))}`]
      : [];
  const far = outliers.map(({ index, line, net_mg, deviation_pct }) =>
    ACCEPT_WORDS.far({ place: line ?? index + 1, mass: fixed(net_mg), deviation: fixed(deviation_pct) }),
  );
  return [
    ACCEPT_WORDS.summary(read.lines.length, read.capsules.length, struckCount),
    rows.length > 0 ? columns([ACCEPT_WORDS.summaryColumns, ...rows], '  ') : `  ${ACCEPT_WORDS.oneWeight}`,
    ...tare,
    ...spread,
    ...far.map((text) => `  ${text}`),
    ...(capability
      ? [
          `  ${ACCEPT_WORDS.capability({
            ...{ pp: fixed(capability.pp_ratio, 2), ppk: fixed(capability.ppk_ratio, 2) },
            ...{ low: fixed(capability.ppkLow_ratio, 2), high: fixed(capability.ppkHigh_ratio, 2) },
            count: capability.capsuleCount,
          })}`,
        ]
      : []),
  ].join('\n');
}

function row(name: 'gross' | 'net', { capsuleCount, mean, sd, rsd, lowest_mg, highest_mg }: MassSummary): string[] {
  return [
    ...[name, String(capsuleCount), fixed(mean.value_mg), `${fixed(mean.low_mg)} to ${fixed(mean.high_mg)}`],
    ...[
      fixed(sd.value_mg, 2),
      `${fixed(rsd.value_pct, 2)} %`,
      `${fixed(rsd.low_pct, 2)} to ${fixed(rsd.high_pct, 2)} %`,
    ],
    ...[fixed(lowest_mg), fixed(highest_mg)],
  ];
}
