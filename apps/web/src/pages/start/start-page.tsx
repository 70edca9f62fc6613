import { FILE_WORDS, SHELL_WORDS, START_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { FileNotes, problemText, useDropFiles } from '../../briefs/index.ts';
import { BlankSentence } from './blank-sentence.tsx';
import { ProductList } from './product-list.tsx';
import { KeptFiles } from './kept-files.tsx';
import './start-page.css';
import { UnsentList } from './unsent-list.tsx';
import { useBegin } from './use-begin.ts';
import { useProducts, type Products } from './use-products.ts';
import { WaysToBegin } from './ways-to-begin.tsx';
import { WaysDrawing } from './ways-drawing.tsx';

/** What is in the store, and three ways to begin; an empty store greets. */
export function StartPage(): ReactElement {
  const { products, again } = useProducts();
  const begin = useBegin(again);
  const { isOver, ...drop } = useDropFiles(begin.files);
  const isEmpty = products.kind === 'there' && products.list.length + products.unsent.length === 0;
  return (
    <main className="start" id="page" data-over={isOver ? '' : undefined} aria-busy={begin.isBusy} {...drop}>
      <p className="start-program">{SHELL_WORDS.title}</p>
      {isEmpty ? (
        <header className="start-greeting">
          <div>
            <h1 className="start-title">{START_WORDS.titleEmpty}</h1>
            <p className="start-lead">{START_WORDS.lead}</p>
            <BlankSentence />
          </div>
          <WaysDrawing />
        </header>
      ) : (
        <h1 className="start-title">{START_WORDS.title}</h1>
      )}
      {begin.problem !== undefined && (
        <p className="start-problem attention" role="alert">
          <span aria-hidden="true">▲</span> {begin.problem}
        </p>
      )}
      <FileNotes notes={begin.notes} className="start-note" />
      {isOver && <p className="start-note">{FILE_WORDS.dropHere}</p>}
      {products.kind === 'asking' && <p className="quiet">{START_WORDS.loading}</p>}
      {products.kind === 'trouble' && (
        <p className="start-problem attention" role="alert">
          <span aria-hidden="true">▲</span> {problemText(products.error)}{' '}
          <button type="button" onClick={again}>
            {START_WORDS.tryAgain}
          </button>
        </p>
      )}
      {products.kind === 'there' && <Stored products={products} />}
      {products.kind !== 'asking' && <UnsentList list={products.unsent} />}
      {products.kind !== 'asking' && (
        <WaysToBegin begin={begin} title={isEmpty ? START_WORDS.ways : START_WORDS.waysMore} />
      )}
    </main>
  );
}

function Stored({ products }: { products: Extract<Products, { kind: 'there' }> }): ReactElement {
  const { list, files } = products;
  return (
    <>
      {list.length > 0 && <ProductList list={list} />}
      {files.length > 0 && <KeptFiles files={files} />}
    </>
  );
}
