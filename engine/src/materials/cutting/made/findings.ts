import { unresolved } from '../../../plan/outcome.ts';
import { type Found, telling } from '../../../plan/telling.ts';
import { slopeMost, steepest } from '../joint/steepest.ts';
import type { CutMade, FlatMade } from './result.ts';

const told = telling('materials', 'pieces');
const base = { consequence: 'money', holdPoint: 'cut' } as const;

/** How steep each reducer is, and what keeps a cap or a reducer from being cut. */
export const madeFindings = (made: readonly FlatMade[]): Found[] =>
  made.flatMap((one) => [...(one.what === 'cap' ? [] : [slopeOf(one)]), ...wrongMade(one)]);

function slopeOf(one: Exclude<CutMade, { what: 'cap' }>): Found {
  const worst = one.what === 'reducer' ? steepest(one.side, one) : undefined;
  const { name } = one;
  const sizes = one.what === 'reducer' ? { length: one.length, lengthWanted: one.lengthWanted } : {};
  return told(
    {
      ...base,
      id: `made:${one.id.replaceAll(' ', '-')}`,
      kind: 'angle',
      source: 'cutting.slopes',
      limit: { max: slopeMost[worst?.way ?? 'widening'] },
      facts: { name, ...sizes },
    },
    (rec) => {
      if (one.what === 'unknown' || !worst) return unresolved('missing', one.what === 'unknown' ? one.missing : '');
      const given = { out: worst.out, length: one.length };
      const lean = (Math.atan(given.out / given.length) * 180) / Math.PI;
      rec.step('lean', 'atan(out / length) * 180 / 3.141592653589793', given, lean, '°', 'cutting.slopes');
      return lean;
    },
  );
}

function wrongMade({ id, name, what, problems }: FlatMade): Found[] {
  if (problems.length === 0) return [];
  const source = what === 'cap' ? 'cutting.bend' : 'cutting.triangulation';
  const facts = { name, code: problems[0]?.code ?? '' };
  const wrong = { ...base, id: `made-cut:${id.replaceAll(' ', '-')}`, kind: 'count', limit: { max: 0 } } as const;
  return [
    told({ ...wrong, source, facts }, (rec) => {
      rec.step('number', 'table', {}, problems.length, '', source);
      return problems.length;
    }),
  ];
}
