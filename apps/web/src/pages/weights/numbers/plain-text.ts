import type { Said } from './said.ts';

/** @returns the sentence without anything to open, as on paper */
export function plainText(pieces: Said): string {
  return pieces.map((piece) => (typeof piece === 'string' ? piece : piece.text)).join('');
}
