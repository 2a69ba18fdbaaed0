import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
const program = join(root, 'cli/bin/kneewall.mjs');
const tern = join(root, 'demos/tern-ledge.json');
let folder = '';

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kneewall-cli-'));
  const built = spawnSync(process.execPath, [join(root, 'scripts/build-cli.mjs')], { encoding: 'utf8' });
  expect(built.stderr).toBe('');
});
afterAll(() => rmSync(folder, { recursive: true }));

const run = (...args: string[]) => {
  const done = spawnSync(process.execPath, [program, ...args], { encoding: 'utf8', cwd: folder });
  return { code: done.status, out: done.stdout, err: done.stderr };
};
const file = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return name;
};
const project = (house: unknown) => JSON.stringify({ schema: 1, house });

describe('kneewall import log and kneewall log', () => {
  const rows = (day: (i: number) => string) =>
    [
      'time,outdoor °C,indoor °C,heat W,heat pump W',
      ...Array.from({ length: 60 * 24 }, (_, h) => {
        const out = 2 + 6 * Math.sin(h / 70) + 3 * Math.sin(h / 9);
        const heat = 180 * (20 - out) + 100 * Math.sin(h * 1.7);
        return `${day(Math.floor(h / 24))} ${String(h % 24).padStart(2, '0')}:00,${out.toFixed(1)},20.0,${heat.toFixed(0)},${(heat / 3).toFixed(0)}`;
      }),
    ].join('\n');
  const days = (i: number): string => new Date(Date.UTC(2026, 0, 1 + i)).toISOString().slice(0, 10);

  it('takes a log in by pieces and says what it tells, and what it cannot', () => {
    const mine = file(
      'logged.json',
      JSON.stringify({
        schema: 1,
        site: { timeZone: { value: 0, known: 'measured' }, elevation: { value: 0, known: 'measured' } },
      }),
    );
    expect(run('import', 'log', file('winter.csv', rows(days)), '--into', mine).out).toContain('1440 rows');
    const { code, out, err } = run('log', mine);
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toContain('winter.csv');
    expect(out.replace(/\s+/g, ' ')).toMatch(/would have shown nine times of ten|Since \d/);
    expect(out.split('\n').filter((l) => l.length > 80)).toEqual([]);
  });

  it('refuses a log of no days and leaves the project as it was; and says where there is no log', () => {
    const mine = file('empty.json', '{"schema":1}');
    expect(
      run(
        'import',
        'log',
        file(
          'bad.csv',
          rows(() => 'no day'),
        ),
        '--into',
        mine,
      ).code,
    ).toBe(2);
    expect(run('import', 'log', 'not-there.csv', '--into', mine).err).toContain('there is no such file');
    expect(readFileSync(join(folder, mine), 'utf8')).toBe('{"schema":1}');
    expect(run('log', mine).err).toContain('has no log');
  });
});

