import { inOrder, type Range, type ResolvedProject } from '@kneewall/project';
import { type DuctKind, type DuctShape, type Stock, shapeId } from './stock.ts';

/** Clear height and width a section has to pass, m, as entered; `over` joists and with nothing said only what is there counts. */
export type Space = { readonly passes?: 'bay' | 'over'; readonly depth?: number; readonly width?: number };

export const ductParts = ['run', 'end', 'bend'] as const;
/** Money for a metre of the duct itself, for an end, for a bend; `piece` is the length in m that is sold at once. */
export type PartPrice = Range & { readonly piece?: number };
export type PartPrices = Readonly<Partial<Record<(typeof ductParts)[number], PartPrice>>>;

/** What a person says beside the ducts themselves; what is not said is absent. */
export type Asked = {
  readonly spaces?: Readonly<Record<string, Space>>;
  /** By section, where it may become another kind than the one drawn. */
  readonly kinds?: Readonly<Record<string, readonly DuctKind[]>>;
  readonly stock?: Stock;
  /** By kind and size. */
  readonly prices?: Readonly<Record<string, PartPrices>>;
  /** Seconds of work at a joint. */
  readonly joints?: Readonly<Partial<Record<DuctKind, Range>>>;
  readonly goal?: 'money' | 'labour' | 'static';
};

type Project = Pick<ResolvedProject, 'routes' | 'work'>;
type Ducts = ResolvedProject['routes']['ducts'];
const kindsOfDuct = ['flexible', 'round', 'rectangular', 'board'] as const;

/** Spaces, kinds, sizes and prices as entered, in the form the choice of sizes takes them. */
export function askedOf({ routes: { ducts }, work }: Project): Asked {
  const goal = said(ducts.make.goal);
  return {
    ...unlessEmpty('spaces', spacesOf(ducts)),
    ...unlessEmpty('kinds', kindsOf(ducts)),
    ...unlessEmpty('stock', stockListed({ ducts, work })),
    ...unlessEmpty('prices', pricesOf(work)),
    ...unlessEmpty('joints', jointsOf(ducts)),
    ...(goal === undefined || goal === 'money' ? {} : { goal }),
  };
}

const unlessEmpty = <K extends string, V extends object>(key: K, value: V): Partial<Record<K, V>> =>
  Object.keys(value).length > 0 ? ({ [key]: value } as Record<K, V>) : {};

const said = <T extends string>(answer: { readonly choice: T } | { readonly missing: true }): T | undefined =>
  'choice' in answer ? answer.choice : undefined;
const likely = (given: Range | { readonly missing: true }): number | undefined =>
  'missing' in given ? undefined : given.likely;

/** By section, the space it is said to pass; sections that run free are left out. */
export function spacesOf(ducts: Ducts): Record<string, Space> {
  return Object.fromEntries(
    inOrder(ducts.sections).flatMap(([id, { space }]) => {
      const [passes, depth, width] = [said(space.passes), likely(space.depth), likely(space.width)];
      if (passes === 'free' || (depth === undefined && width === undefined)) return [];
      const sides = { ...(depth === undefined ? {} : { depth }), ...(width === undefined ? {} : { width }) };
      return [[id, { ...(passes === undefined ? {} : { passes }), ...sides }]];
    }),
  );
}

function kindsOf({ sections, make }: Ducts): Record<string, readonly DuctKind[]> {
  return Object.fromEntries(
    inOrder(sections).flatMap(([id, x]) => {
      const drawn = said(x.kind);
      const may = kindsOfDuct.filter((kind) => {
        const [own, all] = [said(x.mayBe[kind]), said(make[kind])];
        return own !== undefined ? own === 'yes' : all !== undefined ? all !== 'no' : kind === drawn;
      });
      return may.length === 1 && may[0] === drawn ? [] : [[id, may]];
    }),
  );
}

function stockListed({ ducts, work }: { ducts: Ducts; work: Project['work'] }): Stock {
  const lines = [...inOrder(work.stock), ...inOrder(work.prices)];
  const shapes = lines.flatMap(([, line]) => shapeIn(line) ?? []);
  const listed = shapes.filter((x, i) => shapes.findIndex((y) => shapeId(y) === shapeId(x)) === i);
  const only = kindsOfDuct.filter((kind) => said(ducts.make[kind]) === 'listed');
  return { ...(listed.length > 0 ? { listed } : {}), ...(only.length > 0 ? { only } : {}) };
}

type Line = Project['work']['stock'][string] | Project['work']['prices'][string];

/** The duct a line is about, a rectangular one lying flat; nothing where it is not said whole. */
function shapeIn({ duct, diameter, width, height }: Line): DuctShape | undefined {
  const kind = said(duct);
  if (kind === undefined) return undefined;
  if (kind === 'flexible' || kind === 'round') {
    const d = likely(diameter);
    return d === undefined ? undefined : { kind, diameter: d };
  }
  const [w, h] = [likely(width), likely(height)];
  return w === undefined || h === undefined ? undefined : { kind, width: Math.max(w, h), height: Math.min(w, h) };
}

/** Entered prices by kind and size; of two for one thing the lower likely one counts. */
function pricesOf(work: Project['work']): Record<string, PartPrices> {
  const found: Record<string, PartPrices> = {};
  for (const [, line] of inOrder(work.prices)) {
    const shape = shapeIn(line);
    const part = said(line.part) ?? 'run';
    const piece = part === 'run' ? likely(line.piece) : 1;
    const { price } = line;
    if (!shape || piece === undefined || 'missing' in price) continue;
    const [low, at, high] = [price.low / piece, price.likely / piece, price.high / piece];
    const each = { low, likely: at, high, ...(part === 'run' ? { piece } : {}) };
    const id = shapeId(shape);
    const before = found[id]?.[part];
    if (before === undefined || each.likely < before.likely) found[id] = { ...found[id], [part]: each };
  }
  return found;
}

function jointsOf({ make }: Ducts): Partial<Record<DuctKind, Range>> {
  return Object.fromEntries(
    kindsOfDuct.flatMap((kind) => {
      const work = make.joints[kind];
      return 'missing' in work ? [] : [[kind, { low: work.low, likely: work.likely, high: work.high }]];
    }),
  );
}
