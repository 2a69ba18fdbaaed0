import { describe, expect, it } from 'vitest';
import { clockReader } from './clock.ts';
import { clockSeen } from './clockSeen.ts';
import { momentOf, ordersOf } from './dates.ts';
import { encodingOf } from './encoding.ts';
import { hourMeans } from './hourMeans.ts';
import { logReader } from './logReader.ts';
import { logTextOf, logTextOfBytes } from './logText.ts';
import { type LogEntry, planLog, readLog, readLogText } from './readLog.ts';

const site = { timeZone: { value: 1, known: 'measured' as const } };
const lines = (head: string, row: (i: number) => string, count = 60): string =>
  [head, ...Array.from({ length: count }, (_, i) => row(i))].join('\n');
const two = (n: number): string => String(n).padStart(2, '0');
const clock = (i: number): string => `${two(Math.floor(i / 60) % 24)}:${two(i % 60)}`;
const read = (text: string, entry: LogEntry = {}) => readLog(text, entry, site);
/** 2026-01-15 00:00, seconds from 1970 (Python: datetime(2026, 1, 15, tzinfo=utc).timestamp()). */
const start = 1_768_435_200;

describe('how logs are written', () => {
  // One moment and one row, -3.5 °C outdoors, 20.25 indoors, 1234.5 W, in every way it may stand in a file.
  const dialects: readonly (readonly [string, string, (i: number) => string, LogEntry?])[] = [
    ['ISO, commas', 'time,outdoor °C,indoor °C,heat pump W', (i) => `2026-01-15 ${clock(i)}:00,-3.5,20.25,1234.5`],
    [
      'ISO with T and Z',
      'time,outdoor °C,indoor °C,heat pump W',
      (i) => `2026-01-14T23:${two(i)}:00Z,-3.5,20.25,1234.5`,
    ],
    [
      'ISO with offset',
      'time,outdoor °C,indoor °C,heat pump W',
      (i) => `2026-01-15T01:${two(i)}:00+02:00,-3.5,20.25,1234.5`,
    ],
    [
      'semicolons, decimal commas, dots in days',
      'Zeit;Außen °C;Wohnzimmer innen °C;Wärmepumpe W',
      (i) => `15.01.2026 ${clock(i)};-3,5;20,25;1234,5`,
    ],
    [
      'quoted cells',
      '"time","outdoor (C)","indoor (C)","heat pump (W)"',
      (i) => `"2026-01-15 ${clock(i)}","-3.5","20.25","1234.5"`,
    ],
    [
      'thousands in quotes',
      'time,outdoor °C,indoor °C,heat pump W',
      (i) => `2026-01-15 ${clock(i)},-3.5,20.25,"1,234.5"`,
    ],
    ['tabs', 'time\toutdoor °C\tindoor °C\theat pump W', (i) => `2026/01/15 ${clock(i)}\t-3.5\t20.25\t1234.5`],
    [
      'day and hour apart',
      'date,time,outdoor °C,indoor °C,heat pump W',
      (i) => `15/01/2026,${clock(i)},-3.5,20.25,1234.5`,
    ],
    [
      'month first, twelve hours, fahrenheit, kW',
      'time,outdoor °F,indoor °F,heat pump kW',
      (i) => `1/15/2026 12:${two(i)} AM,25.7,68.45,1.2345`,
    ],
    ['seconds from 1970', 'time,outdoor °C,indoor °C,heat pump W', (i) => `${start - 3600 + 60 * i},-3.5,20.25,1234.5`],
    ['milliseconds', 'time,outdoor °C,indoor °C,heat pump W', (i) => `${start - 3600 + 60 * i}000,-3.5,20.25,1234.5`],
    [
      'words above the head',
      'export of the logger\n\ntime,outdoor °C,indoor °C,heat pump W',
      (i) => `2026-01-15 ${clock(i)},-3.5,20.25,1234.5`,
    ],
    [
      'a byte order mark and CR LF',
      '\uFEFFtime,outdoor °C,indoor °C,heat pump W\r',
      (i) => `2026-01-15 ${clock(i)},-3.5,20.25,1234.5\r`,
    ],
    [
      'units behind numbers',
      'time,outdoor,indoor,heat pump W',
      (i) => `2026-01-15 ${clock(i)},-3.5 °C,20.25 °C,1234.5 W`,
    ],
    [
      'units in a line of their own',
      'time,outdoor,indoor,heat pump\n,C,C,W',
      (i) => `2026-01-15 ${clock(i)},-3.5,20.25,1234.5`,
    ],
  ];
  it.each(dialects.map((d) => ({ name: d[0], head: d[1], row: d[2], entry: d[3] })))(
    '$name',
    ({ head, row, entry }) => {
      const { value, problems } = read(lines(head, row), entry);
      expect(problems).toEqual([]);
      expect(value?.time[0]).toBe(start);
      expect(value?.time).toHaveLength(60);
      expect(value?.step).toBe(60);
      expect(value?.columns.outdoor?.[0]).toBeCloseTo(-3.5, 9);
      expect(value?.columns.indoor?.[0]).toBeCloseTo(20.25, 9);
      expect(value?.columns.unitPower?.[0]).toBeCloseTo(1234.5, 6);
    },
  );

  it('asks which number is the day, and never guesses', () => {
    const text = lines('time,outdoor °C', (i) => `03/04/2026 ${clock(i)},-3.5`);
    const open = read(text);
    expect(open.value).toBeUndefined();
    expect(open.problems[0]).toMatchObject({ code: 'time-slip', grade: 'refused' });
    const dayOf = (days: 'day-first' | 'month-first') =>
      new Date((read(text, { days }).value?.time[0] ?? 0) * 1000).toISOString().slice(0, 10);
    expect([dayOf('day-first'), dayOf('month-first')]).toEqual(['2026-04-03', '2026-03-04']);
    expect(ordersOf(['03/04/2026', '13/04/2026'])).toEqual(['day-first']);
  });

  it('asks what 1.000 means', () => {
    const text = lines('time;heat pump W', (i) => `2026-01-15 ${clock(i)};1.00${i % 10}`);
    expect(read(text).problems[0]).toMatchObject({ code: 'wrong-unit', grade: 'refused' });
    expect(read(text, { decimal: 'comma' }).value?.columns.unitPower?.[1]).toBe(1001);
    expect(read(text, { decimal: 'point' }).value?.columns.unitPower?.[1]).toBeCloseTo(1.001, 6);
  });

  it.each([
    ['a workbook', 'PK\u0003\u0004xx'],
    ['JSON', '{"a": 1}'],
    ['a page', '<!doctype html>'],
    ['a PDF', '%PDF-1.7'],
    ['bytes', 'a\u0000b'],
    ['a letter', 'Dear neighbour,\nthe house is warm.'],
    ['nothing', ''],
  ])('refuses %s in words', (_name, text) => {
    const { value, problems } = read(text);
    expect(value).toBeUndefined();
    expect(problems[0]?.mend).toMatch(/\.$/);
  });

  it('knows no day that the calendar has not', () => {
    expect(momentOf('2026-02-29 00:00', 'year-first')).toBeUndefined();
    expect(momentOf('2024-02-29 00:00', 'year-first')?.seconds).toBe(Date.UTC(2024, 1, 29) / 1000);
    expect(momentOf('31/04/2026', 'day-first')).toBeUndefined();
  });

  it('tells encodings apart', () => {
    expect(encodingOf(new TextEncoder().encode('a°;1,5'))).toBe('utf-8');
    expect(encodingOf(Uint8Array.from([0xff, 0xfe, 65, 0]))).toBe('utf-16le');
    expect(encodingOf(Uint8Array.from([65, 0, 59, 0, 49, 0]))).toBe('utf-16le');
    expect(encodingOf(Uint8Array.from([0, 65, 0, 59, 0, 49]))).toBe('utf-16be');
    expect(encodingOf(Uint8Array.from([65, 0xb0, 67]))).toBe('windows-1252');
  });
});

