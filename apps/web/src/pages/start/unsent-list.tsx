import { START_WORDS } from '@fillwright/words/en';
import { Link } from '@tanstack/react-router';
import type { ReactElement } from 'react';
import type { UnsentProduct } from './use-products.ts';

/** Products that were begun while the server did not answer, and are in this browser only. */
export function UnsentList({ list }: { list: readonly UnsentProduct[] }): ReactElement | null {
  if (list.length === 0) return null;
  return (
    <section aria-labelledby="unsent-title">
      <h2 id="unsent-title">{START_WORDS.unsentTitle}</h2>
      <p className="quiet">{START_WORDS.unsentNote}</p>
      <ul className="product-list">
        {list.map(({ id, name }) => (
          <li key={id} className="product-item">
            <h3 className="product-name">
              <Link to="/products/$id/brief" params={{ id }}>
                {name}
              </Link>
            </h3>
            <p className="product-kept quiet">
              {id}, {START_WORDS.unsent}
            </p>
          </li>
        ))}
      </ul>
    </section>
  );
}
