/** One row of two texts side by side; a line that is missing on one side is undefined. */
export interface ComparedRow {
  readonly left: string | undefined;
  readonly right: string | undefined;
  readonly leftLine: number;
  readonly rightLine: number;
  /** The line is in both texts; else what stands on a side is only there. */
  readonly isSame: boolean;
}

/**
 * Two texts line by line, with as many lines in common as possible.
 *
 * @param left - the older text
 * @param right - the newer text
 * @returns rows in order; lines that took the place of others stand beside them
 */
export function comparedLines(left: string, right: string): readonly ComparedRow[] {
  const [a, b] = [left.split('\n'), right.split('\n')];
  const shorter = Math.min(a.length, b.length);
  let head = 0;
  while (head < shorter && a[head] === b[head]) head++;
  let tail = 0;
  while (tail < shorter - head && a.at(-1 - tail) === b.at(-1 - tail)) tail++;
  const pair = (i: number, j: number): ComparedRow => ({
    ...{ left: a[i], right: b[j], leftLine: i + 1, rightLine: j + 1, isSame: true },
  });
  const middle = paired(walked(a.slice(head, a.length - tail), b.slice(head, b.length - tail))).map((row) => ({
    ...row,
    leftLine: row.leftLine + head,
    rightLine: row.rightLine + head,
  }));
  return [
    ...a.slice(0, head).map((_, i) => pair(i, i)),
    ...middle,
    ...a.slice(a.length - tail).map((_, i) => pair(a.length - tail + i, b.length - tail + i)),
  ];
}

function walked(a: readonly string[], b: readonly string[]): readonly ComparedRow[] {
  const common = a.length * b.length > MOST_CELLS ? [] : commonLengths(a, b);
  const rows: ComparedRow[] = [];
  let [i, j] = [0, 0];
  while (i < a.length || j < b.length) {
    const isSame = i < a.length && j < b.length && a[i] === b[j];
    const isLeft = i < a.length && (j >= b.length || at(common, i + 1, j) >= at(common, i, j + 1));
    const row = { leftLine: i + 1, rightLine: j + 1, isSame };
    if (isSame) rows.push({ left: a[i++], right: b[j++], ...row });
    else if (isLeft) rows.push({ left: a[i++], right: undefined, ...row });
    else rows.push({ left: undefined, right: b[j++], ...row });
  }
  return rows;
}

/** Puts the lines that were taken away beside those that came in their place. */
function paired(rows: readonly ComparedRow[]): readonly ComparedRow[] {
  const done: ComparedRow[] = [];
  for (let at = 0; at < rows.length;) {
    const end = rows.findIndex((row, index) => index >= at && row.isSame);
    const run = rows.slice(at, end < 0 ? rows.length : Math.max(end, at + 1));
    const [lefts, rights] = [run.filter((row) => row.right === undefined), run.filter((row) => row.left === undefined)];
    const pairs = Math.max(lefts.length, rights.length);
    if (run[0]?.isSame === true) done.push(run[0]);
    else
      for (let i = 0; i < pairs; i++) {
        const { left, leftLine } = lefts[i] ?? { left: undefined, leftLine: run.at(-1)?.leftLine ?? 0 };
        const { right, rightLine } = rights[i] ?? { right: undefined, rightLine: run.at(-1)?.rightLine ?? 0 };
        done.push({ left, right, leftLine, rightLine, isSame: false });
      }
    at += run.length;
  }
  return done;
}

/** Beyond this what differs is shown as a block: the table of common runs would not fit. */
const MOST_CELLS = 4_000_000;

type Lengths = readonly (readonly number[])[];
const at = (lengths: Lengths, i: number, j: number): number => lengths[i]?.[j] ?? 0;

/** Length of the longest common run of lines from (i, j) on; the textbook table. */
function commonLengths(a: readonly string[], b: readonly string[]): Lengths {
  const lengths = Array.from({ length: a.length + 1 }, () => new Array<number>(b.length + 1).fill(0));
  for (let i = a.length - 1; i >= 0; i--)
    for (let j = b.length - 1; j >= 0; j--) {
      const longest =
        a[i] === b[j] ? at(lengths, i + 1, j + 1) + 1 : Math.max(at(lengths, i + 1, j), at(lengths, i, j + 1));
      const row = lengths[i];
      if (row) row[j] = longest;
    }
  return lengths;
}
