import type { ResponseTable } from './causes/table.ts';
import { errorOf } from './methods.ts';
import type { PowerReading, PowerReason, Visit } from './result.ts';
import { type Verdict, verdictOf } from './verdict.ts';
import type { Taken } from './visit.ts';

/** W that a small house draws by itself, and with something large on. Common practice, no source: `commissioning.base`. */
const usualBase = { quiet: 1000, most: 3000 } as const;

/** Share by which a plan's power may be off in a state. Common practice, no source: `commissioning.bands`. */
const planShare = 0.15;
const place = 'commissioning/power';

/**
 * What a power reading means, from the facts of its protocol: whether the house's own draw is in it, whether strips
 * were proved off, and what the unit would draw at its other speeds. Undefined where no power was read.
 */
export function powerReading(table: ResponseTable, visit: Visit): PowerReading | undefined {
  const channel = table.channels.findIndex((c) => c.id === place);
  const taken = visit.taken.filter((t) => t.expected === place).at(-1);
  const expected = table.base[channel];
  if (!taken || expected === undefined) return undefined;
  const means = taken.means ?? 'meter';
  const house = means === 'house';
  const net = netPower(taken, visit);
  const inIt = house && taken.baseTaken !== 'yes';
  const open = inIt && visit.houseBase === undefined;
  const { word } = verdictOf({ group: 'power', expected, value: net, means, repeats: taken.repeats });
  const reachAt = (watts: number): number => 2 * errorOf('power', means, net, taken.repeats) + planShare * watts;
  const reach = reachAt(expected);
  const fits = !open && Math.abs(net - expected) <= reach;
  const othersOf = (kind: string) =>
    table.causes.filter((c) => c.kind === kind).flatMap((c) => c.nodes.map((n) => n.values[channel] ?? 0));
  const [otherSpeeds, strips] = [othersOf('other-speed'), othersOf('strips-on')];
  // With the house's draw in it and not known, anything below the reading by as much as a house draws would do.
  const could = (watts: number): boolean =>
    open ? net - watts >= -reachAt(watts) && net - watts <= usualBase.most : Math.abs(net - watts) <= reachAt(watts);
  const reasons: PowerReason[] = [
    ...(fits ? (['fits'] as const) : []),
    ...(inIt && fits && Math.abs(taken.value - expected) > reach ? (['base'] as const) : []),
    ...(open && could(expected) && net > expected
      ? ([net - expected > usualBase.quiet ? 'base-large' : 'base-unknown'] as const)
      : []),
    ...(visit.strips !== 'off' && net > expected + reach && strips.some(could) ? (['strips'] as const) : []),
    ...(!fits && otherSpeeds.some(could) ? (['speed'] as const) : []),
  ];
  return {
    id: taken.id,
    read: taken.value,
    expected,
    net,
    most: expected + reach,
    verdict: verdictFor(word, open, fits, reasons),
    reasons: reasons.length > 0 ? reasons : ['nothing'],
    gap: taken.value - expected,
    otherSpeeds,
  };
}

function verdictFor(
  word: Verdict['word'],
  open: boolean,
  fits: boolean,
  reasons: readonly PowerReason[],
): PowerReading['verdict'] {
  if (open) return reasons.length > 0 ? 'cannot tell' : 'suspicious';
  if (fits) return 'explained';
  return word === 'off' ? 'suspicious' : 'cannot tell';
}

/** W less the house's own draw, where the house's meter was read with it and it is known. */
export const netPower = (taken: Taken, { houseBase }: Visit): number =>
  taken.means === 'house' && taken.baseTaken !== 'yes' && houseBase !== undefined
    ? taken.value - houseBase
    : taken.value;
