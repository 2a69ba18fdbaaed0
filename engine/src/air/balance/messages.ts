import { numberIn, wordsIn } from '../../plan/facts.ts';
import type { Judged } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import { name, nothingToDo, type Say } from '../say.ts';
import type { DamperSetting, RoomBalance, SeasonBalance } from './result.ts';

/** Parts of a share that nobody would miss. */
const asGoodAsAll = 0.995;

type Setting = Pick<DamperSetting, 'set' | 'byHand'> & { readonly at: string };

/** “open”, “turned 35°”, “as far as it goes”: how a damper stands, in few words. */
function standsWords({ set, at, byHand }: Setting, print: Printer): string {
  if (set === 'open') return 'open';
  if (set === 'shut') return 'turned as far as it goes';
  if (set === 'beyond') return 'turned as far as it goes, and still too much air';
  if (at === 'register') return 'throttled at the register, by its reading';
  return byHand === undefined ? 'turned, by its reading' : `turned ${print.quantity(byHand, 'angle')} from open`;
}

/** The one sentence for a season: what all get with the dampers set, and what that costs the blower. */
export function balanceSentence(season: SeasonBalance, openFlow: number, print: Printer): string {
  const least = Math.min(1, ...season.rooms.flatMap((r) => r.balanced ?? []));
  const all = least < asGoodAsAll ? `at least ${print.quantity(least, 'fraction')} of its share` : 'its share';
  return `With the dampers set for ${season.season} every room gets ${all}: ${print.quantity(season.flow, 'flow')} at the blower against ${print.quantity(season.staticPressure, 'pressure')}, where ${print.quantity(openFlow, 'flow')} moved with all dampers open.`;
}

/** A damper and its setting, for a table. */
export const damperWords = (setting: DamperSetting, print: Printer): string =>
  `“${setting.place.name}”: ${standsWords({ ...setting, at: setting.place.at }, print)}`;

/** What dampers cannot do: a duct too large for its room, in one sentence; nothing where they can. */
export const beyondWords = ({ settings }: SeasonBalance): string => {
  const names = settings.flatMap((s) => (s.set === 'beyond' ? [`“${s.place.name}”`] : []));
  if (names.length === 0) return '';
  const one = names.length === 1;
  return `${names.join(', ')} ${one ? 'is' : 'are'} too large for the share of ${one ? 'its room' : 'their rooms'}: no published damper table goes beyond 60°. Take a smaller size, or put an orifice plate in the collar.`;
};

/** Rooms that stay short whatever the dampers do, and why; nothing where none does. */
export function shortWords(
  { rooms, limited }: SeasonBalance,
  nameOf: (room: string) => string,
  print: Printer,
): string {
  const short = rooms.filter((r): r is RoomBalance & { balanced: number } => (r.balanced ?? 1) < asGoodAsAll);
  if (short.length === 0) return '';
  const each = short.map((r) => `“${nameOf(r.room)}” ${print.quantity(r.balanced, 'fraction')}`);
  const why = limited
    ? ' Turning the other dampers further would take the blower below its table: their ducts are too small, a size larger or a second run helps.'
    : '';
  return `With their dampers open these still get less than their share: ${each.join(', ')}.${why}`;
}

const settingAt = (j: Judged, i: number): Setting & { readonly name: string } => {
  const angle = j.facts?.[`angle ${i}`];
  return {
    name: String(j.facts?.[`name ${i}`] ?? ''),
    set: String(j.facts?.[`set ${i}`] ?? 'open') as DamperSetting['set'],
    at: String(j.facts?.[`at ${i}`] ?? 'collar'),
    ...(angle === undefined ? {} : { byHand: Number(angle) }),
  };
};

function settingsWords(j: Judged, print: Printer): string {
  const all = Array.from({ length: numberIn(j, 'dampers') }, (_, i) => settingAt(j, i + 1));
  return all.map((s) => `“${s.name}” ${standsWords(s, print)}`).join('; ');
}

/** Dampers only take: a room that stays short with its own open needs a larger duct. */
const smallFirst = (j: Judged): string =>
  numberIn(j, 'limited') === 0
    ? ''
    : `The duct of “${wordsIn(j, 'short')}” is too small for what the blower can give: a size larger or a second run first. `;

/** Words for sharing the air out among the rooms. */
export const sayBalance: Readonly<Record<string, Say>> = {
  balance: (j, print) => ({
    what: `As drawn “${name(j)}” gets ${print.value(j)} of its share of the air that reaches rooms, the least of all; with dampers set for ${String(j.facts?.season)} every room gets at least ${print.quantity(numberIn(j, 'balanced'), 'fraction')}, of ${print.quantity(numberIn(j, 'flow'), 'flow')} at the blower against ${print.quantity(numberIn(j, 'static'), 'pressure')}${j.facts?.most === undefined ? '' : `, more than the ${print.quantity(numberIn(j, 'most'), 'pressure')} the unit allows`}.`,
    why: 'Air takes the easy way: one room roasts while another waits, and the thermostat hears only one of them.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : `${smallFirst(j)}Fit a damper in every collar and start with these: ${settingsWords(j, print)}. Then measure, and set what the readings say.${numberIn(j, 'beyond') > 0 ? ' Where one is turned as far as it goes the duct is too large: take a smaller size, or an orifice plate in the collar.' : ''}`,
  }),
};
