import { execFile } from 'node:child_process';
import { join } from 'node:path';

/** Runs an installed tool in the copy and gives what it wrote; that it fails is what we are here for. */
export function runTool(copy, command, args) {
  const options = { cwd: copy, maxBuffer: 2 ** 28 };
  return new Promise((resolve) => {
    execFile(join(copy, 'node_modules/.bin', command), args, options, (error, stdout, stderr) => {
      if (stdout === '' && stderr !== '') console.error(`${command}: ${stderr}`);
      resolve(stdout);
    });
  });
}
