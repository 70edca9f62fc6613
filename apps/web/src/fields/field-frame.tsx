import { FIELD_WORDS } from '@fillwright/words/en';
import type { ReactElement, ReactNode } from 'react';
import './fields.css';
import { unitText } from './unit-text.ts';

/** What every field has. */
export interface FieldProps {
  /** Id of the control, so that a fault can lead to it. */
  readonly id?: string;
  readonly label: string;
  /** One sentence. */
  readonly help: string;
  /** What is wrong with the value, as one sentence. */
  readonly fault?: string | undefined;
  readonly isOptional?: boolean;
  /** Label above the control, help only while it has the focus: for fields in one line. */
  readonly isStacked?: boolean;
}

interface FrameProps extends Omit<FieldProps, 'id' | 'fault'> {
  readonly id: string;
  readonly fault: string | undefined;
  readonly unit?: string;
  readonly isCompact?: boolean;
  /** The control itself. */
  readonly children: ReactNode;
  /** Behind the help: where the value comes from. */
  readonly about?: string | undefined;
  /** Beside the unit: the source mark. */
  readonly aside?: ReactNode;
  /** Under everything: what opens. */
  readonly below?: ReactNode;
}

/** Label, control, unit, one sentence of help, and what is wrong; the control refers to them by `describedBy`. */
export function FieldFrame(props: FrameProps): ReactElement {
  const { id, label, help, fault, about, unit = '1', isOptional, isCompact = false } = props;
  const text = unitText(unit);
  const layout = isCompact ? 'compact' : props.isStacked === true ? 'stacked' : 'row';
  return (
    <div className={`field field--${layout}`} data-faulty={fault === undefined ? undefined : ''}>
      <label className="field-label" id={`${id}-label`} htmlFor={id}>
        {label}
        {isOptional === true && !isCompact && <span className="field-optional"> {FIELD_WORDS.optional}</span>}
      </label>
      <div className="field-line">
        {props.children}
        {text !== '' && (
          <span className="field-unit" id={`${id}-unit`}>
            {text}
          </span>
        )}
        {props.aside}
      </div>
      <FieldHelp {...{ id, help, about, isCompact }} />
      {fault !== undefined && <FieldFault id={`${id}-fault`}>{fault}</FieldFault>}
      {props.below}
    </div>
  );
}

function FieldHelp(of: Pick<FrameProps, 'id' | 'help' | 'about' | 'isCompact'>): ReactElement | undefined {
  const { id, help, about, isCompact = false } = of;
  if (help === '') return undefined;
  return (
    <p className={isCompact ? 'field-help hidden-text' : 'field-help'} id={`${id}-help`}>
      {help}
      {about !== undefined && <span className="field-about"> {about}.</span>}
    </p>
  );
}

/** A sentence with the triangle of attention: never the colour alone. */
export function FieldFault({ id, children }: { id?: string; children: ReactNode }): ReactElement {
  return (
    <p className="field-fault" id={id}>
      <svg className="field-fault-sign" viewBox="0 0 14 14" aria-hidden="true">
        <path d="M7 1.5 13 12.5H1z" />
      </svg>
      <span>{children}</span>
    </p>
  );
}

/** @returns the attributes by which a control refers to its label, unit, help and fault */
export function describedBy(of: { id: string; unit?: string; help: string; fault: string | undefined }): {
  id: string;
  'aria-labelledby': string;
  'aria-describedby'?: string;
  'aria-invalid'?: true;
} {
  const { id, unit = '1', help, fault } = of;
  const texts = [help === '' ? '' : `${id}-help`, fault === undefined ? '' : `${id}-fault`].filter(
    (each) => each !== '',
  );
  return {
    id,
    'aria-labelledby': unit === '1' ? `${id}-label` : `${id}-label ${id}-unit`,
    ...(texts.length === 0 ? {} : { 'aria-describedby': texts.join(' ') }),
    ...(fault === undefined ? {} : { 'aria-invalid': true }),
  };
}
