import { wordsIn } from '../../plan/facts.ts';
import type { Judged, Words } from '../../plan/judge.ts';
import type { Printer } from '../../plan/printer.ts';

/** What the plan's loss is scaled by. */
export const learnedLossWords = (j: Judged, print: Printer): Words => {
  const quantity = (key: string, kind: 'conductance' | 'power'): string => print.quantity(Number(j.facts?.[key]), kind);
  const days = j.facts?.from === '' ? '' : `, ${String(j.facts?.from)} to ${String(j.facts?.to)}`;
  return {
    what: `Everything that loses heat is scaled by what the log “${String(j.facts?.log)}” taught${days}: ${print.value(j)} of what was entered. For each degree on the cold night that is ${quantity('after', 'conductance')}, by the plan alone ${quantity('before', 'conductance')}; heat on the cold night ${quantity('heatAfter', 'power')}, by the plan alone ${quantity('heatBefore', 'power')}.`,
    why: 'A log tells the whole and not the part: walls, windows and leaks are scaled alike. A blower door would part the leaks from the rest.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do. On the page of commissioning it can be taken back in one step.'
        : 'So far apart it is better to look which wall, window or draught was entered wrongly, and to correct that.',
  };
};

/** What was marked measured, and does not go with the log. */
export const learnedAgainstWords = (j: Judged, print: Printer): Words => {
  const paths = wordsIn(j, 'paths').split(' ');
  const names = [...new Set(paths.map((p) => print.field(p)))].slice(0, 4).join(', ');
  return {
    what:
      j.status === 'ok'
        ? `What is marked measured goes with the log “${String(j.facts?.log)}”: ${names}.`
        : `The log “${String(j.facts?.log)}” does not go with the plan, yet this is marked measured, and is scaled all the same: ${names}.`,
    why: 'One of them is wrong, or what was not measured is further off than the scale says.',
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Look at what was measured again. If it stands, the rest is worse than entered: correct the rest, and take the log’s share back.',
  };
};
