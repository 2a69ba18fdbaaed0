import type { ListLine } from '@kneewall/engine';
import { applyEdit, emptyProject, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { allOf, restChanges, type Tick, tickChanges, tickOf, ticks } from './tick.ts';

const line = { id: 'air/flexible 203', what: 'Duct', kind: 'length', need: 14, waste: 0.7, bought: 15.24 } as ListLine;
const ticked = (project: Project, tick: Tick): Project =>
  tickChanges(project, allOf(line, tick), tick).reduce((p, { path, after }, seq) => {
    const { value, problems } = applyEdit(p, { device: 'd', seq, path, before: valueAt(p, path), after });
    expect(problems).toEqual([]);
    return value;
  }, project);

describe('ticking a line', () => {
  it.each(Object.keys(ticks) as Tick[])('%s stands so in the document, whatever stood before, once', (tick) => {
    for (const before of Object.keys(ticks) as Tick[]) {
      const after = ticked(ticked(emptyProject, before), tick);
      expect(tickOf(after, line.id)).toBe(tick);
      const entries = [...Object.values(after.items ?? {}), ...Object.values(after.work?.stock ?? {})];
      expect(entries.length).toBe(tick === 'open' ? 0 : 1);
    }
  });

  it('orders what is bought, and keeps that amount when it arrives and the plan has moved', () => {
    const ordered = ticked(emptyProject, 'ordered');
    const moved = tickChanges(ordered, { ...allOf(line, 'arrived'), amount: '99 m' }, 'arrived');
    expect(moved.map((c) => c.path.at(-1))).toEqual(['state']);
    expect(Object.values(ordered.items ?? {})[0]?.amount).toBe('15.24 m');
    expect(allOf(line, 'hand').amount).toBe('14.7 m');
    expect(restChanges(ordered, allOf({ ...line, bought: 22.86 }, 'ordered'))[0]?.after).toBe('22.86 m');
  });
});
