import { unresolved } from '../plan/outcome.ts';
import { type Found, telling } from '../plan/telling.ts';
import type { PlanView } from '../plan/trade.ts';
import { nightMost } from './nightMost.ts';
import { bracketGap } from './place/fitsAt.ts';
import type { LinesetResult } from './result.ts';

const told = telling('lineset', 'lineset');
/** m from a wall within which its eave drips and slides. Source: `lineset.drip`. */
const dripsWithin = 0.8;

/** Who hears it, each only where somebody does and the unit's sound is known; and whether an eave drips on it. */
export function soundFindings({ spot }: LinesetResult, { project }: PlanView): Found[] {
  const { walls, place } = project.routes.lineset;
  const wall = place.wall === undefined ? undefined : walls[place.wall];
  const allowed = wall?.ground.lineSound;
  const heard = (
    id: string,
    level: number | undefined,
    max: number | undefined,
    source: string,
    consequence: 'comfort' | 'money',
  ): Found[] =>
    level === undefined || max === undefined
      ? []
      : [
          told({ id, holdPoint: 'order', consequence, kind: 'sound-level', limit: { max }, source }, (rec) => {
            rec.step('L_p', 'table', {}, level, 'dB', 'lineset.sound');
            return level;
          }),
        ];
  const { bedroom, line, neighbour } = spot.ok ? spot.value : {};
  return [
    ...heard('night-sound', bedroom, nightMost, 'lineset.night', 'comfort'),
    ...heard('neighbour-sound', neighbour, nightMost, 'lineset.night', 'comfort'),
    ...heard('line-sound', line, allowed && 'likely' in allowed ? allowed.likely : undefined, 'project', 'money'),
    ...(wall && 'choice' in wall.eave && wall.eave.choice === 'drips' ? [drip(project.routes.lineset)] : []),
  ];
}

/** m from the wall to the unit, under an eave that drips. */
const drip = ({ place: { stands, out } }: PlanView['project']['routes']['lineset']): Found =>
  told(
    {
      id: 'drip',
      holdPoint: 'order',
      consequence: 'damage',
      kind: 'length',
      limit: { min: dripsWithin },
      source: 'lineset.drip',
    },
    (rec) => {
      if ('choice' in stands && stands.choice === 'ground') {
        if ('missing' in out) return unresolved('missing', out.path);
        rec.given('out', out);
        return out.likely;
      }
      rec.step('out', 'table', {}, bracketGap, 'm', 'lineset.clear');
      return bracketGap;
    },
  );
