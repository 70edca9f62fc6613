import { FIELD_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { ChoiceField } from './choice-field.tsx';
import type { FieldProps } from './field-frame.tsx';

export interface FlagFieldProps extends FieldProps {
  readonly value: boolean | undefined;
  readonly onCommit: (value: boolean | undefined) => void;
}

const CHOICES = [
  { value: 'true', text: FIELD_WORDS.yes },
  { value: 'false', text: FIELD_WORDS.no },
];

/** Yes or no; not said is neither. */
export function FlagField({ value, onCommit, ...field }: FlagFieldProps): ReactElement {
  return (
    <ChoiceField
      {...field}
      choices={CHOICES}
      value={value === undefined ? undefined : String(value)}
      onCommit={(text) => {
        onCommit(text === undefined ? undefined : text === 'true');
      }}
    />
  );
}
