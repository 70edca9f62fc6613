import { FIELD_WORDS } from '@fillwright/words/en';
import { useEffect, useId, useRef, type ReactElement, type ReactNode } from 'react';
import { FieldFault } from './field-frame.tsx';
import './fields.css';

export interface ListFieldProps {
  readonly id?: string;
  readonly label: string;
  readonly help: string;
  readonly fault?: string | undefined;
  readonly count: number;
  /** What one item is called: `substance 2`. */
  readonly itemName: (index: number) => string;
  /** The fields of one item. */
  readonly item: (index: number) => ReactNode;
  /** What is added: `a substance`. */
  readonly addName: string;
  readonly onAdd: () => void;
  readonly onRemove: (index: number) => void;
  readonly mostCount?: number;
  /** Items of one field: no heading of their own. */
  readonly isPlain?: boolean;
}

/** A list of items with their fields: substances, shells, tests. Focus follows what was added or removed. */
export function ListField(props: ListFieldProps): ReactElement {
  const { label, help, fault, count, mostCount = Infinity, isPlain = false } = props;
  const ownId = useId();
  const id = props.id ?? ownId;
  const whole = useRef<HTMLFieldSetElement>(null);
  const asked = useRef<'add' | 'remove'>(undefined);
  useEffect(() => {
    const way = asked.current;
    asked.current = undefined;
    if (way === 'add')
      whole.current?.querySelector<HTMLElement>('.list-field-item:last-of-type :is(input, select, textarea)')?.focus();
    if (way === 'remove') whole.current?.querySelector<HTMLElement>('.list-field-add')?.focus();
  }, [count]);
  return (
    <fieldset className="list-field" id={id} ref={whole} tabIndex={-1}>
      <legend className="list-field-label">{label}</legend>
      {help !== '' && <p className="field-help">{help}</p>}
      {fault !== undefined && <FieldFault>{fault}</FieldFault>}
      {Array.from({ length: count }, (_, index) => (
        <section className="list-field-item" key={index} aria-label={props.itemName(index)}>
          <div className="list-field-fields">
            {!isPlain && <h3 className="list-field-name">{props.itemName(index)}</h3>}
            {props.item(index)}
          </div>
          <button
            type="button"
            className="list-field-remove"
            aria-label={FIELD_WORDS.remove(props.itemName(index))}
            onClick={() => {
              asked.current = 'remove';
              props.onRemove(index);
            }}
          >
            {FIELD_WORDS.removeShort}
          </button>
        </section>
      ))}
      {count < mostCount && (
        <button
          type="button"
          className="list-field-add"
          onClick={() => {
            asked.current = 'add';
            props.onAdd();
          }}
        >
          {FIELD_WORDS.add(props.addName)}
        </button>
      )}
    </fieldset>
  );
}
