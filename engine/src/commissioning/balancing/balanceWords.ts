import { hotAttic } from '../../plan/cautions.ts';
import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import { unknownWords } from '../../plan/unknownWords.ts';

type Row = { readonly at: string } & Readonly<Record<string, number | string>>;
const rowsOf = (j: Judged, fact: string): readonly Row[] => (j.facts?.[fact] ?? []) as unknown as readonly Row[];
const number = (row: Row, key: string): number => Number(row[key] ?? 0);

const why =
  'Every run is built a little otherwise than drawn. What all flows say together tells each run’s own resistance, and which dampers to move for it.';

/** Rooms out of band with the moves that bring them in, or what the readings lack to tell. */
export function balanceWords(j: Judged, print: Printer): Words {
  if (j.status === 'unknown') return notTold(j, print);
  const rooms = rowsOf(j, 'rooms').map((r) => `“${r.at}” ${print.quantity(number(r, 'now'), 'fraction')}`);
  if (rooms.length === 0)
    return {
      what: `By the flows of “${String(j.facts?.name)}” every room is within 10 % of its share.`,
      why,
      mend: 'Mark every handle where it stands.',
    };
  return {
    what: `By the flows of “${String(j.facts?.name)}” ${rooms.length} of ${String(j.facts?.all)} rooms are more than 10 % off their share. Of it they get: ${rooms.join(', ')}.`,
    why,
    mend: [lookFirst(j), movesSentence(j, print), checkSentence(j, print), larger(j)].filter((s) => s !== '').join(' '),
    ...(rowsOf(j, 'moves').some((m) => m.attic === 1) ? { caution: hotAttic } : {}),
  };
}

const lookFirst = (j: Judged): string =>
  rowsOf(j, 'look')
    .map(
      (r) =>
        `Look at “${r.at}” first: it resists like ${number(r, 'times').toFixed(1)} runs as drawn, crushed or kinked perhaps.`,
    )
    .join(' ');

/** “from open to 35°”: one move, in few words. */
export function moveWords(m: { from?: number; to?: number; where: string; opens: boolean }, print: Printer): string {
  const degrees = (x: number) => (x < 0.5 ? 'open' : print.quantity(x, 'angle'));
  if (m.from !== undefined && m.to !== undefined) return `from ${degrees(m.from)} to ${degrees(m.to)}`;
  return `${m.opens ? 'open' : 'throttle'} ${m.where === 'register' ? 'at the register ' : ''}to its expected flow`;
}

function movesSentence(j: Judged, print: Printer): string {
  const moves = rowsOf(j, 'moves');
  if (moves.length === 0) return 'No move of a damper brings them nearer.';
  const each = moves.map(
    (m) =>
      `“${m.at}” ${moveWords(
        {
          where: String(m.where),
          opens: m.opens === 1,
          ...(m.from === undefined ? {} : { from: Number(m.from) }),
          ...(m.to === undefined ? {} : { to: Number(m.to) }),
        },
        print,
      )}`,
  );
  const one = moves.length === 1 ? 'Move one damper' : `Move ${moves.length} dampers in one go`;
  const blind = moves.some((m) => m.where === 'collar' && m.to === undefined)
    ? ' For dampers in rectangular ducts no published table of angles was to be had: turn them a little at a time, with the register read in between.'
    : '';
  return `${one}: ${each.join('; ')}. Degrees are from open, 10° from mark to mark; then mark each handle.${blind}`;
}

function checkSentence(j: Judged, print: Printer): string {
  const checks = rowsOf(j, 'checks').map((r) => `“${r.at}” ${print.quantity(number(r, 'after'), 'flow')}`);
  if (checks.length === 0) return '';
  return `Then read the same way: ${checks.join(' and ')}. Within 15 % no second trip is needed; else read all registers again.`;
}

function larger(j: Judged): string {
  if (j.facts?.word !== 'short') return '';
  const runs = rowsOf(j, 'larger').map(
    (r) => `“${r.at}” about ${Math.max(1.05, Math.ceil(number(r, 'times') * 20) / 20).toFixed(2)} times as wide`,
  );
  const more =
    runs.length > 0
      ? `What would: ${runs.join(', ')}, or a second run.`
      : 'A smaller run or a plate with a hole is needed where a damper stands at its end.';
  return `Dampers alone do not bring every room within 10 %. ${more}`;
}

function notTold(j: Judged, print: Printer): Words {
  const { lacking, mixed, blocked, times, now, name } = j.facts ?? {};
  const words = (what: string, mend: string): Words => ({
    what: `Which dampers to move cannot be told from the flows of “${String(name)}”: ${what}.`,
    why: 'Shares are of the sum of all registers: one that is missing or rough spoils every other.',
    mend,
  });
  if (j.because === 'pending') return unknownWords(j, print, 'Which dampers to move is being worked out.');
  if (lacking) return words(`not read were “${String(lacking)}”`, 'Read these too, the same way, in the same hour.');
  if (mixed === 1) return words('not all were read by one method', 'Read all registers with the same thing.');
  if (blocked)
    return words(
      `“${String(blocked)}” gives hardly any air`,
      'Look for a shut register, a crushed run or one that is off before any damper is moved.',
    );
  if (Number(times) > 0)
    return words(
      now === 1 ? 'one reading each is too rough' : `${String(now)} readings each are too rough`,
      `Read every register ${String(times)} times and enter the average with its number of times.`,
    );
  return unknownWords(j, print, 'Which dampers to move is not known yet.');
}
