import { resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';
import type { PlanView } from '../../plan/trade.ts';
import { blowerSound } from './blowerSound.ts';

const project = demo('tern-ledge');
const { air } = evaluate(project, {}).plan.trades;
const view = { project: resolveProject(project) } as PlanView;
const likely = (change: Parameters<typeof blowerSound>): number => {
  const [found] = blowerSound(...change);
  const value = found?.draft.value;
  return value?.ok && typeof value.value !== 'number' ? value.value.likely : Number.NaN;
};

describe('the blower heard in a room', () => {
  if (!air?.model.ok || !air.flows.ok) throw new Error('the demo has ducts and a unit');
  const [model, flows] = [air.model.value, air.flows.value];
  const base = likely([model, flows, view]);

  it('is louder the more the ducts ask, by what the published method says at the most', () => {
    const more = likely([model, { ...flows, staticPressure: 2 * flows.staticPressure }, view]);
    expect(more).toBeGreaterThan(base + 4);
    // Criterion curves lie closer together than decibels.
    expect(more).toBeLessThan(base + 9);
  });

  it('is quieter down a longer way of flexible duct, and louder down bare metal', () => {
    const made = (change: object) => ({
      ...model,
      sections: model.sections.map((x) => (x.side === 'return' ? { ...x, ...change } : x)),
    });
    expect(likely([made({ kind: 'flexible', length: 6 }), flows, view])).toBeLessThan(
      likely([made({ kind: 'flexible', length: 2 }), flows, view]),
    );
    expect(likely([made({ kind: 'round', length: 6 }), flows, view])).toBeGreaterThan(
      likely([made({ kind: 'flexible', length: 6 }), flows, view]),
    );
  });

  it('gives a range of at least ten decibels either way, for a small blower', () => {
    const [found] = blowerSound(model, flows, view);
    const value = found?.draft.value;
    if (!value?.ok || typeof value.value === 'number') throw new Error('it is a range');
    expect(value.value.high - value.value.low).toBeGreaterThan(20);
  });

  it('is not known of a blower that makes no pressure', () => {
    const [found] = blowerSound(model, { ...flows, staticPressure: 0 }, view);
    expect(found?.draft.value).toMatchObject({ ok: false, because: 'out-of-range' });
  });
});
