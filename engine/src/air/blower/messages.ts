import { numberIn } from '../../plan/facts.ts';
import type { Judged } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';
import { nothingToDo, type Say } from '../say.ts';

/** Words for what blowers do. */
export const sayBlowers: Readonly<Record<string, Say>> = {
  'operating-points': (j, print) => ({
    what:
      numberIn(j, 'count') > 1
        ? `The blower’s table rises in places, and with these ducts it can run at ${numberIn(j, 'count')} flows: ${pointsSaid(j, print)}.`
        : `The blower’s table rises in places; with these ducts it still runs at one flow only: ${pointsSaid(j, print)}.`,
    why: 'Which of several it takes hangs on how it started. It may jump from one to another, surge and hum.',
    mend:
      j.status === 'ok'
        ? nothingToDo
        : 'Hold the table against the sheet first: one wrong point is the usual reason. If it is right choose another setting, or freer ducts that keep to the falling part.',
  }),
};

function pointsSaid(j: Judged, print: Printer): string {
  const one = (i: number): string => {
    const steady = numberIn(j, `steady${i}`) === 1 ? '' : ', where it does not stay';
    return `${print.quantity(numberIn(j, `flow${i}`), 'flow')} at ${print.quantity(numberIn(j, `pressure${i}`), 'pressure')}${steady}`;
  };
  return Array.from({ length: numberIn(j, 'count') }, (_, i) => one(i)).join('; ');
}

/** Why static pressure matters to a blower that holds its airflow: it is paid in power and noise. Undefined for others. */
export function heldFlowWhy(j: Judged, print: Printer): string | undefined {
  if (j.facts?.set === undefined) return undefined;
  const set = print.quantity(numberIn(j, 'set'), 'flow');
  if (numberIn(j, 'holds') !== 1)
    return `This blower holds ${set} until it can no more. Here it is past that: it runs at its limit, as loud as it gets, and moves ${print.quantity(numberIn(j, 'flow'), 'flow')}.`;
  const watts =
    j.facts.watts === undefined
      ? 'Its table does not say what it draws.'
      : `By its table it draws ${print.quantity(numberIn(j, 'watts'), 'electric-power')} here, and ${print.quantity(numberIn(j, 'easy'), 'electric-power')} at ${print.quantity(numberIn(j, 'at'), 'pressure')}${numberIn(j, 'louder') >= 1 ? `, and is about ${print.quantity(numberIn(j, 'louder'), 'count')} dB louder than there` : ''}.`;
  return `This blower holds ${set} whatever the ducts ask: pressure does not show as less air but as watts and noise. ${watts} Past its limit the air falls off.`;
}
