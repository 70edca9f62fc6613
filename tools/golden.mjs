/**
 * `npm run golden -- <file.json> --out <file.json>`: turns reference values into check cases for `fillwright verify`. What no
 * method computes is listed and left out. Exit 2: the file cannot be used; 3: a file cannot be read or written.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { convert } from './golden/convert.mjs';

try {
  const { values, positionals } = parseArgs({ options: { out: { type: 'string' } }, allowPositionals: true });
  if (positionals.length !== 1) throw new TypeError('give one file: npm run golden -- <file.json> --out <file.json>');
  const { cases, leftOut, total } = convert(JSON.parse(readFileSync(positionals[0], 'utf8')));
  const text = `[\n${cases.map((one) => JSON.stringify(one)).join(',\n')}\n]\n`;
  if (values.out === undefined) process.stdout.write(text);
  else writeFileSync(values.out, text);
  for (const { id, group, why } of leftOut) console.error(`left out: ${group} ${id}: ${why}`);
  console.error(
    `${total - leftOut.length} of ${total} cases converted (${cases.length} check cases), ${leftOut.length} left out`,
  );
} catch (error) {
  console.error(`golden: ${error.message}`);
  process.exitCode = error.syscall ? 3 : 2;
}
