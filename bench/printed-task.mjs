import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { output } from './child.mjs';

let folder;

/** A folder of this process for programs and inputs; it goes when the process ends. */
export function workFolder() {
  if (folder !== undefined) return folder;
  folder = mkdtempSync(join(tmpdir(), 'bench-'));
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** Runs a program of baselines/ and reads its first line: task, language, wall ms, CPU ms and a value to compare. */
export function printedTask(program, args) {
  const cells = output(program, args.map(String)).stdout.trim().split('\n')[0].split('\t');
  const [wall_ms, cpu_ms, value] = cells.slice(2).map(Number);
  if (![wall_ms, cpu_ms, value].every(Number.isFinite))
    throw new Error(`${program} ${args.join(' ')}: ${cells.join(' ')}`);
  return { wall_ms, cpu_ms, value };
}
