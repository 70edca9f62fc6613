import type { ValuePath } from '@fillwright/contract/files';
import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import { useState, type ReactElement } from 'react';
import { ChoiceField } from '../../../fields/index.ts';
import { countIn } from '../brief-document.ts';
import { valueIn } from '../../../briefs/index.ts';
import { useBriefForm, useField, type Change } from '../form-context.ts';
import { choicesOf, ChoiceAt, NumberAt, QuantityAt, TextAt } from './fields-at.tsx';
import { FormSection } from './form-section.tsx';
import { ListAt } from './list-at.tsx';

const PART = ['parts', 0] as const;
const TARGET = [...PART, 'target'] as const;
const SUBSTANCES = [...TARGET, 'substances'] as const;
/** Keys of the target that belong to one rule only. */
const KEYS_OF_RULE: Readonly<Record<string, readonly string[]>> = {
  'fixed-fill': ['fill_mg'],
  'follows-assay': ['follows'],
  'fixed-total': ['total_mg', 'otherExcipients_mg'],
};
const RULES = choicesOf(BRIEF_PAGE_WORDS.rules);

/** What each capsule must hold: rule, figures, substances. */
export function DoseSection({ number }: { number: number }): ReactElement {
  const { document } = useBriefForm();
  const rule = valueIn(document.value, [...TARGET, 'rule']);
  return (
    <FormSection
      {...{
        id: 'dose',
        number,
        title: BRIEF_PAGE_WORDS.sections.dose,
        help: BRIEF_PAGE_WORDS.fields['parts.target'].help,
      }}
    >
      <TextAt at={[...PART, 'name']} />
      <ChoiceAt at={[...PART, 'dose']} choices={choicesOf(BRIEF_PAGE_WORDS.doses)} />
      <RuleField />
      {rule === 'fixed-fill' && <NumberAt at={[...TARGET, 'fill_mg']} step={1} />}
      {rule === 'fixed-total' && <NumberAt at={[...TARGET, 'total_mg']} step={1} />}
      {rule === 'fixed-total' && <NumberAt at={[...TARGET, 'otherExcipients_mg']} step={1} />}
      {rule === 'follows-assay' && <FollowsField />}
      <ListAt
        at={SUBSTANCES}
        itemName={BRIEF_PAGE_WORDS.substance}
        addName={BRIEF_PAGE_WORDS.aSubstance}
        blank={(n) => ({ name: BRIEF_PAGE_WORDS.newSubstance(n) })}
        item={(at) => <SubstanceFields at={at} />}
      />
      <QuantityAt at={[...PART, 'blendRsd_pct']} step={0.1} />
      <NumberAt at={[...PART, 'assayError_pct']} step={0.1} />
    </FormSection>
  );
}

/** Another rule takes the figures of the one before away: they would mean something else. Undo brings them back. */
function RuleField(): ReactElement {
  const { document, change } = useBriefForm();
  const { field, raw } = useField([...TARGET, 'rule']);
  return (
    <ChoiceField
      {...field}
      choices={RULES}
      value={typeof raw === 'string' ? raw : undefined}
      onCommit={(rule) => {
        const others = Object.entries(KEYS_OF_RULE).flatMap(([of, keys]) => (of === rule ? [] : keys));
        const given = others.filter((key) => valueIn(document.value, [...TARGET, key]) !== undefined);
        change([[...TARGET, 'rule'], rule], ...given.map((key): Change => [[...TARGET, key], undefined]));
      }}
    />
  );
}

function FollowsField(): ReactElement | undefined {
  const { document } = useBriefForm();
  const count = countIn(document.value, SUBSTANCES);
  const at = [...TARGET, 'follows'];
  if (count < 2 && valueIn(document.value, at) === undefined) return undefined;
  const names = Array.from({ length: count }, (_, i) => valueIn(document.value, [...SUBSTANCES, i, 'name']));
  const choices = names.filter((name) => typeof name === 'string').map((name) => ({ value: name, text: name }));
  return <ChoiceAt at={at} choices={choices} />;
}

function SubstanceFields({ at }: { at: ValuePath }): ReactElement {
  return (
    <>
      <TextAt at={[...at, 'name']} />
      <NumberAt at={[...at, 'claim_mg']} step={1} />
      <NumberAt at={[...at, 'saltFactor_ratio']} step={0.01} />
      <NumberAt at={[...at, 'assayAnhydrous_pct']} step={0.1} />
      <NumberAt at={[...at, 'water_pct']} step={0.1} />
      <NumberAt at={[...at, 'blendLoad_pct']} step={0.1} />
      <OverageFields at={[...at, 'overage']} />
    </>
  );
}

function OverageFields({ at }: { at: ValuePath }): ReactElement {
  const { document, change } = useBriefForm();
  const [isAsked, setAsked] = useState(false);
  const isGiven = valueIn(document.value, at) !== undefined;
  if (!isGiven && !isAsked)
    return (
      <button
        type="button"
        className="brief-more"
        onClick={() => {
          setAsked(true);
        }}
      >
        {BRIEF_PAGE_WORDS.anOverage}
      </button>
    );
  return (
    <fieldset className="list-field" id={`${at.join('-')}-overage`}>
      <legend className="list-field-label">{BRIEF_PAGE_WORDS.fields['parts.target.substances.overage'].label}</legend>
      <NumberAt at={[...at, 'amount_pct']} step={0.1} />
      <TextAt at={[...at, 'reason']} />
      <TextAt at={[...at, 'reference']} />
      <button
        type="button"
        className="brief-more"
        onClick={() => {
          setAsked(false);
          if (isGiven) change([at, undefined]);
        }}
      >
        {BRIEF_PAGE_WORDS.noOverage}
      </button>
    </fieldset>
  );
}
