import type { FileDocument } from '@fillwright/contract/documents';
import type { FileFault } from '@fillwright/engine/catalogue';
import { useEffect, useState } from 'react';
import { faultsOfFile } from '../../../briefs/index.ts';

/** @returns everything that is wrong with a text; undefined while it is read for the first time */
export function useFileFaults({ kind, id }: FileDocument, text: string): readonly FileFault[] | undefined {
  const [faults, setFaults] = useState<readonly FileFault[]>();
  useEffect(() => {
    let isOver = false;
    void faultsOfFile({ kind, id }, text).then((found) => {
      if (!isOver) setFaults(found);
    });
    return () => {
      isOver = true;
    };
  }, [kind, id, text]);
  return faults;
}
