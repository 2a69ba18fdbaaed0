import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { inch } from '../../physics/exact.ts';
import { design } from '../design.ts';
import { sum } from '../sum.ts';
import { cutPlan } from './cutPlan.ts';
import { inputsOf } from './inputsOf.ts';

const q = (value: number) => ({ value, known: 'measured' });
const box = { kind: 'board', width: q(20 * inch), height: q(12 * inch), length: q(1.2), insulation: q(1.057) };
const run = (length: number) => ({
  kind: 'flexible',
  from: 'box',
  diameter: q(8 * inch),
  length: q(length),
  compression: q(0),
});

function of(sections: object, stock: object) {
  const opened = openProject(JSON.stringify({ ...emptyProject, work: { stock }, routes: { ducts: { sections } } }));
  if (!opened.ok) throw new Error('it opens');
  const project = resolveProject(opened.project);
  return { project, cut: cutPlan(inputsOf(project)) };
}
const bought = (sections: object, stock: object) => of(sections, stock).cut.sheets.map((s) => s.plan.cost);

describe('sheets at hand', () => {
  const rest = { name: 'From the shed', sheet: 'board', length: q(3.048), across: q(1.2192) };

  it('take the place of bought ones where they are large enough and of that thickness', () => {
    expect(bought({ box }, {})).toEqual([1]);
    expect(bought({ box }, { rest })).toEqual([0]);
    expect(bought({ box }, { rest: { ...rest, thickness: q(1.5 * inch) } })).toEqual([0]);
    expect(bought({ box }, { rest: { ...rest, thickness: q(1 * inch) } })).toEqual([1]);
    expect(bought({ box }, { rest: { ...rest, length: q(0.5) } })).toEqual([1]);
    // Of whole sheets the sizes need not be entered; of a rest with one side nobody knows how large it is.
    expect(bought({ box }, { whole: { sheet: 'board' } })).toEqual([0]);
    expect(bought({ box }, { rest: { ...rest, across: undefined } })).toEqual([1]);
  });

  it('are not guessed at where board of several thicknesses is cut', () => {
    const thin = { ...box, insulation: q(0.7) };
    const { cut } = of({ box, thin }, { rest });
    expect(cut.sheets.map((s) => s.plan.cost)).toEqual([1, 1]);
    expect(cut.unsure.map((h) => h.name)).toEqual(['From the shed']);
  });

  it('are named on the plan', () => {
    const { cut } = of({ box }, { rest });
    const [sheet] = cut.sheets[0]?.plan.sheets ?? [];
    expect(cut.names[sheet?.stock ?? '']).toBe('From the shed');
    expect(sheet?.rests.some((r) => r.remnant?.startsWith('hand rest'))).toBe(true);
  });
});

describe('lengths at hand', () => {
  const flexible = (more: object) => ({ duct: 'flexible', diameter: q(8 * inch), ...more });
  const atHand = (entry: object) =>
    inputsOf(of({ box, a: run(5) }, { s: flexible(entry) }).project).bags[0]?.atHand.map((h) => [h.length, h.count]);

  it('are counted by what is entered: pieces of a length, one length, or whole bags and a last one', () => {
    expect(atHand({ length: q(4) })).toEqual([[4, 1]]);
    expect(atHand({ length: q(4), amount: '3' })).toEqual([[4, 3]]);
    expect(atHand({ amount: '5 m' })).toEqual([[5, 1]]);
    expect(atHand({ amount: '2 bags' })).toEqual([[7.62, 2]]);
    expect(atHand({ amount: '60 ft' })?.map(([l, n]) => [l?.toFixed(3), n])).toEqual([
      ['7.620', 2],
      ['3.048', 1],
    ]);
    expect(atHand({ amount: 'some' })).toEqual([]);
  });

  it('leave fewer bags on the list, and are shown on it', () => {
    const sections = { box, a: run(5), b: run(5) };
    const listed = (stock: object) => {
      const { project, cut } = of(sections, stock);
      const made = design({ project, upstream: {}, results: {} });
      const lines = ['a', 'b'].map((id) => ({
        ...{ id: `air/duct:${id}`, trade: 'air', what: id, kind: 'length', for: `routes.ducts.sections.${id}` },
        ...{ amount: 5 + 4 * inch, like: { id: 'flexible 203', what: 'Flexible duct' } },
      })) as unknown as Parameters<typeof sum>[1]['materials'];
      const { list } = sum({ ...made, cut: { ok: true, value: cut } }, { tasks: [], materials: lines, findings: [] });
      if (!list.ok) throw new Error(list.because);
      const line = list.value.lines.find((l) => l.id === 'air/flexible 203');
      return [line?.pieces, line?.atHand, line?.openPieces];
    };
    expect(listed({})).toEqual([2, 0, 2]);
    expect(listed({ s: flexible({ length: q(5.2) }) })).toEqual([1, 5.2, 1]);
    // Ten metres in pieces too short for either run are no help, and the list says so.
    expect(listed({ s: flexible({ length: q(2.5), amount: '4' }) })).toEqual([2, 10, 2]);
    // Ticked on the list as at hand, all of it or some.
    const ticked = (amount: string) => ({ s: { line: 'air/flexible 203', amount } });
    expect(listed(ticked('10.2032 m'))[0]).toBe(0);
    expect(listed(ticked('7.62 m'))[0]).toBe(1);
    // With the length of a piece it is laid out.
    expect(listed({ s: { line: 'air/flexible 203', length: q(5.2) } })[0]).toBe(1);
  });
});
