import { SHEET_WORDS } from '@fillwright/words/en';
import type { ReactNode, Ref } from 'react';
import type { PageIdentity } from './page-identity.ts';

/** A square to tick by hand. */
export function Box(): ReactNode {
  return <span className="sheet-box" aria-hidden="true" />;
}

/** A line to write on. */
export function Blank({ width_mm }: { readonly width_mm: number }): ReactNode {
  return <span className="sheet-blank" style={{ width: `${width_mm}mm` }} aria-hidden="true" />;
}

interface PageProps {
  readonly number: 1 | 2;
  readonly title: ReactNode;
  readonly about: string;
  readonly aside: ReactNode;
  /** Left, middle and right of the foot, before the number of the page. */
  readonly foot: readonly string[];
  readonly children: ReactNode;
  readonly side?: Ref<HTMLElement>;
}

/** One side of the paper with head and foot. */
export function SheetSide({ number, title, about, aside, foot, children, side }: PageProps): ReactNode {
  return (
    <article className="sheet-side" {...(side ? { ref: side } : {})}>
      <header className="sheet-head">
        <div>
          <h2>{title}</h2>
          <p>{about}</p>
        </div>
        <div className="sheet-aside">{aside}</div>
      </header>
      {children}
      <footer className="sheet-foot">
        {foot.map((text) => (
          <span key={text}>{text}</span>
        ))}
        <span>{SHEET_WORDS.page(number)}</span>
      </footer>
    </article>
  );
}

/** What the foot of both pages says of the document. */
export function footOf(product: string, { version, marks }: PageIdentity): string {
  return `${product} / ${version}, ${marks}`;
}
