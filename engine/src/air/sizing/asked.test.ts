import { checkProject, type Project } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demo } from '../../../test/demos.ts';
import { everyChoice } from '../../../test/sizing/enumerate.ts';
import { evaluate, printerFor } from '../../index.ts';
import { inch } from '../../physics/exact.ts';
import { passesWords, pricesWords, sizingSentence } from './messages.ts';
import { type DuctSizingInput, setUp } from './setUp.ts';
import { sizeDucts } from './sizeDucts.ts';
import { sizingKind } from './sizingJob.ts';

const measured = (value: number | object) => ({ value, known: 'measured' as const });
type Tree = Record<string, unknown>;

/** Tern Ledge, with some of its places laid over. */
function tern(...changes: readonly (readonly [string, unknown])[]): Project {
  const project = structuredClone(demo('tern-ledge')) as Tree;
  for (const [path, value] of changes) {
    const keys = path.split('.');
    let at = project;
    for (const key of keys.slice(0, -1)) {
      at[key] = at[key] ?? {};
      at = at[key] as Tree;
    }
    at[keys.at(-1) ?? ''] = value;
  }
  const checked = checkProject(project);
  expect(checked.problems.filter((p) => p.grade === 'refused')).toEqual([]);
  return project as Project;
}

function inputOf(project: Project): DuctSizingInput {
  const job = evaluate(project, {}).wanted.find((j) => j.kind === sizingKind);
  if (!job) throw new Error('the demo has ducts to size');
  return job.inputs as DuctSizingInput;
}

const section = 'routes.ducts.sections';
const flexible = (diameters: readonly number[]) =>
  Object.fromEntries(diameters.map((d) => [`f-${d}`, { duct: 'flexible', diameter: measured(d * inch) }]));
const priceOf = (d: number, price: number | object) => ({
  duct: 'flexible',
  diameter: measured(d * inch),
  piece: measured(7.62),
  price: measured(price),
});
const listed = ['routes.ducts.make.flexible', 'listed'] as const;

// Five sizes of flexible duct at prices that are not in step with size; the return may be a box in a low place.
const entered = tern(
  listed,
  [
    'work.prices',
    {
      a: priceOf(6, 44),
      b: priceOf(7, 80),
      c: priceOf(8, { low: 50, likely: 62, high: 90 }),
      d: priceOf(9, 70),
      e: priceOf(14, 150),
    },
  ],
  [`${section}.return-hall.mayBe`, { rectangular: 'yes' }],
  [`${section}.return-hall.space`, { passes: 'bay', depth: measured(15 * inch), width: measured(24 * inch) }],
  [`${section}.supply-bath.space`, { passes: 'over', depth: measured(11 * inch) }],
);
const input = inputOf(entered);

describe('spaces, kinds and prices as entered', () => {
  it('reach the choice of sizes', () => {
    expect(Object.keys(input.spaces ?? {})).toEqual(['supply-bath', 'return-hall']);
    expect(input.kinds?.['return-hall']).toEqual(['flexible', 'rectangular']);
    expect(input.prices?.['flexible 152']?.run?.likely).toBeCloseTo(44 / 7.62, 6);
    const { sections } = setUp(input, input.flow);
    for (const s of sections)
      if (!s.kept && s.id !== 'return-hall')
        for (const o of s.options)
          expect(['flexible 152', 'flexible 178', 'flexible 203', 'flexible 229', 'flexible 356']).toContain(o.id);
  });

  it('give what trying every choice one by one gives', () => {
    const { spec } = setUp(input, input.flow);
    const every = everyChoice(spec);
    expect(every.length).toBeGreaterThan(1000);
    const fitting = every.filter((t) => t.pressure <= Math.round(spec.budget * 1e6));
    expect(fitting.length).toBeGreaterThan(100);
    expect(fitting.length).toBeLessThan(every.length);
    const sized = sizeDucts(input);
    if (sized.sizing.status !== 'fits') throw new Error('it fits');
    const best = fitting.reduce((a, t) => Math.min(a, t.cost), Number.POSITIVE_INFINITY);
    expect(Math.round(sized.sizing.best.totals.money * 100)).toBe(best);
    const second = fitting.map((t) => t.cost).sort((a, b) => a - b)[1] ?? 0;
    expect(Math.round((sized.sizing.runnerUp?.totals.money ?? 0) * 100)).toBe(second);
  });

  it('cost what is entered: flexible duct with its slack and its collars, the ends as stand-ins', () => {
    const dearer = inputOf({
      ...entered,
      work: { ...entered.work, prices: { ...entered.work?.prices, a: priceOf(6, 44 + 7.62) } },
    } as Project);
    const money = (from: DuctSizingInput) =>
      setUp(from, from.flow)
        .sections.find((s) => s.id === 'supply-bed-south')
        ?.options.find((o) => o.id === 'flexible 152')?.money ?? 0;
    expect(money(dearer) - money(input)).toBeCloseTo(4.5 / 0.9 + 4 * 0.0254, 6);
  });

  it('are told: what goes in, whose prices, and the range', () => {
    const sized = sizeDucts(input);
    const print = printerFor('us');
    const hall = sized.sections['return-hall'];
    expect(hall && passesWords(hall, print)).toMatch(
      /^Through the bay of “Return from the hall”, 15" deep and 24" wide: \d+ of \d+ sizes go in/,
    );
    expect(`${sizingSentence(sized, print)} ${pricesWords(sized)}`).not.toMatch(/NaN|undefined|stand-ins without/);
  });
});

