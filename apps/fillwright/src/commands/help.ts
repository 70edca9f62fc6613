import { nearestName } from '@fillwright/engine/catalogue';
import { COMMAND_LINE, USAGE } from '@fillwright/words/en';
import { COMMANDS } from '../commands.ts';
import { refuse } from '../refuse.ts';
import type { Streams } from '../streams.ts';
import { version } from '../version.ts';

/**
 * `fillwright help [command]`: the overview, or what a command says to `--help`.
 *
 * @param args - the command's name, or nothing
 * @param streams - where to write
 * @returns exit code
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const [name] = args;
  if (name === undefined || name === 'help' || name === '--help') {
    streams.out(
      USAGE.overview(
        version(),
        Object.entries(COMMANDS).map(([word, { summary }]) => [word, summary]),
      ),
    );
    return 0;
  }
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (command) return (await command.load()).run(['--help'], streams);
  const known = Object.keys(COMMANDS);
  return refuse(streams, COMMAND_LINE.unknownCommand(name, known, nearestName(name, known)));
}
