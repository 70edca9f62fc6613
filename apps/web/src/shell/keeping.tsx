import { KEEPING_WORDS, type ProductThing } from '@fillwright/words/en';
import { useEffect, type ReactNode } from 'react';
import { ConflictPanel, saveSentence } from '../briefs/index.ts';
import { useWorkbench, workbench, wouldBeLost, type SaveState } from '../state/index.ts';
import './keeping.css';

const USUAL: readonly SaveState['kind'][] = ['kept', 'pending', 'saving'];

/** What is not kept as usual, and why; and the choice where there are two versions. */
export function Keeping({ isBriefTold }: { readonly isBriefTold: boolean }): ReactNode {
  const save = useWorkbench((state) => state.save);
  const choiceSave = useWorkbench((state) => state.choiceSave);
  useUnloadWarning();
  return (
    <div className="keeping no-print">
      <Kept thing="brief" save={save} isTold={isBriefTold} />
      <Kept thing="design" save={choiceSave} isTold={false} />
    </div>
  );
}

interface KeptProps {
  readonly thing: ProductThing;
  readonly save: SaveState;
  /** Whether the page itself says it. */
  readonly isTold: boolean;
}

function Kept({ thing, save, isTold }: KeptProps): ReactNode {
  const isKeptHere = useWorkbench((state) => state.isKeptHere);
  if (save.kind === 'conflict') {
    const resolve = (side: 'mine' | 'theirs'): void => {
      workbench.resolve(thing, side);
    };
    return <ConflictPanel thing={thing} save={save} onResolve={resolve} />;
  }
  const isUsual = USUAL.includes(save.kind) && (isKeptHere || save.kind === 'kept');
  if (isUsual || isTold) return null;
  return (
    <p className="keeping-line attention" role="status">
      <span aria-hidden="true">▲</span> {KEEPING_WORDS.about(thing, saveSentence(save, { thing, isKeptHere }))}
    </p>
  );
}

/** Asks before the page is left only when something would be gone with it. */
function useUnloadWarning(): void {
  const isKeptHere = useWorkbench((state) => state.isKeptHere);
  useEffect(() => {
    if (isKeptHere) return undefined;
    const onLeave = (event: BeforeUnloadEvent): void => {
      // What stands in a field and was not handed on belongs to it.
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
      if (wouldBeLost(workbench.state())) event.preventDefault();
    };
    window.addEventListener('beforeunload', onLeave);
    return () => {
      window.removeEventListener('beforeunload', onLeave);
    };
  }, [isKeptHere]);
}
