import type { Recorded } from '../coupling/winters/recordedRows.ts';
import type { Winter } from '../coupling/winters/winterRows.ts';
import { required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';
import type { OffgridResult } from './result.ts';
import { hoursAlone, hoursMost } from './wintersFindings.ts';

/** Of so many winters that may fail: one in ten, so none of nine. */
const inTen = 10;

/** What measured winters say, where the project has their files. */
export function recordedFindings({ inputs }: OffgridResult, view: PlanView): Found[] {
  const { recorded } = view.season;
  if (!recorded.ok && recorded.because !== 'pending') return [];
  const generator = inputs.ok && inputs.value.generator !== undefined;
  return [
    often(view, 'recorded-heat', 'cold', hoursMost),
    ...(generator ? [often(view, 'recorded-alone', 'aloneCold', hoursAlone)] : []),
  ];
}

/** Hours and their winter at its worst, for the words. */
function worstOf({ winters }: Recorded, column: keyof Winter): Record<string, string | number> {
  const worst = winters.reduce<Recorded['winters'][number] | undefined>(
    (a, b) => (a === undefined || b[column] > a[column] ? b : a),
    undefined,
  );
  if (!worst) return {};
  const litres = Math.max(...winters.map((w) => w.litres));
  const stove = Math.max(...winters.map((w) => w.stove));
  const { name, aloneLowest, lowest } = worst;
  return {
    of: winters.length,
    hours: worst[column],
    name,
    lowest: column === 'cold' ? lowest : aloneLowest,
    litres,
    stove,
  };
}

function often(view: PlanView, id: string, column: 'cold' | 'aloneCold', most: number): Found {
  const { recorded } = view.season;
  const all = recorded.ok ? recorded.value : undefined;
  const files = view.trades.climate?.recorded;
  const many = all?.winters.length ?? (files?.ok ? files.value.files.length : 0);
  const facts = { most: most * 3600, ...(all ? worstOf(all, column) : {}) };
  const of = { id, holdPoint: 'decide', consequence: 'harm', kind: 'count' } as const;
  return found({ ...of, limit: { max: Math.floor(many / inTen) }, source: 'offgrid.recorded', facts }, (recorder) => {
    const { winters } = required(view.season.recorded);
    const n = winters.filter((w) => w[column] > most).length;
    recorder.step('h_most', 'table', {}, most, 'h', 'offgrid.recorded');
    recorder.step('n', 'table', {}, n, '', 'climate.recorded');
    return n;
  });
}
