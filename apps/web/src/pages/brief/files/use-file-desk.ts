import type { FileDocument } from '@fillwright/contract/documents';
import { useCallback, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { problemText } from '../../../briefs/index.ts';
import { FileDesk, type FileState } from '../../../state/file-desk.ts';
import { workbench } from '../../../state/index.ts';

/** The desk of a file, while its page is open; the product that is open is read again when it is left. */
export function useFileDesk({ kind, id }: FileDocument): {
  readonly desk: FileDesk;
  readonly state: FileState;
  /** Why it could not be opened. */
  readonly problem: string | undefined;
  /** Looks again at what is kept: a file was opened. */
  readonly again: () => void;
} {
  const [turn, setTurn] = useState(0);
  const [problem, setProblem] = useState<string>();
  // A new desk for every look: an opened file takes the place of the text.
  const desk = useMemo(() => new FileDesk({ kind, id }), [kind, id, turn]);
  const state = useSyncExternalStore(desk.subscribe, desk.state);
  useEffect(() => {
    setProblem(undefined);
    desk.open().catch((error: unknown) => {
      setProblem(problemText(error));
    });
    return () => {
      void desk.close().then(() => workbench.reread());
    };
  }, [desk]);
  const again = useCallback(() => {
    setTurn((one) => one + 1);
  }, []);
  return { desk, state, problem, again };
}
