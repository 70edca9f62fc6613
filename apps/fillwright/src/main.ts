import { nearestName } from '@fillwright/engine/catalogue';
import { COMMAND_LINE } from '@fillwright/words/en';
import { COMMANDS } from './commands.ts';
import { refuse } from './refuse.ts';
import type { Streams } from './streams.ts';
import { version } from './version.ts';

const streams: Streams = {
  out: (text) => void process.stdout.write(`${text}\n`),
  problem: (text) => void process.stderr.write(`${text}\n`),
};

// Whoever reads the output may stop early (`| head`): that is no error.
for (const stream of [process.stdout, process.stderr])
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
    process.exit(0);
  });

try {
  process.exitCode = await main(process.argv.slice(2));
} catch (error) {
  streams.problem(COMMAND_LINE.unexpected(error instanceof Error ? error.message : String(error)));
  if (process.env['FILLWRIGHT_DEBUG'] === '1') streams.problem(error instanceof Error ? (error.stack ?? '') : '');
  process.exitCode = 3;
}

async function main([name = 'help', ...args]: readonly string[]): Promise<number> {
  if (name === '--version') {
    streams.out(version());
    return 0;
  }
  if (name === 'help' || name === '--help') return (await import('./commands/help.ts')).run(args, streams);
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (command) return (await command.load()).run(args, streams);
  const known = [...Object.keys(COMMANDS), 'help', '--version'];
  return refuse(streams, COMMAND_LINE.unknownCommand(name, known, nearestName(name, known)));
}