describe('kneewall year', () => {
  it('refuses a place that cannot be written before it works anything out', () => {
    for (const [place, why] of [
      ['nowhere/hours.csv', 'there is no such folder'],
      ['.', 'it is a folder'],
    ] as const) {
      const refused = run('year', tern, '--csv', place);
      expect(refused).toMatchObject({ code: 2, out: '' });
      expect(refused.err).toContain(`Cannot write ${place}: ${why}`);
    }
  });

  it('tells the year of the demo in 80 columns', () => {
    const { code, out, err } = run('year', tern, '--step', '3600');
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toContain('Tern Ledge: a year');
    expect(out.split('\n').filter((l) => l.length > 80)).toEqual([]);
    expect(out).not.toMatch(/NaN|undefined/);
  });

  it('prints one JSON value whose months sum to the year, and writes every hour', () => {
    const { code, out } = run('year', tern, '--step', '3600', '--json', '--csv', 'hours.csv');
    expect(code).toBe(0);
    const year = JSON.parse(out) as { heating: { energy: number; months: number[] } };
    expect(year.heating.months.reduce((a, b) => a + b, 0)).toBeCloseTo(year.heating.energy, 6);
    const lines = readFileSync(join(folder, 'hours.csv'), 'utf8').trim().split('\n');
    expect(lines.length).toBe(8761);
    const [head = '', ...rows] = lines;
    const columns = head.split(',');
    expect(rows.every((r) => r.split(',').length === columns.length)).toBe(true);
    const heating = columns.flatMap((c, i) => (c.endsWith('heating W') ? [i] : []));
    const sum = rows.reduce((a, r) => a + heating.reduce((b, i) => b + Number(r.split(',')[i]), 0), 0);
    expect(sum / 1000 / year.heating.energy).toBeCloseTo(1, 4);
  });

  it('refuses winters on own power for a house on the grid, and says what to enter', () => {
    const grid = join(root, 'demos/juniper-flat.json');
    const { code, err } = run('year', grid, '--step', '3600', '--winters');
    expect(code).toBe(2);
    expect(err).toContain('power.supply');
  });

  it.each([
    ['a step that does not divide an hour', ['--step', '7']],
    ['an unknown option', ['--fast']],
    ['units nobody knows', ['--units', 'imperial']],
  ])('refuses %s with words', (_name, options) => {
    const { code, err, out } = run('year', tern, ...options);
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err.length).toBeGreaterThan(10);
  });

  it('says what it lacks', () => {
    const { code, err } = run('year', file('bare.json', project({})));
    expect(code).toBe(2);
    expect(err).toContain('Enter first: site.latitude');
  });
});

