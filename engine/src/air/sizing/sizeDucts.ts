import type { AirModel } from '../result.ts';
import { lessFlow } from './lessFlow.ts';
import { smallestFirst } from './nothingFits.ts';
import { reshaped } from './reshape.ts';
import { type DuctSizingInput, type SectionSizing, type SetUp, setUp } from './setUp.ts';
import { solveSizing } from './solveSizing.ts';
import type { Sizing, SizingTotals } from './spec.ts';
import { shapeId } from './stock.ts';
import { totalsOfChoice } from './totals.ts';
import type { UnitPressure } from './unitPressure.ts';

export type DuctSizing = {
  readonly sizing: Sizing;
  readonly sections: Readonly<Record<string, SectionSizing>>;
  /** m³/s at the blower, and where its pressure goes. */
  readonly flow: number;
  readonly pressure: UnitPressure;
  /** Sections whose best size is not the one drawn. */
  readonly changed: readonly string[];
  /** The ducts as drawn, at the same flows; absent where a drawn size is not stocked. */
  readonly drawn?: { readonly totals: SizingTotals; readonly breaks: readonly string[] };
  /** Whether any price was entered; without, only the stand-ins steer. */
  readonly pricesEntered: boolean;
};

/**
 * The best stocked size of every duct at wanted flows, with its proof; or what must give. Flows in m³/s, pressures in
 * Pa, sizes in m. Bought sections and board boxes at the unit stay as they are and are judged. Ends the enclosing
 * attempt where a flow is missing or beyond the blower's table. Real flows are solved afterwards, with `sizedModel`.
 * Source: `air.sizing`.
 */
export function sizeDucts(input: DuctSizingInput): DuctSizing {
  const task = setUp(input, input.flow);
  const { sections, pressure, spec } = task;
  const solved = solveSizing(spec);
  const sizing = solved.status === 'fits' ? solved : withLessFlow(solved, input, task);
  const drawn = asDrawn(task);
  return {
    sizing,
    sections: Object.fromEntries(sections.map((s) => [s.id, s])),
    flow: input.flow,
    pressure,
    changed:
      sizing.status === 'fits'
        ? sections.flatMap((s) => (sizing.best.choice[s.id] === shapeId(s.drawn) ? [] : [s.id]))
        : [],
    ...(drawn ? { drawn } : {}),
    pricesEntered: Object.keys(input.prices ?? {}).length > 0,
  };
}

type NothingFits = Extract<Sizing, { status: 'nothing-fits' }>;

const withLessFlow = (solved: NothingFits, input: DuctSizingInput, task: SetUp): NothingFits => ({
  ...solved,
  relaxations: smallestFirst([...solved.relaxations, ...lessFlow(solved, input, task)]).slice(0, 3),
});

/** Totals of the ducts as drawn, and the sections that break a limit; nothing where a drawn size is not stocked. */
function asDrawn({ sections, spec }: SetUp): DuctSizing['drawn'] {
  const drawn = sections.map((s) => s.options.find((o) => o.id === shapeId(s.drawn)));
  const choice = drawn.flatMap((o, i) => (o && sections[i] ? [[sections[i].id, o.id] as const] : []));
  if (choice.length < sections.length) return undefined;
  return {
    totals: totalsOfChoice(spec, Object.fromEntries(choice)),
    breaks: sections.flatMap((s, i) => ((drawn[i]?.breaks ?? []).length > 0 ? [s.id] : [])),
  };
}

/** The model with the best sizes in place, to solve its real flows; as it was where nothing fits. */
export function sizedModel(input: DuctSizingInput, { sizing, sections, changed }: DuctSizing): AirModel {
  if (sizing.status !== 'fits') return input.model;
  const { choice } = sizing.best;
  return {
    ...input.model,
    sections: input.model.sections.map((x) => {
      const option = sections[x.id]?.options.find((o) => o.id === choice[x.id]);
      return option && changed.includes(x.id) ? reshaped(x, option.shape, input.fittings[x.id]) : x;
    }),
  };
}
