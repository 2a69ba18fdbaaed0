import type { Help, PowerHelps } from '../coupling/power/helps/helpsAnswers.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { agedFinding } from './agedFinding.ts';
import { type Found, found } from './draftOf.ts';
import type { OffgridResult } from './result.ts';

/** What is left lying about: changes that pay, another unit that would let the generator sleep, and the battery's age. */
export function helpFindings(result: OffgridResult, view: PlanView): Found[] {
  const generator = result.inputs.ok && result.inputs.value.generator !== undefined;
  const others = Object.keys(view.project.candidates).length > 1;
  return [
    ...(generator ? [leftUndone(view)] : []),
    ...(generator && others ? [unitChoice(view)] : []),
    agedFinding(result, view),
  ];
}

/** Years within which the fuel saved has to pay for a change, at worst. Source: `helps.left-undone` (common practice). */
const soon = 5;

/** Changes that cost something and are no loss of comfort, paid back soon even at worst. */
export const pays = ({ kind, payback, cost }: Help): boolean =>
  kind !== 'unit' && cost !== undefined && cost.likely > 0 && payback !== undefined && payback.high <= soon;

/** The largest share of the generator's hours that one such change would take off. */
function leftUndone(view: PlanView): Found {
  const source = 'helps.left-undone';
  const helps = view.season.powerHelps.ok ? view.season.powerHelps.value : undefined;
  const best = helps && bestOf(helps);
  const facts = {
    ...(best ? { kind: best.kind, hours: best.hours * 3600, litres: best.litres, years: best.payback?.high ?? 0 } : {}),
    ...panelFacts(helps),
  };
  const of = { id: 'left-undone', holdPoint: 'decide', consequence: 'money', kind: 'fraction' } as const;
  return found({ ...of, limit: { max: 0.1 }, source, facts }, (recorder) => {
    const value = required(view.season.powerHelps);
    const [before, saved] = [value.base.generator, bestOf(value)?.hours ?? 0];
    recorder.step('h', 'table', {}, before, 'h', source);
    recorder.step('h_saved', 'table', {}, saved, 'h', source);
    const share = Math.max(0, saved) / Math.max(before, 1);
    recorder.step('share', 'max(0, h_saved) / max(h, 1)', { h_saved: saved, h: before }, share, '', source);
    return share;
  });
}

const bestOf = ({ ranked }: PowerHelps): Help | undefined =>
  ranked.filter(pays).reduce<Help | undefined>((a, b) => (a === undefined || b.hours > a.hours ? b : a), undefined);

/** What one more kilowatt of panels buys where it buys most. */
function panelFacts(helps: PowerHelps | undefined): Readonly<Record<string, number>> {
  const most = helps?.ranked
    .filter((h) => h.kind === 'panels' || h.kind === 'steep')
    .reduce<Help | undefined>((a, b) => (a === undefined || b.hours > a.hours ? b : a), undefined);
  return most ? { panelHours: most.hours * 3600, panelLitres: most.litres, panelTilt: most.amount ?? 0 } : {};
}

/** A day a year without heat may be. Source: `offgrid.heat-hours`. */
const coldMost = 24;

/** Hours of generator that the chosen unit takes beyond the candidate which, warm all year and started by the inverter, takes least. */
function unitChoice(view: PlanView): Found {
  const source = 'helps.unit-choice';
  const { candidates } = view.project;
  const helps = view.season.powerHelps.ok ? view.season.powerHelps.value : undefined;
  const better = helps && sleepiest(helps, view);
  const facts = {
    count: Object.keys(candidates).length,
    ...(helps ? { hours: helps.base.generator * 3600 } : {}),
    ...(better ? { name: candidates[better.id]?.name ?? better.id, least: better.year.generator * 3600 } : {}),
  };
  const of = { id: 'unit-choice', holdPoint: 'decide', consequence: 'money', kind: 'time' } as const;
  return found({ ...of, limit: { max: 50 * 3600 }, source, facts }, (recorder) => {
    const value = required(view.season.powerHelps);
    if (value.units.length === 0) return unresolved('missing', 'candidates');
    const [own, least] = [value.base.generator, sleepiest(value, view)?.year.generator ?? value.base.generator];
    recorder.step('h', 'table', {}, own, 'h', source);
    recorder.step('h_least', 'table', {}, least, 'h', source);
    const over = Math.max(0, own - least) * 3600;
    recorder.step('t', 'max(0, h - h_least) * 3600', { h: own, h_least: least }, over, 's', source);
    return over;
  });
}

/** The unit that would do with the fewest hours, of those that keep the house warm and that the inverter starts. */
function sleepiest(
  { units, base }: PowerHelps,
  { trades, project }: PlanView,
): PowerHelps['units'][number] | undefined {
  const { surge } = project.power.inverter;
  const starts = (id: string): boolean => {
    const asked = trades.circuit?.starts?.[id];
    return !asked?.ok || 'missing' in surge || asked.value.likely <= surge.likely;
  };
  return units
    .filter((u) => u.year.cold <= Math.max(coldMost, base.cold) && u.year.generator < base.generator && starts(u.id))
    .reduce<PowerHelps['units'][number] | undefined>(
      (a, b) => (a === undefined || b.year.generator < a.year.generator ? b : a),
      undefined,
    );
}
