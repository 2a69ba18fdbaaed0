import { compileFan, type FanCurve } from './fanCurve.ts';
import { otherLaw } from './laws.kernel.ts';
import type { LinkPlace } from './passages.ts';
import type { NetworkLink } from './spec.ts';

/** Laws of all links, those of a passage side by side, those of fixed flow last. */
export type CompiledLaws = {
  /** Place of each link among the laws. */
  readonly place: Int32Array;
  /** Number of the passage of each law; one behind the last for those of fixed flow. */
  readonly passage: Int32Array;
  readonly kind: Uint8Array;
  /** A record for each law, side by side since a law reads all of its own: see `at`. */
  readonly numbers: Float64Array;
  readonly fans: (FanCurve | undefined)[];
};

export const DUCT = 0;
export const POWER = 1;
export const ONE_WAY = 2;
export const FAN = 3;

/** Numbers in a record. The kernel reads them by place, this table by name. */
export const RECORD = 19;
export const at = {
  /** Flow = share · flow of the passage + fixed; sign +1 where the link points along it. */
  share: 0,
  fixed: 1,
  sign: 2,
  /** What the last look found: Pa lost, and how fast that grows with flow. */
  drop: 3,
  slope: 4,
  /** Straight law of a first guess: drop = firstDrop + firstSlope · flow. */
  firstDrop: 5,
  firstSlope: 6,
  /** Duct: friction drop = friction · f · q², minor loss = minor · q², Re = reynolds · q, laminar drop = laminar · q. */
  friction: 7,
  minor: 8,
  reynolds: 9,
  laminar: 10,
  /** Between laminar and turbulent flow friction drop / q² = foot + rise · Re. */
  foot: 11,
  rise: 12,
  /** Relative roughness / 3.7. */
  rough: 13,
  /** 1/√f; inverse of where Colebrook's logarithm was last taken, and that logarithm. A solution begins with `rootStart`. */
  root: 14,
  argument: 15,
  logarithm: 16,
  rootStart: 17,
  turbulentFrom: 18,
  /** Power and one-way: coefficient, exponent, flow below which it is straight, leak. */
  coefficient: 7,
  exponent: 8,
  knee: 9,
  leak: 10,
} as const;

/** Pa that every link is taken to have across it for the first, straight guess. */
const firstPressure = 10;
/** Reynolds number of an ordinary duct, from whose friction a solution starts. */
const usualReynolds = 20_000;

export function compileLaws(
  links: readonly NetworkLink[],
  places: readonly LinkPlace[],
  passages: number,
): CompiledLaws {
  const passageOf = (e: number): number => {
    const passage = places[e]?.passage ?? -1;
    return passage < 0 ? passages : passage;
  };
  const sorted = links.map((_, e) => e).sort((a, b) => passageOf(a) - passageOf(b) || a - b);
  const laws = {
    place: new Int32Array(links.length),
    passage: new Int32Array(links.length),
    kind: new Uint8Array(links.length),
    numbers: new Float64Array(RECORD * links.length),
    fans: links.map((): FanCurve | undefined => undefined),
  };
  sorted.forEach((e, i) => {
    const [link, place] = [links[e], places[e]];
    if (link === undefined || place === undefined) return;
    laws.place[e] = i;
    laws.passage[i] = passageOf(e);
    laws.kind[i] = { duct: DUCT, power: POWER, 'one-way': ONE_WAY, fan: FAN }[link.kind];
    const o = RECORD * i;
    laws.numbers[o + at.share] = place.share;
    laws.numbers[o + at.fixed] = place.fixed;
    laws.numbers[o + at.sign] = place.sign;
    write(laws, i, link, place.passage < 0);
  });
  return laws;
}

/** Writes another law of the same kind in the place of a link, `e` its number in the network as told. */
export function changeLaw(laws: CompiledLaws, e: number, link: NetworkLink): void {
  const i = laws.place[e] ?? 0;
  write(laws, i, link, laws.numbers[RECORD * i + at.share] === 0);
}

