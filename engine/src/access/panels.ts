import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { PanelPiece } from '../plan/lines.ts';
import { unresolved } from '../plan/outcome.ts';
import { usualPlywood } from '../plan/plywood.ts';
import type { Scenario } from '../plan/scenario.ts';
import { floorLeast, joistWide, newFloor, onJoists } from './members.ts';

type Routes = ResolvedProject['routes'];
type Box = { readonly width: number; readonly depth: number };

/**
 * Panels of the platform under the unit and of new floor, m. The platform's reaches from outer face to outer face of the joists
 * that carry the unit, and along them as far as the longer side of `unit`, whichever way it lies; where that goes through no
 * hatch it is in strips, each across all of these joists. What is fixed there already is not bought. Source: `access.members`.
 */
export function panelsOf(
  routes: Routes,
  unit: Box | undefined,
  s: Scenario,
): { readonly thickness: number; readonly pieces: readonly PanelPiece[] } {
  const { platform } = routes.access;
  const [spacing, joists, entered] = [s.of(platform.spacing), s.of(platform.joists), s.of(platform.sheet)];
  if (!(spacing > 0)) return unresolved('out-of-range', platform.spacing.path);
  const thickness = entered > 0 ? entered : usualPlywood;
  const most = openingMost(routes.passages, s);
  const fixed = 'choice' in platform.deck && platform.deck.choice === 'yes';
  const under: PanelPiece[] =
    entered > 0 && !fixed && unit && joists >= 2
      ? strips('Under the unit', (Math.ceil(joists) - 1) * spacing + joistWide, Math.max(unit.width, unit.depth), most)
      : [];
  if (s.choice(platform.floor) !== 'panels') return { thickness, pieces: under };
  const floor = newFloor(routes, spacing, s);
  const walks = floor.flatMap(({ name, length, lacks }) => walk(name, length, lacks, spacing, most));
  return { thickness, pieces: [...under, ...walks] };
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
  const { each, whole, rest } = onJoists(length, spacing);
  const alike = rest === each ? whole + 1 : whole;
  return [
    ...(alike > 0 ? strips(name, each, wide, most).map((p) => ({ ...p, count: p.count * alike })) : []),
    ...(rest === each ? [] : strips(name, rest, wide, most)),
  ];
}
