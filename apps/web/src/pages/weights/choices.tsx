import type { TypedFacts, WeightsSheet } from '@fillwright/contract/documents';
import type { WheelOfRevolution } from '@fillwright/engine/weights';
import { WEIGHT_TEST_NAMES, WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { ChoiceField, NumberField } from '../../fields/index.ts';

interface ChoicesProps {
  readonly sheet: WeightsSheet;
  readonly change: (part: Partial<WeightsSheet>) => void;
  readonly wheel: WheelOfRevolution | undefined;
  /** No product says target, limits and tests. */
  readonly isFree: boolean;
}

const words = WEIGHTS_PAGE_WORDS.choices;
const listed = <Value extends string>(texts: Readonly<Record<Value, string>>): { value: Value; text: string }[] =>
  (Object.entries(texts) as [Value, string][]).map(([value, text]) => ({ value, text }));
const TESTS = ['uniformity-of-mass', 'dosage-units-by-mass', 'supplement-mass'] as const;

/** What the person says about the weights. */
export function Choices({ sheet, change, wheel, isFree }: ChoicesProps): ReactNode {
  return (
    <div className="weights-choices">
      <ChoiceField
        isStacked
        label={words.purpose}
        help={words.purposeHelp}
        value={sheet.purpose}
        choices={listed(words.purposes)}
        onCommit={(purpose) => {
          change({ purpose: purpose as WeightsSheet['purpose'] });
        }}
      />
      <ChoiceField
        isStacked
        label={words.basis}
        help={words.basisHelp}
        value={sheet.basis}
        choices={listed(words.bases)}
        onCommit={(basis) => {
          change({ basis: basis as WeightsSheet['basis'] });
        }}
      />
      <ChoiceField
        isStacked
        label={words.unit}
        help={words.unitHelp}
        value={sheet.unit ?? 'written'}
        choices={listed({ written: words.noUnit, mg: 'mg', g: 'g' })}
        onCommit={(unit) => {
          change({ unit: unit === 'mg' || unit === 'g' ? unit : undefined });
        }}
      />
      <label className="weights-check">
        <input
          type="checkbox"
          checked={sheet.isRevolution}
          onChange={(event) => {
            change({ isRevolution: event.target.checked });
          }}
        />
        <span>
          {words.revolution}.{' '}
          <span className="quiet">
            {wheel ? words.revolutionHelp({ groups: wheel.groupCount, columns: wheel.columnCount }) : words.noWheel}
          </span>
        </span>
      </label>
      {isFree ? <Typed sheet={sheet} change={change} /> : <Assay sheet={sheet} change={change} />}
    </div>
  );
}

/** For release the assay of the lot counts, and no brief knows it. */
function Assay({ sheet, change }: Pick<ChoicesProps, 'sheet' | 'change'>): ReactNode {
  if (sheet.purpose === 'trial') return null;
  return (
    <NumberField
      isStacked
      isOptional
      label={words.content}
      help={words.contentHelp}
      unit="%"
      range={{ above: 0, max: 200 }}
      value={sheet.typed.content_pct}
      onCommit={(content_pct) => {
        change({ typed: { ...sheet.typed, content_pct } });
      }}
    />
  );
}

const NUMBERS = [
  { key: 'target_mg', label: words.target, help: words.targetHelp, unit: 'mg', max: 5000 },
  { key: 'meanAction_pct', label: words.mean, help: words.meanHelp, unit: '%', max: 100 },
  { key: 'individualAction_pct', label: words.single, help: words.singleHelp, unit: '%', max: 100 },
  { key: 'content_pct', label: words.content, help: words.contentHelp, unit: '%', max: 200 },
] as const;
const COUNTS = [
  { key: 'groupCount', label: words.groups },
  { key: 'columnCount', label: words.columns },
] as const;

function Typed({ sheet, change }: Pick<ChoicesProps, 'sheet' | 'change'>): ReactNode {
  const { typed } = sheet;
  const set = (part: Partial<TypedFacts>): void => {
    change({ typed: { ...typed, ...part } });
  };
  const { tests } = typed;
  return (
    <>
      {NUMBERS.map(({ key, max, ...field }) => (
        <NumberField
          key={key}
          isStacked
          isOptional
          {...field}
          range={{ above: 0, max }}
          value={typed[key]}
          onCommit={(value) => {
            set({ [key]: value });
          }}
        />
      ))}
      {sheet.isRevolution
        ? COUNTS.map(({ key, label }) => (
            <NumberField
              key={key}
              isStacked
              isWhole
              {...{ label, help: words.countHelp, unit: '1' }}
              range={{ min: 1, max: 1000 }}
              value={typed[key]}
              onCommit={(value) => {
                set({ [key]: value });
              }}
            />
          ))
        : null}
      <fieldset className="weights-tests">
        <legend>{words.tests}</legend>
        {TESTS.map((test) => (
          <label key={test} className="weights-check">
            <input
              type="checkbox"
              checked={tests.includes(test)}
              onChange={(event) => {
                set({ tests: TESTS.filter((each) => (each === test ? event.target.checked : tests.includes(each))) });
              }}
            />
            {WEIGHT_TEST_NAMES[test]}
          </label>
        ))}
      </fieldset>
    </>
  );
}
