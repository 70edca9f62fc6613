import { readFileSync, readdirSync } from 'node:fs';
import { allowedRange, judgeCase } from '@fillwright/engine/catalogue';
import { ENTRIES, findEntry, ROOMS } from '@fillwright/engine/register';
import { plainNumber } from '@fillwright/words/numbers';

const GOLDEN = new URL('../../packages/engine/golden/', import.meta.url);
const NOTICE = '<!-- Made by `npm run generate` from the catalogue of methods. Do not edit. -->\n';

/** The methods manual: a page for each room, a section for each method, and an index. */
export function methodsManual() {
  const cases = checkCases();
  const rooms = Object.entries(ROOMS);
  const pages = rooms.map(([room, entries]) => [
    `${room}.md`,
    [NOTICE, `# Methods of \`${room}\`\n`, ...entries.map((entry) => section(entry, cases))].join('\n'),
  ]);
  return { ...Object.fromEntries(pages), 'index.md': index(rooms) };
}

function index(rooms) {
  const list = ([room, entries]) => [
    `\n## ${room}\n`,
    ...entries.map(({ id, title }) => `- [\`${id}\`](${room}.md#${anchor(id)}) ${title}`),
  ];
  return `${[NOTICE, `# Methods manual\n\n${ENTRIES.length} methods, by room.`, ...rooms.flatMap(list)].join('\n')}\n`;
}

/** The anchor of a heading that holds nothing but an id. */
function anchor(id) {
  return id.replace('.', '');
}

function section(entry, cases) {
  const { id, title, equation, inputs, outputs, sources, validity, restsOn } = entry;
  return [
    `## \`${id}\`\n\n**${title}**\n\n$$${equation}$$\n`,
    table(
      ['input', 'meaning', 'unit', 'allowed'],
      inputs.map((field) => row(field, 'may be left out')),
    ),
    table(
      ['output', 'meaning', 'unit', 'range'],
      outputs.map((field) => row(field, 'may be absent')),
    ),
    sources.map(({ text, read }) => `- Source: ${text} (${read})`).join('\n'),
    `- Validity: ${validity}\n- Rests on: ${restsOn}\n`,
    checks(cases.filter(({ method }) => method === id)),
  ].join('\n');
}

function row(field, optional) {
  const isNumber = field.kind === 'number' || field.kind === 'integer';
  const kinds = { flag: 'true or false', text: 'text', group: 'values by name' };
  const range = isNumber ? allowedRange({ ...field, unit: '1' }) : (field.choices?.join('; ') ?? kinds[field.kind]);
  const length = field.list ? `; list of ${field.list.min} to ${field.list.max}` : '';
  return [`\`${field.key}\``, field.title, field.unit ?? '', range + length + (field.optional ? `; ${optional}` : '')];
}

function checks(cases) {
  if (cases.length === 0) return 'Check values: none yet.\n';
  const verdicts = cases.map((one) => judgeCase(one, findEntry).verdict);
  const passed = verdicts.filter((verdict) => verdict === 'pass').length;
  const sources = [...new Set(cases.map(({ source }) => source))];
  const rows = cases.map((one, i) => [
    ...[`\`${one.id}\``, shown(one.inputs), shown(one.expected), tolerance(one.tolerance)],
    ...[verdicts[i], sources.indexOf(one.source) + 1],
  ]);
  return [
    `Check values: ${passed} of ${cases.length} pass.\n`,
    table(['case', 'inputs', 'expected', 'tolerance', 'verdict', 'source'], rows),
    `${sources.map((source, i) => `${i + 1}. ${source}`).join('\n')}\n`,
  ].join('\n');
}

function shown(value) {
  if (value === null) return 'none';
  if (typeof value === 'number') return plainNumber(value, { upToSignificantDigits: 10 });
  if (Array.isArray(value)) return value.map(shown).join('; ');
  if (typeof value !== 'object') return String(value);
  return Object.entries(value)
    .map(([key, item]) => `\`${key}\` ${shown(item)}`)
    .join(', ');
}

function tolerance({ abs, rel, fields = {} }) {
  const own = [...(abs ? [`abs ${shown(abs)}`] : []), ...(rel ? [`rel ${shown(rel)}`] : [])];
  const others = Object.entries(fields).map(([key, bounds]) => `\`${key}\` ${tolerance(bounds)}`);
  return [...own, ...others].join(', ') || 'exact';
}

function table(heads, rows) {
  const line = (cells) => `| ${cells.map((cell) => String(cell).replaceAll('|', '\\|')).join(' | ')} |`;
  return `${[line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n')}\n`;
}

function checkCases() {
  const names = readdirSync(GOLDEN).filter((name) => name.endsWith('.json') && name !== 'disputed.json');
  return names.sort().flatMap((name) => {
    const file = JSON.parse(readFileSync(new URL(name, GOLDEN), 'utf8'));
    return Array.isArray(file) ? file : file.cases;
  });
}
