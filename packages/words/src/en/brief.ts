import type { FileFault, InputFault } from '@fillwright/engine/catalogue';
import type { DocumentNotice, DocumentRule } from '@fillwright/engine/design';
import { plainNumber } from '#numbers';
import { faultSentence } from './catalogue.ts';

/**
 * One thing that is wrong with a brief, a filler or a shell file, as one sentence with its numbers and what to do.
 *
 * @param fault - the fault
 * @returns one sentence
 */
export function documentFaultSentence(fault: InputFault): string {
  const { code, rule = '' } = fault;
  const sentences: Readonly<Record<string, Sentence>> =
    code === 'conflict' ? CONFLICTS : code === 'syntax' ? SYNTAX : {};
  const sentence = Object.hasOwn(sentences, rule) ? sentences[rule] : undefined;
  if (!sentence) return faultSentence(fault);
  const text = sentence((name) => told(fault.facts?.[name]), fault);
  return fault.field === '' ? text : `${fault.field}: ${text}`;
}

/**
 * What a person should know about a document that is in order, as one sentence.
 *
 * @param notice - the notice
 * @returns one sentence
 */
export function documentNoticeSentence({ code, field, facts }: DocumentNotice): string {
  return `${field}: ${NOTICES[code]((name) => told(facts[name]))}`;
}

/**
 * All faults of a document and of the files it names, as text for a terminal: one block a file, in the order of lines,
 * each fault on a line of its own that begins with `file:line:column`.
 *
 * @param faults - the faults
 * @returns the text, without a line end at its end
 */
export function formatFaults(faults: readonly FileFault[]): string {
  const files = [...new Set(faults.map(({ file }) => file))];
  return files.map((file) => block(faults.filter((fault) => fault.file === file))).join('\n\n');
}

function block(faults: readonly FileFault[]): string {
  return [...faults]
    .sort((a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0))
    .map((fault) => `${placeOf(fault)} ${documentFaultSentence(fault)}`)
    .join('\n');
}

function placeOf({ file, line, column }: FileFault): string {
  return line === undefined ? `${file}:` : `${file}:${line}:${column ?? 1}`;
}

type Sentence = (fact: (name: string) => string, fault: InputFault) => string;

function told(value: number | string | undefined): string {
  return typeof value === 'number' ? plainNumber(value, { upToSignificantDigits: 5 }) : (value ?? 'unknown');
}

