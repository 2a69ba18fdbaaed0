import { demos } from '@kneewall/demos';
import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { evaluate, runJob } from '../index.ts';
import { required } from '../plan/outcome.ts';
import type { DesignDays } from './dynamic/daysJob.ts';

describe('a unit, once the cold night and the hot day are known', () => {
  it('is held against them instead of the steady sums', async () => {
    const project = (await demos.find((d) => d.id === 'juniper-flat')?.load()) as Project;
    const before = evaluate(project, {});
    const job = before.wanted.find((j) => j.kind === 'loads/days');
    if (!job) throw new Error('the days are wanted');
    const days = runJob(job, { blob: () => undefined, tell: () => {} }) as DesignDays;
    const { plan } = evaluate(project, { [job.key]: days });
    const { loads, equipment } = plan.trades;
    if (!loads || !equipment) throw new Error('both trades are built');
    const heating = required(loads.heating);
    const sums = required(before.plan.trades.loads?.heating ?? loads.heating);
    expect(heating.likely).toBe(days.night.house);
    expect(loads.sums).toMatchObject({ ok: true, value: { heating: sums.likely } });
    // The width stays a share of the whole.
    expect(heating.high / heating.likely).toBeCloseTo(sums.high / sums.likely, 12);
    const cooling = required(loads.cooling);
    expect(cooling.sensible.likely).toBe(Math.max(...days.day.sensible));
    expect(cooling.hour).toBe(days.day.worst + 0.5);
    // Whoever works in the attic meets its hottest hour, which is not the house's.
    expect(required(loads.atticDay).likely).toBeCloseTo(Math.max(...(days.day.attic ?? [])), 9);
    expect(days.day.attic?.[days.day.worst]).toBeLessThan(required(loads.atticDay).likely - 5);
    // The hours of work follow the same day: none at its 60 °C, all of one at dawn, some again once the roof has cooled.
    const july = required(plan.trades.access?.hotDay ?? { ok: false, because: 'missing', paths: [] })[6] ?? [];
    expect([july[5], july[13], july[22]]).toEqual([60, 0, 60]);
    const unit = equipment.candidates[required(equipment.chosen)];
    if (!unit) throw new Error('a unit is chosen');
    expect(required(unit.heatingSpare).likely).toBeCloseTo(required(unit.heatingCapacity).likely - days.night.house, 6);
    for (const room of Object.values(loads.rooms))
      expect(required(room.heating).likely).toBeCloseTo(days.night.rooms[room.room] ?? 0, 9);
    expect(plan.workings['loads/heating']?.at(-1)?.value).toBe(days.night.house);
  });
});
