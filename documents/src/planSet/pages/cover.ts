import { holdPointTitle, type Plan } from '@kneewall/engine';
import { printQuantity } from '@kneewall/project';
import { type Block, body, bold, lead, small, table } from '../block.ts';
import type { SetInput } from '../setInput.ts';
import { statusSigns } from '../signs.ts';

/** What it is, where it stands, what speaks against it, and what is in the set. */
export function cover({ plan, project, units }: SetInput): Block[] {
  const { about, site } = project;
  return [
    { text: about?.name ?? 'The project', style: 'title', outline: true },
    lead(
      'Plan set for a ducted heat pump: what was computed, what still stands against it, and how to build and prove it.',
    ),
    ...(about?.invented
      ? [body(bold('Invented data: nothing in this project is a real place, product or price.'))]
      : []),
    ...(about?.note ? [small(about.note)] : []),
    body(placeWords(plan, site?.latitude?.value, units)),
    standing(plan),
    body(
      bold(
        'For planning and buying, not an approval. Local codes, the makers’ instructions and licensed practice come before every page.',
      ),
    ),
    table(
      [
        { head: 'Seen by', width: '*' },
        { head: 'Office, licence', width: '*' },
        { head: 'Date and stamp', width: '*' },
      ],
      [['\n\n\n', '', '']],
      { layout: 'boxed' },
    ),
    // Lines so near to each other that the contents of a whole set end on the cover.
    { toc: { title: { text: 'In this set', style: 'part' }, textMargin: [0, -2, 0, -2] } },
  ];
}

function placeWords(plan: Plan, latitude: unknown, units: SetInput['units']): string {
  const { climate, equipment } = plan.trades;
  const unit = equipment?.chosen.ok ? equipment.candidates[equipment.chosen.value]?.name : undefined;
  const elevation = climate?.elevation.ok ? elevationWords(climate.elevation.value, units) : undefined;
  return [
    unit === undefined ? 'No unit is chosen yet.' : `Unit: ${unit}.`,
    typeof latitude === 'number' ? `Latitude ${printQuantity(latitude, 'angle', units)}.` : undefined,
    elevation === undefined ? undefined : `Elevation ${elevation}.`,
  ]
    .filter((words) => words !== undefined)
    .join(' ');
}

/** Whole feet or metres: nobody knows the height of a place to a sixteenth of an inch. */
const elevationWords = (metres: number, units: SetInput['units']): string =>
  units === 'us' ? `${printQuantity(metres / foot, 'count', units)} ft` : `${printQuantity(metres, 'count', units)} m`;
const foot = 0.3048;

/** The counts by hold point, in the order in which the job meets them. */
function standing(plan: Plan): Block {
  return table(
    [
      { head: 'Hold point', width: 'auto' },
      { head: '', width: '*' },
      ...statusSigns.map(({ words }) => ({ head: words, width: 'auto' as const, right: true })),
    ],
    plan.holdPoints.map((point) => [
      bold(holdPointTitle[point.holdPoint].title),
      holdPointTitle[point.holdPoint].until,
      ...statusSigns.map(({ status }) => String(point[status])),
    ]),
    { title: 'Where it stands' },
  );
}
