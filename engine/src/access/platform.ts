import type { Range, ResolvedProject } from '@kneewall/project';
import { inch } from '../physics/exact.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { type Joist, type Load, moment, sag, stress } from './kernels/joist.ts';
import { ownFrequency, shakenThrough } from './kernels/mount.ts';
import { gravity } from './kernels/rope.ts';
import type { Loaded, Mounted } from './result.ts';

type Platform = ResolvedProject['routes']['access']['platform'];

/** m of depth, and what bending stress is multiplied by for it. Source: `access.timber`. */
const sizes = {
  '2x4': [3.5, 1.5],
  '2x6': [5.5, 1.3],
  '2x8': [7.25, 1.2],
  '2x10': [9.25, 1.1],
  '2x12': [11.25, 1],
} as const;
/** Pa: stiffness and bending stress of plain grades, weakest to best; not known spans them. Source: `access.timber`. */
const psi = 6894.757;
const woods = {
  unknown: { elastic: [1.2e6, 1.4e6, 1.6e6], bending: [675, 875, 900] },
  spruce: { elastic: [1.2e6, 1.4e6, 1.4e6], bending: [675, 875, 875] },
  larch: { elastic: [1.4e6, 1.6e6, 1.6e6], bending: [525, 900, 900] },
} as const;
/** Joists side by side help each other. Source: `access.timber`. */
const together = 1.15;

/** The joist that carries most: its share of the unit, a person beside it, and the load of its own strip. */
export function loadedOf(platform: Platform, mass: number, s: Scenario): Loaded {
  const [inches, factor] = sizes[s.choice(platform.joist)];
  const [span, spacing, joists] = [s.of(platform.span), s.of(platform.spacing), s.of(platform.joists)];
  if (!(span > 0)) return unresolved('out-of-range', platform.span.path);
  if (!(joists >= 1)) return unresolved('out-of-range', platform.joists.path);
  const from = s.maybe(platform.from);
  if (from !== undefined && (from <= 0 || from >= span)) return unresolved('out-of-range', platform.from.path);
  const added = s.of(platform.sheet) * woodDensity * gravity;
  const timbers = acrossOf(platform, mass, spacing, s);
  const load: Load = {
    spread: (s.of(platform.live) + s.of(platform.dead) + added) * spacing,
    point: (mass / joists + timbers.mass + s.of(platform.person)) * gravity,
    ...(from === undefined ? {} : { at: from }),
  };
  const timber = woods[s.choice(platform.timber)];
  const joist = (elastic: number): Joist => ({ width: 1.5 * inch, depth: inches * inch, span, elastic: elastic * psi });
  const bent = stress(moment(span, load), joist(1));
  const used = timber.bending.map((f) => bent / (f * psi * factor * together));
  const sags = timber.elastic.map((e) => sag(load, joist(e)));
  const [weak = 0, likely = 0, strong = 0] = used;
  const [soft = 0, usual = 0, stiff = 0] = sags;
  return {
    used: { low: strong, likely, high: weak },
    sag: { low: stiff, likely: usual, high: soft },
    span,
    ...(timbers.across ? { across: timbers.across } : {}),
  };
}

/** kg/m³ of panels and timber. Source: `access.wood`. */
const woodDensity = 600;

/**
 * Timbers across the joists: kg that they put on a joist, and the share of their strength that is used where the unit's
 * foot stands halfway between two joists. Laid flat they bend about their weak side. Size counts for nothing here: leaning
 * to the weak side. Source: `access.timber`.
 */
function acrossOf(
  platform: Platform,
  mass: number,
  spacing: number,
  s: Scenario,
): { readonly mass: number; readonly across?: Range } {
  const cross = s.choice(platform.cross);
  const count = s.of(platform.crossing);
  if (cross === 'none') return { mass: 0 };
  if (!(count >= 1)) return unresolved('out-of-range', platform.crossing.path);
  const wide = (cross.endsWith('2x4') ? 3.5 : 5.5) * inch;
  const section = cross.startsWith('flat') ? { width: wide, depth: 1.5 * inch } : { width: 1.5 * inch, depth: wide };
  const own = wide * 1.5 * inch * woodDensity * spacing;
  const bent = stress(moment(spacing, { spread: (own * gravity) / spacing, point: (mass / count) * gravity }), section);
  const [weak = 1, likely = 1, strong = 1] = woods[s.choice(platform.timber)].bending;
  const used = (f: number): number => bent / (f * psi);
  return { mass: own * count, across: { low: used(strong), likely: used(likely), high: used(weak) } };
}

/** Share of the blower's shaking that its pads let through, from its slowest turn to its fastest. */
export function mountedOf(platform: Platform, s: Scenario): Mounted {
  const { turns } = platform;
  if ('missing' in turns) return unresolved('missing', turns.path);
  const gives = s.choice(platform.isolation) === 'none' ? 0 : s.of(platform.gives);
  const own = gives > 0 ? ownFrequency(gives) : 0;
  const at = (rpm: number): number => {
    const share = shakenThrough(gives, rpm / 60);
    // At its own frequency nothing but damping, which is not known, holds it.
    return Number.isFinite(share) ? share : unresolved('out-of-range', platform.gives.path);
  };
  const ends = [at(turns.low), at(turns.likely), at(turns.high)];
  // A blower that runs up through the mounts' own frequency shakes more on the way than at either end.
  if (own > turns.low / 60 && own < turns.high / 60) return unresolved('out-of-range', platform.gives.path);
  return { through: { low: Math.min(...ends), likely: at(turns.likely), high: Math.max(...ends) }, own };
}
