import { readdirSync } from 'node:fs';

const FOLDER = new URL('sets/', import.meta.url);
const NAMES = readdirSync(FOLDER).filter((name) => name.endsWith('.mjs'));

/**
 * Which methods compute a case of a statistics set: by the set's name, which is that of a file in `sets` (hyphens for underscores), a function from the case
 * to a list of `{ part?, method, inputs, expected, tolerance? }`, empty for a case that no method computes. A case that speaks of
 * several methods becomes several check cases, told apart by `part`. Sets without a file are left out.
 */
export const SETS = new Map(
  await Promise.all(
    NAMES.map(async (name) => [name.slice(0, -4).replaceAll('-', '_'), (await import(new URL(name, FOLDER))).cases]),
  ),
);
