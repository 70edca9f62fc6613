import { FIELD_WORDS } from '@fillwright/words/en';
import { useId, type ReactElement } from 'react';
import { describedBy, FieldFrame, type FieldProps } from './field-frame.tsx';

export interface Choice {
  readonly value: string;
  readonly text: string;
}

export interface ChoiceFieldProps extends FieldProps {
  /** What stands in the document, a choice or not. */
  readonly value: string | undefined;
  readonly choices: readonly Choice[];
  readonly onCommit: (value: string | undefined) => void;
  /** Words for "nothing chosen"; left out: offered only while nothing is chosen. */
  readonly nothing?: string;
}

/** One of a few words. What is no choice is shown too, so that it can be seen and corrected. */
export function ChoiceField(props: ChoiceFieldProps): ReactElement {
  const { label, help, value, choices, fault, nothing, isOptional = false, isStacked = false } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const isKnown = value === undefined || choices.some((choice) => choice.value === value);
  return (
    <FieldFrame id={id} label={label} help={help} fault={fault} isOptional={isOptional} isStacked={isStacked}>
      <select
        className="field-input field-choice"
        value={value ?? ''}
        onChange={(event) => {
          props.onCommit(event.target.value === '' ? undefined : event.target.value);
        }}
        {...describedBy({ id, help, fault })}
      >
        {(nothing !== undefined || value === undefined) && <option value="">{nothing ?? FIELD_WORDS.unset}</option>}
        {!isKnown && <option value={value}>{FIELD_WORDS.notAChoice(value)}</option>}
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>
            {choice.text}
          </option>
        ))}
      </select>
    </FieldFrame>
  );
}
