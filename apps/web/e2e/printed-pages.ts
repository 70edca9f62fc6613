import { inflateSync } from 'node:zlib';

const MM_PER_POINT = 25.4 / 72;

/** One page of a PDF file as Chromium writes it. */
export interface PrintedPage {
  readonly width_mm: number;
  readonly height_mm: number;
  /** A line for each run of text, in the order in which it is drawn. */
  readonly text: string;
  readonly imageCount: number;
  /** Straight lines, as long as on paper. */
  readonly lines: readonly Line[];
  /** What each path spans from the first to the last of its corners and ends of curves. */
  readonly paths: readonly Line[];
}

interface Line {
  readonly dx_mm: number;
  readonly dy_mm: number;
}

type Matrix = readonly [number, number, number, number, number, number];
type Glyphs = ReadonlyMap<string, string>;

/** Pages of a PDF file. Reads what Chromium 1xx writes (PDF 1.4, no object streams), and stops at anything else. */
export function printedPages(file: Uint8Array): readonly PrintedPage[] {
  const objects = objectsOf(Buffer.from(file));
  const pages = [...objects.values()].filter(({ head }) => /\/Type \/Page\b/.test(head));
  if (pages.length === 0) throw new Error('no page found in the PDF');
  return pages.map(({ head }) => {
    const [, width, height] = found(/\/MediaBox \[0 0 (\S+) ([^\]]+)\]/, head);
    const [, contents = ''] = found(/\/Contents (\d+) 0 R/, head);
    const named = groups(head, /\/([FX]\d+) (\d+) 0 R/g) as [string, string][];
    const fonts = new Map(named.map(([name, id]) => [name, glyphsOf(objects, id)]));
    return {
      width_mm: Number(width) * MM_PER_POINT,
      height_mm: Number(height) * MM_PER_POINT,
      imageCount: named.filter(([, id]) => objects.get(id)?.head.includes('/Subtype /Image')).length,
      ...drawnIn(objects.get(contents)?.body ?? '', fonts),
    };
  });
}

interface PdfObject {
  readonly head: string;
  /** Of a stream: its text, unpacked. */
  readonly body: string;
}

function objectsOf(file: Buffer): Map<string, PdfObject> {
  const objects = new Map<string, PdfObject>();
  for (const match of file.toString('latin1').matchAll(/(?:^|\n)(\d+) 0 obj\n([^]*?)(?:stream\r?\n|endobj)/g)) {
    const [whole, id, head] = match as unknown as [string, string, string];
    const at = match.index + whole.length;
    objects.set(id, { head, body: unpacked(head, file.subarray(at)) });
  }
  return objects;
}

/** Text of the stream that begins with `bytes`; of a font, an image, or no stream at all: none. */
function unpacked(head: string, bytes: Buffer): string {
  const length = /\/Length (\d+)/.exec(head)?.[1];
  if (length === undefined || /\/Length1|\/Subtype \/Image/.test(head)) return '';
  const stream = bytes.subarray(0, Number(length));
  return (head.includes('/FlateDecode') ? inflateSync(stream) : stream).toString('latin1');
}

/** What each code of a font means, by its map to Unicode. */
function glyphsOf(objects: ReadonlyMap<string, PdfObject>, font: string): Glyphs {
  const [map = ''] = groups(objects.get(font)?.head ?? '', /\/ToUnicode (\d+) 0 R/g).flat();
  const body = objects.get(map)?.body ?? '';
  const singles = groups(body, /beginbfchar\n([^]*?)endbfchar/g).flatMap(([section = '']) =>
    groups(section, /<(\w+)> <(\w+)>/g),
  );
  const ranges = groups(body, /beginbfrange\n([^]*?)endbfrange/g).flatMap(([section = '']) =>
    groups(section, /<(\w+)> <(\w+)> <(\w+)>/g),
  );
  return new Map([
    ...singles.map(([code = '', text = '']) => [code, unicode(text)] as const),
    ...ranges.flatMap(([from = '', to = '', text = '']) => rangeOf({ from, to, text })),
  ]);
}

function rangeOf({ from, to, text }: Record<'from' | 'to' | 'text', string>): [string, string][] {
  const first = parseInt(from, 16);
  return Array.from({ length: parseInt(to, 16) - first + 1 }, (_, i) => [
    hex(first + i, from.length),
    unicode(hex(parseInt(text, 16) + i, text.length)),
  ]);
}

