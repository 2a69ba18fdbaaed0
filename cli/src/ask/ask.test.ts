import { spawn, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { nodeAt } from '@kneewall/project';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { isOver, questionLines, startInterview, takeLine } from './interview.ts';
import { readAnswer } from './readAnswer.ts';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const program = join(root, 'cli/bin/kneewall.mjs');
let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'kneewall-ask-'));
  spawnSync(process.execPath, [join(root, 'scripts/build-cli.mjs')]);
});
afterAll(() => rmSync(folder, { recursive: true }));

const ask = (file: string, answers: readonly string[], ...more: string[]) => {
  const input = answers.map((a) => `${a}\n`).join('');
  const done = spawnSync(process.execPath, [program, 'new', file, '--ask', ...more], {
    encoding: 'utf8',
    cwd: folder,
    input,
  });
  return { code: done.status, out: done.stdout, err: done.stderr };
};
const stored = (file: string) => JSON.parse(readFileSync(join(folder, file), 'utf8'));
const place = ['44.6', '300 ft', 'inland', '-4 F', '88 F'];
const house = ['1050 sq ft', '1', '1966 to 1980', 'vented', 'crawl', 'draughts only', 'no'];
const winter = ['oil', '16000 kWh', '66 F'];
const power = ['grid', '240', '1'];

describe('kneewall new FILE --ask', () => {
  it('asks, writes the project, and gives the first answer in 80 columns', () => {
    const { code, out, err } = ask('whole.json', [...place, ...house, ...winter, ...power]);
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out.split('\n').filter((l) => l.length > 80)).toEqual([]);
    expect(out).not.toMatch(/NaN|undefined/);
    for (const said of [
      'On the coldest normal night this house needs about',
      'Heat on the coldest night',
      'likely',
      'Narrowed by last winter’s fuel',
      'Largest unknown:',
      'One thing to change',
      'What to find out next',
      '  3  ',
      'whole.json is ready',
    ])
      expect(out).toContain(said);
    const project = stored('whole.json');
    expect(project.site.coldNight).toEqual({ value: -20, known: 'estimated', as: '-4 F' });
    expect(project.house).toMatchObject({ era: '1966-1980', draught: 'fair', flue: false });
    expect(spawnSync(process.execPath, [program, 'check', join(folder, 'whole.json')]).status).not.toBe(2);
  });

  it('takes "don’t know" for everything: nothing is stored, and what is needed next is said', () => {
    const { code, out } = ask(
      'none.json',
      Array.from({ length: 18 }, (_, i) => (i % 2 ? '?' : '')),
    );
    expect(code).toBe(0);
    expect(stored('none.json')).toEqual({ schema: 1 });
    expect(out).toContain('Next, tell:');
  });

  it('shows a contradiction with the house as entered, and narrows nothing', () => {
    const { out } = ask('odd.json', [...place, ...house, 'electric', '900 kWh', '66 F', ...power]);
    expect(out).toContain('Last winter’s fuel says otherwise');
    expect(out.replace(/\s+/g, ' ')).toContain('nothing is narrowed');
    expect(out).not.toContain('Narrowed by');
  });

  it('says what is not understood and asks again; two meanings are chosen from by number', () => {
    const answers = ['about', '91', '44.6', '300 ft lbs', '1,000 ft', '2', 'moon', 'inland', '-4 F', '88 F'];
    const { code, out } = ask('nonsense.json', [...answers, '40 kWh', ...house, ...winter, ...power]);
    expect(code).toBe(0);
    expect(out).toContain('“about” is not understood.');
    expect(out).toContain('Which do you mean?');
    expect(out).toContain('“moon” is none of the answers.');
    expect(out).toContain('“kWh” is a unit of something else.');
    expect(out.split('\n').filter((l) => l.length > 80)).toEqual([]);
    const project = stored('nonsense.json');
    expect(project.site.latitude.value).toBe(44.6);
    expect(project.site.elevation.value).toBeCloseTo(304.8, 9);
  });

  it('asks for inverter and battery where the electricity is one’s own', () => {
    const own = ['own', '240', '1', '6 kW', '560 Ah at 51.2 V', 'in an unheated'];
    ask('own.json', [...place, ...house, ...winter, ...own]);
    expect(stored('own.json').power.battery).toMatchObject({ place: 'shed', energy: { value: 28.672 } });
  });

  it('with answers that end in the middle ends with 2, says so, and leaves no file', () => {
    const before = readdirSync(folder);
    const { code, err } = ask('cut.json', place);
    expect(code).toBe(2);
    expect(err).toContain('ended before the questions did');
    expect(readdirSync(folder)).toEqual(before);
  });

  it('interrupted ends with 130 and leaves no file', async () => {
    const child = spawn(process.execPath, [program, 'new', 'stopped.json', '--ask'], { cwd: folder });
    await new Promise((done) => child.stdout.once('data', done));
    child.stdin.write('44.6\n');
    await new Promise((done) => child.stdout.once('data', done));
    child.kill('SIGINT');
    expect(await new Promise((done) => child.once('exit', done))).toBe(130);
    expect(existsSync(join(folder, 'stopped.json'))).toBe(false);
  });

  it('never writes over a file, nor asks for nothing', () => {
    writeFileSync(join(folder, 'mine.json'), '{"schema":1}');
    expect(ask('mine.json', place).code).toBe(2);
    expect(ask('nowhere/deep.json', place).out).toBe('');
    expect(ask('both.json', place, '--from', 'tern-ledge').code).toBe(2);
    expect(ask('units.json', place, '--units', 'stone').code).toBe(2);
  });

  it('reads bare numbers in metres and degrees Celsius where asked to', () => {
    const answers = ['44.6', '90', '', '-20', '31', '95', ...house.slice(1), '', '', '', ...power];
    expect(ask('si.json', answers, '--units', 'si').code).toBe(0);
    expect(stored('si.json').site).toMatchObject({ units: 'si', elevation: { value: 90 }, coldNight: { value: -20 } });
  });
});

