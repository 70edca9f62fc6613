/** A token of LaTeX. */
export type LatexToken =
  | { readonly kind: 'command'; readonly name: string }
  /** A command that takes words as they are: `\text{at most}`. */
  | { readonly kind: 'words'; readonly command: string; readonly words: string }
  | { readonly kind: 'letters' | 'digits' | 'mark'; readonly text: string };

const PATTERN =
  /\\(text|operatorname|begin|end)\{([^{}]*)\}|\\([a-zA-Z]+|.)|([a-zA-Z]+)|(\d+(?:\.\d+)?)|(\s+)|([^\\\s])/gsy;

/**
 * Cuts LaTeX into tokens; white space between them means nothing.
 *
 * @param latex - an equation of the catalogue
 * @returns the tokens
 * @throws Error when a backslash stands alone at the end
 */
export function latexTokens(latex: string): readonly LatexToken[] {
  const found = [...latex.matchAll(PATTERN)];
  const length = found.reduce((sum, [all]) => sum + all.length, 0);
  if (length !== latex.length) throw new Error(`not LaTeX from here on: ${latex.slice(length)}`);
  return found.flatMap(([, wordy, words, name, letters, digits, blank, mark]): LatexToken[] => {
    if (wordy !== undefined) return [{ kind: 'words', command: wordy, words: words ?? '' }];
    if (name !== undefined) return [{ kind: 'command', name }];
    if (letters !== undefined) return [{ kind: 'letters', text: letters }];
    if (digits !== undefined) return [{ kind: 'digits', text: digits }];
    return blank === undefined && mark !== undefined ? [{ kind: 'mark', text: mark }] : [];
  });
}
