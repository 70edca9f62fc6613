import { START_WORDS } from '@fillwright/words/en';
import { quantityForReading } from '@fillwright/words/numbers';
import { Link } from '@tanstack/react-router';
import type { ReactElement } from 'react';
import { timeText } from '../../briefs/index.ts';
import type { Product } from './use-products.ts';

/** Every product as the beginning of its sentence, with what is kept of it. */
export function ProductList({ list }: { list: readonly Product[] }): ReactElement {
  return (
    <ul className="product-list">
      {list.map(({ head, line }) => (
        <li key={head.id} className="product-item">
          <h2 className="product-name">
            <Link
              to="/products/$id/fill"
              params={{ id: head.id }}
              aria-label={START_WORDS.toFill(line?.name ?? head.id)}
            >
              {line?.name ?? head.id}
            </Link>
          </h2>
          <p className="product-sentence">
            {line?.fill_mg !== undefined && (
              <>
                {START_WORDS.mustHold}{' '}
                <strong>{quantityForReading(line.fill_mg, 'mg', { upToSignificantDigits: 4 })}</strong>{' '}
              </>
            )}
            {line?.part !== undefined && (
              <>
                {START_WORDS.of} <strong>{line.part}</strong>{' '}
              </>
            )}
            {line !== undefined && line.sizes.length > 0 && (
              <>
                {START_WORDS.in} <strong>{START_WORDS.sizes(line.sizes.join(', '))}</strong>
              </>
            )}
          </p>
          <p className="product-kept quiet">
            {head.id}, {START_WORDS.kept({ ...head, at: timeText(head.at) })}
          </p>
          <p className="product-ways">
            <Link to="/products/$id/fill" params={{ id: head.id }}>
              {START_WORDS.fill}
            </Link>
            <Link to="/products/$id/brief" params={{ id: head.id }}>
              {START_WORDS.brief}
            </Link>
          </p>
        </li>
      ))}
    </ul>
  );
}
