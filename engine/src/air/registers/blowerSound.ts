import type { Range } from '@kneewall/project';
import {
  bendLoss,
  endReflection,
  fanSound,
  noiseCriterion,
  octaveBands,
  roomEffect,
} from '../../physics/sound/index.ts';
import { attempt, unresolved } from '../../plan/outcome.ts';
import { scenario } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import type { AirFlows, AirModel, DuctSection, Terminal } from '../ductwork.ts';
import type { Found } from '../found.ts';
import { sideOf } from '../model.ts';
import { wayOf } from './returnBends.ts';
import { earDistance, quiet } from './roomSoundFindings.ts';

/** dB by which a small blower may be quieter or louder than the published method for large ones. Source: `air.blower-sound` (common practice). */
const method: Range = { low: -10, likely: 0, high: 10 };
/** dB that a metre of duct takes up: flexible duct and board are lined, metal is not. Source: `air.blower-sound` (common practice). */
const lined: Range = { low: 1.5, likely: 3, high: 6 };
const bare: Range = { low: 0, likely: 0.2, high: 0.5 };
/** Share of sound that a furnished room takes up. Source: `air.room-sound`. */
const furnished = 0.22;

type Way = { readonly t: Terminal; readonly nc: Range; readonly limit: number; readonly room: string };

/** The blower as it is heard out of the return grille where it is most above what suits the room. */
export function blowerSound(model: AirModel, flows: AirFlows, view: PlanView): Found[] {
  const returns = model.terminals.filter((t) => sideOf(model, t.section) === 'return');
  if (returns.length === 0) return [];
  const { recorder, steps } = recordWorking();
  const heard = attempt(() => {
    if (!(flows.flow > 0 && flows.staticPressure > 0)) return unresolved('out-of-range', 'candidates.*.blower.speeds');
    return returns.map((t) => heardFrom(t, model, flows, view));
  });
  const ways = heard.ok ? [...heard.value] : [];
  const [worst] = ways.sort((a, b) => b.nc.likely - b.limit - (a.nc.likely - a.limit) || (a.t.id < b.t.id ? -1 : 1));
  const value = heard.ok && worst ? { ok: true as const, value: worst.nc } : heard.ok ? undefined : heard;
  if (!value) return [];
  if (worst) {
    const inputs = { Q: flows.flow, dp: flows.staticPressure };
    recorder.step('Q', 'solved', { residual: flows.residual }, inputs.Q, 'm³/s', 'air.flows');
    recorder.step('dp', 'solved', { residual: flows.residual }, inputs.dp, 'Pa', 'air.flows');
    recorder.step('NC', 'table', inputs, worst.nc.likely, 'NC', 'sound.fan');
  }
  return [
    {
      draft: {
        id: 'blower-sound',
        subject: worst?.t.id ?? 'ducts',
        holdPoint: 'order',
        consequence: 'comfort',
        kind: 'noise-criterion',
        value,
        limit: { max: worst?.limit ?? quiet.other },
        source: 'air.blower-sound',
        working: 'air/blower-sound',
        facts: { name: worst?.t.name ?? '', room: worst?.room ?? '' },
      },
      working: steps,
    },
  ];
}

/** Noise criterion at the ear under a return grille, whose way to the blower takes its share of every octave. */
function heardFrom(t: Terminal, model: AirModel, flows: AirFlows, view: PlanView): Way {
  const s = scenario();
  const room = view.project.house.rooms[t.room] ?? unresolved('missing', `routes.ducts.terminals.${t.id}.room`);
  const sections = sectionsTo(t.section, model);
  const { bends } = wayOf(sections[0], model, view);
  const wide = Math.sqrt((4 * t.faceArea) / Math.PI);
  const narrow = Math.min(...sections.map((x) => Math.sqrt((4 * x.area) / Math.PI)), wide);
  const share = Math.max(1e-6, (flows.terminals[t.id] ?? 0) / flows.flow);
  const effect = roomEffect(
    { floor: s.of(room.floorArea), height: s.of(room.height), absorption: furnished },
    earDistance,
  );
  const power = fanSound(flows.flow, flows.staticPressure);
  const at = (loud: keyof Range, dull: keyof Range): number => {
    const taken = sections.reduce((a, x) => a + x.length * (isLined(x) ? lined : bare)[dull], 0);
    return noiseCriterion(
      octaveBands.map((band, i) => {
        const kept = taken + bends * bendLoss(band, narrow) + endReflection(band, wide);
        return (power[i] ?? 0) + method[loud] + 10 * Math.log10(share) - kept + effect;
      }),
    );
  };
  return {
    t,
    nc: { low: at('low', 'high'), likely: at('likely', 'likely'), high: at('high', 'low') },
    limit: s.choice(room.use) === 'bedroom' ? quiet.bedroom : quiet.other,
    room: room.name ?? t.room,
  };
}

const isLined = (x: DuctSection): boolean => x.kind === 'flexible' || x.kind === 'board';

/** Sections from a grille to the unit, the grille's own first. */
function sectionsTo(id: string | undefined, model: AirModel): DuctSection[] {
  const x = model.sections.find((y) => y.id === id);
  return x ? [x, ...sectionsTo(x.from, model)] : [];
}
