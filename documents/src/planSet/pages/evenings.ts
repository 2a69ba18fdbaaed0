import { broughtWords } from '../../calendar/broughtWords.ts';
import { type Stay, workByWindow } from '../../calendar/workCalendar.ts';
import { clock, dayName, partWords, placeWords } from '../../calendar/workWords.ts';
import { type Block, bold, lead, page, table, type Words } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** The work window by window, with a box to tick and where it may be left. Nothing while there is no plan of work. */
export function eveningPages({ plan }: SetInput): Block[] {
  const windows = workByWindow(plan);
  if (windows.length === 0) return [];
  return [
    page('Which work when'),
    lead('Each window ends at a safe stop. Cautions and what is left how stand under “What to do”: read them first.'),
    ...comings(plan),
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

/** What comes when, how much of it, and what is short of it; nothing where no delivery is entered. */
function comings({ trades, findings }: SetInput['plan']): Block[] {
  const deliveries = trades.materials?.own.deliveries ?? [];
  if (deliveries.length === 0) return [];
  const day = ({ arrives }: (typeof deliveries)[number]) => (arrives.ok ? arrives.value : Number.MAX_VALUE);
  const short = findings.filter((f) => f.id.startsWith('schedule/short:'));
  return [
    table(
      [
        { head: 'Comes', width: 100 },
        { head: 'With', width: 150 },
        { head: 'Brings', width: '*' },
      ],
      deliveries
        .toSorted((a, b) => day(a) - day(b))
        .map((d) => [
          d.arrives.ok
            ? `${dayName(new Date(d.arrives.value * 864e5).toISOString().slice(0, 10))}, ${clock(d.at / 60)}`
            : 'no day yet',
          d.name,
          broughtWords(d),
        ]),
      { title: 'What comes when' },
    ),
    ...short.map((f) => lead(f.what)),
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
