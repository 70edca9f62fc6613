/**
 * An instant as local time with its offset: never a bare time of day.
 *
 * @param at - ISO 8601, with its zone
 * @param offset_min - minutes the local clock is ahead of UTC; left out: what this browser had at that instant
 * @returns for example `2026-11-25 17:02 UTC+01:00`; the text as it came when it is no date
 */
export function timeText(at: string, offset_min?: number): string {
  const instant = new Date(at);
  if (Number.isNaN(instant.getTime())) return at;
  const offset = offset_min ?? -instant.getTimezoneOffset();
  const [day = '', time = ''] = new Date(instant.getTime() + offset * 60_000).toISOString().split('T');
  const [hours, minutes] = [Math.floor(Math.abs(offset) / 60), Math.abs(offset) % 60];
  return `${day} ${time.slice(0, 5)} UTC${offset < 0 ? '\u2212' : '+'}${two(hours)}:${two(minutes)}`;
}

function two(value: number): string {
  return String(value).padStart(2, '0');
}
