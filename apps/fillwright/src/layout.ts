/** Width the terminal reports are made for. */
const WIDTH = 112;

/**
 * Breaks a text at blanks so that it stands in a column; a number stays with its unit.
 *
 * @param label - what stands before the first line, already padded
 * @param text - the text
 * @returns the lines, the later ones indented as far as the label is long
 */
export function wrapped(label: string, text: string): string {
  const lines = [''];
  for (const word of text.replace(/(?<=\d) (?=%|mg|mm|N\b|g\/mL)/g, '\u00A0').split(/[ \n]+/)) {
    const last = lines.at(-1) ?? '';
    if (last !== '' && label.length + last.length + 1 + word.length > WIDTH) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines
    .map((line, i) => (i === 0 ? label : ' '.repeat(label.length)) + line.replaceAll('\u00A0', ' '))
    .join('\n');
}

/**
 * Rows under each other, every column as wide as its widest cell.
 *
 * @param rows - cells as text
 * @param indent - blanks before each row
 * @returns the lines
 */
export function columns(rows: readonly (readonly string[])[], indent = ''): string {
  const widths = (rows[0] ?? []).map((_, i) => Math.max(...rows.map((row) => (row[i] ?? '').length)));
  return rows
    .map(
      (row) =>
        indent +
        row
          .map((cell, i) => cell.padEnd(widths[i] ?? 0))
          .join('  ')
          .trimEnd(),
    )
    .join('\n');
}
