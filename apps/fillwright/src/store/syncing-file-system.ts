import { fsyncSync } from 'node:fs';
import { NodeFS } from '@electric-sql/pglite/nodefs';

interface StreamOperations {
  fsync?: (stream: { readonly nfd?: number }) => number;
}

/**
 * The embedded database on a folder, with real syncs: as shipped it has none, and loses what it confirmed at a power cut.
 * This reaches into its insides, hence the exact version in package.json and the test that counts the syncs.
 */
export class SyncingFileSystem extends NodeFS {
  /** Syncs that the disk has confirmed. */
  syncCount = 0;

  override async init(...args: Parameters<NodeFS['init']>): ReturnType<NodeFS['init']> {
    const made = await super.init(...args);
    made.emscriptenOpts.preRun?.push((module: unknown) => {
      (module as { NODEFS: { stream_ops: StreamOperations } }).NODEFS.stream_ops.fsync = ({ nfd }) => {
        if (nfd === undefined) return 0;
        fsyncSync(nfd);
        this.syncCount++;
        return 0;
      };
    });
    return made;
  }
}
