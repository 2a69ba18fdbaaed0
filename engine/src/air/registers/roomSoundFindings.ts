import { inOrder, type Range, type ResolvedProject } from '@kneewall/project';
import {
  criteriaTogether,
  grilleSound,
  noiseCriterion,
  roomEffect,
  sheetRoomEffect,
  soundRise,
} from '../../physics/sound/index.ts';
import { attempt, required, unresolved } from '../../plan/outcome.ts';
import { type Scenario, scenario, spread } from '../../plan/scenario.ts';
import type { PlanView } from '../../plan/trade.ts';
import { recordWorking } from '../../plan/working.ts';
import { asGiven } from '../asGiven.ts';
import type { AirFlows, AirModel, Terminal } from '../ductwork.ts';
import type { Found } from '../found.ts';
import { terminalOf } from '../model.ts';

type Room = ResolvedProject['house']['rooms'][string];

/** Noise criterion that suits a room. Source: `air.room-sound`. */
export const quiet = { bedroom: 25, other: 30 } as const;
/** m from the register to an ear, and the share of sound that a furnished room takes up. Source: `air.room-sound`. */
export const earDistance = 1.5;
const furnished: Range = { low: 0.15, likely: 0.22, high: 0.3 };

/** What is heard in each room of all its registers and grilles together. The blower's own noise comes on top. */
export function roomSoundFindings(model: AirModel, flows: AirFlows, view: PlanView): Found[] {
  return inOrder(view.project.house.rooms).flatMap(([id, room]) => {
    const faces = model.terminals.filter((t) => t.room === id && (flows.terminals[t.id] ?? 0) > 0);
    return faces.length > 0 ? [roomSound(id, room, faces, { model, flows, view })] : [];
  });
}

type At = { readonly model: AirModel; readonly flows: AirFlows; readonly view: PlanView };

function roomSound(id: string, room: Room, faces: readonly Terminal[], at: At): Found {
  const { recorder, steps } = recordWorking();
  const likely = attempt(() => faces.map((t) => ({ t, nc: heardFrom(t, room, at, scenario()) })));
  const value = attempt((): Range => {
    const each = required(likely);
    const inputs = Object.fromEntries(each.map(({ nc }, i) => [`NC_${i + 1}`, nc]));
    for (const [symbol, nc] of Object.entries(inputs)) recorder.step(symbol, 'table', {}, nc, 'NC', 'sound.grille');
    const together = criteriaTogether(each.map((x) => x.nc));
    const terms = Object.keys(inputs).map((symbol) => `10 ^ (${symbol} / 10)`);
    recorder.step('NC', `10 * log10(${terms.join(' + ')})`, inputs, together, 'NC', 'air.room-sound');
    const { nc } = spread((s) => ({ nc: criteriaTogether(faces.map((t) => heardFrom(t, room, at, s))) }));
    return { low: nc.low, likely: together, high: nc.high };
  });
  const loudest = likely.ok ? likely.value.reduce((a, b) => (b.nc > a.nc ? b : a)) : undefined;
  const limit = scenario().choice(room.use) === 'bedroom' ? quiet.bedroom : quiet.other;
  return {
    draft: {
      id: `room-sound:${id}`,
      subject: id,
      holdPoint: 'order',
      consequence: 'comfort',
      kind: 'noise-criterion',
      value,
      limit: { max: limit },
      source: 'air.room-sound',
      working: `air/room-sound:${id}`,
      facts: {
        name: room.name ?? id,
        ...(loudest ? { loudest: loudest.t.name, share: 10 ** ((limit - loudest.nc) / 60) } : {}),
      },
    },
    working: steps,
  };
}

/** Noise criterion of one face at the ear, dB by dB from its own spectrum, or from its sheet where that states one. */
function heardFrom(t: Terminal, room: Room, { model, flows, view }: At, s: Scenario): number {
  const input = view.project.routes.ducts.terminals[t.id] ?? unresolved('missing', `routes.ducts.terminals.${t.id}`);
  const flow = flows.terminals[t.id] ?? 0;
  const effect = roomEffect(
    {
      floor: s.of(room.floorArea),
      height: s.of(room.height),
      absorption: s.of(asGiven(`${room.use.path}#sound`, 'fraction', furnished)),
    },
    earDistance,
  );
  const [sheet, at] = [s.maybe(input.sound), s.maybe(input.pressureFlow)];
  if (sheet !== undefined && at !== undefined && at > 0) return sheet + soundRise(flow, at) + effect - sheetRoomEffect;
  const face = terminalOf(t.id, input, s);
  const duct = model.sections.find((x) => x.id === t.section)?.area ?? face.faceArea;
  const power = grilleSound({ area: face.faceArea, pressure: face.resistance * flow * flow, velocity: flow / duct });
  return noiseCriterion(power.map((level) => level + effect));
}
