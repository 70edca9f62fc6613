import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { createInterface } from 'node:readline';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import { ENGINES, startEngine, type Engine } from '../../fixtures/engine.ts';
import type { StoreSettings } from './open-store.ts';

const WRITER = fileURLToPath(new URL('../../fixtures/append-versions.mjs', import.meta.url));
const KILLS = 50;

interface Confirmed {
  readonly id: string;
  readonly version: number;
}
interface Left {
  readonly verdict: string;
  readonly newest: Readonly<Record<string, number>>;
}

/** Runs the writer until a random moment after its first confirmation; returns what it found and what it confirmed. */
async function killedRun(
  settings: StoreSettings,
  kill: () => Promise<void>,
): Promise<{ left: Left; confirmed: Map<string, number> }> {
  const child = spawn(process.execPath, [WRITER, JSON.stringify(settings)], {
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const exit = once(child, 'close');
  let said = '';
  child.stderr.on('data', (text) => (said += String(text)));
  const confirmed = new Map<string, number>();
  let left: Left | undefined;
  let killing: Promise<void> | undefined;
  for await (const line of createInterface({ input: child.stdout })) {
    const message = JSON.parse(line) as Left | Confirmed;
    if ('newest' in message) left = message;
    else confirmed.set(message.id, message.version);
    if (!('newest' in message))
      killing ??= sleep(Math.random() * 120).then(async () => {
        child.kill('SIGKILL');
        await kill();
      });
  }
  await exit;
  await killing;
  if (!left || !killing) throw new Error(`the writer ended before it wrote: ${said}`);
  return { left, confirmed };
}

/** One store, killed again and again; each run verifies what the one before left. Returns how much was confirmed. */
async function killedOften(engine: Engine, roundCount: number): Promise<number> {
  const settings = await engine.fresh();
  let before = new Map<string, number>();
  let confirmedCount = 0;
  for (let round = 0; round <= roundCount; round++) {
    const { left, confirmed } = await killedRun(settings, engine.kill);
    expect(left.verdict, JSON.stringify(left)).toBe(round === 0 ? 'cannot-tell' : 'pass');
    for (const [id, version] of before) expect(left.newest[id]).toBeGreaterThanOrEqual(version);
    for (const [id, version] of confirmed) confirmedCount += version - (left.newest[id] ?? 0);
    before = confirmed;
  }
  return confirmedCount;
}

// A kill of the server meets every store on it; embedded stores are each other's strangers, so two are killed at once.
const LANES = { embedded: 2, server: 1 };

describe('a store whose process is killed', () => {
  test.each(ENGINES)(
    `golden: %s: ${KILLS} kills under writes lose no confirmed version and break no chain`,
    { timeout: 300_000 },
    async (name) => {
      const engine = await startEngine(name);
      onTestFinished(engine.stop);
      const lanes = Array.from({ length: LANES[name] }, () => killedOften(engine, KILLS / LANES[name]));
      const counts = await Promise.all(lanes);
      for (const count of counts) expect(count).toBeGreaterThan(KILLS / LANES[name]);
    },
  );
});
