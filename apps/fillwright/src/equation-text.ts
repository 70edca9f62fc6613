/**
 * An equation of the catalogue as one line of plain letters: `\frac{W}{\rho A}` is `W/(rho A)`.
 *
 * @param latex - as the catalogue holds it
 * @returns the line
 */
export function equationText(latex: string): string {
  let text = latex
    .replaceAll('\\\\', '; ')
    .replace(/\\\{|\\lceil/g, (open) => (open === '\\{' ? '(' : ' ceil('))
    .replace(/\\\}|\\rceil/g, ')')
    .replace(/\\#/g, 'number')
    .replace(/\\(begin|end)\{\w+\}|&|\\left|\\right|\\!/g, '')
    .replace(/\\(,|quad|qquad| )/g, ' ')
    .replace(/\\bar/g, ' mean');
  for (let before = ''; before !== text;) {
    before = text;
    text = text
      .replace(/\\(?:text|operatorname)\{([^{}]*)\}/g, '$1')
      .replace(/([_^])\{([^{}]*)\}/g, (_, mark: string, inner: string) => mark + grouped(inner))
      .replace(/\\sqrt\{([^{}]*)\}/g, ' sqrt($1)')
      .replace(
        /\\t?frac\{([^{}]*)\}\{([^{}]*)\}/g,
        (_, over: string, under: string) => ` ${grouped(over)}/${grouped(under)} `,
      );
  }
  return text
    .replace(/\\le(?![a-z])/g, ' <= ')
    .replace(/\\sim(?![a-z])/g, ' ~ ')
    .replace(/\\mid(?![a-z])/g, ' | ')
    .replace(/\\infty/g, 'inf')
    .replace(/\\([a-zA-Z]+)/g, ' $1 ')
    .replace(/\s+/g, ' ')
    .replace(/ (?=[_^),;:])|(?<=[(^]) /g, '')
    .trim();
}

function grouped(part: string): string {
  return /^[\w.\\]*$/.test(part) ? part : `(${part.trim()})`;
}
