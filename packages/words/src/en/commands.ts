/** What the program says about itself: its help, and what is wrong with a command line. */

export const USAGE = {
  overview: (version: string, commands: readonly (readonly [name: string, summary: string])[]): string =>
    [
      `Fillwright ${version}: from label claim to the settings of a capsule filler.`,
      '',
      'Usage: fillwright <command> [words] [--flags]',
      '',
      ...commands.map(([name, summary]) => `  ${name.padEnd(10)} ${summary}`),
      `  ${'help'.padEnd(10)} explain a command: fillwright help <command>`,
      `  ${'--version'.padEnd(10)} print the version`,
      '',
      'Numbers are written with a decimal point. Results go to standard output, problems to standard error.',
      'Exit code: 0 done, 1 a verdict is "fail" or "cannot tell", 2 wrong input, 3 trouble with a file or the program.',
    ].join('\n'),
  design: `Usage: fillwright design <file.brief.yaml> [--rank <n>] [--all] [--seed <n>] [--json]

Searches shells, parts in stock and settings for set-ups that give the target, ranks them, explains what is not among
them, and prints one set-up in full: setting sheet, first weights, limit card, the capsule to scale, what it rests on.

  --rank   print the sheet of this set-up instead of the first
  --all    name every rejected set of parts, not only the nearest of each kind
  --seed   shifts the draws behind the intervals (default 1); the same brief and seed give the same bytes
  --json   print everything as JSON (docs/schemas/design.schema.json)

Exit code: 1 when nothing in stock fills a sound brief, 2 when the brief is wrong, 3 when a file cannot be read.

Example: fillwright design examples/alder-200.brief.yaml`,
  accept: `Usage: fillwright accept <weights.csv|-> [--brief <file.brief.yaml>] [--purpose <purpose>] [--test <test> ...] [--json]

Reads a column of weights as a balance or a sheet gives it (one weight a line, or columns with headings: gross, net, shell,
group, column, carrier, bore, stroke, time; decimal point or comma) and says what it means: one conclusion first, then
summary, each limit and test with its arithmetic, what a further sample would do, and a histogram against the limits.
Lines that are no weight are struck and named; units are never guessed.

  --purpose   trial (default; decides nothing about a lot), in-process or release
  --brief     takes target, limits, tests of the route for the purpose, tare and wheel from a brief
  --test      a test that the dossier names, can be repeated: uniformity-of-mass, dosage-units-by-mass, supplement-mass,
              uniformity-of-content, dosage-units-by-content (the last two need more than weights, and say so)
  --shells    a file of empty shells of the same lot; --own-shells: the column of shells holds each capsule's own
  --basis     what a column without heading holds: gross (default) or net
  --unit      mg or g, for weights that bear none
  --target_mg, --mean-action_pct, --individual-action_pct, --individual-alert_pct, --sample-count
              target and in-process limits, net; they come before those of the brief
  --assay_pct, --target-content_pct, --rounding unrounded|half-up
              for dosage units by mass: assay of the lot and target content T in % of the claim, rounding of the dossier
  --load-count   loads that enter one capsule
  --revolution   the weights are one full revolution, group after group (--group-count, --column-count, or the filler of
                 the brief); --set-up <rank> names the set-up of "fillwright design" that is mounted: which pin to turn or free
  --json      print lines and judgement as JSON

Exit code: 0 pass; 1 fail or cannot tell, also when nothing was asked; 2 wrong input; 3 when a file cannot be read.

Example: fillwright accept examples/alder-200-gross.csv --shells examples/alder-200-shells.csv
           --brief examples/alder-200.brief.yaml --purpose in-process`,
  methods: `Usage: fillwright methods [words] [--json]
       fillwright methods <id> [--json]

Lists the methods whose id or title holds all the words; with the exact id of a method shows everything about it:
equation, inputs with unit, range and flag, outputs, sources, validity, what it rests on, and its check values.

  --json   print as JSON

Example: fillwright methods density`,
  serve: `Usage: fillwright serve [--port <n>] [--host <address>] [--demo] [--log]

Serves the workbench for a browser: pages, store and interface (docs/openapi.json) from one process, until Ctrl+C.

  --port   port to listen on (default 4680, or the environment's PORT); 0 takes any free one
  --host   address to listen on (default 127.0.0.1, or HOST): other machines reach it only if you give another
  --demo   adds the demo product when the store holds nothing
  --log    prints a line for each request: method, path, status, time

Everything is kept in the folder FILLWRIGHT_DATA (default .fillwright), or in the PostgreSQL of DATABASE_URL.
docs/server.md says what else the environment sets, and what to do before others may reach it.

Exit code: 0 after Ctrl+C or SIGTERM, 2 wrong input, 3 when the port is in use or the store cannot be opened.

Example: fillwright serve --demo`,
  compute: `Usage: fillwright compute <id> --<input> <value> ... [--json]

Computes one method. The flag of an input is its name with its unit, --body-length_mm for bodyLength_mm;
a list is given by repeating its flag. "fillwright methods <id>" shows the flags of a method.

  --json   print inputs, outputs, sources and validity as JSON

Example: fillwright compute quantity.kilogram-force --force_kgf 15`,
  verify: `Usage: fillwright verify [file.json] [--group <group>] [--json]

Recomputes check values and reports source, expected, got, deviation, tolerance and verdict of each. Without a file
it takes the check values that come with the program. A file holds a list of cases of this form:

  {"id": "force.1", "group": "forces", "method": "quantity.kilogram-force", "inputs": {"force_kgf": 10},
   "expected": 98.0665, "tolerance": {"abs": 0.0001}, "source": "definition of the kilogram-force"}

A number passes within the larger of abs and rel x |expected|; for several outputs expected is an object by output
name, and tolerance may hold "fields" with tolerances of their own.

  --group  only the cases of this group; can be repeated
  --json   print {summary, groups, cases} as JSON

Exit code: 1 if a case fails or cannot be computed; disputed cases are counted apart.`,
  audit: `Usage: fillwright audit verify [--json]

Recomputes the hash of every version that is kept, checks the order, the link of each to the one before, and the newest
versions against the notes of them in the database and in heads.log. Says which version was changed, removed or exchanged.

  --json   print {verdict, versionCount, chainCount, findings} as JSON

The store is the PostgreSQL server of DATABASE_URL, or the one in the folder FILLWRIGHT_DATA (usually .fillwright).
Exit code: 1 when something was found or it cannot be told, 3 when the store cannot be used.`,
  backup: `Usage: fillwright backup <file>

Writes every version that is kept into one text file, reads it back and verifies it. Nothing is overwritten. The file is
the same for the embedded store and for a server, and is the way from one to the other.

Exit code: 1 when what is kept is not in order, 3 when store or file cannot be used.

Example: fillwright backup fillwright-monday.backup`,
  restore: `Usage: fillwright restore --check <file>
       fillwright restore <file>

With --check verifies every hash of a backup and that it is whole, and changes nothing. Without it also puts the backup
into the store of DATABASE_URL or FILLWRIGHT_DATA, which must be empty: all of it, or nothing.

Exit code: 1 when the backup is not in order, 3 when store or file cannot be used.`,
} as const;

