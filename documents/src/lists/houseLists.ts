import { type Outcome, type Plan, partShares, partTitle, type Spread } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { ductFacts, type Size } from '../ductPlan/ductFacts.ts';
import { madeOf } from '../ductPlan/ductWords.ts';
import type { List } from './list.ts';

const known = <T>(outcome: Outcome<T>): T | undefined => (outcome.ok ? outcome.value : undefined);

/** Each room's loads, W. */
export function roomList({ trades: { loads } }: Plan): List {
  const spread = (outcome: Outcome<Spread>) => {
    const s = known(outcome);
    return [s?.low, s?.likely, s?.high];
  };
  return {
    file: 'rooms.csv',
    title: 'Rooms',
    heads: [
      ...['Room', 'Heating low W', 'Heating W', 'Heating high W', 'Cooling low W', 'Cooling W', 'Cooling high W'],
      'Most of its heat goes through',
    ],
    rows: Object.values(loads?.rooms ?? {}).map((room) => {
      const most = partShares(room.heatingParts)[0];
      return [room.name, ...spread(room.heating), ...spread(room.cooling), most ? partTitle[most.part] : undefined];
    }),
  };
}

const sides = (size: Size | undefined): (number | undefined)[] =>
  size === undefined
    ? [undefined, undefined, undefined]
    : 'diameter' in size
      ? [size.diameter, undefined, undefined]
      : [undefined, size.width, size.height];

/** Each section with what flows in it: m, m³/s, m/s, Pa. */
export const ductList = (plan: Plan, project: Project): List => ({
  file: 'ducts.csv',
  title: 'Ducts',
  heads: [
    ...['Mark', 'Name', 'Side', 'Made of', 'Diameter m', 'Width m', 'Height m', 'Length m', 'Flow m3/s', 'Speed m/s'],
    'Lost Pa',
  ],
  rows: ductFacts(plan, project).ducts.map((d) => [
    ...[d.tag, d.name, d.side, madeOf[d.kind], ...sides(d.size), d.length, d.flow, d.speed, d.drop],
  ]),
});

/** Each register and grille: its face in m, its flow in m³/s, Pa. */
export const registerList = (plan: Plan, project: Project): List => ({
  file: 'registers.csv',
  title: 'Registers and grilles',
  heads: ['Mark', 'Name', 'Room', 'Side', 'Diameter m', 'Width m', 'Height m', 'Flow m3/s', 'Lost Pa'],
  rows: ductFacts(plan, project).faces.map((f) => [
    ...[f.tag, f.name, f.room, f.side, ...sides(f.size), f.flow, f.drop],
  ]),
});
