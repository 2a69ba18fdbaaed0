import type { Plan } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import type { DuctLayout } from './layOut.ts';

/** What has to be said on the sheet, the caution first. */
export function notesOf(plan: Plan, project: Project, layout: DuctLayout): string[] {
  const air = plan.trades.air;
  return [
    'Check on site before you cut: every length, crossing and clearance. Framing, wiring, pipes and flues are not drawn.',
    'Attics are hot, floors between joists give way, old insulation and tape may hold asbestos. Local code, the makers’',
    'instructions and licensed practice come before this sheet.',
    air?.flows.ok
      ? 'Flows and pressures: blower, filter and both trees solved together, with the likely values and air of 20 °C.'
      : 'Flows and pressures are not known yet: the plan says what is missing.',
    ...scaleNote(layout),
    ...(project.about?.invented
      ? ['All data on this sheet are invented: no place, product or price in it is real.']
      : []),
  ];
}

function scaleNote({ scaled, undrawn, ducts }: DuctLayout): string[] {
  if (ducts.length === 0) return ['No duct is entered yet.'];
  if (scaled)
    return ['Ducts are drawn as wide as they are inside. Not 100 mm? Do not measure from it: print again at 100 %.'];
  const named = undrawn.slice(0, 2).map((name) => `“${name.slice(0, 30)}”`);
  const more = undrawn.length - named.length;
  return [`Not to scale: no way in plan is drawn for ${named.join(', ')}${more > 0 ? ` and ${more} more` : ''}.`];
}
