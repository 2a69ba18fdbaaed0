import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import type { PowerReason } from './result.ts';

const reasonWords: Readonly<Record<PowerReason, (gap: string) => string>> = {
  fits: () => 'it fits the state that was entered',
  base: () => 'the house’s own draw was in it and has been taken off',
  'base-unknown': (gap) => `the house’s own draw is still in it, and would have to be ${gap}`,
  'base-large': (gap) =>
    `the house’s own draw is still in it, and would have to be ${gap}: more than a small house draws by itself, so something large was on, or more than that is wrong`,
  strips: () => 'backup strips may be on: nobody proved them off',
  speed: () => 'it fits another speed than the one that was entered',
  nothing: () => 'nothing that was noted explains it',
};

/** What a power reading means: explained, suspicious, or not to be told, and what it does to a night on the battery. */
export function powerWords(j: Judged, print: Printer): Words {
  const facts = j.facts ?? {};
  const watts = (x: unknown) => print.rounded(Number(x), 'electric-power');
  const reasons = ((facts.reasons ?? []) as unknown as readonly { readonly reason: PowerReason }[]).map(({ reason }) =>
    reasonWords[reason](watts(facts.gap)),
  );
  const word = { explained: 'explained', suspicious: 'suspicious', 'cannot tell': 'cannot be told' }[
    String(facts.verdict)
  ];
  return {
    what: `Power at “${String(facts.name)}”: ${watts(facts.read)} read, ${watts(facts.expected)} expected of the unit in that state: ${word ?? ''}; ${reasons.join('; ')}.`,
    why: nightWords(facts, print),
    mend:
      facts.verdict === 'explained'
        ? 'Nothing to do: note it for next season.'
        : 'Switch the unit off at its breaker for one minute, read the meter again and enter that as what the house draws; then switch off the strips’ breaker and see whether the power falls.',
    caution: 'Breakers only, covers shut. Clamping a meter inside the panel is licensed work.',
  };
}

function nightWords(facts: Readonly<Record<string, unknown>>, print: Printer): string {
  const energy = (kwh: unknown) => print.rounded(Number(kwh), 'energy');
  const night = `Ten hours of it are ${energy(facts.night)}; what is expected would be ${energy(facts.should)}.`;
  if (facts.hours === undefined) return night;
  const hours = (h: unknown) => `${Math.round(10 * Number(h)) / 10} h`;
  return `${night} A full battery carries ${hours(facts.hours)} of it, and ${hours(facts.wouldBe)} of what is expected.`;
}
