/**
 * The unit that a key carries after its first underscore, as the catalogue spells it.
 *
 * @param key - for example `bulkDensity_g_per_mL`
 * @returns for example `g/mL`; `1` for shares, ratios, counts and words
 */
export function unitOfKey(key: string): string {
  const suffix = /_(.+)$/.exec(key)?.[1] ?? '1';
  if (suffix === 'frac' || suffix === 'ratio' || suffix === '1') return '1';
  if (suffix === 'pct') return '%';
  return suffix.replace(/^per_/, '1_per_').replace('_per_', '/');
}
