import type { Plan } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { materialsCsv } from '../materialsCsv.ts';
import { ductList, registerList, roomList } from './houseLists.ts';
import { listCsv } from './list.ts';
import { checkList, readingList, taskList, workList } from './planLists.ts';

/** Every list of a plan as a table for a spreadsheet; those with nothing in them are left out. */
export function listsOf(plan: Plan, project: Project, units: System): { file: string; title: string; csv: string }[] {
  const lists = [
    ...[checkList(plan, units), taskList(plan), workList(plan), readingList(plan, units)],
    ...[roomList(plan), ductList(plan, project), registerList(plan, project)],
  ].filter((list) => list.rows.length > 0);
  return [
    { file: 'what-to-buy.csv', title: 'What to buy', csv: materialsCsv(plan, units) },
    ...lists.map((list) => ({ file: list.file, title: list.title, csv: listCsv(list) })),
  ];
}
