import type { Plan } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { cutSheetsOf } from './cutSheet/cutSheetSvg.ts';
import { ductPlanSvg } from './ductPlan/ductPlanSvg.ts';
import { elevationSvg } from './elevation/elevationSvg.ts';
import { oneLineSvg } from './oneLine/oneLineSvg.ts';
import { passageSvg } from './passage/passageSvg.ts';
import type { Sheet } from './sheet/drawing.ts';
import { drainSvg } from './trap/drainSvg.ts';
import { trapSvg } from './trap/trapSvg.ts';

type Drawn = (plan: Plan, project: Project, units: System) => string | undefined;

/** Every drawing there is, in the order in which they lie in the set. */
const drawings: readonly { readonly file: string; readonly title: string; readonly drawn: Drawn }[] = [
  { file: 'ducts.svg', title: 'The ducts in plan', drawn: ductPlanSvg },
  { file: 'wall.svg', title: 'The wall and the outdoor unit', drawn: elevationSvg },
  { file: 'supply.svg', title: 'The supply in one line', drawn: oneLineSvg },
  { file: 'way-in.svg', title: 'The tightest way in', drawn: passageSvg },
  { file: 'drain.svg', title: 'The way of the drain', drawn: drainSvg },
  { file: 'trap.svg', title: 'The trap of the drain', drawn: trapSvg },
];

/** The drawings that a plan is ready for; the cut sheets last, as many as there are sheets of stock. */
export const sheetsOf = (plan: Plan, project: Project, units: System): Sheet[] => [
  ...drawings.flatMap(({ file, title, drawn }) => {
    const svg = drawn(plan, project, units);
    return svg === undefined ? [] : [{ file, title, svg }];
  }),
  ...cutSheetsOf(plan, project, units),
];
