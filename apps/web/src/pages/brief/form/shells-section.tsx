import type { ValuePath } from '@fillwright/contract/files';
import { SHELL_SIZE_NAMES } from '@fillwright/engine/shells';
import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { FieldFault } from '../../../fields/index.ts';
import { valueIn } from '../../../briefs/index.ts';
import { useBriefForm, useField } from '../form-context.ts';
import { ChoiceAt, NumberAt, TextAt } from './fields-at.tsx';
import { FormSection } from './form-section.tsx';
import { ListAt } from './list-at.tsx';

const SIZES = [
  ...SHELL_SIZE_NAMES.map((size) => ({ value: size, text: size })),
  { value: BRIEF_PAGE_WORDS.ownSizeValue, text: BRIEF_PAGE_WORDS.ownSize },
];

/** Shells that the dossier allows, with the lot that was weighed. */
export function ShellsSection({ number }: { number: number }): ReactElement {
  return (
    <FormSection {...{ id: 'shells', number, title: BRIEF_PAGE_WORDS.sections.shells }}>
      <ListAt
        at={['shells']}
        itemName={BRIEF_PAGE_WORDS.shell}
        addName={BRIEF_PAGE_WORDS.aShell}
        blank={() => ({})}
        item={(at) => <ShellFields at={at} />}
      />
    </FormSection>
  );
}

function ShellFields({ at }: { at: ValuePath }): ReactElement {
  const { document } = useBriefForm();
  const size = valueIn(document.value, [...at, 'size']);
  const hasRecord = valueIn(document.value, [...at, 'record']) !== undefined;
  const isOwn = hasRecord || size === BRIEF_PAGE_WORDS.ownSizeValue;
  return (
    <div className="field-line-up">
      {isOwn ? <TextAt at={[...at, 'size']} isStacked /> : <ChoiceAt at={[...at, 'size']} choices={SIZES} isStacked />}
      {isOwn && <TextAt at={[...at, 'record']} isStacked />}
      <TextAt at={[...at, 'lot']} isStacked />
      <ShellMass at={[...at, 'mass_mg']} />
    </div>
  );
}

function ShellMass({ at }: { at: ValuePath }): ReactElement {
  const { field } = useField(at);
  const { mean, sd, n } = BRIEF_PAGE_WORDS.mass;
  return (
    <div className="field-line-up" role="group" aria-label={field.label} id={field.id} tabIndex={-1}>
      <NumberAt at={[...at, 'mean']} unitOf="mean_mg" step={0.1} {...mean} isStacked />
      <NumberAt at={[...at, 'sd']} unitOf="sd_mg" step={0.1} {...sd} isStacked />
      <NumberAt at={[...at, 'n']} step={1} {...n} isStacked />
      {field.fault !== undefined && <FieldFault>{field.fault}</FieldFault>}
    </div>
  );
}
