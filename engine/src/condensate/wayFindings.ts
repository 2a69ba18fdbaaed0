import { inOrder } from '@kneewall/project';
import type { Agreement } from '../coupling/agreement.ts';
import { required } from '../plan/outcome.ts';
import { entered, type Found } from '../plan/telling.ts';
import { told } from './found.ts';
import { latentHeat } from './kernels/water.ts';
import type { CondensateResult, Drain } from './result.ts';

/** Only where there is a vent after the trap: its top has to stand above the rim of the unit's own pan. */
export function ventTop(drain: Drain): Found[] {
  if (!('choice' in drain.vent) || drain.vent.choice !== 'after') return [];
  return [
    told(
      {
        id: 'vent-top',
        holdPoint: 'connect',
        consequence: 'damage',
        kind: 'length',
        limit: { min: 0 },
        source: 'condensate.vent',
      },
      entered('h_vent', drain.ventTop),
    ),
  ];
}

/** Each stretch that is entered has its own least fall: a level one lets water stand, whatever the others lose. */
export function stretchFalls({ stretches }: CondensateResult, drain: Drain): Found[] {
  return inOrder(drain.stretches).map(([id, of]) => {
    const one = stretches.ok ? stretches.value.find((x) => x.id === id) : undefined;
    return told(
      {
        id: `fall-of:${id}`,
        item: id,
        holdPoint: 'cut',
        consequence: 'damage',
        kind: 'length',
        limit: one ? { min: one.least } : {},
        source: 'condensate.slope',
        facts: { name: of.name ?? id },
      },
      (rec) => {
        required(stretches);
        return entered('h_fall', of.fall)(rec);
      },
    );
  });
}

/** Where the risers are measured, or a pan lies under them: one height for the trap, the fall and the rim. */
export function risers({ risers: needed }: CondensateResult, drain: Drain): Found[] {
  const pan = 'choice' in drain.second && drain.second.choice === 'pan';
  if ('missing' in drain.risers && !pan) return [];
  return [
    told(
      {
        id: 'risers',
        holdPoint: 'cut',
        consequence: 'damage',
        kind: 'length',
        limit: needed.ok ? { min: needed.value.least } : {},
        source: 'condensate.risers',
        ...(needed.ok ? { facts: { trap: needed.value.trap, fall: needed.value.fall, rim: needed.value.rim } } : {}),
      },
      (rec) => {
        required(needed);
        return entered('r', drain.risers)(rec);
      },
    ),
  ];
}

/** Water of the hot and muggy hour by the coil's model, in what the sheet wrings out at its most; where air, unit and house agree. */
export function muggy({ water }: CondensateResult, { cooling, converged }: Agreement): Found[] {
  if (!cooling || !converged || !water.ok || !(cooling.latent > 0)) return [];
  return [
    told(
      {
        id: 'muggy-hour',
        holdPoint: 'order',
        consequence: 'damage',
        kind: 'volume',
        limit: { max: water.value.high / 1000 },
        source: 'condensate.muggy',
        facts: { outdoor: cooling.outdoor, indoor: cooling.entering },
      },
      (rec) => {
        const inputs = { Q_latent: cooling.latent, r: latentHeat };
        const litres = (cooling.latent * 3600) / latentHeat;
        rec.step('water', 'Q_latent * 3600 / r', inputs, litres, 'L/h', 'condensate.latent');
        const volume = litres / 1000;
        rec.step('V', 'water / 1000', { water: litres }, volume, 'm³', 'condensate.latent');
        return volume;
      },
    ),
  ];
}
