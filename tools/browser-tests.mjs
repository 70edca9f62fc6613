/** The tests in a real browser against the real server: program and app built, Chromium found or installed. Arguments go to Vitest. */
import { spawnSync } from 'node:child_process';
import { chromiumPath } from './chromium.mjs';
import { setUp } from './setup.mjs';

process.exitCode = setUp() && run(process.argv.slice(2)) ? 0 : 1;

function run(args) {
  try {
    process.env.CHROMIUM_PATH = chromiumPath();
  } catch (error) {
    console.error(error.message);
    return false;
  }
  const vitest = ['node_modules/vitest/vitest.mjs', 'run', '--config', 'apps/web/e2e/vitest.config.ts', ...args];
  return spawnSync(process.execPath, vitest, { stdio: ['ignore', 'inherit', 'inherit'] }).status === 0;
}
