import { COMMAND_LINE, SERVE_WORDS } from '@fillwright/words/en';
import { readArguments } from './arguments.ts';

const USUAL = { port: '4680', host: '127.0.0.1' };
const LAST_PORT = 65535;
const FLAGS = { port: 'value', host: 'value', demo: 'switch', log: 'switch' } as const;

/** How the server is to be started. */
export interface ServeSettings {
  readonly port: number;
  readonly host: string;
  /** Names under which browsers reach it besides its address. */
  readonly names: readonly string[];
  readonly isDemo: boolean;
  readonly isLogged: boolean;
}

/**
 * Reads how the server is to be started: a flag counts before the environment.
 *
 * @param args - flags
 * @param environment - variables of the process
 * @returns the settings, `help`, or one sentence for each thing that is wrong
 */
export function serveSettings(
  args: readonly string[],
  environment: Readonly<Record<string, string | undefined>>,
): ServeSettings | { readonly wrong: readonly string[] } | 'help' {
  const { words, values, switches, problems } = readArguments(args, FLAGS);
  if (switches.has('help')) return 'help';
  const given = (flag: 'port' | 'host'): { readonly text: string; readonly from: string } => {
    const text = values.get(flag)?.[0];
    const name = flag.toUpperCase();
    return text === undefined ? { text: environment[name] || USUAL[flag], from: name } : { text, from: `--${flag}` };
  };
  const [port, host] = [given('port'), given('host')];
  const wrong = [
    ...problems,
    ...words.map((word) => COMMAND_LINE.wordNotTaken(word)),
    ...(/^\d{1,5}$/.test(port.text) && Number(port.text) <= LAST_PORT ? [] : [SERVE_WORDS.notPort(port)]),
    ...(/^[\w.:-]+$/.test(host.text) ? [] : [SERVE_WORDS.notHost(host)]),
  ];
  if (wrong.length > 0) return { wrong };
  const names = (environment['FILLWRIGHT_NAMES'] ?? '').split(/[\s,]+/).filter((name) => name !== '');
  return {
    ...{ port: Number(port.text), host: host.text, names: [...names, host.text] },
    ...{ isDemo: switches.has('demo'), isLogged: switches.has('log') },
  };
}
