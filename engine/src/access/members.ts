import { inOrder, type ResolvedProject } from '@kneewall/project';
import { inch } from '../physics/exact.ts';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { Member } from './result.ts';

type Routes = ResolvedProject['routes'];
type Lacking = { readonly name: string; readonly length: number; readonly lacks: number };

/** m: a joist's own width, a 2x6 laid flat as a board to walk on, and the floor that codes ask for. Sources: `access.members`, `access.passage`. */
export const joistWide = 1.5 * inch;
const boardWide = 5.5 * inch;
export const floorLeast = 24 * inch;
/** m of a board or panel that still goes up through a hatch and round in an attic. Source: `access.members` (common practice). */
const pieceMost = 96 * inch;

/**
 * Timber of the platform and of the floor to it, m, as the trade draws it: what lies across the joists that carry the unit
 * reaches from outer face to outer face of them; where there is no floor, boards 2x6 lie flat across the joists, and every
 * board ends on a joist. Whether joists bear it is judged apart. Source: `access.members`.
 */
export function membersOf(routes: Routes, s: Scenario): Member[] {
  const { platform } = routes.access;
  const [spacing, joists] = [s.of(platform.spacing), s.of(platform.joists)];
  if (!(spacing > 0)) return unresolved('out-of-range', platform.spacing.path);
  const cross = s.choice(platform.cross);
  const across: Member[] =
    cross === 'none' || !(joists >= 2)
      ? []
      : [
          {
            size: cross.endsWith('2x4') ? '2x4' : '2x6',
            name: `Across the joists under the unit, ${cross.startsWith('flat') ? 'laid flat' : 'on edge'}`,
            length: (Math.ceil(joists) - 1) * spacing + joistWide,
            count: Math.ceil(s.of(platform.crossing)),
          },
        ];
  // Panels are cut from sheets: see `panelsOf`.
  if (s.choice(platform.floor) === 'panels') return across;
  const floor = newFloor(routes, spacing, s);
  return [...across, ...floor.flatMap(({ name, length, lacks }) => boards(name, length, lacks, spacing))];
}

/** Boards side by side that are `wide` together, or a little more; long ones in pieces that end on a joist. */
function boards(name: string, length: number, wide: number, spacing: number): Member[] {
  const count = Math.ceil(wide / boardWide - 1e-9);
  const { each, whole, rest } = onJoists(length, spacing);
  return [
    ...(whole > 0 ? [{ size: '2x6' as const, name, length: each, count: whole * count }] : []),
    { size: '2x6', name, length: rest, count },
  ];
}

/** A length in pieces that end on a joist and still go up, m: `whole` of them, and what is left. */
export function onJoists(length: number, spacing: number): { each: number; whole: number; rest: number } {
  const each = Math.max(1, Math.floor(pieceMost / spacing + 1e-9)) * spacing;
  const whole = Math.max(0, Math.ceil(length / each - 1e-9) - 1);
  return { each, whole, rest: length - whole * each };
}

/** Floor that is to be laid across the joists, m: in front of the unit where there is none, and what ways in the attic lack. */
export function newFloor({ passages, access: { platform, service } }: Routes, spacing: number, s: Scenario): Lacking[] {
  const bare = 'choice' in platform.deck && platform.deck.choice === 'none';
  const [depth, width] = bare ? [s.maybe(service.depth) ?? 0, s.maybe(service.width) ?? 0] : [0, 0];
  const length = Math.ceil(width / spacing - 1e-9) * spacing + joistWide;
  const front = depth * width > 0 ? [{ name: 'Floor in front of the unit', length, lacks: depth }] : [];
  return [...front, ...lackingFloor(passages, s)];
}

/** Ways in the attic whose floor is narrower than codes ask for, m: how long they are and what they lack. */
const lackingFloor = (passages: Routes['passages'], s: Scenario): Lacking[] =>
  inOrder(passages).flatMap(([id, p]) => {
    const [length, has] = [s.maybe(p.length), s.maybe(p.floor)];
    if (s.choice(p.kind) !== 'crawl' || s.choice(p.carries) === 'outdoor' || length === undefined || has === undefined)
      return [];
    const lacks = floorLeast - has;
    return length > 0 && lacks > 1e-6 ? [{ name: `Floor, ${p.name ?? id}`, length, lacks }] : [];
  });
