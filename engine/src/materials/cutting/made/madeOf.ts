import { inOrder, type ResolvedProject } from '@kneewall/project';
import type { TransitionEnd } from '../../../physics/cutting/index.ts';
import { slopedLength } from '../../../physics/cutting/transition/slopedLength.ts';
import { type Scenario, scenario } from '../../../plan/scenario.ts';
import { chosen, type Ducts, fittedSections, type Section, sizeOf } from '../sectionsOf.ts';
import type { BoughtCap, CutMade } from './result.ts';

/** Caps of round ducts and reducers that are to be cut from sheet metal, in the document's order; those that are bought are left out. */
export function madeOf(project: Pick<ResolvedProject, 'routes' | 'items'>): CutMade[] {
  const { ducts } = project.routes;
  const s = scenario();
  const there = fittedSections(project);
  return inOrder(ducts.sections).flatMap(([id, x]) =>
    there.has(id) ? [] : [...roundCaps(id, x, s), ...reducers(id, x, ducts, s)],
  );
}

const ends = ['start', 'end'] as const;

/** Closed ends of metal ducts whose caps are bought; of what is fitted already none. */
export function boughtCaps(project: Pick<ResolvedProject, 'routes' | 'items'>): BoughtCap[] {
  const s = scenario();
  const there = fittedSections(project);
  return inOrder(project.routes.ducts.sections).flatMap(([section, x]) => {
    const [kind, size] = [chosen(x.kind), sizeOf(x, s)];
    if (there.has(section) || !size || (kind !== 'round' && kind !== 'rectangular') || chosen(x.ends.caps) === 'cut')
      return [];
    const count = ends.filter((end) => chosen(x.ends[end]) === 'closed').length;
    return count > 0 ? [{ section, name: x.name ?? section, size, count }] : [];
  });
}

/** Which ends of a metal duct get a cap that is cut. */
export const cutCaps = ({ ends: { start, end, caps } }: Section) => {
  const cut = chosen(caps) === 'cut';
  return { start: cut && chosen(start) === 'closed', end: cut && chosen(end) === 'closed' };
};

function roundCaps(id: string, x: Section, s: Scenario): CutMade[] {
  const shape = sizeOf(x, s);
  if (chosen(x.kind) !== 'round' || !shape || !('diameter' in shape)) return [];
  const own = { section: id, side: chosen(x.side) ?? 'supply' } as const;
  const closed = cutCaps(x);
  return ends.flatMap((end): CutMade[] =>
    closed[end] ? [{ ...own, id: `${id} cap ${end}`, name: `Cap of “${x.name ?? id}”`, what: 'cap', ...shape }] : [],
  );
}

function reducers(id: string, x: Section, ducts: Ducts, s: Scenario): CutMade[] {
  const before = x.from === undefined ? undefined : ducts.sections[x.from];
  return inOrder(x.fittings).flatMap(([own, f]): CutMade[] => {
    if (chosen(f.kind) !== 'reducer' || chosen(f.reducer.made) !== 'cut') return [];
    const side = chosen(x.side) ?? 'supply';
    const base = { id: `${id} ${own}`, name: `Reducer to “${x.name ?? id}”`, section: id, side } as const;
    const [from, to] = [before && sizeOf(before, s), sizeOf(x, s)];
    if (!to) return [{ ...base, what: 'unknown', missing: `routes.ducts.sections.${id}.diameter` }];
    if (!from) {
      const missing =
        x.from === undefined ? `routes.ducts.sections.${id}.from` : `routes.ducts.sections.${x.from}.diameter`;
      return [{ ...base, what: 'unknown', missing }];
    }
    const [start, end] = [asEnd(from), asEnd(to)];
    const up =
      { middle: 0, bottom: -0.5, top: 0.5 }[chosen(f.reducer.lies) ?? 'middle'] * (highOf(start) - highOf(end));
    const offset = [0, up] as const;
    const lengthWanted = slopedLength({ start, end, offset }, side === 'return');
    const entered = s.maybe(f.reducer.length);
    const length = entered ?? lengthWanted;
    const lengthFrom = entered === undefined ? 'slopes' : 'entered';
    return [{ ...base, what: 'reducer', start, end, offset, length, lengthWanted, lengthFrom }];
  });
}

const asEnd = (size: NonNullable<ReturnType<typeof sizeOf>>): TransitionEnd =>
  'diameter' in size ? { kind: 'round', ...size } : { kind: 'rectangle', ...size };
const highOf = (end: TransitionEnd): number => (end.kind === 'round' ? end.diameter : end.height);
