import type { Plan } from '@kneewall/engine';
import { type Project, printQuantity, resolveProject, type System } from '@kneewall/project';
import { margin, paperFor } from '../sheet/paper.ts';
import { rowHeight, schedule } from '../sheet/schedule.ts';
import { notesAt, notesHeight, sheetSvg } from '../sheet/sheet.ts';
import { element, pointsOf, words } from '../sheet/svg.ts';
import { type DrainFacts, type DrainPicture, drainPicture, placeWords } from './drainPicture.ts';

const endWords = {
  ground: 'Ends outdoors, on ground that takes it.',
  gap: 'Ends over an open drain, with an air gap.',
  waste: 'Joined to a waste pipe: not allowed.',
  walked: 'Ends on a path, a roof or next door.',
} as const;
const secondEndWords = {
  seen: 'ends in plain sight',
  hidden: 'ends unseen',
  joined: 'joined to the first',
  none: 'has no line',
} as const;

const style = [
  '.pipe,.second,.casing,.pan,.floor,.least,.level,.border,.pump{fill:none;stroke:#000;stroke-linejoin:round}',
  '.pipe{stroke-width:1.2}.second{stroke-width:.8}.casing,.pump{stroke-width:.5}.pan{stroke-width:.9}.floor{stroke-width:.3}',
  '.least{stroke-width:.3;stroke-dasharray:2 1.2}.level{stroke-width:.2;stroke-dasharray:1 1}.border{stroke-width:.12}',
].join('');

/** The drain of a plan as a picture in mm; undefined where its way is not known. */
export function drainOf(plan: Plan, project: Project, units: System): DrainPicture | undefined {
  const found = factsOf(plan, project);
  return found && drainPicture(found, (metres) => printQuantity(metres, 'length', units));
}

function factsOf(plan: Plan, project: Project): DrainFacts | undefined {
  const { condensate } = plan.trades;
  if (!condensate?.stretches.ok) return undefined;
  const { drain } = resolveProject(project).routes;
  const { second, secondLine, vent, ends, risers } = drain;
  const { above } = secondLine;
  const least = condensate.risers.ok ? condensate.risers.value.least : undefined;
  return {
    stretches: condensate.stretches.value,
    ...('choice' in second ? { second: second.choice } : {}),
    ...('missing' in above ? {} : { above: above.likely }),
    ...('choice' in vent ? { vent: vent.choice } : {}),
    ...(least === undefined ? {} : { risers: { least, ...('missing' in risers ? {} : { is: risers.likely }) } }),
    ...(condensate.pumped ? { pump: condensate.pumped.ok ? { lift: condensate.pumped.value.lift } : {} } : {}),
    ...('choice' in ends ? { ends: endWords[ends.choice] } : {}),
    ...('choice' in secondLine.ends ? { secondEnds: secondEndWords[secondLine.ends.choice] } : {}),
  };
}

const columns = [
  { head: 'Stretch', width: 62 },
  { head: 'Place', width: 28 },
  { head: 'Length', width: 30 },
  { head: 'Loses', width: 30 },
  { head: 'Least', width: 30 },
];
/** mm that head, gaps and the table's own head take beside the drawing. */
const around = 40;

/** The drain's way as one SVG sheet, with a row for each stretch. Undefined where its way is not known. */
export function drainSvg(plan: Plan, project: Project, units: System): string | undefined {
  const picture = drainOf(plan, project, units);
  const found = factsOf(plan, project);
  if (!picture || !found) return undefined;
  const say = (metres: number): string => printQuantity(metres, 'length', units);
  const rows = found.stretches.map((s, i) => [
    `${i + 1} ${s.name}`,
    placeWords[s.place],
    say(s.run),
    say(s.fall),
    say(s.least),
  ]);
  const notes = notesOf(plan, project);
  const paper = paperFor(units, around + notesHeight(notes) + (rows.length + 1) * rowHeight, picture.height);
  const top = margin + 20;
  return sheetSvg(
    paper,
    {
      project: project.about?.name ?? 'The project',
      drawn: 'The condensate drain from the side: unit, second line, and its way',
      how: `The unit is not to scale. In the way heights are drawn ${Math.round(picture.stretched)} times as large as lengths.`,
    },
    { style, scale: 'none' },
    element(
      'g',
      { transform: `translate(${margin} ${top})`, class: 'drain' },
      ...picture.lines.map(({ of, points }) => element('polyline', { points: pointsOf(points), class: of })),
      ...picture.names.map(({ at, text, anchor }) =>
        element('text', { x: at[0], y: at[1], 'text-anchor': anchor }, words(text)),
      ),
    ),
    schedule(margin, top + picture.height + 4, columns, rows),
    ...notesAt(paper.height - margin - notesHeight(notes) - 2, notes, 2),
  );
}

const notesOf = (plan: Plan, project: Project): string[] => [
  'The maker’s instructions and the local code come before this sheet.',
  'Primer and cement give off fumes that burn: air from outside, no flame, no pilot light. Power locked off.',
  'No trap in the second line; never join it to the first. Hang both every 1.2 m or 4 ft.',
  ...(plan.trades.condensate?.stretches.ok && plan.trades.condensate.stretches.value.some((s) => !s.falls)
    ? ['At least one stretch does not fall enough as drawn: water stands in it.']
    : []),
  ...(project.about?.invented
    ? ['All data on this sheet are invented: no place, product or price in it is real.']
    : []),
];