describe('the questions', () => {
  const after = (...lines: string[]) => lines.reduce((i, line) => takeLine(i, line).next, startInterview('us'));

  it('"back" goes one back, where an empty line keeps the answer and ? forgets it', () => {
    const back = after('44.6', 'back');
    expect(questionLines(back).join('\n')).toContain('Answered already');
    expect(takeLine(back, '').next.project.site?.latitude?.value).toBe(44.6);
    expect(takeLine(back, '?').next.project.site?.latitude).toBeUndefined();
    expect(takeLine(startInterview('us'), 'back').say.join()).toContain('first question');
  });

  it('keep what is implausible and ask for a second look; refuse what cannot be', () => {
    expect(takeLine(startInterview('us'), '80').say.join()).toContain('look again');
    const refused = takeLine(startInterview('us'), '100');
    expect(refused.next.at).toBe(0);
    expect(refused.say.join()).not.toBe('');
  });

  it('end', () => {
    expect(isOver(after(...Array.from({ length: 17 }, () => '')))).toBe(false);
    expect(isOver(after(...Array.from({ length: 18 }, () => '')))).toBe(true);
  });
});

describe('an answer among a few', () => {
  const below = nodeAt(['house', 'below'])?.node.meta;
  const attic = nodeAt(['house', 'attic'])?.node.meta;
  it.each([
    ['2', 'slab'],
    ['SLAB', 'slab'],
    ['unheated', 'basement'],
  ])('%s is taken', (text, value) => {
    if (below) expect(readAnswer(text, below, 'us')).toMatchObject({ kind: 'value', value });
  });
  it('that two answers begin with is asked again with both', () => {
    if (attic) expect(readAnswer('attic', attic, 'us')).toMatchObject({ kind: 'again' });
    if (attic) expect(JSON.stringify(readAnswer('attic', attic, 'us'))).toContain('Attic without vents');
  });
});