const CONFLICTS: Readonly<Record<DocumentRule, Sentence>> = {
  'alert-above-action': (fact) =>
    `the alert limit of ${fact('alert_pct')} % is above the action limit of ${fact('action_pct')} %; an alert has to come first, so lower it.`,
  'bores-not-mapped': (fact) =>
    `${fact('columnCount')} columns feed carriers of ${fact('boreCount')} bores; give as many columns as bores.`,
  'claim-above-fill': (fact) =>
    `a fill of ${fact('fill_mg')} mg cannot hold ${fact('needed_mg')} mg of the substances claimed; raise the fill or correct the claim.`,
  'compression-ends-below-feed': (fact) =>
    `with this a the powder never gets denser than ${fact('end_g_per_mL')} g/mL, but it arrives at ${fact('feed_g_per_mL')} g/mL; check a and the density from which the fit started.`,
  'feed-density-implausible': (fact) =>
    `${fact('feed_g_per_mL')} g/mL does not fit the poured and tapped density; allowed: ${fact('lowest_g_per_mL')} (half the poured) to ${fact('highest_g_per_mL')} g/mL (1.6 times the tapped). Measure again, or write guess.`,
  'follows-unknown': (fact, { value, nearest }) =>
    `no substance of this part is called "${value ?? ''}"; the names are ${fact('names')}${nearest === undefined ? '' : `, the nearest is ${nearest}`}.`,
  'map-not-one-to-one': (fact) =>
    `the list has to name each bore from 1 to ${fact('boreCount')} once, one for each of the ${fact('columnCount')} columns.`,
  'mounted-twice': (fact) =>
    `${fact('first')} is already mounted and only one ${fact('kind')} can be; take mounted away from one of them.`,
  'one-part-only': (fact) =>
    `${fact('partCount')} parts are given, and only one can be computed for now; keep the one that is set by weight.`,
  'pair-below-feed': (fact) =>
    `a pressed slug of ${fact('pair_g_per_mL')} g/mL is not denser than the powder that is fed, ${fact('feed_g_per_mL')} g/mL; measure the slug again.`,
  'part-number-twice': (fact) => `the number ${fact('number')} belongs to an earlier part; every part needs its own.`,
  'range-upside-down': (fact) =>
    `the lower end of ${fact('min_mm')} mm is above the upper end of ${fact('max_mm')} mm; exchange them.`,
  'record-of-other-size': (fact) =>
    `the brief says ${fact('size')}, the file of the shell says ${fact('inFile')}; make both the same.`,
  'shell-halves-disagree': () =>
    'the dimensions of body, cap and locked shell cannot all be true; measure lengths, diameters and walls again.',
  'shell-twice': (fact) => `size ${fact('size')} is listed twice; keep one line, with the lot that will be used.`,
  'speeds-out-of-order': (fact) =>
    `slowest ${fact('slowest')}, usual ${fact('usual')} and fastest ${fact('fastest')} strokes a minute have to rise.`,
  'stations-out-of-order': (fact) =>
    `the scale of station ${fact('station')} stands where station ${fact('expected')} is expected; list every station in order, from 1.`,
  'substance-twice': (fact) => `${fact('name')} is listed twice in this part; give each substance once.`,
  'substances-above-total': (fact) =>
    `the substances weigh ${fact('substances_mg')} mg and the other excipients ${fact('otherExcipients_mg')} mg, more than the total of ${fact('total_mg')} mg; raise the total or lower what is in it.`,
  'tapped-below-bulk': (fact) =>
    `the tapped density of ${fact('tapped_g_per_mL')} g/mL is below the poured density of ${fact('bulk_g_per_mL')} g/mL; tapping cannot loosen a powder, so check whether the two were exchanged.`,
  'target-above-body': (fact) =>
    `${fact('target_mg')} mg cannot go into size ${fact('size')}, the largest that is listed: its body of ${fact('volume_mm3')} mm3 holds at most ${fact('most_mg')} mg, even as a solid of ${fact('density_g_per_mL')} g/mL without air. List a larger size or correct the target.`,
  'test-twice': (fact) => `${fact('test')} is listed twice; keep one line.`,
  'true-below-tapped': (fact) =>
    `the true density of ${fact('true_g_per_mL')} g/mL is below the tapped density of ${fact('tapped_g_per_mL')} g/mL; a bed holds air, so check both.`,
  'validated-outside-machine': (fact) =>
    `${fact('low_mm')} to ${fact('high_mm')} mm reaches beyond what the machine can set, ${fact('min_mm')} to ${fact('max_mm')} mm; correct one of the two.`,
};

const SYNTAX: Readonly<Record<string, Sentence>> = {
  'bad-indent': () =>
    'the indentation does not fit the lines above; keys that belong together start in the same column.',
  'bad-scalar-start': () => 'a value cannot begin with this character; put the value in quotation marks.',
  'block-as-implicit-key': () =>
    'there are two colons in one line; put the value in quotation marks, or start a new line.',
  'empty-text': () => 'the file is empty; an example shows what belongs into it.',
  'missing-char': () => 'a bracket, a brace or a quotation mark is not closed, or a comma or colon is missing.',
  'multiline-implicit-key': () => 'the line above does not end before this key; check its indentation.',
  'multiple-docs': () => 'the file holds more than one document, parted by ---; keep one.',
  'nested-too-deep': () => 'there are too many brackets inside each other; this is no file of ours.',
  'not-a-mapping': () => 'the file is no list of keys with values; it has to start with format: 1.',
  'tab-as-indent': () => 'a tab is used to indent; use spaces.',
  'tag-resolve-failed': () =>
    'a value begins with an exclamation mark, which YAML reads as a tag; put it in quotation marks.',
  'text-too-long': (fact) =>
    `the file has ${fact('characters')} characters, and ${fact('most')} is the most that is read.`,
  'too-many-aliases': () => 'values are repeated by reference too often; write them out.',
  'unexpected-token': () =>
    'something stands here that does not belong there; check brackets, quotation marks and indentation.',
  'unknown-alias': () => 'a value refers to another one by *name, and no &name stands before it; write the value out.',
};

const NOTICES: Readonly<Record<DocumentNotice['code'], (fact: (name: string) => string) => string>> = {
  'mass-route-below-threshold': (fact) =>
    `uniformity of dosage units by mass is named, although ${fact('name')} has a claim of ${fact('claim_mg')} mg, ${fact('share_pct')} % of ${fact('fill_mg')} mg; mass variation is meant for ${fact('leastClaim_mg')} mg and ${fact('leastShare_pct')} % or more. Which test applies is the dossier's: check that it says so.`,
};