describe('kneewall check', () => {
  it('tells what stands against the demo, in 80 columns, without colour, and ends with 1', () => {
    const { code, out, err } = run('check', tern);
    expect(code).toBe(1);
    expect(err).toBe('');
    expect(out).toContain('Tern Ledge');
    expect(out).toContain('Before you order');
    expect(out).toContain('Mend:');
    expect(out.split('\n').filter((l) => l.length > 80)).toEqual([]);
    expect(out).not.toContain('\u001b[');
    expect(out).not.toMatch(/NaN|undefined|\bat \w+ \(/);
  });

  it('prints one JSON value and nothing else, with the whole plan in it', () => {
    const { code, out } = run('check', tern, '--json');
    expect(code).toBe(1);
    const plan = JSON.parse(out) as Record<string, unknown>;
    for (const key of [
      'schema',
      'engine',
      'findings',
      'holdPoints',
      'trades',
      'materials',
      'tasks',
      'readings',
      'workings',
      'agreement',
      'problems',
    ])
      expect(plan, key).toHaveProperty(key);
  });

  it('ends with 0 where nothing fails, even if nothing is known', () => {
    expect(run('check', file('empty.json', '{"schema":1}')).code).toBe(0);
  });

  it.each<[string, string, RegExp]>([
    ['a truncated file', '{"schema":1,"house":{', /cut short/],
    ['binary', '\u0000\u0001', /not text/],
    ['deep nesting', `{"schema":1,"a":${'['.repeat(90)}${']'.repeat(90)}}`, /nested/],
    ['a future version', '{"schema":9}', /newer Kneewall/],
    ['a wrong type', project({ floorArea: { value: 'big', known: 'measured' } }), /house\.floorArea/],
    ['a negative area', project({ floorArea: { value: -4, known: 'measured' } }), /cannot be below 0/],
    ['an infinite area', '{"schema":1,"house":{"floorArea":{"value":1e999,"known":"measured"}}}', /floorArea/],
    ['a forbidden key', '{"schema":1,"house":{"__proto__":{}}}', /__proto__/],
  ])('refuses %s with the place and the mend, and ends with 2', (_name, text, words) => {
    const { code, out, err } = run('check', file('bad.json', text));
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(words);
    expect(err).not.toMatch(/NaN|undefined|\bat \w+ \(|node:internal/);
  });

  it.each([
    [['check']],
    [['check', 'a', 'b']],
    [['check', 'none.json']],
    [['check', '--what', 'x']],
    [['chek', 'x']],
    [[]],
    [['check', 'x', '--units', 'stone']],
  ])('refuses the usage %j', (args) => {
    const { code, err } = run(...args);
    expect(code).toBe(2);
    expect(err.length + run(...args).out.length).toBeGreaterThan(10);
  });
});

describe('kneewall new', () => {
  it('makes an empty project or a copy of a demo, and never writes over a file', () => {
    expect(run('new', 'mine.json').code).toBe(0);
    expect(JSON.parse(readFileSync(join(folder, 'mine.json'), 'utf8'))).toEqual({ schema: 1 });
    expect(run('new', 'tern.json', '--from', 'tern-ledge').code).toBe(0);
    expect(run('check', 'tern.json').code).toBe(1);
    const before = readFileSync(join(folder, 'tern.json'));
    expect(run('new', 'tern.json').code).toBe(2);
    expect(readFileSync(join(folder, 'tern.json'))).toEqual(before);
    expect(run('new', 'x.json', '--from', 'nowhere').err).toContain('juniper-flat');
  });
});

describe('kneewall import weather', () => {
  const columns = Object.fromEntries(
    [
      ['dryBulb', '°C'],
      ['relativeHumidity', '%'],
      ['ghi', 'W/m²'],
      ['dni', 'W/m²'],
      ['dhi', 'W/m²'],
    ].map(([c, unit]) => [c, { name: c, unit }]),
  );
  const is = (value: number) => ({ value, known: 'measured' });
  const base = { schema: 1, site: { latitude: is(45), elevation: is(10), weather: { format: 'hourly', columns } } };
  // A year made by arithmetic: cold in January, warm in July, no sun.
  const year = [
    'dryBulb,relativeHumidity,ghi,dni,dhi',
    ...Array.from({ length: 8760 }, (_, i) => `${(8 - 14 * Math.cos((2 * Math.PI * i) / 8760)).toFixed(2)},70,0,0,0`),
  ].join('\n');

  it('takes a year, keeps it beside the project, and the plan uses it', () => {
    const into = file('weather.json', JSON.stringify(base));
    const { code, out, err } = run('import', 'weather', file('year.csv', year), '--into', into, '--format', 'hourly');
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out).toContain('8760 rows');
    expect(readdirSync(join(folder, 'blobs'))[0]).toMatch(/^[0-9a-f]{64}$/);
    const plan = JSON.parse(run('check', into, '--json').out) as {
      trades: { climate: { basis: string; night: { ok: boolean; value: { outdoor: { likely: number } } } } };
    };
    expect(plan.trades.climate.basis).toBe('weather-file');
    expect(plan.trades.climate.night.value.outdoor.likely).toBeCloseTo(-6, 0);
  });

  it('refuses half a year and leaves the project as it was, to the byte', () => {
    const into = file('untouched.json', JSON.stringify(base));
    const before = readFileSync(join(folder, into));
    const { code, err } = run(
      'import',
      'weather',
      file('half.csv', year.slice(0, 60_000)),
      '--into',
      into,
      '--format',
      'hourly',
    );
    expect(code).toBe(2);
    expect(err).toContain('missing');
    expect(readFileSync(join(folder, into))).toEqual(before);
  });
});

describe('kneewall import prices', () => {
  it('takes what it can in one go, lists the rest by row, and a second time changes what is there', () => {
    const into = file('priced.json', JSON.stringify({ schema: 1 }));
    const csv = 'Artikel;Preis;Einheit\nDuct board 1 in;54,50;sheet\nMastic;0;tub\nFoil tape;11,90;180 ft roll\n';
    const columns = ['--columns', 'name=Artikel,price=Preis,unit=Einheit'];
    const first = run('import', 'prices', file('prices.csv', csv), '--into', into, ...columns);
    expect(first.err).toBe('');
    expect(first.out).toMatch(/2 new prices.*0 changed[\s\S]*1 row was left out[\s\S]*row\.3\.price/);
    const { work } = JSON.parse(readFileSync(join(folder, into), 'utf8'));
    expect(work.prices['duct-board-1-in'].price).toEqual({ value: 54.5, known: 'nameplate', as: '54,50' });
    const again = run(
      'import',
      'prices',
      file('prices.csv', csv.replace('54,50', '60,00')),
      '--into',
      into,
      ...columns,
    );
    expect(again.out).toContain('0 new prices');
    const none = run('import', 'prices', file('none.csv', 'a,b\n1,2\n'), '--into', into);
    expect(none.code).toBe(2);
    expect(none.err).toContain('No column is headed');
  });
});

describe('kneewall import datasheet', () => {
  const sheet = [
    'mode,speed,outdoor (°F),indoor (°F),capacity (Btu/h),power (W),airflow (cfm)',
    'heating,highest,47,70,28000,2300,700',
    'heating,highest,5,70,22000,3000,700',
    'heating,lowest,47,70,8000,510,420',
  ].join('\n');
  const bare = JSON.stringify({ schema: 1 });

  it('puts a sheet in as a new unit and says what it leaves open; again it replaces the rows', () => {
    const into = file('units.json', bare);
    const first = run('import', 'datasheet', file('My unit 24.csv', sheet), '--into', into);
    expect(first.err).toBe('');
    expect(first.code).toBe(0);
    expect(first.out).toContain('“my-unit-24” has 3 rows');
    expect(first.out).toContain('leaves something open');
    expect(first.out.split('\n').filter((l) => l.length > 80)).toEqual([]);
    const again = run(
      'import',
      'datasheet',
      file('less.csv', sheet.split('\n').slice(0, 3).join('\n')),
      '--into',
      into,
      '--unit',
      'my-unit-24',
    );
    expect(again.code).toBe(0);
    expect(again.out).toMatch(/They replace the 3\s+it had/);
    const { candidates } = JSON.parse(readFileSync(join(folder, into), 'utf8')) as {
      candidates: Record<string, { name: string; rows: object }>;
    };
    expect(Object.keys(candidates)).toEqual(['my-unit-24']);
    expect(candidates['my-unit-24']?.name).toBe('My unit 24');
    expect(Object.keys(candidates['my-unit-24']?.rows ?? {}).length).toBe(2);
  });

  it.each<[string, string[], RegExp]>([
    ['a fault in a cell, by row and column', ['--unit', 'u'], /row\.3\.capacity \(Btu\/h\)/],
    ['an id that is none', ['--unit', 'The Unit'], /no id/],
    ['a weather format', ['--format', 'tmy3'], /weather/],
  ])('refuses %s and leaves the project as it was, to the byte', (_name, options, words) => {
    const into = file('same.json', bare);
    const { code, err, out } = run(
      'import',
      'datasheet',
      file('u.csv', sheet.replace('22000', 'much')),
      '--into',
      into,
      ...options,
    );
    expect(code).toBe(2);
    expect(out).toBe('');
    expect(err).toMatch(words);
    expect(readFileSync(join(folder, into), 'utf8')).toBe(bare);
  });
});

describe('kneewall serve', () => {
  it.runIf(existsSync(join(root, 'app/dist/index.html')))(
    'ends with 2 and says so where the port is taken',
    async () => {
      const holder = createServer().listen(0, '127.0.0.1');
      await new Promise((done) => holder.once('listening', done));
      const { port } = holder.address() as { port: number };
      const { code, err } = run('serve', '--port', String(port));
      holder.close();
      expect(code).toBe(2);
      expect(err).toContain(String(port));
    },
  );

  it.runIf(existsSync(join(root, 'app/dist/index.html')))(
    'prints its address and ends with 130 when interrupted',
    async () => {
      const child = spawn(process.execPath, [program, 'serve', '--port', '0'], { cwd: folder });
      const said = await new Promise<string>((done) => child.stdout.once('data', (d) => done(String(d))));
      expect(said).toMatch(/http:\/\/127\.0\.0\.1:\d+\//);
      child.kill('SIGINT');
      expect(await new Promise((done) => child.once('exit', done))).toBe(130);
    },
  );

  it('refuses a port that is none', () => {
    expect(run('serve', '--port', 'seven').code).toBe(2);
  });
});

describe('kneewall papers', () => {
  it('writes the ducts in plan, says so, and says when it writes over another', () => {
    const first = run('papers', tern, '--quick', '--out', 'papers/deep', '--units', 'si');
    expect(first.err).toBe('');
    expect(first.code).toBe(0);
    expect(first.out).toContain('papers/deep/ducts.svg: written.');
    const drawn = readFileSync(join(folder, 'papers/deep/ducts.svg'), 'utf8');
    expect(drawn).toContain('data-section="supply-bath"');
    expect(readFileSync(join(folder, 'papers/deep/plan-set.pdf')).subarray(0, 5).toString()).toBe('%PDF-');
    expect(readFileSync(join(folder, 'papers/deep/checks.csv'), 'utf8')).toMatch(/^Hold point,Trade,/);
    expect(JSON.parse(readFileSync(join(folder, 'papers/deep/plan.json'), 'utf8'))).toHaveProperty('findings');
    expect(run('papers', tern, '--quick', '--out', 'papers/deep', '--units', 'si').out).toContain('the same as before');
    const other = run('papers', tern, '--quick', '--out', 'papers/deep', '--units', 'us');
    expect(other.out).toContain('written over the one that was there');
    expect(readFileSync(join(folder, 'papers/deep/ducts.svg'), 'utf8')).toContain('cfm');
  });

  it('makes a sheet of a project that has nothing yet, and says what is unknown', () => {
    const { code, out } = run('papers', file('bare.json', '{"schema":1}'), '--quick', '--out', 'bare');
    expect(code).toBe(0);
    expect(out).toContain('unknown so far');
  });

  it.each([
    ['no folder named', [tern]],
    ['units nobody knows', [tern, '--out', 'x', '--units', 'stone']],
    ['letters nobody knows', [tern, '--out', 'x', '--letters', 'huge']],
    ['a part nobody knows', [tern, '--out', 'x', '--only', 'buy,poems']],
    ['a project that is none', ['nothing.json', '--out', 'x']],
    ['a folder that is a file', [tern, '--out', tern]],
  ])('refuses %s with words', (_name, args) => {
    const { code, err, out } = run('papers', ...args);
    expect(code).toBe(2);
    expect(err.length).toBeGreaterThan(20);
    expect(err).not.toMatch(/undefined| {4}at /);
    expect(out).toBe('');
  });
});

describe('kneewall log', () => {
  it('refuses a project without one, and values that no log has', () => {
    const none = run('log', tern);
    expect(none.code).toBe(2);
    expect(none.err).toContain('kneewall import log');
    expect(run('log', tern, '--accept', 'comfort').code).toBe(2);
  });

  it('takes what the winter taught into the plan, and back out of it to the byte', () => {
    expect(run('new', 'after.json', '--from', 'tern-ledge-after').code).toBe(0);
    const table = join(root, 'demos/files/winter-after-log.csv');
    expect(run('import', 'log', table, '--into', 'after.json').code).toBe(0);
    const before = readFileSync(join(folder, 'after.json'), 'utf8');
    const took = run('log', 'after.json', '--accept', 'all', '--units', 'si');
    expect(took.code).toBe(0);
    expect(took.out).toContain('In the plan: loss, power and household.');
    // The log's house loses 20 % more than the plan's, its unit draws 4 % more.
    expect(took.out).toMatch(/the log has 1(19|20|21|22)%/);
    expect(took.out).toMatch(/drew 10[345]%/);
    expect(took.out).toMatch(/the house takes (6\.9|7|7\.0|7\.1) kWh a day/);
    expect(readFileSync(join(folder, 'after.json'), 'utf8')).not.toBe(before);
    expect(run('log', 'after.json', '--back', 'all').code).toBe(0);
    expect(readFileSync(join(folder, 'after.json'), 'utf8')).toBe(before);
  });
});