describe('clocks', () => {
  // Against the time zone data of the runtime, every quarter of an hour of two years.
  it.each([
    ['europe', 'Europe/Berlin', 1],
    ['america', 'America/Denver', -7],
  ] as const)('%s agrees with the zone %s', (rule, timeZone, zone) => {
    const shown = new Intl.DateTimeFormat('en-CA', {
      timeZone,
      hourCycle: 'h23',
      dateStyle: 'short',
      timeStyle: 'short',
    });
    const reader = clockReader(rule, zone);
    let wrong = 0;
    for (const from of [Date.UTC(2025, 2, 1), Date.UTC(2026, 9, 15)])
      for (let t = from; t < from + 40 * 86_400_000; t += 900_000) {
        const wall = momentOf(shown.format(t).replace(',', ''), 'year-first')?.seconds ?? Number.NaN;
        if (reader.standard(wall) !== t / 1000 + zone * 3600) wrong++;
      }
    expect(wrong).toBe(0);
  });

  it('sees which clock a log has', () => {
    const shown = new Intl.DateTimeFormat('en-CA', {
      timeZone: 'Europe/Berlin',
      hourCycle: 'h23',
      dateStyle: 'short',
      timeStyle: 'short',
    });
    const text = (from: number, wall: boolean): string =>
      lines(
        'time,outdoor °C',
        (i) => {
          const t = from + i * 900_000;
          return `${wall ? shown.format(t).replace(',', '') : new Date(t).toISOString().slice(0, 16).replace('T', ' ')},${i % 7}`;
        },
        400,
      );
    const seen = (t: string) => {
      const { value } = read(t);
      return value ? clockSeen(value, 1) : 'unread';
    };
    expect(seen(text(Date.UTC(2026, 2, 27), true))).toBe('europe');
    expect(seen(text(Date.UTC(2026, 9, 23), true))).toBe('europe');
    expect(seen(text(Date.UTC(2026, 2, 27), false))).toBe('standard');
    expect(seen(text(Date.UTC(2026, 1, 2), true))).toBeUndefined();
  });
});

