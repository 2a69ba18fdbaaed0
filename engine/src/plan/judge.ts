import type { QuantityKind, Range, TradeId } from '@kneewall/project';
import type { Consequence, Finding, HoldPoint, Limit, Status } from './finding.ts';
import type { Because, Outcome } from './outcome.ts';
import { unitOf } from './unit.ts';

/** A finding before it has words: what was found, against what, and where it counts. */
export type Draft = {
  /** Without the trade: `static-pressure`, `room-share:kitchen`. */
  readonly id: string;
  readonly subject: string;
  readonly item?: string;
  readonly holdPoint: HoldPoint;
  readonly consequence: Consequence;
  readonly kind: QuantityKind;
  readonly value: Outcome<number | Range>;
  readonly limit: Limit;
  /** What has to be left beyond the limit before it is called `ok`, in the unit of `kind`. */
  readonly marginWanted?: number;
  readonly source: string;
  readonly working: string;
  /** Values the words need beside value and limit; a list where they name several of a kind. */
  readonly facts?: Readonly<Record<string, number | string | readonly object[]>>;
};

export type Judged = Draft & {
  readonly status: Status;
  readonly because?: Because;
  readonly needs?: readonly string[];
  readonly margin?: number;
};

const asRange = (v: number | Range): Range => (typeof v === 'number' ? { low: v, likely: v, high: v } : v);

/** Distance to the nearer limit, positive inside. */
function inside(value: number, limit: Limit): number {
  const below = limit.max === undefined ? Number.POSITIVE_INFINITY : limit.max - value;
  const above = limit.min === undefined ? Number.POSITIVE_INFINITY : value - limit.min;
  return Math.min(below, above);
}

/** What was reckoned from a zero or an absurd number may be no number at all: that is unknown, and nothing to print. */
const finite = ({ low, likely, high }: Range): boolean => [low, likely, high].every(Number.isFinite);

const unreckoned: Draft['value'] = { ok: false, because: 'out-of-range', paths: [] };

/**
 * `ok`: the whole range passes beyond the margin. `fails`: the likely value fails. `tight`: all between. Comparisons
 * are rounded to 9 digits of the limit, so that no status hangs on the last bit.
 */
export function judge(draft: Draft): Judged {
  if (draft.value.ok && !finite(asRange(draft.value.value))) return judge({ ...draft, value: unreckoned });
  if (!draft.value.ok) return { ...draft, status: 'unknown', because: draft.value.because, needs: draft.value.paths };
  const range = asRange(draft.value.value);
  const margin = inside(range.likely, draft.limit);
  const worst = Math.min(inside(range.low, draft.limit), inside(range.high, draft.limit), margin);
  const slack = 1e-9 * Math.max(Math.abs(draft.limit.min ?? 0), Math.abs(draft.limit.max ?? 0), 1e-12);
  const status: Status = margin < -slack ? 'fails' : worst >= (draft.marginWanted ?? 0) - slack ? 'ok' : 'tight';
  // What only tells has no limit, and so no distance from one.
  return { ...draft, status, ...(Number.isFinite(margin) ? { margin } : {}) };
}

export type Words = { readonly what: string; readonly why: string; readonly mend: string; readonly caution?: string };

/** A spread's drivers stay with the trade's result; a finding carries the range alone. */
const plainValue = (v: number | Range): number | Range =>
  typeof v === 'number' ? v : { low: v.low, likely: v.likely, high: v.high };

/** The finished finding: judged numbers and the words for them. */
export function findingOf(trade: TradeId, judged: Judged, words: Words): Finding {
  const { id, value, kind, facts: _facts, marginWanted: _wanted, ...rest } = judged;
  return {
    ...rest,
    id: `${trade}/${id}`,
    trade,
    kind,
    unit: unitOf(kind),
    ...(value.ok ? { value: plainValue(value.value) } : {}),
    ...words,
  };
}
