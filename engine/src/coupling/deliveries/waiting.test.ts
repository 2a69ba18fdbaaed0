import { describe, expect, it } from 'vitest';
import type { MaterialLine, Task } from '../../plan/lines.ts';
import { minutes } from '../../plan/minutes.ts';
import { notInTime } from '../../schedule/awaited.ts';
import { waitingFor } from './waiting.ts';

const line = (id: string, what: string, more: Partial<MaterialLine> = {}): MaterialLine => ({
  ...{ id, trade: id.split('/')[0] as MaterialLine['trade'], what, kind: 'count', amount: 2 },
  ...more,
});
const task = (id: string, holdPoint: Task['holdPoint']): Task => ({
  ...{ id, trade: id.split('/')[0] as Task['trade'], what: id, holdPoint, duration: minutes(20, 30, 40), people: 1 },
  ...{ after: [], safeStops: ['Any time'], cautions: [] },
});
const comes = (id: string, at: number | undefined, more: object = {}) => ({
  ...{ id, name: id, goods: [] as string[], brings: 'all' as const },
  ...(at === undefined ? {} : { at }),
  ...more,
});
// Ducts and their parts are needed from the cut on, boots only when the ceiling is closed.
const lines = [
  line('air/flexible', 'Insulated flexible duct, 8 in (203 mm)', {
    like: { id: 'flexible 203', what: 'Flexible 8 in' },
  }),
  line('air/mastic', 'Tubs of mastic'),
  line('air/boots', 'Boots, one for each supply register'),
  line('circuit/wire', 'Cable'),
];
const tasks = [task('air/hang', 'connect'), task('air/faces', 'close'), task('circuit/pull', 'connect')];
const waits = (deliveries: ReturnType<typeof comes>[], here: string[] = []) =>
  waitingFor(tasks, lines, { deliveries, here }).map((w) => `${w.task} ${w.id} ${w.at ?? 'some day'}`);

describe('what a task waits for', () => {
  it('comes with the first delivery from its kind of shop where none names it', () => {
    expect(waits([comes('late', 900), comes('boat', 500), comes('wires', 100, { brings: 'electrical' })])).toEqual([
      'air/hang boat 500',
      'air/faces boat 500',
      'circuit/pull wires 100',
    ]);
  });

  it('comes with what names it, by the words of the list or its id, and only that', () => {
    const parcel = comes('parcel', 900, { goods: ['Boots', 'AIR/flexible 203'] });
    expect(waits([comes('boat', 500), parcel])).toEqual([
      'air/hang boat 500',
      'air/hang parcel 900',
      'air/faces boat 500',
      'air/faces parcel 900',
      'circuit/pull boat 500',
    ]);
    // A beginning of a word is not the word, and a delivery of named things brings nothing else.
    expect(waits([comes('parcel', 900, { goods: ['Boot'] })])).toEqual([]);
  });

  it('waits for all deliveries that bring some of it', () => {
    const two = [comes('one', 100, { goods: ['Tubs of mastic'] }), comes('two', 300, { goods: ['Tubs of mastic'] })];
    expect(waits(two)).toEqual(['air/hang one 100', 'air/hang two 300', 'air/faces one 100', 'air/faces two 300']);
  });

  it('comes on no day with a delivery that has none, unless another brings it or it is here', () => {
    const parcel = comes('parcel', undefined, { goods: ['Boots'] });
    expect(waits([comes('boat', 500), parcel])).toContain('air/faces parcel some day');
    expect(waits([comes('boat', 500), parcel])).not.toContain('air/hang parcel some day');
    expect(waits([comes('boat', 500), comes('other', undefined)]).some((w) => w.includes('other'))).toBe(false);
    expect(waits([parcel], ['air/boots'])).toEqual([]);
  });

  it('is left out of the plan only where what it waits for is too late or has no day', () => {
    const found = waitingFor(tasks, lines, {
      deliveries: [comes('boat', 500), comes('parcel', undefined, { goods: ['Boots'] })],
      here: [],
    });
    expect(tasks.flatMap((t) => notInTime(t.id, found, 1000))).toEqual([
      { task: 'air/faces', because: 'no-day', names: ['parcel'] },
    ]);
    expect(tasks.flatMap((t) => notInTime(t.id, found, 500)).map((u) => [u.task, u.because])).toEqual([
      ['air/hang', 'delivery'],
      ['air/faces', 'no-day'],
      ['circuit/pull', 'delivery'],
    ]);
  });
});