describe('a size more to be had', () => {
  it('never makes the best choice dearer, and never stops one from fitting', () => {
    const base = inputOf(tern(listed, ['work.stock', flexible([6, 14])]));
    const shape = (d: number) => ({ kind: 'flexible' as const, diameter: d * inch });
    const sizes = fc.uniqueArray(
      fc.integer({ min: 8, max: 40 }).map((n) => n / 2),
      { minLength: 1, maxLength: 6 },
    );
    const cost = (diameters: readonly number[]) => {
      const { sizing } = sizeDucts({ ...base, stock: { listed: diameters.map(shape), only: ['flexible'] } });
      return sizing.status === 'fits' ? sizing.best.totals.money : Number.POSITIVE_INFINITY;
    };
    let fitted = 0;
    fc.assert(
      fc.property(sizes, fc.integer({ min: 8, max: 40 }), (some, more) => {
        const before = cost(some);
        if (before < Number.POSITIVE_INFINITY) fitted++;
        expect(cost([...some, more / 2])).toBeLessThanOrEqual(before);
      }),
      { seed: 11, numRuns: 60 },
    );
    expect(fitted).toBeGreaterThan(10);
  });

  it('as a line of stock widens the choice beside the usual sizes', () => {
    const usual = inputOf(tern());
    const wider = inputOf(tern(['work.stock', { odd: { duct: 'flexible', diameter: measured(11 * inch) } }]));
    const ids = (from: DuctSizingInput) =>
      setUp(from, from.flow)
        .sections.find((s) => s.id === 'return-hall')
        ?.options.map((o) => o.id);
    expect(ids(wider)?.length).toBe((ids(usual)?.length ?? 0) + (ids(wider)?.includes('flexible 279') ? 1 : 0));
    expect(wider.stock?.listed).toHaveLength(1);
  });
});

describe('what is ordered', () => {
  const ids = Object.keys(entered.routes?.ducts?.sections ?? {});
  it.each(ids)('“%s” is judged and never changed, whatever it has to pass and whatever kinds are wanted', (id) => {
    const project = tern(
      listed,
      ['work.stock', flexible([6, 8, 14])],
      ['items.it', { state: 'ordered', of: `${section}.${id}` }],
      [`${section}.${id}.space`, { passes: 'bay', depth: measured(0.1) }],
      [`${section}.${id}.mayBe`, { flexible: 'no', round: 'yes', board: 'no' }],
    );
    const from = inputOf(project);
    const sized = sizeDucts(from);
    const s = sized.sections[id];
    expect(s?.kept).toBe('bought');
    expect(s?.drawn.breaks?.map((b) => b.limit)).toContain('depth');
    expect(sized.changed).not.toContain(id);
    if (sized.sizing.status === 'fits') expect(sized.sizing.best.choice[id]).toBe(s?.drawn.id);
    expect(sized.sized.sections.find((x) => x.id === id)).toEqual(from.model.sections.find((x) => x.id === id));
    const space = evaluate(project, {}).plan.findings.find((f) => f.id === `air/space:${id}`);
    expect(space?.status).toBe('fails');
    expect(space?.item).toBe('it');
  });
});

describe('what the sizes are to save', () => {
  it('is served: least work takes no more hours than least money, in entered times at a joint', () => {
    const joints = { flexible: measured({ low: 600, likely: 1200, high: 2400 }) };
    const both = ['money', 'labour'].map((goal) =>
      sizeDucts(inputOf(tern(['routes.ducts.make', { goal, joints, round: 'usual' }]))),
    );
    const [money, labour] = both.map((d) => (d.sizing.status === 'fits' ? d.sizing : undefined));
    expect([money?.goal, labour?.goal]).toEqual(['money', 'labour']);
    expect(labour?.best.totals.labour).toBeLessThanOrEqual(money?.best.totals.labour ?? 0);
    expect(money?.best.totals.money).toBeLessThanOrEqual(labour?.best.totals.money ?? 0);
    expect(both[1]?.ranges?.labour.low).toBeLessThan(both[1]?.ranges?.labour.high ?? 0);
  });
});

describe('no kind left for a duct', () => {
  it('is said at that duct, with what to do', () => {
    const project = tern([`${section}.supply-bath.mayBe`, { flexible: 'no' }]);
    const found = sizeDucts(inputOf(project));
    expect(sizingSentence(found, printerFor('us'))).toMatch(/^Every kind of duct is ruled out for “To the bath”/);
    const job = evaluate(project, {}).wanted.find((j) => j.kind === sizingKind);
    const { plan } = evaluate(project, { [job?.key ?? '']: { ok: true, value: found } });
    const finding = plan.findings.find((f) => f.id === 'air/no-size:supply-bath');
    expect(finding?.status).toBe('fails');
    expect(finding?.mend).toContain('may be made of');
  });
});

describe('one price for sizes and list', () => {
  it('the list buys whole bags of a size at the price per metre that the choice of sizes counts', () => {
    const { list } = evaluate(entered, {}).plan.trades.materials ?? {};
    const line = list?.ok ? list.value.lines.find((l) => l.id === 'air/flexible 203') : undefined;
    const perMetre = input.prices?.['flexible 203']?.run?.likely ?? 0;
    expect(line?.piece).toBe(7.62);
    expect(line?.cost?.likely).toBeCloseTo((line?.pieces ?? 0) * 7.62 * perMetre, 6);
    expect(line?.cost?.low).toBeCloseTo((line?.pieces ?? 0) * 50, 6);
  });
});
