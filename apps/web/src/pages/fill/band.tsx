import { Link } from '@tanstack/react-router';
import { useDeferredValue, type ReactNode } from 'react';
import type { CandidateDetails } from '@fillwright/engine/design';
import { FILL_WORDS, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import { drawingOf, MachineDrawing, useAtRest, type DrawnSetUp } from '../../drawing/index.ts';
import type { Workbench, WorkbenchState } from '../../state/index.ts';
import { AsTable } from './as-table.tsx';
import { Candidates } from './candidates.tsx';
import { Forecast } from './forecast.tsx';
import { Cautions, Narrower, Warnings } from './notes.tsx';
import { SaveDesign } from './save-design.tsx';

interface BandProps {
  readonly state: WorkbenchState;
  readonly workbench: Workbench;
  readonly setUp: DrawnSetUp;
  readonly isNarrow: boolean;
  readonly compared: number | undefined;
  readonly take: Workbench['take'];
  readonly compare: (rank: number | undefined) => void;
}

const NO_SHEET: CandidateDetails['sheet'] = [];

/** Under the drawing: what to expect, between what to choose, what to look out for. */
export function Band({ state, workbench, setUp, isNarrow, compared, take, compare }: BandProps): ReactNode {
  const { input, candidate, details, areDetailsPending } = setUp;
  const { brief, design, isSearching } = state;
  // The ranking need not follow a lever: it waits until the lever is let go.
  const { isMoving } = setUp;
  const settled = useDeferredValue(useAtRest(candidate, isMoving));
  const sheet = useDeferredValue(useAtRest(details?.sheet ?? NO_SHEET, isMoving));
  return (
    <div className="band">
      {details ? <Forecast {...{ input, candidate, details }} isPending={areDetailsPending} /> : null}
      {isNarrow ? <Stations setUp={setUp} /> : null}
      <div className="band-middle">
        {design ? (
          <Candidates
            {...{ input, design, isSearching, compared, compare }}
            candidate={settled}
            take={isNarrow ? undefined : take}
            sheet={sheet}
          />
        ) : null}
        {isNarrow ? <p className="quiet">{FILL_WORDS.readOnly}</p> : <Actions state={state} workbench={workbench} />}
      </div>
      <div className="band-notes">
        <Warnings candidate={candidate} />
        {details ? <Narrower interval={details.interval} isPending={areDetailsPending} /> : null}
        <Cautions brief={input.brief} notices={brief.kind === 'sound' ? brief.notices : []} />
      </div>
    </div>
  );
}

/** On a phone the machine stands under the decision. */
function Stations({ setUp }: { readonly setUp: DrawnSetUp }): ReactNode {
  const drawing = drawingOf(setUp.candidate.method);
  return (
    <section>
      <h2>{FILL_WORDS.machine}</h2>
      {drawing ? <MachineDrawing {...{ setUp, drawing }} /> : null}
      <AsTable setUp={setUp} />
    </section>
  );
}

function Actions({ state, workbench }: Pick<BandProps, 'state' | 'workbench'>): ReactNode {
  const { id, canUndo, canRedo } = state;
  return (
    <div className="band-actions">
      <SaveDesign saveDesign={workbench.saveDesign} text={state.text} choice={state.choice} />
      <button type="button" disabled={!canUndo} onClick={workbench.undo}>
        {FILL_WORDS.undo}
      </button>
      <button type="button" disabled={!canRedo} onClick={workbench.redo}>
        {FILL_WORDS.redo}
      </button>
      {id === undefined ? null : (
        <span>
          {FILL_WORDS.print}{' '}
          <Link to="/products/$id/sheet" params={{ id }}>
            {FILL_WORDS.settingSheet}
          </Link>{' '}
          <Link to="/products/$id/weights" params={{ id }}>
            {WEIGHTS_PAGE_WORDS.toWeights}
          </Link>
        </span>
      )}
    </div>
  );
}
