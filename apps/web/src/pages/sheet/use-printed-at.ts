import { useEffect, useState } from 'react';

/**
 * Local time with its offset, as a record wants it, at the moment of printing.
 *
 * @returns for example `2026-11-25 14:05 UTC+01:00`
 */
export function usePrintedAt(): string {
  const [at, setAt] = useState(() => stamp(new Date()));
  useEffect(() => {
    const renew = (): void => {
      setAt(stamp(new Date()));
    };
    window.addEventListener('beforeprint', renew);
    return () => {
      window.removeEventListener('beforeprint', renew);
    };
  }, []);
  return at;
}

/** @returns date, minute and offset of a moment as this computer's clock shows them */
export function stamp(moment: Date): string {
  const offset_min = -moment.getTimezoneOffset();
  const two = (value: number): string => String(value).padStart(2, '0');
  const size = Math.abs(offset_min);
  const offset = `${offset_min < 0 ? '−' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  const date = `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;
  return `${date} ${two(moment.getHours())}:${two(moment.getMinutes())} UTC${offset}`;
}
