import type { DocumentVersionHead, NamedKind } from '@fillwright/contract/documents';
import { useCallback, useEffect, useState } from 'react';
import { listDocuments, newestVersion } from '../../state/documents-client.ts';
import { briefsKeptHere } from '../../state/briefs-kept-here.ts';
import type { ProductLine } from './product-line.ts';

/** A product of the store; its line follows once its text is read. */
export interface Product {
  readonly head: DocumentVersionHead;
  readonly line?: ProductLine;
}

/** A filler or shell of the store. */
export interface KeptHead extends DocumentVersionHead {
  readonly kind: NamedKind;
}

export type Products =
  | { readonly kind: 'asking' }
  | {
      readonly kind: 'there';
      readonly list: readonly Product[];
      readonly files: readonly KeptHead[];
      readonly unsent: readonly UnsentProduct[];
    }
  | { readonly kind: 'trouble'; readonly error: unknown; readonly unsent: readonly UnsentProduct[] };

/** A product that the list of the server does not have: it is kept in this browser. */
export interface UnsentProduct {
  readonly id: string;
  readonly name: string;
}

/** As many texts are read for their first words; the others are listed by their id. */
const MOST_LINES = 60;

/** The products of the store, newest first, and its fillers and shells. */
export function useProducts(): { readonly products: Products; readonly again: () => void } {
  const [products, setProducts] = useState<Products>({ kind: 'asking' });
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let isOver = false;
    const set = (next: Products): void => {
      if (!isOver) setProducts(next);
    };
    readProducts(set).catch((error: unknown) => {
      set({ kind: 'trouble', error, unsent: [] });
      void unsentBut([]).then((unsent) => {
        set({ kind: 'trouble', error, unsent });
      });
    });
    return () => {
      isOver = true;
    };
  }, [turn]);
  const again = useCallback(() => {
    setProducts({ kind: 'asking' });
    setTurn((one) => one + 1);
  }, []);
  return { products, again };
}

async function readProducts(set: (products: Products) => void): Promise<void> {
  const [briefs, ...others] = await Promise.all([listDocuments('brief'), headsOf('filler'), headsOf('shell')]);
  const heads = [...briefs].sort((a, b) => b.at.localeCompare(a.at));
  const files = others.flat();
  const unsent = await unsentBut(heads.map(({ id }) => id));
  set({ kind: 'there', list: heads.map((head) => ({ head })), files, unsent });
  if (heads.length === 0) return;
  const { productLine } = await import('./product-line.ts');
  const list = await Promise.all(
    heads.map(async (head, index): Promise<Product> => {
      if (index >= MOST_LINES) return { head };
      const found = await newestVersion('brief', head.id).catch(() => undefined);
      return found ? { head: found, line: productLine(found.text) } : { head };
    }),
  );
  set({ kind: 'there', list, files, unsent });
}

/** What this browser keeps of products other than these. */
async function unsentBut(ids: readonly string[]): Promise<readonly UnsentProduct[]> {
  const kept = briefsKeptHere().filter(({ id }) => !ids.includes(id));
  if (kept.length === 0) return [];
  // Without a connection the reader may not arrive: then they are listed by their id.
  const read = await import('./product-line.ts').catch(() => undefined);
  return kept.map(({ id, text }) => ({ id, name: read?.productLine(text).name ?? id }));
}

async function headsOf(kind: NamedKind): Promise<readonly KeptHead[]> {
  return (await listDocuments(kind)).map((head) => ({ ...head, kind }));
}
