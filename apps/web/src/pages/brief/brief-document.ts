import { targetSchema } from '@fillwright/contract/brief';
import { yamlText, type ValuePath } from '@fillwright/contract/files';
import type { TargetRule } from '@fillwright/engine/brief';
import { DomainError } from '@fillwright/engine/catalogue';
import { completedPowder } from '@fillwright/engine/materials';
import { valueIn } from '../../briefs/index.ts';
import { singleMeasurement, type Guess } from '@fillwright/engine/quantity';

/** The text of a brief as the form sees it, in order or not. */
export interface BriefDocument {
  readonly value: unknown;
  /** Whether the form can change the text: not while it cannot be read as YAML, or while a key is given twice. */
  readonly isOpen: boolean;
  readonly textAt: (path: ValuePath) => string | undefined;
  /** The target, as soon as its own form is right. */
  readonly target: TargetRule | undefined;
  /** What counts for a property of the powder that is not given. */
  readonly guesses: Readonly<Record<string, Guess>>;
}

const PART = ['parts', 0] as const;

/** @returns what a form can show of a text; never throws */
export function briefDocument(text: string): BriefDocument {
  const { value, faults, isReadable, textAt } = yamlText(text);
  const target = targetSchema.safeParse(valueIn(value, [...PART, 'target']));
  return {
    value,
    isOpen: isReadable && faults.length === 0,
    textAt: (path) => textAt?.(path),
    target: target.success ? target.data : undefined,
    guesses: guessesFrom(value),
  };
}

/** @returns how many items stand in a list of a document of unknown form */
export function countIn(document: unknown, path: ValuePath): number {
  const value = valueIn(document, path);
  return Array.isArray(value) ? value.length : 0;
}

function guessesFrom(document: unknown): Readonly<Record<string, Guess>> {
  const mean = (key: string): unknown => {
    const value = valueIn(document, [...PART, 'material', key]);
    return typeof value === 'object' ? valueIn(value, ['mean']) : value;
  };
  const [bulk, tapped] = [mean('bulkDensity_g_per_mL'), mean('tappedDensity_g_per_mL')];
  if (typeof bulk !== 'number' || typeof tapped !== 'number') return {};
  try {
    const powder = completedPowder({
      bulkDensity_g_per_mL: singleMeasurement({ value: bulk, kind: 'density' }),
      tappedDensity_g_per_mL: singleMeasurement({ value: tapped, kind: 'density' }),
    });
    return Object.fromEntries(Object.entries(powder).filter((entry): entry is [string, Guess] => isGuess(entry[1])));
  } catch (error) {
    if (error instanceof DomainError) return {};
    throw error;
  }
}

function isGuess(value: unknown): value is Guess {
  return typeof value === 'object' && valueIn(value, ['basis']) === 'guess';
}
