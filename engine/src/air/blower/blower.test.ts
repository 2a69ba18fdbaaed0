import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { evaluate } from '../../index.ts';
import type { AirModel } from '../ductwork.ts';
import { nominalAir, solveFlows } from '../flows.ts';

const project = demo('tern-ledge');
const blower = ['candidates', 'unit-24', 'blower'];
const edited = (p: Project, path: readonly string[], after: unknown): Project =>
  applyEdit(p, { device: 'test', seq: 1, path, before: valueAt(p, path), after }).value;
const nameplate = (value: number) => ({ value, known: 'nameplate' as const });

type Row = readonly [flow: number, pressure: number, power?: number];
function withTable(kind: 'fixed' | 'torque' | 'airflow', rows: readonly Row[], most = 124.5): Project {
  const points = Object.fromEntries(
    rows.map(([flow, pressure, power], i) => [
      `p${i}`,
      {
        order: `a0${i}`,
        flow: nameplate(flow),
        pressure: nameplate(pressure),
        ...(power === undefined ? {} : { power: nameplate(power) }),
      },
    ]),
  );
  const speeds = { only: { order: 'a00', name: 'Only', points } };
  return edited(
    edited(edited(project, [...blower, 'kind'], kind), [...blower, 'speeds'], speeds),
    [...blower, 'staticMost'],
    nameplate(most),
  );
}
const planOf = (p: Project) => evaluate(p, {}).plan;
const find = (p: Project, id: string) => planOf(p).findings.find((f) => f.id === id);
const { air: solved } = planOf(project).trades;
if (!solved?.model.ok || !solved.flows.ok) throw new Error('the demo has ducts and a unit');
const drawn: AirModel = solved.model.value;

/** Pa that the demo's ducts ask for at a flow, by a blower that moves just that. */
function asked(flow: number): number {
  const points = [
    { flow: flow * (1 - 1e-7), pressure: 900 },
    { flow: flow * (1 + 1e-7), pressure: 0 },
  ];
  return solveFlows({ ...drawn, blower: { setting: 'any', points } }, nominalAir).staticPressure;
}

describe('a blower that holds its airflow', () => {
  const holding: readonly Row[] = [
    [0.25, 25, 90],
    [0.25, 75, 150],
    [0.25, 150, 260],
    [0.2, 175, 270],
  ];

  it('moves its set flow whatever the ducts ask, until its limit, and then what its table says', () => {
    const { air } = planOf(withTable('airflow', holding, 150)).trades;
    expect(air?.flows.ok && air.flows.value.flow).toBeCloseTo(0.25, 4);
    expect(air?.flows.ok && air.flows.value.staticPressure).toBeCloseTo(asked(0.25), 1);
    const weak = planOf(
      withTable(
        'airflow',
        [
          [0.25, 25],
          [0.25, 60],
          [0.2, asked(0.2)],
          [0.1, 160],
        ],
        60,
      ),
    ).trades.air;
    expect(weak?.flows.ok && weak.flows.value.flow).toBeCloseTo(0.2, 3);
  });

  it('shows static pressure as watts and noise, not as less air', () => {
    const finding = find(withTable('airflow', holding, 90), 'air/static-pressure');
    expect(finding?.status).toBe('fails');
    expect(finding?.why).toMatch(/watts and noise/);
    expect(finding?.why).toMatch(/draws \d+ W here, and 90 W at/);
    const beyond = find(
      withTable(
        'airflow',
        [
          [0.3, 25],
          [0.3, 60],
          [0.2, 110],
          [0.1, 160],
        ],
        60,
      ),
      'air/static-pressure',
    );
    expect(beyond?.why).toMatch(/past that/);
    expect(
      find(
        withTable('torque', [
          [0.35, 25],
          [0.1, 160],
        ]),
        'air/static-pressure',
      )?.why,
    ).toMatch(/air falls off/);
  });
});

describe('a blower whose table rises', () => {
  const humped: readonly Row[] = [
    [0.05, 60],
    [0.12, asked(0.12) * 0.6],
    [0.2, asked(0.2) * 1.4],
    [0.32, asked(0.32) * 0.3],
  ];

  it.each(['fixed', 'torque'] as const)('of %s has every flow named at which it can run', (kind) => {
    const plan = planOf(withTable(kind, humped));
    const points = plan.trades.air?.operatingPoints;
    expect(points?.ok && points.value.map((p) => p.steady)).toEqual([true, false, true]);
    if (points?.ok) for (const p of points.value) expect(p.pressure).toBeCloseTo(asked(p.flow), 2);
    const finding = plan.findings.find((f) => f.id === 'air/operating-points');
    expect(finding).toMatchObject({ status: 'fails', value: 3 });
    expect(finding?.what.match(/CFM/gi)?.length).toBe(3);
  });

  it('but meets the ducts once is told of and passes; one that falls is not told of', () => {
    const once = find(
      withTable('torque', [
        [0.05, 230],
        [0.1, 240],
        [0.35, 20],
      ]),
      'air/operating-points',
    );
    expect(once).toMatchObject({ status: 'ok', value: 1 });
    expect(find(project, 'air/operating-points')).toBeUndefined();
  });

  it('and never meets them within its table is not known', () => {
    const never = find(
      withTable('torque', [
        [0.3, 1],
        [0.31, 2],
        [0.32, 1],
      ]),
      'air/operating-points',
    );
    expect(never).toMatchObject({ status: 'unknown', because: 'out-of-range' });
  });
});
