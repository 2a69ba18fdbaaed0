import { evaluate } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { expect, it } from 'vitest';
import { listCsv } from './list.ts';
import { paperList } from './paperLists.ts';

const project: Project = {
  schema: 1,
  paperwork: {
    late: { name: '=SUM(A1)', kind: 'incentive', due: '2027-09-30', amount: { value: 800, known: 'nameplate' } },
    never: { name: 'Policy, house', kind: 'insurance', due: '2027-02-31' },
    soon: {
      kind: 'permit',
      due: '2027-04-24',
      status: 'granted',
      evidence: 'No. 12',
      licence: { needed: 'yes', gas: true },
    },
  },
};

it('lists papers by the day they are due, guards formulas, and says a day that is none', () => {
  expect(
    listCsv(paperList(evaluate(project, {}).plan))
      .split('\r\n')
      .slice(1),
  ).toEqual([
    'soon,Permit,,2027-04-24,in hand,"gas, oil and flues",yes,',
    "'=SUM(A1),Incentive,,2027-09-30,to ask,not known,no,800",
    '"Policy, house",Insurance,,no such day,to ask,not known,no,',
    '',
  ]);
});
