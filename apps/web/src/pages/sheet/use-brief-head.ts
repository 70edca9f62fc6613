import type { DocumentVersionHead } from '@fillwright/contract/documents';
import { useEffect, useState } from 'react';
import { versionsOf } from '../../state/documents-client.ts';

/**
 * What the server has written down of the version of the brief that is printed: status, name, sha.
 *
 * @param id - of the product
 * @param version - of the brief
 * @returns the head; undefined while it is asked for, or when the server does not answer
 */
export function useBriefHead(id: string | undefined, version: number): DocumentVersionHead | undefined {
  const [head, setHead] = useState<DocumentVersionHead>();
  useEffect(() => {
    if (id === undefined || version === 0) return undefined;
    let isWanted = true;
    versionsOf('brief', id).then(
      (heads) => {
        if (isWanted) setHead(heads.find((one) => one.version === version));
      },
      () => {
        // Offline: the sheet says that the server has not confirmed the version.
        if (isWanted) setHead(undefined);
      },
    );
    return () => {
      isWanted = false;
    };
  }, [id, version]);
  return head?.version === version ? head : undefined;
}