function drawnIn(content: string, fonts: ReadonlyMap<string, Glyphs>): Pick<PrintedPage, 'text' | 'lines' | 'paths'> {
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let font: Glyphs = new Map();
  let text = '';
  /** What a run of glyphs is to be read as, where the file says so. */
  let readAs: string | undefined;
  const stack: Matrix[] = [];
  const numbers: number[] = [];
  const names: string[] = [];
  const pen = penOnPaper(() => matrix);
  const show = (run: string): void => {
    if (readAs === undefined) text += run;
  };
  const operators: Record<string, () => void> = {
    q: () => stack.push(matrix),
    Q: () => void (matrix = stack.pop() ?? matrix),
    cm: () => void (matrix = product(numbers.slice(-6) as unknown as Matrix, matrix)),
    Tf: () => void (font = fonts.get(names.at(-1) ?? '') ?? new Map()),
    ET: () => void (text += '\n'),
    EMC: () => void ([text, readAs] = [text + (readAs ?? ''), undefined]),
    m: () => {
      pen.begin(numbers);
    },
    l: () => {
      pen.line(numbers);
    },
    c: () => {
      pen.curve(numbers);
    },
    re: () => {
      const [x, y, dx, dy] = numbers.slice(-4) as [number, number, number, number];
      pen.begin([x, y]);
      pen.curve([x + dx, y + dy]);
    },
  };
  for (const token of content.match(/<[0-9A-F]*>|\((?:\\.|[^\\)])*\)|\/\w+|[^\s<>()[\]/]+/gi) ?? []) {
    if (/^[-+.\d]/.test(token)) numbers.push(Number(token));
    else if (token.startsWith('/')) names.push(token.slice(1));
    else if (token.startsWith('<FEFF') && names.at(-1) === 'ActualText') readAs = unicode(token.slice(5, -1));
    else if (token.startsWith('<')) show(shown(token.slice(1, -1), font));
    else if (token.startsWith('(')) show(shown(Buffer.from(unescaped(token), 'latin1').toString('hex'), font));
    else {
      operators[token]?.();
      numbers.length = 0;
    }
  }
  return { text, lines: pen.lines, paths: pen.paths };
}

type Point = readonly [x: number, y: number];

/** Follows the corners of paths; each method takes the numbers before an operator, of which the last two are where it goes. */
function penOnPaper(matrix: () => Matrix): {
  readonly lines: readonly Line[];
  readonly paths: readonly Line[];
  readonly begin: (numbers: readonly number[]) => void;
  readonly line: (numbers: readonly number[]) => void;
  readonly curve: (numbers: readonly number[]) => void;
} {
  const lines: Line[] = [];
  const paths: Line[] = [];
  let corners: Point[] = [];
  const to = (numbers: readonly number[]): void => {
    corners.push(numbers.slice(-2) as unknown as Point);
    const [xs, ys] = [corners.map(([x]) => x), corners.map(([, y]) => y)];
    const spans = { dx: Math.max(...xs) - Math.min(...xs), dy: Math.max(...ys) - Math.min(...ys) };
    paths[paths.length - 1] = onPaper(spans, matrix());
  };
  return {
    ...{ lines, paths },
    begin: (numbers) => {
      corners = [];
      paths.push({ dx_mm: 0, dy_mm: 0 });
      to(numbers);
    },
    line: (numbers) => {
      const [x, y] = corners.at(-1) ?? [NaN, NaN];
      to(numbers);
      const [toX, toY] = corners.at(-1) ?? [NaN, NaN];
      lines.push(onPaper({ dx: toX - x, dy: toY - y }, matrix()));
    },
    curve: to,
  };
}

function shown(codes: string, font: Glyphs): string {
  const width = [...font.keys()][0]?.length ?? 4;
  const each = codes.toUpperCase().match(new RegExp(`.{${width}}`, 'g')) ?? [];
  return each.map((code) => font.get(code) ?? '\uFFFD').join('');
}

/** A string in parentheses; Chromium escapes what it must by `\` and the character, or by three octal digits. */
function unescaped(token: string): string {
  return token
    .slice(1, -1)
    .replace(/\\([0-7]{3}|.)/gs, (_, one: string) =>
      one.length === 3 ? String.fromCharCode(parseInt(one, 8)) : (CONTROLS[one] ?? one),
    );
}
const CONTROLS: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };

function product(a: Matrix, b: Matrix): Matrix {
  return [
    a[0] * b[0] + a[1] * b[2],
    a[0] * b[1] + a[1] * b[3],
    a[2] * b[0] + a[3] * b[2],
    a[2] * b[1] + a[3] * b[3],
    a[4] * b[0] + a[5] * b[2] + b[4],
    a[4] * b[1] + a[5] * b[3] + b[5],
  ];
}

function onPaper({ dx, dy }: { dx: number; dy: number }, matrix: Matrix): Line {
  return {
    dx_mm: Math.abs(dx * matrix[0] + dy * matrix[2]) * MM_PER_POINT,
    dy_mm: Math.abs(dx * matrix[1] + dy * matrix[3]) * MM_PER_POINT,
  };
}

/** The groups of each match. */
function groups(text: string, pattern: RegExp): string[][] {
  return [...text.matchAll(pattern)].map(([, ...each]) => each);
}

function found(pattern: RegExp, text: string): RegExpExecArray {
  const match = pattern.exec(text);
  if (!match) throw new Error(`the PDF has no ${String(pattern)}`);
  return match;
}

const hex = (value: number, length: number): string => value.toString(16).toUpperCase().padStart(length, '0');
const unicode = (text: string): string => Buffer.from(text, 'hex').swap16().toString('utf16le');
