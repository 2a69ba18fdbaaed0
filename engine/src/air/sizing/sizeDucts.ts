import type { AirModel } from '../result.ts';
import type { DuctOption } from './candidates.ts';
import { lessFlow } from './lessFlow.ts';
import { smallestFirst } from './nothingFits.ts';
import { reshaped } from './reshape.ts';
import { type DuctSizingInput, limitsLifted, type SectionSizing, type SetUp, setUp } from './setUp.ts';
import { solveSizing } from './solveSizing.ts';
import type { Sizing, SizingTotals } from './spec.ts';
import { totalsOfOnly } from './totals.ts';
import type { UnitPressure } from './unitPressure.ts';

export type DuctSizing = {
  readonly sizing: Sizing;
  readonly sections: Readonly<Record<string, SectionSizing>>;
  /** m³/s at the blower, and where its pressure goes. */
  readonly flow: number;
  readonly pressure: UnitPressure;
  /** Sections whose best size is not the one drawn. */
  readonly changed: readonly string[];
  /** The ducts as drawn, at the same flows, and which of them break a limit. */
  readonly drawn: { readonly totals: SizingTotals; readonly breaks: readonly string[] };
  /** The ducts with the best sizes in place; as they were where nothing fits. */
  readonly sized: AirModel;
  /** Whether any price was entered; without, only the stand-ins steer. */
  readonly pricesEntered: boolean;
};

/**
 * The best stocked size of every duct at wanted flows, with its proof; or what must give. Flows in m³/s, pressures in
 * Pa, sizes in m. Bought sections and board boxes at the unit stay as they are and are judged. Ends the enclosing
 * attempt where a flow is missing or beyond the blower's table. Real flows are solved afterwards, from `sized`.
 * Source: `air.sizing`.
 */
export function sizeDucts(input: DuctSizingInput): DuctSizing {
  const task = setUp(input, input.flow);
  const solved = solveSizing(task.spec);
  return solved.status === 'fits' ? answer(input, task, solved) : whatMustGive(input);
}

/** All sizes are looked at again, with the limits they break, only where nothing fits within the limits. */
function whatMustGive(input: DuctSizingInput): DuctSizing {
  const task = setUp(input, input.flow, limitsLifted);
  const solved = solveSizing(task.spec);
  if (solved.status === 'fits') return answer(input, task, solved);
  const relaxations = smallestFirst([...solved.relaxations, ...lessFlow(solved, input, task)]);
  return answer(input, task, { ...solved, relaxations });
}

function answer(input: DuctSizingInput, { sections, pressure, spec }: SetUp, sizing: Sizing): DuctSizing {
  const choice = sizing.status === 'fits' ? sizing.best.choice : {};
  return {
    sizing,
    sections: Object.fromEntries(sections.map((s) => [s.id, s])),
    flow: input.flow,
    pressure,
    changed: sections.flatMap((s) => (choice[s.id] === undefined || choice[s.id] === s.drawn.id ? [] : [s.id])),
    drawn: {
      totals: totalsOfOnly(spec, (id) => onlyDrawn(sections, id)),
      breaks: sections.flatMap((s) => (s.drawn.breaks ? [s.id] : [])),
    },
    sized: sizedModel(input, sections, sizing),
    pricesEntered: Object.keys(input.prices ?? {}).length > 0,
  };
}

/** What is bought costs nothing more, drawn or chosen. */
function onlyDrawn(sections: readonly SectionSizing[], id: string): readonly DuctOption[] {
  const s = sections.find((x) => x.id === id);
  return !s ? [] : s.kept ? s.options.slice(0, 1) : [s.drawn];
}

/** The ducts with the best sizes in place, to solve what really flows in them; as they were where nothing fits. */
function sizedModel(input: DuctSizingInput, sections: readonly SectionSizing[], sizing: Sizing): AirModel {
  if (sizing.status !== 'fits') return input.model;
  const { choice } = sizing.best;
  return {
    ...input.model,
    sections: input.model.sections.map((x) => {
      const s = sections.find((y) => y.id === x.id);
      const option = s?.options.find((o) => o.id === choice[x.id]);
      return option && option.id !== s?.drawn.id ? reshaped(x, option.shape, input.fittings[x.id]) : x;
    }),
  };
}
