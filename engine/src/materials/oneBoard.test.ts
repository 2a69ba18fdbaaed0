import { beforeAll, describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Plan, runJob } from '../index.ts';

const host = { blob: () => undefined, tell: () => {} };
let before: Plan;
let after: Plan;

beforeAll(() => {
  const project = demo('tern-ledge');
  const first = evaluate(project, {});
  const job = first.wanted.find((j) => j.kind === 'materials/cut-plan');
  if (!job) throw new Error('the pieces are wanted');
  before = first.plan;
  after = evaluate(project, { [job.key]: runJob(job, host) }).plan;
});

const board = ({ materials }: Plan) =>
  materials.filter((l) => l.like?.id === 'board' || l.id.startsWith('materials/board'));

describe('board of drawn boxes', () => {
  it('is known by its area before it is laid, and by its sheets alone afterwards', () => {
    expect(board(before).map((l) => [l.id, l.kind])).toEqual([
      ['air/duct:supply-plenum', 'area'],
      ['air/duct:return-box', 'area'],
    ]);
    // The two sheets that the cut sheets show.
    expect(board(after).map((l) => [l.id, l.kind, l.amount])).toEqual([['materials/board:38', 'count', 2]]);
  });

  it('is one line of the list, priced by the sheet', () => {
    const { list } = after.trades.materials ?? {};
    if (!list?.ok) throw new Error('there is a list');
    const lines = list.value.lines.filter((l) => /duct board/i.test(l.what));
    expect(lines.map((l) => [l.id, l.pieces, l.cost?.likely])).toEqual([['materials/board:38', 2, 108]]);
  });

  it('lets every trade’s straight pieces come to what its line needs', () => {
    const cut = after.materials.filter((l) => l.pieces);
    expect(cut.length).toBeGreaterThan(2);
    for (const l of cut) expect(l.pieces?.reduce((sum, p) => sum + p.length * p.count, 0)).toBeCloseTo(l.amount, 9);
  });
});
