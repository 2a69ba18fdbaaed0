import type { AirModel } from '../ductwork.ts';
import { standardDensity } from '../networkParts.ts';
import type { DamperPlace } from './places.ts';

/** Loss coefficient of each damper on the velocity in its collar or face, by place. */
export type DamperLosses = ReadonlyMap<string, number>;

/** The ducts with dampers of these losses in their places, beside all that was drawn. */
export function dampered(model: AirModel, places: readonly DamperPlace[], losses: DamperLosses): AirModel {
  const collars = new Set(places.flatMap((p) => (p.at === 'collar' ? [p.id] : [])));
  const faces = new Map(places.flatMap((p) => (p.at === 'register' ? [[p.id, p.area] as const] : [])));
  return {
    ...model,
    sections: model.sections.map((x) =>
      collars.has(x.id) ? { ...x, lossCoefficient: x.lossCoefficient + (losses.get(x.id) ?? 0) } : x,
    ),
    terminals: model.terminals.map((t) => {
      const area = faces.get(t.id);
      const more = area === undefined ? 0 : ((losses.get(t.id) ?? 0) * standardDensity) / 2 / area ** 2;
      return more > 0 ? { ...t, resistance: t.resistance + more } : t;
    }),
  };
}
