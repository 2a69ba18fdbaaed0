import { wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

type Say = (j: Judged, print: Printer) => Words;
const ofWhom = (j: Judged): string => (wordsIn(j, 'asker') === '' ? '' : ` (${wordsIn(j, 'asker')})`);
const already = (j: Judged): string =>
  wordsIn(j, 'unit') === 'open' ? '' : ` The unit is ${wordsIn(j, 'unit')} already.`;
const kept = 'Keep the letter, or note who said it and when.';

const termWords: Readonly<Record<string, string>> = {
  'self-installed': 'fitting it yourselves ends it',
  joints: 'the lines may not be joined by whoever is to join them',
  'start-up': 'a licensed person must start it the first time',
  tier: 'the unit’s tier is not the one asked for',
  'other-unit': 'it is for another unit than the chosen one',
  'licensed-refrigerant': 'joining and charging is for a licensed person',
  'licensed-electrical': 'the wiring is for a licensed person',
  'licensed-gas': 'gas and flues are for a licensed person',
  'licensed-startUp': 'the first start is for a licensed person',
};
const brokenWords = (j: Judged): string =>
  wordsIn(j, 'broken')
    .split(' ')
    .flatMap((id) => termWords[id] ?? [])
    .join('; ');

const granted =
  (good: string, bad: string): Say =>
  (j) => ({
    what:
      j.status === 'ok'
        ? `${wordsIn(j, 'name')}${ofWhom(j)} ${good}.`
        : wordsIn(j, 'status') === 'refused'
          ? `${wordsIn(j, 'name')}${ofWhom(j)} was refused.`
          : `${wordsIn(j, 'name')}${ofWhom(j)} ${bad}, and the unit is fitted.`,
    why: 'A second pair of eyes on wires, flues and refrigerant is what keeps houses from burning; without it an insurer may not pay.',
    mend:
      j.status === 'ok'
        ? kept
        : 'Stop there and talk to the office: ask what it wants changed. It decides, not this plan.',
  });

/** Permits, inspections, terms, deadlines, evidence. */
export const sayPaper: Readonly<Record<string, Say>> = {
  'permit-asked': (j) => ({
    what:
      j.status === 'ok'
        ? `${wordsIn(j, 'name')}${ofWhom(j)} is asked for.`
        : `${wordsIn(j, 'name')}${ofWhom(j)} ${wordsIn(j, 'status') === 'refused' ? 'was refused' : 'has not been asked for'}.${already(j)}`,
    why: 'An office may ask for another place, another unit or a licensed hand: cheap to hear before the order, dear after it.',
    mend:
      j.status === 'ok' ? kept : 'Ask now, before anything is paid for; what the office says stands above this plan.',
  }),
  'permit-granted': granted('is in hand', 'is not in hand'),
  'inspection-granted': granted('is passed', 'is not passed'),
  'incentive-first': (j) => ({
    what:
      j.status === 'ok'
        ? wordsIn(j, 'first') === 'no'
          ? `${wordsIn(j, 'name')} may be asked for after the order.`
          : `${wordsIn(j, 'name')} is granted: the order may go out.`
        : `${wordsIn(j, 'name')} must be granted before the order, and is not.${already(j)}`,
    why: 'Programmes that must agree first pay nothing for what is bought before.',
    mend:
      j.status === 'ok'
        ? kept
        : wordsIn(j, 'unit') === 'open'
          ? 'Hold the order until it is granted in writing, or reckon without it.'
          : 'Ask whether it can still be had; until then reckon without it.',
  }),
  'incentive-terms': (j) => ({
    what:
      j.status === 'ok'
        ? `The plan keeps the terms entered for ${wordsIn(j, 'name')}.`
        : wordsIn(j, 'status') === 'refused'
          ? `${wordsIn(j, 'name')} was refused.`
          : `${wordsIn(j, 'name')} will not pay as planned: ${brokenWords(j)}.`,
    why: 'Money reckoned with and not paid is the dearest kind.',
    mend:
      j.status === 'ok' ? kept : 'Change who does that work or which unit it is, or take the money out of your sums.',
  }),
  'warranty-terms': (j) => ({
    what:
      j.status === 'ok'
        ? `Nothing in the plan ends ${wordsIn(j, 'name')}, by the terms entered.`
        : `The plan ends ${wordsIn(j, 'name')}: ${brokenWords(j) || 'it was refused'}.`,
    why: 'A compressor costs about half of what the unit does; most warranties are lost by who did the work and by a form sent late.',
    mend:
      j.status === 'ok'
        ? 'Register it in time and keep the proof.'
        : 'Give that work to a licensed person with a dated report, or reckon without the warranty.',
  }),
  'insurance-told': (j) => ({
    what:
      j.status === 'ok'
        ? `${wordsIn(j, 'name')}: told, or no need to.`
        : wordsIn(j, 'status') === 'refused'
          ? `${wordsIn(j, 'name')}: they do not cover this work.`
          : `${wordsIn(j, 'name')}: they must be told before work begins, and are not.`,
    why: 'Water in a ceiling or a fire after work they had not heard of is what insurers refuse to pay for.',
    mend: j.status === 'ok' ? kept : 'Write to them and wait for the answer in writing.',
  }),
  deadline: (j, print) => ({
    what:
      wordsIn(j, 'before') === '1'
        ? `${wordsIn(j, 'name')} is to be in hand by ${wordsIn(j, 'due')}; work begins on ${wordsIn(j, 'day')}.`
        : `${wordsIn(j, 'name')} wants all done by ${wordsIn(j, 'due')}; work ends on ${wordsIn(j, 'day')}.`,
    why:
      wordsIn(j, 'before') === '1'
        ? 'Work that begins before its paper is in hand may have to come out again.'
        : 'What is finished after the last day is paid nothing.',
    mend:
      j.status === 'ok'
        ? `Days in hand: ${print.value(j)}.`
        : `Too late by ${print.quantity(Math.abs(j.margin ?? 0), 'count')} days: move the work, or ask for another day.`,
  }),
  evidence: (j) => ({
    what:
      j.status === 'ok'
        ? 'Of every paper in hand something is noted: a number, a letter, a name.'
        : `In hand, and nothing noted as proof: ${wordsIn(j, 'names')}.`,
    why: 'Offices and sellers forget; a number and a day do not.',
    mend: j.status === 'ok' ? 'Photograph them too.' : 'Note its number, or who said it and when.',
  }),
};
