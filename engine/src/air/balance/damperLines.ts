import type { MaterialLine } from '../../plan/lines.ts';
import type { AirModel } from '../ductwork.ts';
import { damperPlaces } from './places.ts';

const millimetres = (m: number): number => Math.round(m * 1000);

/** Dampers for the collars: round ones by size, others for their duct. Registers have their own. */
export function damperLines(model: AirModel): MaterialLine[] {
  const collars = damperPlaces(model).filter((p) => p.at === 'collar');
  const sizes = new Map<number, number>();
  for (const { diameter } of collars)
    if (diameter !== undefined) sizes.set(millimetres(diameter), (sizes.get(millimetres(diameter)) ?? 0) + 1);
  const line = { trade: 'air', kind: 'count', soldBy: 1 } as const;
  return [
    ...[...sizes]
      .sort(([a], [b]) => a - b)
      .map(
        ([size, amount]): MaterialLine => ({
          ...line,
          id: `air/damper:${size}`,
          what: `Round dampers ${Math.round(size / 25.4)} in (${size} mm), set by hand, with a lock and a mark of the blade outside`,
          amount,
        }),
      ),
    ...collars.flatMap((p): MaterialLine[] =>
      p.diameter === undefined
        ? [
            {
              ...line,
              id: `air/damper:${p.id}`,
              what: `Damper for “${p.name}”, in its own size, with a lock`,
              amount: 1,
              for: `routes.ducts.sections.${p.id}`,
            },
          ]
        : [],
    ),
  ];
}