/** One sentence for each thing that is wrong with a command line. */
export const COMMAND_LINE = {
  unknownCommand: (name: string, known: readonly string[], nearest: string | undefined): string =>
    `"${name}" is not a command; ${nearest === undefined ? '' : `the nearest is ${nearest}; `}known are ${known.join(', ')}.`,
  unknownMethod: (id: string, nearest: readonly string[]): string =>
    `"${id}" is not a method; ${nearest.length === 0 ? '"fillwright methods" lists them' : `nearest: ${nearest.join(', ')}`}.`,
  briefMissing: 'Name the brief to design; examples/alder-200.brief.yaml is one.',
  notWhole: (flag: string, from: number, to: number): string => `${flag} takes a whole number from ${from} to ${to}.`,
  rankTooHigh: (rank: number, count: number): string =>
    `There is no set-up ${rank}: the ranking holds ${count === 1 ? 'one' : `1 to ${count}`}.`,
  auditWhat: 'Say what to do: fillwright audit verify.',
  backupMissing: 'Name the file of the backup.',
  methodMissing: 'Name the method to compute; "fillwright methods" lists them.',
  unknownFlag: (flag: string, nearest: string | undefined, known: readonly string[]): string =>
    `${flag} is not a flag here; ${nearest === undefined ? `known are ${known.join(', ')}` : `the nearest is ${nearest}`}.`,
  valueMissing: (flag: string): string => `${flag} needs a value after it.`,
  valueNotTaken: (flag: string): string => `${flag} takes no value.`,
  givenTwice: (flag: string): string => `${flag} is given more than once and takes one value.`,
  wordNotTaken: (word: string): string =>
    `"${word}" is not expected here; a value follows its flag, and a text with blanks stands in quotation marks.`,
  nothingFound: (words: string): string => `No method matches "${words}"; "fillwright methods" lists them all.`,
  unreadable: (path: string, why: string): string => `${path} cannot be read: ${why}.`,
  notJson: (path: string, why: string): string => `${path} is not JSON: ${why}.`,
  unexpected: (why: string): string =>
    `The program ran into something unexpected: ${why}; FILLWRIGHT_DEBUG=1 shows where.`,
} as const;
