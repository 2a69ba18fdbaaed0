import { inIdOrder } from '@kneewall/project';
import type { Draft } from '../plan/judge.ts';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type Working } from '../plan/working.ts';
import type { LoadsResult } from './result.ts';

/**
 * The floor of the rooms that have walls, floors or ceilings by now, beside the floor area that was answered: while
 * rooms are still being entered all sums are for these alone. Only where rooms carry the sums and an area was answered.
 * Limits: common practice, no source; a tenth is what a tape and the thickness of walls leave open.
 */
export function roomsCover(result: LoadsResult, view: PlanView): { draft: Draft; working: Working }[] {
  const { house } = view.project;
  if (result.basis !== 'rooms' || 'missing' in house.floorArea) return [];
  const { floorArea } = house;
  const s = scenario();
  const enclosed = new Set(Object.values(house.surfaces).map((x) => x.room));
  const { recorder, steps } = recordWorking();
  const heated = inIdOrder(house.rooms).filter(([, r]) => s.choice(r.conditioned) === 'yes');
  const rooms = attempt(() =>
    heated.filter(([id]) => enclosed.has(id)).reduce((sum, [, r]) => sum + s.of(r.floorArea), 0),
  );
  const value = attempt(() => {
    const [entered, whole] = [required(rooms), s.of(floorArea)];
    if (!(whole > 0)) return unresolved('out-of-range', floorArea.path);
    recorder.step('A_rooms', 'table', {}, entered, 'm²', 'loads.cover');
    recorder.given('A_house', floorArea);
    recorder.step(
      'share',
      'A_rooms / A_house',
      { A_rooms: entered, A_house: whole },
      entered / whole,
      '',
      'loads.cover',
    );
    return entered / whole;
  });
  const bare = heated.filter(([id]) => !enclosed.has(id)).map(([id, r]) => r.name ?? id);
  const draft: Draft = {
    id: 'rooms-cover',
    subject: 'house',
    holdPoint: 'decide',
    consequence: 'money',
    kind: 'fraction',
    value,
    limit: { min: 0.9, max: 1.1 },
    source: 'loads.cover',
    working: 'loads/rooms-cover',
    facts: { whole: s.of(floorArea), bare: bare.join(', '), ...(rooms.ok ? { rooms: rooms.value } : {}) },
  };
  return [{ draft, working: steps }];
}
