import { BRIEF_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactElement } from 'react';
import { ChoiceField } from '../../../fields/index.ts';
import { valueIn } from '../../../briefs/index.ts';
import { faultsAt } from '../faults-at.ts';
import { useBriefForm, useField } from '../form-context.ts';
import { choicesOf, FlagAt, NumberAt, QuantityAt, TextAt } from './fields-at.tsx';
import { FormSection } from './form-section.tsx';

const MATERIAL = ['parts', 0, 'material'] as const;
const COMPRESSION = [...MATERIAL, 'compression'] as const;
const LAWS = choicesOf(BRIEF_PAGE_WORDS.laws);
const RARE = [
  ['trueDensity_g_per_mL', 0.01],
  ['refill_ratio', 0.05],
  ['captured_ratio', 0.01],
  ['axialSpringback_pct', 0.5],
  ['radialSpringback_pct', 0.1],
  ['wallFriction_ratio', 0.01],
  ['lateralStress_ratio', 0.01],
] as const;

/** The powder as the floor knows it: what is asked first, what helps most next, the rest folded away. */
export function PowderSection({ number }: { number: number }): ReactElement {
  const { document, faults } = useBriefForm();
  const isOpen = RARE.some(([key]) => {
    const value = valueIn(document.value, [...MATERIAL, key]);
    return (value !== undefined && value !== 'guess') || faultsAt(faults, [...MATERIAL, key], 'within').length > 0;
  });
  return (
    <FormSection
      {...{ id: 'powder', number, title: BRIEF_PAGE_WORDS.sections.powder }}
      help={BRIEF_PAGE_WORDS.fields['parts.material'].help}
    >
      <TextAt at={[...MATERIAL, 'lot']} />
      <QuantityAt at={[...MATERIAL, 'bulkDensity_g_per_mL']} step={0.01} />
      <QuantityAt at={[...MATERIAL, 'tappedDensity_g_per_mL']} step={0.01} />
      <QuantityAt at={[...MATERIAL, 'feedDensity_g_per_mL']} step={0.01} />
      <CompressionFields />
      <fieldset className="list-field">
        <legend className="list-field-label">{BRIEF_PAGE_WORDS.fields['parts.material.slug'].label}</legend>
        <p className="field-help">{BRIEF_PAGE_WORDS.fields['parts.material.slug'].help}</p>
        <FlagAt at={[...MATERIAL, 'slug', 'isHeld']} />
        <NumberAt at={[...MATERIAL, 'slug', 'force_N']} step={5} />
      </fieldset>
      <details className="brief-rare" open={isOpen}>
        <summary>{BRIEF_PAGE_WORDS.moreOfPowder}</summary>
        {RARE.map(([key, step]) => (
          <QuantityAt key={key} at={[...MATERIAL, key]} step={step} />
        ))}
      </details>
    </FormSection>
  );
}

/** Another law takes the constants of the one before away: they mean nothing in it. Undo brings them back. */
function CompressionFields(): ReactElement {
  const { document, change } = useBriefForm();
  const { field } = useField([...COMPRESSION, 'law']);
  const whole = useField(COMPRESSION);
  const law = valueIn(document.value, [...COMPRESSION, 'law']);
  const chosen = typeof law === 'string' ? law : 'guess';
  return (
    <>
      <ChoiceField
        {...field}
        isOptional
        fault={field.fault ?? whole.field.fault}
        choices={LAWS}
        value={chosen}
        onCommit={(to = 'guess') => {
          change([COMPRESSION, to === 'guess' ? 'guess' : { law: to }]);
        }}
      />
      <ConstantsOf law={chosen} />
    </>
  );
}

function ConstantsOf({ law }: { law: string }): ReactElement | undefined {
  const at = (key: string): readonly (string | number)[] => [...COMPRESSION, key];
  switch (law) {
    case 'kawakita':
      return (
        <>
          <QuantityAt at={at('a_frac')} step={0.01} isAsked />
          <QuantityAt at={at('b_per_MPa')} step={0.1} />
          <NumberAt at={at('initialDensity_g_per_mL')} step={0.01} />
        </>
      );
    case 'walker':
      return (
        <>
          <QuantityAt at={at('slope_pct')} step={1} />
          <QuantityAt at={at('intercept_pct')} step={1} />
          <NumberAt at={at('referencePressure_MPa')} step={0.1} />
          <NumberAt at={at('trueDensity_g_per_mL')} step={0.01} />
        </>
      );
    case 'one-pair':
    case 'one-pair-by-force':
      return (
        <>
          <QuantityAt at={at('density_g_per_mL')} step={0.01} />
          {law === 'one-pair' ? (
            <NumberAt at={at('pressure_MPa')} step={0.1} />
          ) : (
            <NumberAt at={at('force_N')} step={5} />
          )}
          <QuantityAt at={at('a_frac')} step={0.01} />
        </>
      );
    default:
      return undefined;
  }
}
