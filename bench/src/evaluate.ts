import { alderHall } from '@kneewall/demos';
import { coldMemo, evaluate, type Plan } from '@kneewall/engine';
import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

const duct = ['routes', 'ducts', 'sections', 'to-room-03', 'diameter'];
const price = ['work', 'prices', 'tape', 'price'];

function edited(project: Project, path: readonly string[], value: number): Project {
  const edit = { device: 'bench', seq: 1, path, before: valueAt(project, path), after: { value, known: 'measured' } };
  const { value: after, problems } = applyEdit(project, edit);
  if (problems.length > 0) throw new Error(`the edit was refused: ${problems[0]?.mend}`);
  return after;
}

const check = (plan: Plan): void => {
  if (!plan.agreement.converged || plan.findings.length < 40) throw new Error('the plan is not whole');
};

/** Questions: the largest demo whole in 30 ms; after one edit in 10 ms. */
export function evaluateBench(): BenchRow[] {
  const hall = alderHall();
  check(evaluate(hall, {}).plan);
  const whole = side(
    () => evaluate(hall, {}, { memo: coldMemo() }),
    () => multiplyAdds(30 * perMillisecond),
  );
  return [
    atMost('evaluate: Alder Hall, whole', whole, 1, 'at most the time of 21 million multiply-adds, about 30 ms'),
    afterEdit('evaluate: Alder Hall, one duct changed', hall, duct, [0.2032, 0.2286]),
    afterEdit('evaluate: Alder Hall, one price changed', hall, price, [10, 11]),
  ];
}

function afterEdit(name: string, hall: Project, path: readonly string[], values: readonly [number, number]): BenchRow {
  const memo = coldMemo();
  const both = [edited(hall, path, values[0]), edited(hall, path, values[1])] as const;
  let turn = 0;
  const times = side(
    () => {
      turn = 1 - turn;
      evaluate(both[turn] ?? hall, {}, { memo });
    },
    () => multiplyAdds(10 * perMillisecond),
  );
  return atMost(name, times, 1, 'at most the time of 7 million multiply-adds, about 10 ms');
}
