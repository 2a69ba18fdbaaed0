import { describe, expect, it } from 'vitest';
import type { Stock } from '../../materials/result.ts';
import type { MaterialLine, Task } from '../../plan/lines.ts';
import { minutes } from '../../plan/minutes.ts';
import { askedOf } from '../../schedule/asked.ts';
import { notInTime } from '../../schedule/awaited.ts';
import type { ScheduleResult } from '../../schedule/result.ts';
import { shortages, waitingFor } from './waiting.ts';

type Amount = { readonly path: string; readonly good: string; readonly amount: string };

const line = (id: string, what: string, more: Partial<MaterialLine> = {}): MaterialLine => ({
  ...{ id, trade: id.split('/')[0] as MaterialLine['trade'], what, kind: 'count', amount: 2 },
  ...more,
});
const task = (id: string, holdPoint: Task['holdPoint']): Task => ({
  ...{ id, trade: id.split('/')[0] as Task['trade'], what: id, holdPoint, duration: minutes(20, 30, 40), people: 1 },
  ...{ after: [], safeStops: ['Any time'], cautions: [] },
});
const comes = (id: string, at: number | undefined, more: object = {}) => ({
  ...{ id, name: id, goods: [] as string[], amounts: [] as Amount[], brings: 'all' as const },
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
const flexible = (amount: number) => ({ amount, like: { id: 'flexible 203', what: 'Flexible 8 in' } });
const tasks = [task('air/hang', 'connect'), task('air/faces', 'close'), task('circuit/pull', 'connect')];
const waits = (deliveries: ReturnType<typeof comes>[], here: string[] = [], stock: Stock[] = []) =>
  waitingFor(tasks, lines, { deliveries, here, stock }).map((w) => `${w.task} ${w.id} ${w.at ?? 'some day'}`);

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
      stock: [],
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

describe('deliveries that say how much they bring', () => {
  // Ten boots for the close, and 12 m of flexible duct in bags of 25 ft (7.62 m), which wastes no share.
  const own = [
    line('air/boots', 'Boots', { amount: 10 }),
    line('air/duct:a', 'Duct for a', { ...flexible(7), kind: 'length' }),
    line('air/duct:b', 'Duct for b', { ...flexible(5), kind: 'length' }),
  ];
  const brings = (id: string, at: number, good: string, amount: string) =>
    comes(id, at, { goods: [good], amounts: [{ path: `work.deliveries.${id}.amounts.x`, good, amount }] });
  const frame = (deliveries: ReturnType<typeof comes>[], stock: Stock[] = []) => ({
    ...{ deliveries, stock, here: stock.flatMap((x) => x.line ?? []) },
  });
  const faces = (deliveries: ReturnType<typeof comes>[], stock?: Stock[]) =>
    waitingFor(tasks, own, frame(deliveries, stock)).flatMap((w) => (w.task === 'air/faces' ? [w.id] : []));
  const three = [brings('one', 100, 'Boots', '4'), brings('two', 300, 'Boots', '6'), brings('more', 500, 'Boots', '5')];

  it('are waited for only until they bring enough, soonest first', () => {
    expect(faces(three)).toEqual(['one', 'two']);
    expect(faces([...three].reverse())).toEqual(['one', 'two']);
    // One that does not say how much brings the rest: nobody knows how much that is.
    expect(faces([...three.slice(0, 1), comes('parcel', 900, { goods: ['Boots'] })])).toEqual(['one', 'parcel']);
  });

  it('add to what is at hand', () => {
    const six: Stock[] = [{ path: 'work.stock.s', name: 'Shed', line: 'air/boots', amount: '6' }];
    expect(faces(three, six)).toEqual(['one']);
    expect(faces(three, [{ ...six[0], amount: '10' } as Stock])).toEqual([]);
  });

  it('count bags and lengths of what several lines need together', () => {
    const bags = (n: number) => [
      brings('one', 100, 'Flexible 8 in', '1 bag'),
      brings('two', 300, 'Flexible 8 in', `${n} m`),
    ];
    // 12 m: one bag and 4.38 m.
    expect(shortages(tasks, own, frame(bags(4.38)))).toEqual([]);
    expect(shortages(tasks, own, frame(bags(4)))).toEqual([
      {
        ...{ id: 'air/flexible 203', what: 'Flexible 8 in', kind: 'length' },
        ...{ wanted: 12, comes: expect.closeTo(11.62, 9) },
        ...{ tasks: ['air/hang', 'air/faces'], at: 'work.deliveries.one.amounts' },
      },
    ]);
    expect(waitingFor(tasks, own, frame(bags(4))).map((w) => `${w.task} ${w.id}`)).toContain('air/hang two');
  });

  it('that bring too little in all are told of with what lacks, and with nothing where enough comes', () => {
    const [short] = shortages(tasks, own, frame(three.slice(0, 1)));
    expect(short).toMatchObject({ id: 'air/boots', wanted: 10, comes: 4, tasks: ['air/faces'] });
    expect(shortages(tasks, own, frame(three))).toEqual([]);
    expect(shortages(tasks, own, frame([comes('boat', 100)]))).toEqual([]);
  });

  it('become a finding at the delivery: what lacks, and the day on which the first task that needs it begins', () => {
    const short = shortages(tasks, own, frame(three.slice(0, 1)));
    const part = { task: 'air/faces', part: 1, parts: 1, from: 2 * 1440 + 60 };
    const found = (work: unknown) => {
      const sum = { names: { 'air/faces': 'Faces' }, within: [], late: [], undated: [], unknown: [], short };
      return askedOf({ frame: { ok: true, value: { start: '2027-05-01' } }, work, sum } as unknown as ScheduleResult);
    };
    const [{ draft } = {}] = found({ ok: true, value: { parts: [{ ...part, from: 9999 }, part] } });
    expect(draft).toMatchObject({
      ...{ id: 'short:air-boots', subject: 'work.deliveries.one.amounts', holdPoint: 'order', kind: 'count' },
      ...{ value: { ok: true, value: 6 }, limit: { max: 0 }, facts: { task: 'Faces', by: '2027-05-03' } },
    });
    expect(found({ ok: false, because: 'pending', paths: [] })[0]?.draft.facts).toEqual({
      name: 'Boots',
      task: 'Faces',
    });
  });
});
