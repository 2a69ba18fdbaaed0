import { meanPressureCoefficient, usualExponent, wallPressureCoefficient } from '../../physics/infiltration/index.ts';
import type { NetworkLink, NetworkNode } from '../../physics/network/index.ts';
import type { HouseAir, LeakPlace, Weather } from './houseAir.ts';

/** m³/(s Paⁿ) of leaks that are as good as none. */
const hardlyAny = 1e-12;

/** Outdoors as the rooms feel it: its nodes, the leaks that lead there, and the nodes that attic and space below are. */
export type Around = {
  readonly nodes: readonly NetworkNode[];
  readonly leaks: (from: string, leak: number, exponent?: number, places?: readonly LeakPlace[]) => NetworkLink[];
  readonly attic: string;
  readonly below: string;
};

const everywhere: LeakPlace = { height: 0, share: 1 };

/**
 * Pa outdoors at a place, beside the pressure at the lowest floor that air as warm as indoors would have there: warm air
 * indoors gains on it upwards, and the wind presses on one wall and pulls at the others. Spaces that are open to all
 * sides stand at the mean of four walls. Sources: `infiltration.stack`, `infiltration.wind-pressure`.
 */
export function pressureOutdoors({ height, faces }: LeakPlace, { rise, wind, from }: Weather): number {
  const coefficient = faces === undefined ? meanPressureCoefficient(-from) : wallPressureCoefficient(faces - from);
  return wind * coefficient - rise * height;
}

/** One node where nothing blows and nothing is warm, else one for every pressure that leaks meet: the fewer the faster. */
export function around({ rooms, leaks, top = 0, weather }: HouseAir): Around {
  if (!weather) {
    const id = 'outdoors';
    const through = (from: string, leak: number, exponent?: number) =>
      leakLink(`leaks ${from}`, from, id, leak, exponent);
    return { nodes: [{ id, pressure: 0 }], leaks: through, attic: id, below: id };
  }
  const pressures = new Map<string, number>();
  const nodeAt = (place: LeakPlace): string => {
    const pressure = pressureOutdoors(place, weather);
    // A micropascal: the last bit of a cosine makes no other place.
    const id = `outdoors ${Math.round(pressure * 1e6)}`;
    if (!pressures.has(id)) pressures.set(id, pressure);
    return id;
  };
  const [attic, below] = [nodeAt({ height: top, share: 1 }), nodeAt(everywhere)];
  const shares = new Map(
    [leaks?.places, ...rooms.map((r) => r.places)].map((places) => [places, sharesAt(places, nodeAt)]),
  );
  return {
    nodes: [...pressures].map(([id, pressure]) => ({ id, pressure })),
    leaks: (from, leak, exponent, places) =>
      [...(shares.get(places) ?? [])].flatMap(([to, share]) =>
        leakLink(`leaks ${from} ${to}`, from, to, leak * share, exponent),
      ),
    attic,
    below,
  };
}

function sharesAt(places: readonly LeakPlace[] = [everywhere], nodeAt: (p: LeakPlace) => string): Map<string, number> {
  const shares = new Map<string, number>();
  for (const p of places) {
    const at = nodeAt(p);
    shares.set(at, (shares.get(at) ?? 0) + p.share);
  }
  return shares;
}

/** Q = c pⁿ turned round: pressure = (Q / c)^(1/n). */
const leakLink = (id: string, from: string, to: string, leak: number, exponent = usualExponent): NetworkLink[] =>
  leak > hardlyAny
    ? [{ id, kind: 'power', from, to, coefficient: leak ** (-1 / exponent), exponent: 1 / exponent }]
    : [];
