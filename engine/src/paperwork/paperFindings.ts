import { unresolved } from '../plan/outcome.ts';
import { type DraftOf, type Found, telling } from '../plan/telling.ts';
import { dayNumber } from './papers.ts';
import type { Paper, PaperworkResult, Terms } from './result.ts';

const order = 'paperwork.order';
const terms = 'paperwork.terms';
const at = (p: Paper, field: string): string => `paperwork.${p.id}.${field}`;
const facts = (p: Paper) => ({ name: p.name, asker: p.asker ?? '', status: p.status });
const of = (id: string, rest: Omit<DraftOf, 'id' | 'kind' | 'source'> & { readonly source?: string }): DraftOf => ({
  id,
  kind: 'count',
  source: order,
  ...rest,
});

/** One for each kind that every job has, where none is entered; else one for each paper. */
export function paperFindings(result: PaperworkResult): Found[] {
  const { papers } = result;
  const has = (kind: Paper['kind']): boolean => papers.some((p) => p.kind === kind);
  return [
    ...(has('permit') ? [] : [noPaper('permit')]),
    ...(has('warranty') ? [] : [noPaper('warranty')]),
    ...(has('insurance') ? [] : [noPaper('insurance')]),
    ...papers.flatMap((p) => ofPaper(p, result)),
    ...papers.flatMap((p) => deadline(p, result)),
    evidence(papers),
  ];
}

function ofPaper(p: Paper, result: PaperworkResult): Found[] {
  switch (p.kind) {
    case 'permit':
      return [asked(p, result), granted(p, result, 'cut')];
    case 'inspection':
      return [granted(p, result, 'close')];
    case 'warranty':
      return [kept(p, 'warranty', result.warranties[p.id])];
    case 'insurance':
      return [told(p, result)];
    case 'incentive':
      return [first(p, result), kept(p, 'incentive', result.incentives[p.id])];
    default:
      return [];
  }
}

/** Nobody has entered any of this kind: that is not the same as none being needed. */
const noPaper = (kind: 'permit' | 'warranty' | 'insurance'): Found =>
  telling('paperwork', 'paperwork')(
    of(`no-${kind}`, {
      holdPoint: kind === 'warranty' ? 'order' : 'decide',
      consequence: kind === 'permit' ? 'harm' : 'money',
      limit: { min: 1 },
      source: kind === 'permit' ? 'paperwork.authority' : terms,
    }),
    () => unresolved('missing', 'paperwork'),
  );

const asked = (p: Paper, { unit }: PaperworkResult): Found =>
  telling('paperwork', at(p, 'status'))(
    of(`permit-asked:${p.id}`, {
      holdPoint: 'order',
      consequence: 'money',
      limit: { min: 1 },
      facts: { ...facts(p), unit },
    }),
    (rec) => {
      const value = p.status === 'asked' || p.status === 'granted' ? 1 : 0;
      rec.step('asked', 'table', {}, value, '', order);
      return value;
    },
  );

/** Before holes are cut, or anything is covered. Not granted yet is unknown until the unit hangs; then it fails. */
const granted = (p: Paper, { unit }: PaperworkResult, holdPoint: 'cut' | 'close'): Found =>
  telling('paperwork', at(p, 'status'))(
    of(`${p.kind}-granted:${p.id}`, {
      holdPoint,
      consequence: 'harm',
      limit: { min: 1 },
      facts: { ...facts(p), unit },
    }),
    (rec) => {
      const begun = holdPoint === 'cut' && unit === 'fitted';
      if (p.status !== 'granted' && p.status !== 'refused' && !begun) return unresolved('missing', at(p, 'status'));
      const value = p.status === 'granted' ? 1 : 0;
      rec.step('granted', 'table', {}, value, '', order);
      return value;
    },
  );

