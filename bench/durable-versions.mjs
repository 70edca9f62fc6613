import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { appendVersion } from '../apps/fillwright/dist/store/append-version.js';
import { openStore } from '../apps/fillwright/dist/store/open-store.js';
import { startPostgres } from '../tools/postgres.mjs';

const VERSIONS = 800;
const WARM_UP = 200;
/** As long as a brief. */
const TEXT = 'bulkDensity_g_per_mL: 0.50\n'.repeat(120);

/** A version of 3 kB confirmed on the disk, chain and list of heads included: 1000 / (ms per version) = versions per second. */
export async function round() {
  const postgres = await startPostgres();
  try {
    return [
      ...(await onStore({ engine: 'embedded' })),
      ...(await onStore({ engine: 'server', databaseUrl: postgres.url })),
    ];
  } finally {
    await postgres.stop();
  }
}

async function onStore({ engine, databaseUrl }) {
  const dataFolder = mkdtempSync(join(tmpdir(), 'bench-'));
  const store = await openStore({ dataFolder, databaseUrl, isToBeMade: true });
  try {
    await perVersion(store, 'warm-up', { writers: 1, versions: WARM_UP });
    const one = await perVersion(store, 'one', { writers: 1, versions: VERSIONS });
    const eight = await perVersion(store, 'eight', { writers: 8, versions: VERSIONS });
    return [
      { figure: `${engine}, one writer, per version`, unit: 'ms', ...one },
      { figure: `${engine}, eight writers of a document each, per version`, unit: 'ms', ...eight },
    ];
  } finally {
    await store.close();
    rmSync(dataFolder, { recursive: true, force: true });
  }
}

async function perVersion(store, name, { writers, versions }) {
  const before = process.cpuUsage();
  const begun = performance.now();
  const each = versions / writers;
  await Promise.all(Array.from({ length: writers }, (_, i) => write(store, { id: `${name}-${i}`, versions: each })));
  const wall_ms = (performance.now() - begun) / versions;
  const { user, system } = process.cpuUsage(before);
  return { wall_ms, cpu_ms: (user + system) / 1000 / versions };
}

async function write(store, { id, versions }) {
  const chain = { site: 'here', kind: 'brief', id };
  for (let basedOn = 0; basedOn < versions; basedOn++) {
    const sent = { basedOn, status: 'draft', text: `${TEXT}# ${basedOn}\n`, by: 'bench', at: new Date().toISOString() };
    const { outcome } = await appendVersion(store, chain, sent);
    if (outcome !== 'kept') throw new Error(`version ${basedOn + 1} of ${id}: ${outcome}`);
  }
}