function write(laws: CompiledLaws, i: number, link: NetworkLink, still: boolean): void {
  layOut(laws.numbers, RECORD * i, link);
  if (link.kind === 'fan') laws.fans[i] = compileFan(link.points);
  if (still) settle(laws, i, laws.numbers[RECORD * i + at.fixed] ?? 0);
}

/** A link whose flow is fixed has its drop for good. */
function settle(laws: CompiledLaws, i: number, flow: number): void {
  if (laws.kind[i] !== DUCT) {
    otherLaw(laws, i, RECORD * i, flow);
    return;
  }
  const n = laws.numbers;
  const o = RECORD * i;
  const size = Math.abs(flow);
  const re = (n[o + at.reynolds] ?? 0) * size;
  const root = colebrookRoot(re, n[o + at.rough] ?? 0);
  const between = ((n[o + at.foot] ?? 0) + (n[o + at.rise] ?? 0) * re) * size;
  const turbulent = ((n[o + at.friction] ?? 0) / root ** 2) * size;
  const rough = re < (n[o + at.turbulentFrom] ?? 0) ? between : turbulent;
  const friction = re > 2300 ? rough : (n[o + at.laminar] ?? 0);
  n[o + at.drop] = (friction + (n[o + at.minor] ?? 0) * size) * flow;
}

function layOut(n: Float64Array, o: number, link: NetworkLink): void {
  if (link.kind === 'duct') layOutDuct(n, o, link);
  else if (link.kind === 'fan') {
    const [first, last] = [link.points[0], link.points.at(-1)];
    const fall = ((first?.pressure ?? 0) - (last?.pressure ?? 0)) / ((last?.flow ?? 1) - (first?.flow ?? 0));
    n[o + at.firstSlope] = Math.max(fall, 1e-3);
    n[o + at.firstDrop] = -(first?.pressure ?? 0) - fall * (first?.flow ?? 0);
  } else {
    n[o + at.coefficient] = link.coefficient;
    n[o + at.exponent] = link.exponent;
    // Straight near zero flow, so that the slope never vanishes: below 1e-4 Pa.
    n[o + at.knee] = (1e-4 / link.coefficient) ** (1 / link.exponent);
    if (link.kind === 'one-way') n[o + at.leak] = link.leak;
    n[o + at.firstSlope] = firstPressure / (firstPressure / link.coefficient) ** (1 / link.exponent);
  }
}

function layOutDuct(n: Float64Array, o: number, link: Extract<NetworkLink, { readonly kind: 'duct' }>): void {
  const friction = ((link.factor ?? 1) * link.length * link.density) / (2 * link.diameter * link.area ** 2);
  const minor = ((link.loss ?? 0) * link.density) / (2 * link.area ** 2);
  const reynolds = (link.density * link.diameter) / (link.area * link.viscosity);
  const roughness = link.roughness / link.diameter;
  const root = colebrookRoot(usualReynolds, roughness / 3.7);
  const { turbulentFrom = 4000 } = link;
  const x = colebrookRoot(turbulentFrom, roughness / 3.7);
  const rise = turbulentFrom > 2300 ? (1 / (x * x) - 64 / 2300) / (turbulentFrom - 2300) : 0;
  n[o + at.friction] = friction;
  n[o + at.minor] = minor;
  n[o + at.reynolds] = reynolds;
  n[o + at.laminar] = (64 * friction) / reynolds;
  n[o + at.foot] = friction * (64 / 2300 - rise * 2300);
  n[o + at.rise] = friction * rise;
  n[o + at.rough] = roughness / 3.7;
  n[o + at.rootStart] = root;
  n[o + at.turbulentFrom] = turbulentFrom;
  n[o + at.firstSlope] = Math.sqrt(firstPressure * (friction / root ** 2 + minor));
}

/** 1/√f of Colebrook and White at any Re, `rough` being the relative roughness / 3.7; by Newton. */
function colebrookRoot(reynolds: number, rough: number): number {
  const z = 2.51 / Math.max(reynolds, 2300);
  let x = 6;
  for (let i = 0; i < 6; i++) {
    const inner = rough + z * x;
    x -= (x + (2 / Math.LN10) * Math.log(inner)) / (1 + (2 / Math.LN10) * (z / inner));
  }
  return x;
}
