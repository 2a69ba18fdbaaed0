import type { ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { type Joist, type Load, moment, sag, stress } from './kernels/joist.ts';
import { gravity } from './kernels/rope.ts';
import type { Loaded } from './result.ts';

type Platform = ResolvedProject['routes']['access']['platform'];

const inch = 0.0254;
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
const timbers = {
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
  const load: Load = {
    spread: (s.of(platform.live) + s.of(platform.dead)) * spacing,
    point: (mass / joists + s.of(platform.person)) * gravity,
    ...(from === undefined ? {} : { at: from }),
  };
  const timber = timbers[s.choice(platform.timber)];
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
  };
}
