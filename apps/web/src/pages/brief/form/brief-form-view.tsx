import type { ReactElement } from 'react';
import { DoseSection } from './dose-section.tsx';
import { FillerSection, ProductSection, RecordSection, TestsSection } from './other-sections.tsx';
import { PowderSection } from './powder-section.tsx';
import { ShellsSection } from './shells-section.tsx';

/** Every value of the brief, in the order in which a person thinks about a product. */
export function BriefFormView(): ReactElement {
  return (
    <>
      <ProductSection number={1} />
      <DoseSection number={2} />
      <PowderSection number={3} />
      <ShellsSection number={4} />
      <FillerSection number={5} />
      <TestsSection number={6} />
      <RecordSection number={7} />
    </>
  );
}
