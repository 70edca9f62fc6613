/** Wall and CPU time of one call, all threads of this process, ms. */
export function timeOf(run) {
  const before = process.cpuUsage();
  const begun = performance.now();
  run();
  const wall_ms = performance.now() - begun;
  const { user, system } = process.cpuUsage(before);
  return { wall_ms, cpu_ms: (user + system) / 1000 };
}

/** Medians of wall and CPU time over a number of calls, ms. */
export function medianTime({ count, run }) {
  const times = Array.from({ length: count }, () => timeOf(run));
  const of = (key) => median(times.map((time) => time[key]));
  return { wall_ms: of('wall_ms'), cpu_ms: of('cpu_ms') };
}

/** Median; of an even number of values the mean of the middle two. */
export function median(values) {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
}
