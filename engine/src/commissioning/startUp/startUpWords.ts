import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';

const monthNames = [
  ...['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October'],
  ...['November', 'December'],
];
const monthName = (month: unknown): string => monthNames[Number(month) - 1] ?? '';

/** Words for whether heating can be proved at the first start. */
export function heatingTestWords(j: Judged, print: Printer): Words {
  const { month, next } = j.facts ?? {};
  const cold = j.status === 'ok';
  if (j.facts?.day !== undefined)
    return {
      what: `Heating was read on ${String(j.facts.day)} at ${print.value(j)} outdoors: cold enough to prove it, which is below ${print.limit(j)}.`,
      why: 'Below that the unit runs long enough at one speed for its readings to mean something.',
      mend: 'What those readings mean stands with that visit. Repeat three of them each season, as cold.',
    };
  return {
    what: `Mornings in ${monthName(month)}, when your free time ends, are about ${print.value(j)}; heating can be proved below ${print.limit(j)}.`,
    why: 'A unit that is hardly asked for heat starts and stops: its readings prove nothing, and a fault shows on the first cold night instead.',
    mend: cold
      ? 'Take the heating readings on a cold morning, after 15 minutes at one speed.'
      : Number(next) > 0
        ? `Prove cooling or the blower now, and plan an hour for the heating test on a cold morning in ${monthName(next)}, before the old heat is taken away.`
        : 'Prove cooling or the blower now; no month here is cold enough for a heating test at full speed.',
  };
}
