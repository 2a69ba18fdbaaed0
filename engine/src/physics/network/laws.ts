import type { CompiledLaws } from './compiled.ts';
import { compileFan, type FanCurve } from './fanCurve.ts';
import { otherLaw } from './laws.kernel.ts';
import { LAW, law, PASSAGE, type Regions } from './memory.ts';
import type { Shares } from './shares.ts';
import type { NetworkLink } from './spec.ts';

/** Pa that every link is taken to have across it for the first, straight guess. */
const firstPressure = 10;
/** Reynolds number of an ordinary duct, from whose friction a solution starts. */
const usualReynolds = 20_000;

export function compileLaws(
  memory: Float64Array,
  { passages, laws: first }: Regions,
  links: readonly NetworkLink[],
  shares: Shares,
): CompiledLaws {
  const last = (first - passages) / PASSAGE - 1;
  const passageOf = (e: number): number => {
    const passage = shares.passage[e] ?? -1;
    return passage < 0 ? last : passage;
  };
  const sorted = links.map((_, e) => e).sort((a, b) => passageOf(a) - passageOf(b) || a - b);
  const runs = sorted.filter((e) => passageOf(e) < last);
  const place = new Int32Array(links.length);
  sorted.forEach((e, i) => {
    place[e] = first + LAW * i;
  });
  const passage = place.map((_, e) => passages + PASSAGE * passageOf(e));
  const others = runs.filter((e) => links[e]?.kind !== 'duct').flatMap((e) => [place[e] ?? 0, passage[e] ?? 0, e]);
  const laws: CompiledLaws = {
    place,
    passage,
    still: first + LAW * runs.length,
    others: Int32Array.from(others),
    fans: links.map(() => undefined),
  };
  writeShares(memory, laws, shares);
  links.forEach((link, e) => {
    writeLaw(memory, laws, e, link);
  });
  return laws;
}

/** Writes how the flow of each link hangs on that of its passage. Laws of fixed flow have then to be written anew. */
export function writeShares(memory: Float64Array, { place }: CompiledLaws, { share, fixed, sign }: Shares): void {
  for (let e = 0; e < place.length; e++) {
    const o = place[e] ?? 0;
    memory[o + law.share] = share[e] ?? 0;
    memory[o + law.fixed] = fixed[e] ?? 0;
    memory[o + law.sign] = sign[e] ?? 1;
  }
}

const kindNumber = { duct: 0, power: 1, 'one-way': 2, fan: 3 } as const;

/** Writes the law of a link into its record, `e` its number in the network as told; also over another of its kind. */
export function writeLaw(memory: Float64Array, laws: CompiledLaws, e: number, link: NetworkLink): void {
  const o = laws.place[e] ?? 0;
  memory[o + law.kind] = kindNumber[link.kind];
  memory[o + law.turbulentFrom] = Number.POSITIVE_INFINITY;
  if (link.kind === 'duct') writeDuct(memory, o, link);
  else if (link.kind === 'fan') laws.fans[e] = writeFan(memory, o, link);
  else writePower(memory, o, link);
  if (o >= laws.still) settle(memory, o, memory[o + law.fixed] ?? 0, laws.fans[e]);
}

/** A link whose flow is fixed has its drop for good. */
function settle(m: Float64Array, o: number, flow: number, fan: FanCurve | undefined): void {
  if (m[o + law.kind] !== 0) {
    otherLaw(m, o, flow, fan);
    return;
  }
  const size = Math.abs(flow);
  const root = colebrookRoot((m[o + law.viscous] ?? 0) / size, m[o + law.rough] ?? 0);
  const turbulent = ((m[o + law.friction] ?? 0) / root ** 2) * size;
  const between = ((m[o + law.foot] ?? 0) + (m[o + law.rise] ?? 0) * size) * size;
  const rough = size < (m[o + law.turbulentFrom] ?? 0) ? between : turbulent;
  const friction = size > (m[o + law.laminarTo] ?? 0) ? rough : (m[o + law.laminar] ?? 0);
  m[o + law.drop] = (friction + (m[o + law.minor] ?? 0) * size) * flow;
}

type Of<K extends NetworkLink['kind']> = Extract<NetworkLink, { readonly kind: K }>;

function writePower(m: Float64Array, o: number, link: Of<'power'> | Of<'one-way'>): void {
  m[o + law.coefficient] = link.coefficient;
  m[o + law.exponent] = link.exponent;
  // Straight near zero flow, so that the slope never vanishes: below 1e-4 Pa.
  m[o + law.knee] = (1e-4 / link.coefficient) ** (1 / link.exponent);
  if (link.kind === 'one-way') m[o + law.leak] = link.leak;
  m[o + law.firstSlope] = firstPressure / (firstPressure / link.coefficient) ** (1 / link.exponent);
}

function writeFan(m: Float64Array, o: number, { points }: Of<'fan'>): FanCurve {
  const [first, last] = [points[0], points.at(-1)];
  const fall = ((first?.pressure ?? 0) - (last?.pressure ?? 0)) / ((last?.flow ?? 1) - (first?.flow ?? 0));
  m[o + law.firstSlope] = Math.max(fall, 1e-3);
  m[o + law.firstDrop] = -(first?.pressure ?? 0) - fall * (first?.flow ?? 0);
  return compileFan(points);
}

function writeDuct(m: Float64Array, o: number, link: Of<'duct'>): void {
  const friction = ((link.factor ?? 1) * link.length * link.density) / (2 * link.diameter * link.area ** 2);
  const minor = ((link.loss ?? 0) * link.density) / (2 * link.area ** 2);
  const reynolds = (link.density * link.diameter) / (link.area * link.viscosity);
  const rough = link.roughness / link.diameter / 3.7;
  const root = colebrookRoot(2.51 / usualReynolds, rough, 2);
  const { turbulentFrom = 4000 } = link;
  const x = colebrookRoot(2.51 / turbulentFrom, rough);
  const rise = turbulentFrom > 2300 ? (1 / (x * x) - 64 / 2300) / (turbulentFrom - 2300) : 0;
  m[o + law.friction] = friction;
  m[o + law.minor] = minor;
  m[o + law.viscous] = 2.51 / reynolds;
  m[o + law.laminar] = (64 * friction) / reynolds;
  m[o + law.foot] = friction * (64 / 2300 - rise * 2300);
  m[o + law.rise] = friction * rise * reynolds;
  m[o + law.rough] = rough;
  m[o + law.rootStart] = root;
  m[o + law.laminarTo] = 2300 / reynolds;
  m[o + law.turbulentFrom] = turbulentFrom / reynolds;
  m[o + law.firstSlope] = Math.sqrt(firstPressure * (friction / root ** 2 + minor));
}

/**
 * 1/√f of Colebrook and White by Newton: `viscous` is 2.51 / Re, `rough` the relative roughness / 3.7. From Re 2300 up
 * two steps are within 3e-5, four exact to rounding.
 */
function colebrookRoot(viscous: number, rough: number, steps = 4): number {
  const z = Math.min(viscous, 2.51 / 2300);
  let x = 6;
  for (let i = 0; i < steps; i++) {
    const inner = rough + z * x;
    x -= (x + (2 / Math.LN10) * Math.log(inner)) / (1 + (2 / Math.LN10) * (z / inner));
  }
  return x;
}
