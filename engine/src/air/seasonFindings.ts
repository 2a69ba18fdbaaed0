import type { UnitYear } from '../coupling/season/unitAnswers.ts';
import type { Draft } from '../plan/judge.ts';
import { attempt, type Outcome, required } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { recordWorking, type WorkingRecorder } from '../plan/working.ts';
import type { Found } from './findings.ts';

/** What a whole year with the chosen unit behind these ducts has to answer for. */
export const seasonFindings = ({ season, project }: PlanView): Found[] => [
  roomsFollow(season.unitYear, (id) => project.house.rooms[id]?.name ?? id),
  ductsYear(season.unitYear),
];

type Parts = Pick<Draft, 'id' | 'subject' | 'holdPoint' | 'consequence' | 'limit' | 'source' | 'facts'>;

function shareOf(of: Parts, value: (recorder: WorkingRecorder) => number): Found {
  const { recorder, steps } = recordWorking();
  const working = `air/${of.id}`;
  return {
    draft: { ...of, kind: 'fraction', value: attempt(() => value(recorder)), working },
    working: steps,
  };
}

/** Hours in which the unit heats. */
const heatingHours = ({ winter }: UnitYear): number =>
  winter.reduce((a, m) => a + m.stopStart + m.holding + m.helped + m.flatOut, 0);

/** The room that stays cold longest while the thermostat in another is content. */
function roomsFollow(year: Outcome<UnitYear>, nameOf: (room: string) => string): Found {
  const rooms = year.ok ? Object.entries(year.value.rooms) : [];
  const [worst] = [...rooms].sort(([a, x], [b, y]) => y.cold - x.cold || (a < b ? -1 : 1));
  const source = 'air.rooms-follow';
  const facts = worst
    ? {
        name: nameOf(worst[0]),
        lowest: worst[1].lowest,
        cold: worst[1].cold,
        thermostat: nameOf(year.ok ? year.value.thermostat : ''),
      }
    : {};
  const of = { id: 'rooms-follow', holdPoint: 'cut', consequence: 'comfort', limit: { max: 0.05 }, source } as const;
  return shareOf({ ...of, subject: worst?.[0] ?? 'house', facts }, (recorder) => {
    const hours = heatingHours(required(year));
    const cold = worst?.[1].cold ?? 0;
    recorder.step('h_heat', 'table', {}, hours, 'h', source);
    recorder.step('h_cold', 'table', {}, cold, 'h', source);
    const share = hours > 0 ? cold / hours : 0;
    recorder.step('share', 'h_cold / max(h_heat, 1)', { h_cold: cold, h_heat: hours }, share, '', source);
    return share;
  });
}

/** What of the year's heat only makes good what the ducts lose. */
function ductsYear(year: Outcome<UnitYear>): Found {
  const source = 'air.ducts-year';
  const facts = year.ok ? { lost: year.value.heating.heat - year.value.perfectDucts.heat } : {};
  const of = { id: 'ducts-year', subject: 'ducts', holdPoint: 'decide', consequence: 'money' } as const;
  return shareOf({ ...of, limit: { max: 0.15 }, source, facts }, (recorder) => {
    const { heating, perfectDucts } = required(year);
    const share = heating.heat > 0 ? (heating.heat - perfectDucts.heat) / heating.heat : 0;
    recorder.step('Q', 'table', {}, heating.heat, 'kWh', source);
    recorder.step('Q_tight', 'table', {}, perfectDucts.heat, 'kWh', source);
    recorder.step(
      'share',
      '(Q - Q_tight) / max(Q, 1e-9)',
      { Q: heating.heat, Q_tight: perfectDucts.heat },
      share,
      '',
      source,
    );
    return share;
  });
}
