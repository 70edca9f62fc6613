import { THREAD_WORDS, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { Settings } from '@fillwright/engine/dosing';
import { plainNumber } from '@fillwright/words/numbers';
import type { WorkbenchState } from '../state/index.ts';

/** One blank of the sentence. */
export interface Blank {
  readonly page: keyof typeof THREAD_WORDS.blanks;
  readonly lead: string;
  /** What the page hands on; empty when it has not been there. */
  readonly word: string;
  readonly label: string;
  /** `guessed`: it rests on guesses (a dashed rule); `handed`: a solid rule. */
  readonly kind: 'handed' | 'guessed' | 'empty';
  readonly to?: '/products/$id/brief' | '/products/$id/fill' | '/products/$id/weights';
}

/** What the sentence is made of. */
export interface ThreadFacts extends Pick<WorkbenchState, 'brief'> {
  readonly design: WorkbenchState['design'] | undefined;
  /** Shell and parts of the set-up that stands. */
  readonly size: string | undefined;
  readonly parts: Settings['parts'] | undefined;
  /** Weights on the product's sheet, where the page has been there. */
  readonly weighedCount?: number | undefined;
}

/**
 * The product as one sentence.
 *
 * @param facts - of the workbench
 * @returns name and blanks in the order a product travels
 */
export function threadOf(facts: ThreadFacts): { readonly name: string; readonly blanks: readonly Blank[] } {
  const words = wordsOf(facts);
  const input = facts.brief.kind === 'sound' ? facts.brief.input : undefined;
  const material = input?.brief.parts[0].material;
  const guessCount = material ? guessesIn(material) : 0;
  const blanks = (Object.keys(THREAD_WORDS.blanks) as Blank['page'][]).map((page): Blank => {
    const { lead, label } = THREAD_WORDS.blanks[page];
    const word = words[page] ?? '';
    const isGuessed = page === 'materials' && guessCount > 0;
    const kind = isGuessed ? 'guessed' : 'handed';
    return {
      ...{ page, lead, word, label: isGuessed ? THREAD_WORDS.guesses(label, guessCount) : label },
      ...{ kind: word === '' ? 'empty' : kind, ...linkOf(page) },
    };
  });
  return { name: input?.brief.product.name ?? THREAD_WORDS.noName, blanks };
}

/** What each page hands on, as far as there is something. */
function wordsOf({
  brief,
  design,
  size,
  parts,
  weighedCount = 0,
}: ThreadFacts): Partial<Record<Blank['page'], string>> {
  const [part] = brief.kind === 'sound' ? brief.input.brief.parts : [];
  const disc = parts && Object.values(parts)[0];
  const target = design && `${plainNumber(design.target.fill_mg, { upToSignificantDigits: 5 })}\u202Fmg`;
  return {
    ...(target === undefined ? {} : { brief: target }),
    ...(part ? { materials: part.material.lot ?? part.name } : {}),
    ...(size === undefined ? {} : { shell: THREAD_WORDS.size(size) }),
    ...(disc === undefined ? {} : { fill: disc }),
    ...(weighedCount === 0 ? {} : { trial: WEIGHTS_PAGE_WORDS.word(weighedCount) }),
  };
}

function linkOf(page: Blank['page']): Pick<Blank, 'to'> {
  if (page === 'brief' || page === 'materials' || page === 'shell') return { to: '/products/$id/brief' };
  if (page === 'trial') return { to: '/products/$id/weights' };
  return page === 'fill' ? { to: '/products/$id/fill' } : {};
}

/** Properties of the powder that the person left to a default. */
const ASKED = ['feedDensity_g_per_mL', 'compression', 'refill_ratio', 'axialSpringback_pct', 'slug'] as const;

function guessesIn(material: object): number {
  return ASKED.filter((key) => !(key in material)).length;
}
