import { demos } from '@kneewall/demos';
import { beforeAll, describe, expect, it } from 'vitest';
import type { WeatherYear } from '../../../climate/weather/weatherYear.ts';
import { evaluate, type Job, piecesOf } from '../../../index.ts';
import { weatherOfYear } from '../../houseYear/table.ts';
import { type Prepared, powerRuns, prepare } from '../powerRun.ts';
import { agedBattery } from './ageing.ts';
import { yearsTo } from './fade.ts';
import { figuresOf, toRow } from './figures.ts';
import { helpsAnswers } from './helpsAnswers.ts';
import type { PowerHelpsInputs } from './helpsJob.ts';
import { type BaseRun, baseRun, changesOf, helpsRows, inReplay } from './helpsRows.ts';

let inputs: PowerHelpsInputs;
let year: WeatherYear;
let prepared: Prepared;
let base: BaseRun;
const still = () => {};
const none = (): never => {
  throw new Error('no file');
};

beforeAll(async () => {
  const project = await demos.find((d) => d.id === 'tern-ledge')?.load();
  const job = evaluate(project as never, {}).wanted.find((j) => j.kind === 'coupling/power-helps') as Job;
  // Hours instead of quarters are enough here.
  inputs = { ...(job.inputs as PowerHelpsInputs), step: 3600 };
  year = weatherOfYear(inputs.weather, none);
  prepared = prepare(inputs, year);
  base = baseRun(inputs, year, prepared);
});

describe('another power system under the same demand', () => {
  it('is what the whole loop gives, house and all', () => {
    const kinds = ['panels', 'battery', 'charger', 'indoors'];
    for (const kind of kinds) {
      const change = changesOf(inputs).find((c) => c.kind === kind);
      if (!change) throw new Error(kind);
      const whole = figuresOf(change.inputs, powerRuns(change.inputs, year, { prepared }).run('with-generator', still));
      const replayed = inReplay(change.inputs, base, inputs);
      expect(replayed?.generator, kind).toBe(whole.generator);
      expect(replayed?.starts, kind).toBe(whole.starts);
      expect(replayed?.coldMornings, kind).toBe(whole.coldMornings);
      expect(replayed?.litres, kind).toBeCloseTo(whole.litres, 6);
      expect(replayed?.cycles, kind).toBeCloseTo(whole.cycles, 6);
    }
  });

  it('leaves few mornings too cold to charge in a warm box, none in a heated room', () => {
    const of = (kind: string): number | undefined => {
      const change = changesOf(inputs).find((c) => c.kind === kind);
      return change && inReplay(change.inputs, base, inputs)?.coldMornings;
    };
    const { coldMornings } = figuresOf(inputs, base.run);
    expect(coldMornings).toBeGreaterThan(30);
    expect(of('warm-box')).toBeLessThan(0.2 * coldMornings);
    expect(of('indoors')).toBe(0);
  });

  it('is refused where the unit would not have its power', () => {
    const { generator: _none, ...alone } = inputs.power;
    expect(inReplay({ ...inputs, power: alone }, base, inputs)).toBeUndefined();
  });
});

describe('what would help', () => {
  it('comes to the same rows however the work is shared', () => {
    const [first, second] = piecesOf(4, 2);
    const whole = helpsRows(inputs, year, 0, 4, still);
    const parts = [first, second].flatMap((p) => helpsRows(inputs, year, p?.from ?? 0, p?.to ?? 0, still));
    expect(parts).toEqual(whole);
  });

  it('ranks by money for each hour, and pays back by litres at the dearest and the cheapest fuel', () => {
    const before = figuresOf(inputs, base.run);
    const fewer = (hours: number, litres: number) => [
      ...toRow({ ...before, generator: before.generator - hours, litres: before.litres - litres }),
      ...toRow(before),
    ];
    const changes = changesOf(inputs);
    const rows = changes.map((c) =>
      c.kind === 'seal' ? fewer(100, 200) : c.kind === 'ceiling' ? fewer(10, 50) : fewer(-5, -5),
    );
    const { ranked } = helpsAnswers(inputs, rows);
    expect(ranked.slice(0, 2).map((h) => h.kind)).toEqual(['seal', 'ceiling']);
    const [seal] = ranked;
    expect(seal?.perHour).toBeCloseTo((seal?.cost?.likely ?? 0) / 100, 9);
    expect(seal?.payback?.low).toBeCloseTo((seal?.cost?.low ?? 0) / (200 * inputs.costs.fuel.high), 9);
    expect(seal?.payback?.high).toBeCloseTo((seal?.cost?.high ?? 0) / (200 * inputs.costs.fuel.low), 9);
    expect(ranked.at(-1)?.payback).toBeUndefined();
  });

  it('tries one more kilowatt on each place, every other unit, and no box for a battery that is warm', () => {
    const kinds = changesOf(inputs).map((c) => c.kind);
    expect(kinds.filter((k) => k === 'panels').length).toBe(inputs.power.arrays.length);
    expect(kinds.filter((k) => k === 'unit').length).toBe(2);
    const warm = {
      ...inputs,
      power: { ...inputs.power, battery: { ...inputs.power.battery, place: 'heated' as const } },
    };
    expect(changesOf(warm).some((c) => c.kind === 'warm-box' || c.kind === 'indoors')).toBe(false);
  });
});

describe('a battery that ages', () => {
  // Closed form: worn evenly, it stands at four fifths at the end of its years, or of its cycles.
  it('reaches four fifths at the end of its years or cycles, sooner with both', () => {
    expect(yearsTo(0.8, { cycles: 1e12, years: 12 }, 150, true)).toBeCloseTo(12, 6);
    expect(yearsTo(0.8, { cycles: 3000, years: 1e12 }, 150, true)).toBeCloseTo(20, 6);
    expect(yearsTo(0.8, { cycles: 3000, years: 20 }, 150, true)).toBeCloseTo(10, 6);
    expect(yearsTo(0.8, { cycles: 3000, years: 20 }, 150, false)).toBeCloseTo(20, 6);
    expect(yearsTo(1, { cycles: 3000, years: 20 }, 150, true)).toBe(0);
  });
  it('holds less and gives back less, in the box it had', () => {
    const { battery } = inputs.power;
    const old = agedBattery(battery, 0.8);
    expect(old.energy).toBeCloseTo(0.8 * battery.energy, 9);
    expect(1 - old.roundTrip).toBeCloseTo(1.5 * (1 - battery.roundTrip), 9);
    expect(old.boxLoss).toBe(battery.boxLoss);
  });
});
