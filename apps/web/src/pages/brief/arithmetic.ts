import {
  targetFill,
  type Substance,
  type SubstanceAtTarget,
  type TargetFill,
  type TargetRule,
} from '@fillwright/engine/brief';
import { DomainError } from '@fillwright/engine/catalogue';
import { ARITHMETIC_WORDS, domainErrorSentence } from '@fillwright/words/en';
import { plainNumber, quantityForReading } from '@fillwright/words/numbers';

/** One line of the calculation: what, how, and what it gives. */
interface ArithmeticLine {
  readonly what: string;
  readonly steps: string;
  readonly result: string;
}

/** A share of the capsule's content, for the bar. */
export interface ContentShare {
  readonly what: string;
  readonly mass_mg: number;
  /** What makes up the fill is hatched. */
  readonly kind: 'substance' | 'rest';
}

/** The arithmetic of a target in steps, or why it cannot be done. */
export type Arithmetic =
  | {
      readonly ok: true;
      /** The target itself. */
      readonly fill: ArithmeticLine;
      /** What follows from it. */
      readonly lines: readonly ArithmeticLine[];
      readonly shares: readonly ContentShare[];
    }
  | { readonly ok: false; readonly refusal: string };

/**
 * The target fill step by step, as one would check it by hand. Figures come from the engine; the steps name its inputs,
 * and leave out factors that are 1.
 *
 * @param rule - the target of the brief
 * @returns the lines in the order of the calculation, and what the capsule holds
 */
export function arithmeticOf(rule: TargetRule): Arithmetic {
  try {
    const target = targetFill(rule);
    const fill = { what: ARITHMETIC_WORDS.target, steps: fillSteps(rule), result: mg(target.fill_mg) };
    const lines =
      rule.rule === 'fixed-total'
        ? totalLines(rule, target)
        : rule.substances.map((one, i) => contentLine(one, target, i));
    return { ok: true, fill, lines, shares: sharesOf(rule, target) };
  } catch (error) {
    if (!(error instanceof DomainError)) throw error;
    return { ok: false, refusal: domainErrorSentence(error.code, error.facts) };
  }
}

function fillSteps(rule: TargetRule): string {
  if (rule.rule !== 'follows-assay') return ARITHMETIC_WORDS.ofDossier;
  const leader = rule.substances.find(({ name }) => name === rule.follows) ?? rule.substances[0];
  return leader ? `${claimed(leader)} ÷ ${pct(leader.blendLoad_pct ?? NaN)}` : '';
}

function totalLines(rule: Extract<TargetRule, { rule: 'fixed-total' }>, target: TargetFill): readonly ArithmeticLine[] {
  const masses = target.substances.map(({ mass_mg = NaN }) => mass_mg);
  const others = rule.otherExcipients_mg ?? 0;
  const taken = [...masses, ...(others > 0 ? [others] : [])].map((mass) => ` − ${mg(mass)}`).join('');
  return [
    ...rule.substances.map((substance, i) => ({
      what: ARITHMETIC_WORDS.asDelivered(substance.name),
      steps: delivered(substance),
      result: mg(masses[i] ?? NaN),
    })),
    {
      what: ARITHMETIC_WORDS.diluent,
      steps: `${exactMg(rule.total_mg)}${taken}`,
      result: mg(target.diluent_mg ?? NaN),
    },
  ];
}

/** What the label is told to hold: by the load found in the blend, or by what is weighed in. */
function contentLine(substance: Substance, target: TargetFill, index: number): ArithmeticLine {
  const { blendLoad_pct, claim_mg, saltFactor_ratio = 1 } = substance;
  const what = ARITHMETIC_WORDS.content(substance.name);
  const content_pct = target.substances[index]?.content_pct;
  if (content_pct === undefined || blendLoad_pct === undefined)
    return { what, steps: ARITHMETIC_WORDS.noLoad, result: '' };
  const under = saltFactor_ratio === 1 ? exactMg(claim_mg) : `(${exactMg(claim_mg)} × ${exact(saltFactor_ratio)})`;
  return { what, steps: `${mg(target.fill_mg)} × ${pct(blendLoad_pct)} ÷ ${under}`, result: roundPct(content_pct) };
}

/** claim × factor × (1 + overage), without what is 1. */
function claimed({ claim_mg, saltFactor_ratio = 1, overage }: Substance): string {
  const factor = saltFactor_ratio === 1 ? '' : ` × ${exact(saltFactor_ratio)}`;
  return `${exactMg(claim_mg)}${factor}${overage ? ` × (1 + ${pct(overage.amount_pct)})` : ''}`;
}

function delivered(substance: Substance): string {
  const { assayAnhydrous_pct = 100, water_pct = 0 } = substance;
  const worth = [
    ...(assayAnhydrous_pct === 100 ? [] : [pct(assayAnhydrous_pct)]),
    ...(water_pct === 0 ? [] : [`(1 − ${pct(water_pct)})`]),
  ];
  const under = worth.length > 1 ? `(${worth.join(' × ')})` : worth.join('');
  return `${claimed(substance)}${under === '' ? '' : ` ÷ ${under}`}`;
}

/** What the capsule holds; nothing where the masses of the substances are not known. */
function sharesOf(rule: TargetRule, target: TargetFill): readonly ContentShare[] {
  const known = target.substances.map((one, i) => ({
    ...{ what: one.name, mass_mg: massOf(rule, { one, i, target }), kind: 'substance' as const },
  }));
  if (known.some(({ mass_mg }) => Number.isNaN(mass_mg))) return [];
  const others = rule.rule === 'fixed-total' ? (rule.otherExcipients_mg ?? 0) : 0;
  const rest = target.fill_mg - others - known.reduce((sum, { mass_mg }) => sum + mass_mg, 0);
  const last = rule.rule === 'fixed-total' ? ARITHMETIC_WORDS.diluent : ARITHMETIC_WORDS.rest;
  const filling = [
    { what: ARITHMETIC_WORDS.others, mass_mg: others, kind: 'rest' as const },
    { what: last, mass_mg: rest, kind: 'rest' as const },
  ];
  return rest < 0 ? [] : [...known, ...filling].filter(({ mass_mg }) => mass_mg > 0);
}

function massOf(
  rule: TargetRule,
  { one, i, target }: { one: SubstanceAtTarget; i: number; target: TargetFill },
): number {
  const load_pct = rule.substances[i]?.blendLoad_pct;
  return one.mass_mg ?? (load_pct === undefined ? NaN : (target.fill_mg * load_pct) / 100);
}

const mg = (value: number): string => quantityForReading(value, 'mg', { decimals: 1 });
const exact = (value: number): string => plainNumber(value, { upToSignificantDigits: 8 });
const exactMg = (value: number): string => quantityForReading(value, 'mg', { upToSignificantDigits: 8 });
const pct = (value: number): string => quantityForReading(value, '%', { upToSignificantDigits: 8 });
const roundPct = (value: number): string => quantityForReading(value, '%', { decimals: 1 });