describe('rows with faults', () => {
  const head = 'time,outdoor °C,indoor °C,heat pump kWh';
  const base = (i: number): string => `2026-01-15 ${clock(i)}`;

  it('counts each kind and says where the first stands', () => {
    const rows = [
      `${base(0)},1,20,100.0`,
      `${base(1)},x1,20,100.1`,
      'sometime,1,20,100.2',
      `${base(3)},1`,
      `${base(4)},1,-127,100.4`,
      `${base(4)},9,20,100.4`,
      `${base(6)},1,20,3.0`,
      `${base(5)},1,20,3.0`,
      `${base(30)},1,20,3.5`,
      `${base(31)},,20,3.6`,
    ];
    const { value } = read([head, ...rows].join('\n'), {
      columns: {
        outdoor: { name: 'outdoor °C', unit: 'C' },
        indoor: { name: 'indoor °C', unit: 'C' },
        unitPower: { name: 'heat pump kWh', unit: 'kWh-meter' },
      },
    });
    expect(value?.rows).toBe(10);
    expect(value?.faults).toEqual({
      'not-a-number': { count: 1, firstLine: 3, what: 'x1' },
      'no-moment': { count: 1, firstLine: 4, what: 'sometime' },
      'short-row': { count: 1, firstLine: 5 },
      impossible: { count: 1, firstLine: 6, what: 'indoor -127' },
      'twice-the-moment': { count: 1, firstLine: 7 },
      'out-of-order': { count: 1, firstLine: 9 },
      'meter-fell': { count: 1, firstLine: 8, what: 'unitPower' },
      gap: { count: 1, firstLine: 10 },
    });
    expect(Array.from(value?.time ?? [], (t) => (t - start) / 60)).toEqual([0, 1, 4, 5, 6, 30, 31]);
  });

  it('keeps the energy of a meter, whatever the rows', () => {
    const text = lines(
      'time,heat pump kWh',
      (i) => `${start + 60 * (i * 7 + (i % 3))},${(500 + 0.02 * (i * 7 + (i % 3))).toFixed(3)}`,
      400,
    );
    const { value } = read(text, { columns: { unitPower: { name: 'heat pump kWh', unit: 'kWh-meter' } } });
    if (!value) throw new Error('not read');
    const { columns } = hourMeans(value);
    for (const p of columns.unitPower?.slice(1, -1) ?? []) expect(p).toBeCloseTo(1200, 6);
  });

  it('suspects swapped columns and columns in other units', () => {
    const row = (i: number): string =>
      `2026-01-${two(1 + Math.floor(i / 24))} ${two(i % 24)}:00,20,${(8 * Math.sin(i / 4)).toFixed(2)}`;
    expect(read(lines('time,outdoor °C,indoor °C', row, 240)).problems.map((p) => p.code)).toEqual(['conflict']);
    const warm = (i: number): string => `2026-01-${two(1 + Math.floor(i / 24))} ${two(i % 24)}:00,68`;
    const entry = { columns: { indoor: { name: 'indoor', unit: 'C' } } };
    expect(read(lines('time,indoor', warm, 240), entry).problems.map((p) => p.code)).toEqual(['wrong-unit']);
    expect(planLog(logTextOf(lines('time,indoor', warm, 240)).ends, {}, site).columns.indoor?.unit).toBe('F');
  });

  it.each([
    ['UTF-8', (t: string) => new TextEncoder().encode(t)],
    ['UTF-8 with its mark', (t: string) => new TextEncoder().encode(`\uFEFF${t}`)],
    [
      'UTF-16',
      (t: string) =>
        Uint8Array.from(
          [`\uFEFF${t}`].flatMap((u) => [...u].flatMap((c) => [c.charCodeAt(0) & 255, c.charCodeAt(0) >> 8])),
        ),
    ],
    ['Windows letters', (t: string) => Uint8Array.from([...t], (c) => c.charCodeAt(0))],
  ])('gives the same for a file fetched by pieces as for its text: %s', (_, encode) => {
    // Four pieces, and every letter ° and ß is once in the way of their ends.
    const text = lines(
      'time;Außen °C;note',
      (i) => `${start + 60 * i};${(i % 40).toFixed(1)};${'°ß'.repeat(1 + (i % 7))}`,
      8000,
    );
    const bytes = encode(text);
    const heard: number[] = [];
    const file = { size: bytes.length, bytes: (from: number, to: number) => bytes.subarray(from, to) };
    const log = logTextOfBytes(
      file,
      (encoding) => new TextDecoder(encoding),
      (piece) => heard.push(piece.length),
    );
    const told: number[] = [];
    const found = readLogText(log, {}, site, (done, total) => told.push(done / total));
    expect(found.value?.time.length).toBe(8000);
    expect(found.value).toEqual(read(text).value);
    expect(heard.reduce((a, b) => a + b, 0)).toBe(bytes.length);
    expect(told.length).toBeGreaterThan(2);
    expect(told.at(-1)).toBe(1);
  });

  it('gives the same for text in pieces of any size', () => {
    const text = lines('time,outdoor °C', (i) => `2026-01-15 ${clock(i)},${i}.5`);
    const { reading } = planLog(logTextOf(text).ends, {}, site);
    if (!reading) throw new Error('not understood');
    for (const size of [1, 7, 64, 5000]) {
      const reader = logReader(reading);
      for (let at = 0; at < text.length; at += size) reader.add(text.slice(at, at + size));
      expect(reader.end()).toEqual(read(text).value);
    }
  });
});