const first = (p: Paper, { incentives, unit }: PaperworkResult): Found =>
  telling('paperwork', at(p, 'status'))(
    of(`incentive-first:${p.id}`, {
      holdPoint: 'order',
      consequence: 'money',
      limit: { min: 1 },
      source: terms,
      facts: { ...facts(p), unit, first: incentives[p.id]?.first ?? 'unknown', money: p.amount?.likely ?? 0 },
    }),
    (rec) => {
      const before = incentives[p.id]?.first ?? 'unknown';
      if (before === 'unknown' && p.status !== 'granted') return unresolved('missing', at(p, 'incentive.beforeOrder'));
      const value = before === 'no' || p.status === 'granted' ? 1 : 0;
      rec.step('in-order', 'table', {}, value, '', terms);
      return value;
    },
  );

/** Terms of a warranty or an incentive against the plan: how many are broken. What nobody has filled in leaves it unknown. */
const kept = (p: Paper, kind: 'warranty' | 'incentive', held: Terms = { broken: [], open: [] }): Found =>
  telling('paperwork', `paperwork.${p.id}`)(
    of(`${kind}-terms:${p.id}`, {
      holdPoint: kind === 'warranty' ? 'order' : 'decide',
      consequence: 'money',
      limit: { max: 0 },
      source: terms,
      facts: { ...facts(p), broken: held.broken.join(' '), refused: p.status === 'refused' ? 1 : 0 },
    }),
    (rec) => {
      const broken = held.broken.length + (p.status === 'refused' ? 1 : 0);
      if (broken === 0 && held.open.length > 0) return unresolved('missing', ...held.open);
      rec.step('broken', 'table', {}, broken, '', terms);
      return broken;
    },
  );

const told = (p: Paper, { insurances }: PaperworkResult): Found =>
  telling('paperwork', at(p, 'status'))(
    of(`insurance-told:${p.id}`, {
      holdPoint: 'decide',
      consequence: 'money',
      limit: { min: 1 },
      source: terms,
      facts: facts(p),
    }),
    (rec) => {
      const tell = insurances[p.id] ?? 'unknown';
      if (tell === 'unknown' && p.status === 'open') return unresolved('missing', at(p, 'insurance.tell'));
      const value = p.status !== 'refused' && (tell === 'no' || p.status !== 'open') ? 1 : 0;
      rec.step('told', 'table', {}, value, '', terms);
      return value;
    },
  );

/** Days between what a paper is due by and the work; no clock is asked, only the days that were entered. */
function deadline(p: Paper, { days }: PaperworkResult): Found[] {
  const counts = ['permit', 'insurance', 'incentive', 'inspection'].includes(p.kind) && p.status !== 'granted';
  if (!counts || (p.due === undefined && !p.dueWrong)) return [];
  const before = p.kind === 'permit' || p.kind === 'insurance';
  const day = days.ok ? (before ? days.value.first : days.value.last) : '';
  const made = telling('paperwork', at(p, 'due'))(
    of(`deadline:${p.id}`, {
      holdPoint: before ? 'cut' : 'decide',
      consequence: 'money',
      limit: { min: 0 },
      source: 'paperwork.dates',
      facts: { ...facts(p), due: p.due ?? '', day, before: before ? 1 : 0, wrong: p.dueWrong ? 1 : 0 },
    }),
    (rec) => {
      if (!days.ok) return unresolved(days.because, ...days.paths);
      const [due, work] = [dayNumber(p.due ?? ''), dayNumber(day)];
      if (due === undefined || work === undefined) return unresolved('missing', at(p, 'due'));
      const formula = before ? 'work - due' : 'due - work';
      const left = before ? work - due : due - work;
      rec.step('days', formula, { work, due }, left, '', 'paperwork.dates');
      return left;
    },
  );
  return [made];
}

/** Papers that are in hand, as far as anybody said, and of which nothing is noted down. */
const evidence = (papers: readonly Paper[]): Found => {
  const bare = papers.filter((p) => p.status === 'granted' && !p.evidence);
  return telling('paperwork', 'paperwork')(
    of('evidence', {
      holdPoint: 'start',
      consequence: 'money',
      limit: { max: 0 },
      facts: { names: bare.map((p) => p.name).join(', ') },
    }),
    (rec) => {
      if (papers.length === 0) return unresolved('missing', 'paperwork');
      rec.step('bare', 'table', {}, bare.length, '', order);
      return bare.length;
    },
  );
};
