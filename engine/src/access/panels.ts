import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { PanelPiece } from '../plan/lines.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { floorLeast, joistWide, lackingFloor, pieceMost } from './members.ts';

type Routes = ResolvedProject['routes'];
type Box = { readonly width: number; readonly depth: number };

/** m of plywood for a floor where no thickness is entered: 23/32 in. Source: `access.members` (common practice). */
const usualThickness = (23 / 32) * 0.0254;

/**
 * Panels of the platform under the unit and of new floor, m. The platform's reaches from outer face to outer face of the joists
 * that carry the unit, and along them as far as the longer side of `unit`, whichever way it lies; where that goes through no
 * hatch it is in strips, each across all of these joists. What is fixed there already is not bought. Source: `access.members`.
 */
export function panelsOf(
  { passages, access: { platform, service } }: Routes,
  unit: Box | undefined,
  s: Scenario,
): { readonly thickness: number; readonly pieces: readonly PanelPiece[] } {
  const [spacing, joists, entered] = [s.of(platform.spacing), s.of(platform.joists), s.of(platform.sheet)];
  if (!(spacing > 0)) return unresolved('out-of-range', platform.spacing.path);
  const thickness = entered > 0 ? entered : usualThickness;
  const most = openingMost(passages, s);
  const fixed = 'choice' in platform.deck && platform.deck.choice === 'yes';
  const under: PanelPiece[] =
    entered > 0 && !fixed && unit && joists >= 2
      ? strips('Under the unit', (Math.ceil(joists) - 1) * spacing + joistWide, Math.max(unit.width, unit.depth), most)
      : [];
  if (s.choice(platform.floor) !== 'panels') return { thickness, pieces: under };
  const bare = 'choice' in platform.deck && platform.deck.choice === 'none';
  const [depth, width] = bare ? [s.maybe(service.depth) ?? 0, s.maybe(service.width) ?? 0] : [0, 0];
  const front =
    depth * width > 0
      ? walk(
          'Floor in front of the unit',
          Math.ceil(width / spacing - 1e-9) * spacing + joistWide,
          depth,
          spacing,
          most,
        )
      : [];
  const ways = lackingFloor(passages, s).flatMap((w) => walk(w.name, w.length, w.lacks, spacing, most));
  return { thickness, pieces: [...under, ...front, ...ways] };
}

/** m: the longer side of the narrowest hatch; a panel goes through it on edge where its shorter side is no longer. */
const openingMost = (passages: Routes['passages'], s: Scenario): number =>
  Math.min(
    ...inOrder(passages).flatMap(([, p]) => {
      const [width, height] = [s.maybe(p.width), s.maybe(p.height)];
      return s.choice(p.kind) === 'hatch' && width !== undefined && height !== undefined && width * height > 0
        ? [Math.max(width, height)]
        : [];
    }),
    floorLeast * 2,
  );

/** A panel `length` across what bears it and `wide` along, in as many equal strips as the opening asks for. */
function strips(name: string, length: number, wide: number, most: number): PanelPiece[] {
  const count = Math.min(length, wide) <= most ? 1 : Math.ceil(wide / most - 1e-9);
  return [{ name, length, width: wide / count, count }];
}

/** Panels one after the other along a way, every end on a joist. */
function walk(name: string, length: number, wide: number, spacing: number, most: number): PanelPiece[] {
  const each = Math.max(1, Math.floor(pieceMost / spacing + 1e-9)) * spacing;
  const whole = Math.max(0, Math.ceil(length / each - 1e-9) - 1);
  const all = [...new Array<number>(whole).fill(each), length - whole * each].flatMap((l) =>
    strips(name, l, wide, most),
  );
  const alike = all.filter((p) => p.length === each);
  return [
    ...(alike[0] ? [{ ...alike[0], count: alike.reduce((a, p) => a + p.count, 0) }] : []),
    ...all.filter((p) => p.length !== each),
  ];
}
