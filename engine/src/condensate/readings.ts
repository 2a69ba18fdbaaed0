import type { ExpectedReading } from '../plan/lines.ts';
import type { CondensateResult } from './result.ts';

/** s in which a litre should leave the pan; and the share of full-speed water that a short muggy hour may give. */
const litreMost = 120;

/** A litre poured in, the second way tried, and on a muggy day the water of an hour. */
export function readings({ along, water, pumped, panTime, secondLine }: CondensateResult): readonly ExpectedReading[] {
  if (!along.ok) return [];
  return [
    {
      id: 'condensate/fill',
      trade: 'condensate',
      what: 'Time that a litre takes to leave the pan, the trap full',
      how: 'Unit off and locked. Fill the trap first. Pour a litre slowly into the unit’s own pan; stop the clock when nothing more runs at the end.',
      kind: 'time',
      expected: litreMost / 2,
      good: { min: 0, max: litreMost },
      caution: 'Water and electricity: power locked off, nothing poured near wires.',
    },
    ...(secondLine.ok ? [fallAgain(secondLine.value.least, secondLine.value.fall)] : []),
    ...(pumped?.ok ? [lifted(pumped.value.litres)] : []),
    ...(along.value.float || along.value.second === 'switch' ? [stopped(panTime.ok ? panTime.value : undefined)] : []),
    ...(water.ok ? [anHour(water.value.high)] : []),
  ];
}

/** Less is normal: the unit seldom runs at full speed, and the air is seldom so damp. */
const anHour = (litres: number): ExpectedReading => ({
  id: 'condensate/water',
  trade: 'condensate',
  what: 'Water from the drain in an hour of muggy weather, unit running',
  how: 'A measuring jug under the end of the drain for twenty minutes, times three; an hour after the start at the earliest. Nothing at all on a damp day means a stopped drain: look into the pan at once.',
  kind: 'volume',
  expected: litres / 2000,
  good: { min: 0, max: litres / 1000 },
});

const fallAgain = (least: number, planned: number): ExpectedReading => ({
  id: 'condensate/second-fall',
  trade: 'condensate',
  what: 'Height that the second line loses, as laid',
  how: 'A level and a tape, or a clear hose full of water, from its beginning to its end.',
  kind: 'length',
  expected: planned,
  good: { min: least, max: Math.max(2 * planned, 2 * least) },
});

/** Under its own sheet by a tenth is still a pump; by half it is not. */
const lifted = (litres: number): ExpectedReading => ({
  id: 'condensate/pumped',
  trade: 'condensate',
  what: 'Water that the pump brings to the end of its tube in an hour of running',
  how: 'Five litres into its box, poured slowly; the time it runs until they are out. Five divided by that time.',
  kind: 'volume',
  expected: litres / 1000,
  good: { min: litres / 2000, max: litres / 500 },
  caution: 'Water and electricity: unit locked off, the pump’s plug and cord dry.',
});

/** A float that takes longer than the pan to fill is set too high. */
const stopped = (panTime: number | undefined): ExpectedReading => ({
  id: 'condensate/float',
  trade: 'condensate',
  what: 'Time after which the unit stops when the float switch is lifted',
  how: 'Unit running. Lift the float by hand, or pour water until it floats; stop the clock when blower and compressor stand still.',
  kind: 'time',
  expected: 10,
  good: { min: 0, max: Math.min(300, panTime ?? 300) },
  caution: 'Hands off fan and wires: only the float is touched.',
});
