import { memo, type ReactNode } from 'react';
import type { SearchInput } from '@fillwright/engine/design';
import type { Powder } from '@fillwright/engine/materials';
import { FILL_WORDS } from '@fillwright/words/en';
import { QuantityField, writtenOf } from '../../fields/index.ts';
import type { Workbench } from '../../state/index.ts';
import { powderFields } from './powder-fields.ts';

interface PowderValuesProps {
  readonly input: SearchInput;
  readonly powder: Powder;
  readonly unit_pct: number;
  readonly unsure_pct: number;
  readonly setValue: Workbench['setValue'];
}

/** What is known of the powder, each with its source mark; changed in place, it goes into the brief. */
export const PowderValues = memo(function PowderValues(props: PowderValuesProps): ReactNode {
  const { input, powder, unit_pct, unsure_pct, setValue } = props;
  const { brief } = input;
  const fields = powderFields(brief, { powder, unit: { mean: unit_pct, sd: unsure_pct } });
  return (
    <section className="powder" aria-label={FILL_WORDS.powder(brief.parts[0].name)}>
      <h2 className="powder-name">{FILL_WORDS.powder(brief.parts[0].material.lot ?? brief.parts[0].name)}</h2>
      {fields.map(({ path, given, guess, ...field }) => (
        <QuantityField
          key={path.join('.')}
          {...field}
          value={given ? writtenOf(given) : undefined}
          guess={guess}
          isCompact
          onCommit={(value) => {
            setValue(path, value);
          }}
        />
      ))}
    </section>
  );
});
