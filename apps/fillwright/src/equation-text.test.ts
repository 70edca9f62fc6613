import { ENTRIES } from '@fillwright/engine/register';
import { describe, expect, test } from 'vitest';
import { equationText } from './equation-text.ts';

// Plain forms written by hand.
describe('equationText', () => {
  test.each([
    ['F = 9.80665\\,F_{kgf}', 'F = 9.80665 F_kgf'],
    ['m = \\frac{c\\,f\\,(1+o)}{a\\,(1-w)}', 'm = (c f (1+o))/(a (1-w))'],
    ['V = \\pi h^2\\left(r-\\tfrac{h}{3}\\right)\\ (h \\le r)', 'V = pi h^2(r- h/3) (h <= r)'],
    ['\\ln\\frac{1}{1-D} = \\frac{P}{P_y} + A', 'ln 1/(1-D) = P/P_y + A'],
    ['x = \\frac{1-e^{-4\\mu K L/D}}{\\rho_0 A}', 'x = (1-e^(-4 mu K L/D))/(rho_0 A)'],
    ['\\begin{aligned} d &= r_i-\\sqrt{r_i^2-r_s^2} \\\\ l &= 2 \\end{aligned}', 'd = r_i- sqrt(r_i^2-r_s^2); l = 2'],
    ['\\text{table lookup}', 'table lookup'],
    ['b \\sim N\\!\\left(0,\\tfrac{v_n}{\\lceil n/B\\rceil}\\right)', 'b ~ N(0, v_n/(ceil(n/B)))'],
    ['\\#\\{w_i>p\\,\\bar w\\}\\le 2', 'number(w_i>p mean w) <= 2'],
    ['\\bar\\sigma = \\sigma_{top}', 'mean sigma = sigma_top'],
  ])('golden: %s', (latex, text) => {
    expect(equationText(latex)).toBe(text);
  });
  test('property: nothing of the notation is left in any equation of the catalogue', () => {
    for (const { equation } of ENTRIES) expect(equationText(equation)).toMatch(/^[^\\{}&]+$/);
  });
});
