import type { LimitCard } from '@fillwright/engine/design';
import { WEIGHTS_PAGE_WORDS } from '@fillwright/words/en';
import type { ReactNode } from 'react';
import { PageNumber } from '../../numbers/index.ts';
import { limitNumber, type LimitSide } from './numbers/limit-number.ts';

interface LimitCardProps {
  readonly card: LimitCard;
  readonly title?: string;
  /** Nothing opens. */
  readonly isOnPaper?: boolean;
}

type RowKind = keyof typeof WEIGHTS_PAGE_WORDS.card.rows;
/** Digits that a balance shows, and what a computed limit may be off by itself, mg. */
const SHOWN_mg = 0.1;
const ROUNDING_mg = 1e-6;

const SIDES: Readonly<Partial<Record<RowKind, Pick<LimitSide, 'of' | 'end'>>>> = {
  ...{ 'action-high': { of: 'action', end: 'high' }, 'action-low': { of: 'action', end: 'low' } },
  ...{ 'alert-high': { of: 'alert', end: 'high' }, 'alert-low': { of: 'alert', end: 'low' } },
  ...{ 'mean-high': { of: 'mean', end: 'high' }, 'mean-low': { of: 'mean', end: 'low' } },
};

/** What to weigh against, net and gross; limits rounded inwards, so that what passes the printed limit passes the true one. */
export function LimitCardTable({ card, title, isOnPaper = false }: LimitCardProps): ReactNode {
  const words = WEIGHTS_PAGE_WORDS.card;
  const cell = (kind: RowKind, basis: 'net' | 'gross', mass_mg: number): ReactNode => {
    const text = shown(mass_mg, kind);
    const side = SIDES[kind];
    if (isOnPaper || !side) return text;
    return <PageNumber number={limitNumber(card, { ...side, kind: basis })}>{text}</PageNumber>;
  };
  return (
    <section className="weights-card">
      <h3>{title ?? words.title}</h3>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.what}</th>
            <th scope="col">{words.net}</th>
            <th scope="col">{words.gross}</th>
          </tr>
        </thead>
        <tbody>
          {rowsOf(card).map(({ kind, net_mg, gross_mg }) => (
            <tr key={kind} className={kind === 'target' || kind.startsWith('action') ? 'weights-strong' : undefined}>
              <th scope="row">{words.rows[kind]}</th>
              <td>{cell(kind, 'net', net_mg)}</td>
              <td>{cell(kind, 'gross', gross_mg)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p className="quiet">
        {card.tare.shellCount > 0
          ? words.about({
              count: card.sampleCount,
              tare: WEIGHTS_PAGE_WORDS.mg(card.tare.mean_mg),
              error: WEIGHTS_PAGE_WORDS.mg(card.tare.standardError_mg ?? NaN, 2),
            })
          : words.guess(WEIGHTS_PAGE_WORDS.mg(card.tare.mean_mg))}{' '}
        {words.blur(WEIGHTS_PAGE_WORDS.mg(card.shellBlur_mg))} {words.rounded}
        {card.isAlertAssumed ? ` ${words.alertAssumed}` : ''}
      </p>
    </section>
  );
}

interface CardRow {
  readonly kind: RowKind;
  readonly net_mg: number;
  readonly gross_mg: number;
}

function rowsOf(card: LimitCard): readonly CardRow[] {
  const { individualAction: action, individualAlert: alert, meanAction: mean } = card;
  const high = ({ netHigh_mg, grossHigh_mg }: LimitCard['meanAction']): Omit<CardRow, 'kind'> => ({
    ...{ net_mg: netHigh_mg, gross_mg: grossHigh_mg },
  });
  const low = ({ netLow_mg, grossLow_mg }: LimitCard['meanAction']): Omit<CardRow, 'kind'> => ({
    ...{ net_mg: netLow_mg, gross_mg: grossLow_mg },
  });
  const rows: readonly CardRow[] = [
    { kind: 'action-high', ...high(action) },
    { kind: 'alert-high', ...high(alert) },
    { kind: 'mean-high', ...high(mean) },
    { kind: 'target', net_mg: card.target_mg, gross_mg: card.grossTarget_mg },
    { kind: 'mean-low', ...low(mean) },
    { kind: 'alert-low', ...low(alert) },
    { kind: 'action-low', ...low(action) },
  ];
  return [...rows].sort((a, b) => b.net_mg - a.net_mg);
}

function shown(mass_mg: number, kind: RowKind): string {
  if (kind === 'target') return WEIGHTS_PAGE_WORDS.mg(mass_mg);
  const steps = kind.endsWith('low')
    ? Math.ceil((mass_mg - ROUNDING_mg) / SHOWN_mg)
    : Math.floor((mass_mg + ROUNDING_mg) / SHOWN_mg);
  return WEIGHTS_PAGE_WORDS.mg(steps * SHOWN_mg);
}
