import { type Stay, workByWindow } from '../../calendar/workCalendar.ts';
import { clock, dayName, partWords, placeWords } from '../../calendar/workWords.ts';
import { type Block, bold, lead, page, table, type Words } from '../block.ts';
import type { SetInput } from '../planSet.ts';

/** The work window by window, with a box to tick and where it may be left. Nothing while there is no plan of work. */
export function eveningPages({ plan }: SetInput): Block[] {
  const windows = workByWindow(plan);
  if (windows.length === 0) return [];
  return [
    page('Which work when'),
    lead('Each window ends at a safe stop. Cautions and what is left how stand under “What to do”: read them first.'),
    ...windows.map(({ day, from, to, stays }) =>
      table(
        [
          { head: '', width: 10 },
          { head: 'From, to', width: 66 },
          { head: 'What', width: '*' },
          { head: 'Where, who', width: 84 },
          { head: 'Stop only at', width: 150 },
        ],
        stays.map(rowOf),
        { title: `${dayName(day)}, ${clock(from)} to ${clock(to)}` },
      ),
    ),
  ];
}

function rowOf(stay: Stay): Words[] {
  const part = partWords(stay);
  return [
    '☐',
    `${clock(stay.from)} to ${clock(stay.to)}`,
    part === '' ? bold(stay.what) : [bold(stay.what), `\n${part}`],
    `${placeWords[stay.place] ?? stay.place}, ${stay.people} ${stay.people === 1 ? 'person' : 'people'}`,
    stay.safeStops.join('; '),
  ];
}
