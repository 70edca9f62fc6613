import { readFileSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import type { CheckCase } from '@fillwright/engine/catalogue';

/** A golden case believed wrong, with its evidence. */
export interface Dispute {
  readonly id: string;
  readonly why: string;
  readonly evidence: string;
}

const DISPUTED = createRequire(import.meta.url).resolve('@fillwright/engine/golden/disputed.json');

/**
 * The check cases that come with the program, file by file.
 *
 * @returns all cases
 * @throws an error of the file system when they cannot be read
 */
export function goldenCases(): CheckCase[] {
  const folder = dirname(DISPUTED);
  const files = readdirSync(folder).filter((name) => name.endsWith('.json') && join(folder, name) !== DISPUTED);
  return files.sort().flatMap((name) => {
    const file = JSON.parse(readFileSync(join(folder, name), 'utf8')) as CheckCase[] | { cases: CheckCase[] };
    return Array.isArray(file) ? file : file.cases;
  });
}

/**
 * The cases that are counted apart, by id.
 *
 * @returns dispute by case id
 * @throws an error of the file system when they cannot be read
 */
export function disputes(): ReadonlyMap<string, Dispute> {
  const list = JSON.parse(readFileSync(DISPUTED, 'utf8')) as Dispute[];
  return new Map(list.map((dispute) => [dispute.id, dispute]));
}
