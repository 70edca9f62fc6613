import { ENTRIES } from '@fillwright/engine/register';
import { createElement } from 'react';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import { mathOf } from './math-of.tsx';
import { numbersPutIn } from './numbers-put-in.ts';
import { parseLatex } from './parse-latex.ts';

const mathml = (latex: string): string => renderToStaticMarkup(createElement('math', {}, mathOf(parseLatex(latex))));
const inside = (latex: string): string => mathml(latex).replace(/^<math>|<\/math>$/g, '');

// Expected elements by hand, from MathML Core (W3C): mfrac, msqrt, msub, msup, msubsup, mover, mi, mn, mo, mtext, mspace.
describe('parseLatex', () => {
  test.each([
    ['a', '<mi>a</mi>'],
    ['\\rho_0', '<msub><mi>ρ</mi><mn>0</mn></msub>'],
    ['m_{k-1}', '<msub><mi>m</mi><mrow><mi>k</mi><mo>−</mo><mn>1</mn></mrow></msub>'],
    ['r_i^2', '<msubsup><mi>r</mi><mi>i</mi><mn>2</mn></msubsup>'],
    ['\\sigma^2_{mean}', '<msubsup><mi>σ</mi><mi>mean</mi><mn>2</mn></msubsup>'],
    ['\\frac{W}{\\rho}', '<mfrac><mi>W</mi><mi>ρ</mi></mfrac>'],
    ['\\sqrt{m}', '<msqrt><mi>m</mi></msqrt>'],
    ['\\bar X', '<mover accent="true"><mi>X</mi><mo>¯</mo></mover>'],
    ['CI', '<mi>CI</mi>'],
    ['dW', '<mrow><mi>d</mi><mi>W</mi></mrow>'],
    ['2p', '<mrow><mn>2</mn><mi>p</mi></mrow>'],
    ['a\\,b', '<mrow><mi>a</mi><mspace width="0.167em"></mspace><mi>b</mi></mrow>'],
    ['\\text{at most 2}', '<mtext>at most 2</mtext>'],
    [
      '\\operatorname{lcm}(g)',
      '<mrow><mi>lcm</mi><mo stretchy="false">(</mo><mi>g</mi><mo stretchy="false">)</mo></mrow>',
    ],
    ['\\left(r\\right)', '<mrow><mo>(</mo><mi>r</mi><mo>)</mo></mrow>'],
    ['\\lceil n\\rceil', '<mrow><mo stretchy="false">⌈</mo><mi>n</mi><mo stretchy="false">⌉</mo></mrow>'],
    [
      '\\#\\{w\\}\\le 2',
      '<mrow><mo>#</mo><mo stretchy="false">{</mo><mi>w</mi><mo stretchy="false">}</mo><mo>≤</mo><mn>2</mn></mrow>',
    ],
  ])('golden: %s', (latex, expected) => {
    expect(inside(latex)).toBe(expected);
  });

  test.each(ENTRIES)('property: the equation of $id converts without leftovers', ({ equation }) => {
    const elements = mathml(equation);
    expect(elements).not.toMatch(/\\|&amp;|undefined|[\^_]/);
    // Every letter and digit of the source that is no command comes out again, in the same order.
    const kept = equation
      .replace(/\\(?:begin|end)\{\w+\}/g, '')
      .replace(/\\(?:text|operatorname)\{([^{}]*)\}/g, '$1')
      .replace(/\\([a-zA-Z]+)/g, (_, name: string) => (['ln', 'log'].includes(name) ? name : ''))
      .replace(/[^a-zA-Z0-9.]/g, '');
    const shown = elements.replace(/<[^>]*>|&[a-z]+;/g, '').replace(/[^a-zA-Z0-9.]/g, '');
    expect(shown.split('').sort()).toEqual(kept.split('').sort());
  });

  test.each([
    '\\unknown',
    '\\frac{a}',
    'a^',
    '^2',
    '{a',
    'a}',
    '\\left(a',
    'x_ab',
    '\\begin{matrix}a\\end{matrix}',
    '\\',
  ])('refuses: %s', (latex) => {
    expect(() => parseLatex(latex)).toThrow();
  });
});

const filled = (latex: string, printed: Record<string, string>): string =>
  renderToStaticMarkup(createElement('math', {}, mathOf(numbersPutIn(parseLatex(latex), printed))))
    .replace(/<mspace[^>]*>/g, ' ')
    .replace(/<[^>]*>/g, '');

// By hand: what a person would write on paper.
describe('numbersPutIn', () => {
  test.each([
    [
      'm_2 = m_1 + f\\,\\rho_0 A\\,p_2',
      { m_2: '392', m_1: '351', f: '1', ρ_0: '0.54', A: '34.2', p_2: '2.2' },
      '392=351+1×0.54×34.2×2.2',
    ],
    ['L = H\\,(1+e_a)', { L: '16.3', H: '15.5', e_a: '5 %' }, '16.3=15.5×(1+5 %)'],
    ['P = \\frac{F}{\\pi D^2/4}', { F: '26', D: '6.6' }, 'P=26π×6.62/4'],
    ['C(n) = n', { n: '3' }, 'C(3)=3'],
    ['b\\,t^2', { t: '2.2 %' }, 'b×(2.2 %)2'],
    ['s\\,(r - r_0)', { s: '−1', r: '21.5', r_0: '−18' }, '−1×(21.5−(−18))'],
    ['S_t + t', { t: '4' }, 'St+4'],
    ['n = r\\,\\lfloor q/r \\rfloor', { n: '380', r: '5', q: '381.1' }, '380=5×⌊381.1/5⌋'],
    ['x = y', {}, 'x=y'],
  ])('golden: %s', (latex, printed, expected) => {
    expect(filled(latex, printed)).toBe(expected);
  });
});
