import type { ValuePath } from '@fillwright/contract/files';
import type { ReactElement } from 'react';
import {
  ChoiceField,
  FlagField,
  NumberField,
  QuantityField,
  TextField,
  writtenQuantity,
  type Choice,
} from '../../../fields/index.ts';
import { useBriefForm, useField } from '../form-context.ts';
import { unitOfKey } from '../unit-of-key.ts';

interface At {
  /** Where the value stands in the brief. */
  readonly at: ValuePath;
}
interface Named {
  /** Other words than those of the kind of value. */
  readonly label?: string;
  readonly help?: string;
  readonly isStacked?: boolean;
}

export function TextAt({ at, isLong = false, ...named }: At & Named & { isLong?: boolean }): ReactElement {
  const { field, raw, set } = useField(at);
  const value = typeof raw === 'number' || typeof raw === 'boolean' ? String(raw) : raw;
  return (
    <TextField
      {...field}
      {...named}
      isLong={isLong}
      value={typeof value === 'string' ? value : undefined}
      onCommit={set}
    />
  );
}

/** A number without a spread. `guess` in the text is an empty field. */
export function NumberAt({
  at,
  step,
  unitOf,
  ...named
}: At & Named & { step?: number; unitOf?: string }): ReactElement {
  const { field, limits, raw, source, set } = useField(at);
  const value = (typeof raw === 'number' || typeof raw === 'string') && raw !== 'guess' ? raw : undefined;
  return (
    <NumberField
      {...field}
      {...named}
      unit={unitOfKey(unitOf ?? String(at.at(-1)))}
      range={limits.range}
      isWhole={limits.isWhole}
      {...{ value, source, step, onCommit: set, onRefused: set }}
    />
  );
}

/** A number that was measured, learned or guessed; `isAsked`: here it has no guess, though it may have one elsewhere. */
export function QuantityAt({ at, step, isAsked = false }: At & { step?: number; isAsked?: boolean }): ReactElement {
  const { document } = useBriefForm();
  const { field, limits, raw, source, set } = useField(at, 'within');
  const key = String(at.at(-1));
  const canBeGuess = limits.canBeGuess && !isAsked;
  return (
    <QuantityField
      {...field}
      unit={unitOfKey(key)}
      range={limits.range}
      canBeGuess={canBeGuess}
      guess={canBeGuess ? document.guesses[key] : undefined}
      value={writtenQuantity(raw)}
      {...{ source, step, onCommit: set, onRefused: set }}
    />
  );
}

export function ChoiceAt({ at, choices, ...named }: At & Named & { choices: readonly Choice[] }): ReactElement {
  const { field, raw, set } = useField(at);
  const value = typeof raw === 'string' ? raw : typeof raw === 'number' ? String(raw) : undefined;
  return <ChoiceField {...field} {...named} choices={choices} value={value} onCommit={set} />;
}

export function FlagAt({ at }: At): ReactElement {
  const { field, raw, set } = useField(at);
  return <FlagField {...field} value={typeof raw === 'boolean' ? raw : undefined} onCommit={set} />;
}

/** @returns choices from a table of words */
export function choicesOf(words: Readonly<Record<string, string>>): readonly Choice[] {
  return Object.entries(words).map(([value, text]) => ({ value, text }));
}
