import { useId, type ReactElement } from 'react';
import { describedBy, FieldFrame, type FieldProps } from './field-frame.tsx';
import { usePageHidden } from './use-page-hidden.ts';
import { useDraft } from './use-draft.ts';

export interface TextFieldProps extends FieldProps {
  readonly value: string | undefined;
  /** Undefined when the field was emptied. */
  readonly onCommit: (value: string | undefined) => void;
  /** Several lines high; Enter still hands the text on. */
  readonly isLong?: boolean;
}

/** A short text. Enter or leaving the field hands it on, Esc gives back what was there. */
export function TextField(props: TextFieldProps): ReactElement {
  const { label, help, value, fault, isOptional = false, isStacked = false, isLong = false } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const draft = useDraft(value ?? '');
  const commit = (): void => {
    if (!draft.isDirty) return;
    const text = draft.text.replace(/\s+/g, ' ').trim();
    draft.send(text);
    props.onCommit(text === '' ? undefined : text);
  };
  usePageHidden(commit);
  const control = {
    className: 'field-input',
    autoComplete: 'off',
    value: draft.text,
    'data-typing': draft.isDirty ? '' : undefined,
    onChange: (event: { target: { value: string } }): void => {
      draft.type(event.target.value);
    },
    onBlur: commit,
    onKeyDown: (event: { key: string; preventDefault: () => void; stopPropagation: () => void }): void => {
      if (event.key === 'Enter') {
        event.preventDefault();
        commit();
      } else if (event.key === 'Escape' && draft.isDirty) {
        event.stopPropagation();
        draft.restore();
      }
    },
    ...describedBy({ id, help, fault }),
  };
  return (
    <FieldFrame id={id} label={label} help={help} fault={fault} isOptional={isOptional} isStacked={isStacked}>
      {isLong ? <textarea rows={2} {...control} /> : <input type="text" {...control} />}
    </FieldFrame>
  );
}
