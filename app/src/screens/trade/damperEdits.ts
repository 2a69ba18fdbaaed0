import type { DamperSetting } from '@kneewall/engine';

type Fittings = Readonly<Record<string, { readonly kind?: string | undefined; readonly angle?: unknown }>>;
type Sections = Readonly<Record<string, { readonly fittings?: Fittings | undefined }>>;
export type DamperEdit = { readonly path: string[]; readonly after: unknown };

/**
 * What has to be written so that every round collar has its damper as a hand sets it: the one that is drawn there turned,
 * or a new one. Nothing for one that already stands so, nor where no table gives an angle.
 */
export function damperEdits(settings: readonly DamperSetting[], sections: Sections): DamperEdit[] {
  return settings.flatMap(({ place, byHand }): DamperEdit[] => {
    if (place.at !== 'collar' || byHand === undefined) return [];
    const fittings = sections[place.id]?.fittings ?? {};
    const path = ['routes', 'ducts', 'sections', place.id, 'fittings'];
    const angle = { value: byHand, known: 'estimated' };
    const [there] = Object.keys(fittings).filter((id) => fittings[id]?.kind === 'damper');
    if (there === undefined) return [{ path: [...path, freeId(fittings)], after: { kind: 'damper', angle } }];
    const stands = fittings[there]?.angle as { readonly value?: unknown } | undefined;
    return stands?.value === byHand ? [] : [{ path: [...path, there, 'angle'], after: angle }];
  });
}

function freeId(fittings: Fittings): string {
  let id = 'damper';
  for (let n = 2; fittings[id] !== undefined; n++) id = `damper-${n}`;
  return id;
}
