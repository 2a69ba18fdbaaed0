import { dampered } from '../../air/balance/dampered.ts';
import { type DamperPlace, damperPlaces } from '../../air/balance/places.ts';
import type { AirModel } from '../../air/ductwork.ts';
import { bladeLosses, butterfly, lookUp } from '../../physics/flow/index.ts';
import type { BalancingInputs } from './system.ts';

/** Ducts without their dampers, where dampers go, and the loss of each as it stands. */
export type Runs = {
  readonly bare: AirModel;
  readonly places: readonly DamperPlace[];
  readonly losses: readonly number[];
};

/** Loss coefficient of a round damper so many degrees from open; a blade beyond the table's end stands at its end. */
export function lossAt(degrees: number): number {
  const found = lookUp(butterfly, Math.max(0, degrees));
  return found.ok ? found.value : bladeLosses.most;
}

/** The runs as they stand: dampers as noted, else as drawn, else open. Source of losses: `flow.fittings`. */
export function runsOf({ air, drawn, noted }: Pick<BalancingInputs, 'air' | 'drawn' | 'noted'>): Runs {
  const places = damperPlaces(air);
  const collars = new Set(places.flatMap((p) => (p.at === 'collar' ? [p.id] : [])));
  const without = (id: string): number => (collars.has(id) && id in drawn ? lossAt(drawn[id] ?? 0) : 0);
  return {
    bare: {
      ...air,
      sections: air.sections.map((x) => ({ ...x, lossCoefficient: Math.max(0, x.lossCoefficient - without(x.id)) })),
    },
    places,
    losses: places.map((p) => (p.at === 'collar' ? lossAt(noted[p.id] ?? drawn[p.id] ?? 0) : bladeLosses.open)),
  };
}

/** The ducts with each run's own resistance, from its damper to its registers, times a factor. In the order of the places. */
export function scaledRuns(bare: AirModel, places: readonly DamperPlace[], factors: readonly number[]): AirModel {
  const byId = new Map(bare.sections.map((x) => [x.id, x]));
  const ofSection = new Map<string, number>();
  const ofTerminal = new Map<string, number>();
  places.forEach((p, i) => {
    const factor = factors[i] ?? 1;
    for (const id of p.registers) {
      ofTerminal.set(id, factor);
      if (p.at === 'register') continue;
      let x = byId.get(bare.terminals.find((t) => t.id === id)?.section ?? '');
      for (; x; x = x.id === p.id || x.from === undefined ? undefined : byId.get(x.from)) ofSection.set(x.id, factor);
    }
  });
  return {
    ...bare,
    sections: bare.sections.map((x) => {
      const factor = ofSection.get(x.id);
      return factor === undefined
        ? x
        : { ...x, frictionFactor: x.frictionFactor * factor, lossCoefficient: x.lossCoefficient * factor };
    }),
    terminals: bare.terminals.map((t) => ({ ...t, resistance: t.resistance * (ofTerminal.get(t.id) ?? 1) })),
  };
}

/** The ducts with dampers of these losses, in the order of the places. */
export const withLosses = (bare: AirModel, places: readonly DamperPlace[], losses: readonly number[]): AirModel =>
  dampered(bare, places, new Map(places.map((p, i) => [p.id, losses[i] ?? bladeLosses.open])));
