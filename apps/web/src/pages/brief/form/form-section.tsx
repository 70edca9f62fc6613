import type { ReactElement, ReactNode } from 'react';

interface SectionProps {
  readonly id: string;
  readonly number: number;
  readonly title: string;
  readonly help?: string;
  readonly children: ReactNode;
}

/** A numbered part of the form, in the order in which a person thinks. */
export function FormSection({ id, number, title, help, children }: SectionProps): ReactElement {
  return (
    <section className="brief-section" id={id} aria-labelledby={`${id}-title`}>
      <h2 className="brief-section-title" id={`${id}-title`}>
        <span className="brief-section-number">{number}</span> {title}
      </h2>
      {help !== undefined && <p className="field-help">{help}</p>}
      {children}
    </section>
  );
}
