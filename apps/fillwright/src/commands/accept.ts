import { readFile } from 'node:fs/promises';
import { text as textOf } from 'node:stream/consumers';
import { readBrief } from '@fillwright/contract/files';
import { readWeights, type WeightsRead, type WeightsText } from '@fillwright/contract/weights';
import { DomainError } from '@fillwright/engine/catalogue';
import { weightsJudged, type WeightsJudgement } from '@fillwright/engine/weights';
import { ACCEPT_WORDS, COMMAND_LINE, domainErrorSentence, formatFaults, USAGE } from '@fillwright/words/en';
import { acceptInput, wheelOf, type AcceptSources, type KnownBrief } from '../accept/accept-input.ts';
import { acceptRequest, type AcceptRequest } from '../accept/accept-request.ts';
import { givenOnly } from '../accept/given-only.ts';
import { acceptText, struckText, weightsFaultsText } from '../accept-text/accept-text.ts';
import type { Streams } from '../streams.ts';

/** Why the command ends before a judgement. */
interface Refusal {
  readonly code: 2 | 3;
  readonly text: string;
}

/**
 * `fillwright accept <weights.csv|->`: what a column of weights says.
 *
 * @param args - the path of the weights, or `-` for standard input, and flags
 * @param streams - where to write
 * @returns exit code: 0 pass, 1 fail or cannot tell, 2 for wrong input, 3 when a file cannot be read
 */
export async function run(args: readonly string[], streams: Streams): Promise<number> {
  const request = acceptRequest(args);
  if (request === 'help') {
    streams.out(USAGE.accept);
    return 0;
  }
  const outcome = 'wrong' in request ? refusal(request.wrong.join('\n')) : await judged(request);
  if ('code' in outcome) {
    streams.problem(outcome.text);
    return outcome.code;
  }
  const { judgement, capsules } = outcome;
  const isJson = !('wrong' in request) && request.isJson;
  streams.out(isJson ? JSON.stringify({ read: capsules, judgement }, null, 2) : acceptText(capsules, judgement));
  return judgement.verdict === 'pass' ? 0 : 1;
}

interface Outcome {
  readonly capsules: WeightsRead;
  readonly judgement: WeightsJudgement;
}

async function judged(request: AcceptRequest): Promise<Outcome | Refusal> {
  const known = await briefOf(request);
  if (known && 'code' in known) return known;
  const wheel = wheelOf(request, known);
  if (typeof wheel === 'string') return refusal(wheel);
  const { path, basis, unit } = request;
  const shellsAre = request.hasOwnShells ? 'own' : undefined;
  const capsules = await weightsOf(path, givenOnly({ unit, basis, wheel, shells: shellsAre }));
  if ('code' in capsules) return capsules;
  if (capsules.capsules.length === 0) return refusal(`${path}: ${ACCEPT_WORDS.onlyShells}`);
  const shells = await shellsOf(request);
  if (shells && 'code' in shells) return shells;
  return judgedInput(request, { capsules, ...givenOnly({ shells, known, wheel }) });
}

function judgedInput(request: AcceptRequest, sources: AcceptSources): Outcome | Refusal {
  try {
    const input = acceptInput(request, sources);
    if (typeof input === 'string') return refusal(input);
    return { capsules: sources.capsules, judgement: weightsJudged(input) };
  } catch (error) {
    if (error instanceof DomainError) return refusal(domainErrorSentence(error.code, error.facts));
    throw error;
  }
}

async function briefOf({ brief: path }: AcceptRequest): Promise<KnownBrief | Refusal | undefined> {
  if (path === undefined) return undefined;
  const read = await readBrief({ path, readText: (file) => readFile(file, 'utf8') });
  if (!read.ok) return { code: read.kind === 'file' ? 3 : 2, text: formatFaults(read.faults) };
  return { brief: read.brief, filler: read.filler, shells: read.shells };
}

async function shellsOf(request: AcceptRequest): Promise<WeightsRead | Refusal | undefined> {
  if (request.shells === undefined) return undefined;
  const { unit } = request;
  const read = await weightsOf(request.shells, { basis: 'shell', ...givenOnly({ unit }) });
  if ('code' in read || (read.unreadCount === 0 && read.shells_mg.length > 1)) return read;
  return refusal([`${request.shells}: ${ACCEPT_WORDS.shellsNotRead}`, ...struckText(read)].join('\n'));
}

async function weightsOf(path: string, asked: Omit<WeightsText, 'text'>): Promise<WeightsRead | Refusal> {
  let text: string;
  try {
    text = path === '-' ? await textOf(process.stdin) : await readFile(path, 'utf8');
  } catch (error) {
    return { code: 3, text: COMMAND_LINE.unreadable(path, error instanceof Error ? error.message : String(error)) };
  }
  const read = readWeights({ ...asked, text });
  return read.faults.length > 0 ? refusal(weightsFaultsText(path, read)) : read;
}

function refusal(text: string): Refusal {
  return { code: 2, text };
}
