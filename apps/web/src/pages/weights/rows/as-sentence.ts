/** @returns the reason as a sentence of its own */
export function asSentence(reason: string): string {
  return `${reason.slice(0, 1).toUpperCase()}${reason.slice(1)}.`;
}
