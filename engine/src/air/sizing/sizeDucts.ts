import type { Range } from '@kneewall/project';
import type { AirModel } from '../ductwork.ts';
import type { DuctOption } from './candidates.ts';
import { lessFlow } from './lessFlow.ts';
import { smallestFirst } from './nothingFits.ts';
import { reshaped } from './reshape.ts';
import { type DuctSizingInput, limitsLifted, type SectionSizing, type SetUp, setUp } from './setUp.ts';
import { solveSizing } from './solveSizing.ts';
import type { Sizing, SizingChoice, SizingTotals } from './spec.ts';
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
  /** Whether any price was entered; without, only the stand-ins steer. The same for hours at a joint. */
  readonly pricesEntered: boolean;
  readonly hoursEntered: boolean;
  /** Of the best choice, from the low to the high ends of what was entered as ranges; absent where nothing fits or all is exact. */
  readonly ranges?: { readonly money: Range; readonly labour: Range };
  /** Sections of the best choice whose price is a stand-in though others were entered. */
  readonly standIns: readonly string[];
  /** Money or seconds, by the goal, that the best choice would take less if no duct had to pass a space; absent where none has. */
  readonly spaceTakes?: number;
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
    hoursEntered: Object.keys(input.joints ?? {}).length > 0,
    ...rangesOf(sections, choice),
    standIns: chosen(sections, choice).flatMap(([id, o]) => (o.standIn && o.money > 0 ? [id] : [])),
    ...spaceTakes(input, sizing),
  };
}

const chosen = (sections: readonly SectionSizing[], choice: SizingChoice): [string, DuctOption][] =>
  sections.flatMap((s): [string, DuctOption][] => {
    const option = s.options.find((o) => o.id === choice[s.id]);
    return option ? [[s.id, option]] : [];
  });

function rangesOf(sections: readonly SectionSizing[], choice: SizingChoice): Pick<DuctSizing, 'ranges'> {
  const taken = chosen(sections, choice).map(([, o]) => o);
  if (!taken.some((o) => o.ranges)) return {};
  const sum = (of: 'money' | 'labour', at: keyof Range) => taken.reduce((a, o) => a + (o.ranges?.[of][at] ?? o[of]), 0);
  const range = (of: 'money' | 'labour') => ({ low: sum(of, 'low'), likely: sum(of, 'likely'), high: sum(of, 'high') });
  return { ranges: { money: range('money'), labour: range('labour') } };
}

/** The same choice with all spaces free: what passing them costs. */
function spaceTakes(input: DuctSizingInput, sizing: Sizing): Pick<DuctSizing, 'spaceTakes'> {
  if (sizing.status !== 'fits' || Object.keys(input.spaces ?? {}).length === 0) return {};
  const { spaces: _spaces, ...free } = input;
  const least = solveSizing(setUp(free, input.flow).spec);
  const by = sizing.goal === 'labour' ? 'labour' : 'money';
  return least.status === 'fits' ? { spaceTakes: sizing.best.totals[by] - least.best.totals[by] } : {};
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
