import { OPEN_NUMBER_WORDS } from '@fillwright/words/en';
import { createElement, type ReactNode } from 'react';
import type { ShownEquation } from './equation/shown-equation.ts';
import type { EquationLine } from './latex/equation-lines.ts';
import { mathOf } from './latex/math-of.tsx';

/** An equation, and below each of its lines the same with the numbers put in, aligned at the relation. */
export function PanelEquation({ equation }: { readonly equation: Pick<ShownEquation, 'lines'> }): ReactNode {
  return equation.lines.map(({ letters, numbers }, i) => (
    // A line longer than a narrow screen scrolls, by keys too.
    <div className="open-number-equation" role="group" aria-label={OPEN_NUMBER_WORDS.equation} tabIndex={0} key={i}>
      {createElement(
        'math',
        { display: 'block' },
        createElement('mtable', {}, row(letters, 0), numbers ? row(numbers, 1) : null),
      )}
    </div>
  ));
}

function row({ left, relation, right }: EquationLine, key: number): ReactNode {
  if (relation === undefined || !right) return createElement('mtr', { key }, createElement('mtd', {}, mathOf(left)));
  return createElement(
    'mtr',
    { key },
    createElement('mtd', { className: 'open-number-left' }, mathOf(left)),
    createElement('mtd', {}, createElement('mo', {}, relation)),
    createElement('mtd', { className: 'open-number-right' }, mathOf(right)),
  );
}
