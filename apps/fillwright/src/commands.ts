import type { Streams } from './streams.ts';

interface Command {
  readonly summary: string;
  /** Loads only what the command needs; returns the exit code. */
  readonly load: () => Promise<{ run: (args: readonly string[], streams: Streams) => Promise<number> }>;
}

/** Every command by name: one line each. `help` is not among them because it reads this list. */
export const COMMANDS: Readonly<Record<string, Command>> = {
  design: { summary: 'design a set-up from a brief', load: () => import('./commands/design.ts') },
  accept: { summary: 'judge a column of weights', load: () => import('./commands/accept.ts') },
  serve: { summary: 'serve the workbench for a browser', load: () => import('./commands/serve.ts') },
  methods: { summary: 'list the methods, or show one of them', load: () => import('./commands/methods.ts') },
  compute: { summary: 'compute one method from its inputs', load: () => import('./commands/compute.ts') },
  verify: { summary: 'recompute check values and report', load: () => import('./commands/verify.ts') },
  audit: { summary: 'verify every version that is kept', load: () => import('./commands/audit.ts') },
  backup: { summary: 'write all that is kept into one file', load: () => import('./commands/backup.ts') },
  restore: { summary: 'check a backup, or put it into an empty store', load: () => import('./commands/restore.ts') },
};
