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

/** One node where nothing blows and nothing is warm, else one for each height and way that leaks face. */
export function around({ rooms, leaks, top = 0, weather }: HouseAir): Around {
  if (!weather) {
    const id = 'outdoors';
    const through = (from: string, leak: number, exponent?: number) =>
      leakLink(`leaks ${from}`, from, id, leak, exponent);
    return { nodes: [{ id, pressure: 0 }], leaks: through, attic: id, below: id };
  }
  const [attic, below] = [{ height: top, share: 1 }, everywhere];
  const all = [attic, below, ...rooms.flatMap((r) => r.places ?? []), ...(leaks?.places ?? [])];
  const known = new Map(all.map((p) => [nodeAt(p), p]));
  return {
    nodes: [...known].map(([id, p]) => ({ id, pressure: pressureOutdoors(p, weather) })),
    leaks: (from, leak, exponent, places = [everywhere]) =>
      [...sharesAt(places)].flatMap(([to, share]) => leakLink(`leaks ${from} ${to}`, from, to, leak * share, exponent)),
    attic: nodeAt(attic),
    below: nodeAt(below),
  };
}

const nodeAt = ({ height, faces }: LeakPlace): string => `outdoors ${height.toFixed(3)} ${faces ?? 'all'}`;

function sharesAt(places: readonly LeakPlace[]): Map<string, number> {
  const shares = new Map<string, number>();
  for (const p of places) shares.set(nodeAt(p), (shares.get(nodeAt(p)) ?? 0) + p.share);
  return shares;
}

/** Q = c pⁿ turned round: pressure = (Q / c)^(1/n). */
const leakLink = (id: string, from: string, to: string, leak: number, exponent = usualExponent): NetworkLink[] =>
  leak > hardlyAny
    ? [{ id, kind: 'power', from, to, coefficient: leak ** (-1 / exponent), exponent: 1 / exponent }]
    : [];
