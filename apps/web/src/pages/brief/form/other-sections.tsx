import type { ValuePath } from '@fillwright/contract/files';
import { BRIEF_PAGE_WORDS, FILE_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { ChoiceField, FieldFault } from '../../../fields/index.ts';
import { useWorkbench, type NamedFile } from '../../../state/index.ts';
import { useField } from '../form-context.ts';
import { choicesOf, ChoiceAt, NumberAt, QuantityAt, TextAt } from './fields-at.tsx';
import { FormSection } from './form-section.tsx';
import { ListAt } from './list-at.tsx';
import { choiceOfPath, useFillers } from './use-fillers.ts';

const TESTS = choicesOf(BRIEF_PAGE_WORDS.tests);
const USES = choicesOf(BRIEF_PAGE_WORDS.uses);
const GENERIC = { value: 'generic', text: BRIEF_PAGE_WORDS.generic };
const BY_PATH = { value: 'by path', text: FILE_WORDS.otherPath };

export function ProductSection({ number }: { number: number }): ReactElement {
  return (
    <FormSection {...{ id: 'product', number, title: BRIEF_PAGE_WORDS.sections.product }}>
      <TextAt at={['product', 'code']} />
      <TextAt at={['product', 'name']} />
      <ListAt
        at={['cautions']}
        itemName={BRIEF_PAGE_WORDS.caution}
        addName={BRIEF_PAGE_WORDS.aCaution}
        blank={() => ''}
        isPlain
        item={(at) => <TextAt at={at} label={BRIEF_PAGE_WORDS.cautionLabel(Number(at.at(-1)) + 1)} help="" isLong />}
      />
    </FormSection>
  );
}

export function FillerSection({ number }: { number: number }): ReactElement {
  const { field, raw, set } = useField(['filler']);
  const named = useWorkbench(({ brief }) => (brief.kind === 'reading' ? '' : brief.files.map(versionOf).join(' ')));
  const fillers = useFillers(named);
  const path = typeof raw === 'string' && raw !== 'generic' ? raw : undefined;
  const chosen = path === undefined ? undefined : choiceOfPath(fillers, path);
  const isByPath = path !== undefined && chosen === undefined;
  return (
    <FormSection {...{ id: 'filler', number, title: BRIEF_PAGE_WORDS.sections.filler }}>
      <ChoiceField
        {...field}
        id={isByPath ? `${field.id}-kind` : field.id}
        fault={isByPath ? undefined : field.fault}
        choices={[GENERIC, ...fillers, BY_PATH]}
        value={isByPath ? BY_PATH.value : (chosen ?? (raw === 'generic' ? raw : undefined))}
        onCommit={(to) => {
          set(to === BY_PATH.value ? BRIEF_PAGE_WORDS.newFiller : to);
        }}
      />
      {isByPath && (
        <TextAt at={['filler']} label={BRIEF_PAGE_WORDS.fillerFile} help={BRIEF_PAGE_WORDS.fillerFileHelp} />
      )}
      <RangeFields at={['validated', 'pinDepth']} step={0.1} />
      <RangeFields at={['validated', 'discHeight']} step={0.5} />
    </FormSection>
  );
}

function versionOf({ kind, id, version = 0 }: NamedFile): string {
  return `${kind}/${id}/${String(version)}`;
}

function RangeFields({ at, step }: { at: ValuePath; step: number }): ReactElement {
  const { field } = useField(at);
  return (
    <fieldset className="list-field" id={field.id} tabIndex={-1}>
      <legend className="list-field-label">
        {field.label}, {BRIEF_PAGE_WORDS.validated}
      </legend>
      {field.fault !== undefined && <FieldFault>{field.fault}</FieldFault>}
      <div className="field-line-up">
        <NumberAt at={[...at, 'min_mm']} step={step} label={BRIEF_PAGE_WORDS.from} isStacked />
        <NumberAt at={[...at, 'max_mm']} step={step} label={BRIEF_PAGE_WORDS.to} isStacked />
      </div>
    </fieldset>
  );
}

export function TestsSection({ number }: { number: number }): ReactElement {
  const { field } = useField(['inProcess']);
  return (
    <FormSection {...{ id: 'tests', number, title: BRIEF_PAGE_WORDS.sections.tests, help: field.help }}>
      <div id={field.id} tabIndex={-1}>
        {field.fault !== undefined && <FieldFault>{field.fault}</FieldFault>}
      </div>
      <NumberAt at={['inProcess', 'sampleCount']} step={1} />
      <NumberAt at={['inProcess', 'meanAction_pct']} step={0.5} />
      <NumberAt at={['inProcess', 'individualAction_pct']} step={0.5} />
      <NumberAt at={['inProcess', 'individualAlert_pct']} step={0.5} />
      <ListAt
        at={['route']}
        itemName={BRIEF_PAGE_WORDS.test}
        addName={BRIEF_PAGE_WORDS.aTest}
        blank={() => ({})}
        isPlain
        item={(at) => (
          <div className="field-line-up">
            <ChoiceAt at={[...at, 'test']} choices={TESTS} isStacked />
            <ChoiceAt at={[...at, 'use']} choices={USES} isStacked />
          </div>
        )}
      />
    </FormSection>
  );
}

export function RecordSection({ number }: { number: number }): ReactElement {
  const { field } = useField(['record']);
  return (
    <FormSection {...{ id: 'record', number, title: BRIEF_PAGE_WORDS.sections.record, help: field.help }}>
      <QuantityAt at={['record', 'unit_pct']} step={0.1} />
      <QuantityAt at={['record', 'betweenTimes_pct']} step={0.1} />
      <NumberAt at={['record', 'setUpSampleCount']} step={1} />
    </FormSection>
  );
}
