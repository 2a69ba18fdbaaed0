import type { LicensedWork, QuestionId, QuoteScope } from './result.ts';

export const quoteScopeTitle: Readonly<Record<QuoteScope, string>> = {
  unit: 'the unit',
  ducts: 'ducts',
  electrical: 'electrical work',
  removal: 'taking out the old',
  permit: 'permit',
  condensate: 'drain',
  lineset: 'line set',
  startUp: 'first start',
};

export const workTitle: Readonly<Record<LicensedWork, string>> = {
  refrigerant: 'Joining, vacuum and charge',
  electrical: 'Wires and their connection',
  gas: 'Gas, oil and flues',
  startUp: 'The first start',
};

/** What local offices, insurers and makers are usually asked; what they answer decides. */
export const questionWords: Readonly<Record<QuestionId, { readonly who: string; readonly ask: string }>> = {
  permit: {
    who: 'Building office',
    ask: 'Which permits do an air handler in the attic, an outdoor unit and their wiring need here: mechanical, electrical, both?',
  },
  inspections: {
    who: 'Building office',
    ask: 'What will the inspector want to see, and before what is covered: ducts, wires, drain, pressure test? Who calls, how many days ahead?',
  },
  'owner-work': {
    who: 'Building office',
    ask: 'Which of this work may an owner do in their own house, and under which conditions?',
  },
  refrigerant: {
    who: 'Building office, maker',
    ask: 'Who may join and open refrigerant lines here; is a set filled at the factory treated otherwise? Where may a flammable refrigerant stand?',
  },
  electrical: {
    who: 'Electrical inspector',
    ask: 'Who may run the circuit and who must connect it? Which code, of which year, with which changes?',
  },
  utility: {
    who: 'Electricity company',
    ask: 'Must a heat pump be announced; does the connection carry it; is there a tariff for it?',
  },
  noise: {
    who: 'Building office',
    ask: 'How loud may it be at the neighbour’s, and how far from the boundary must it stand?',
  },
  'old-materials': {
    who: 'Health or building office',
    ask: 'What must be tested for asbestos or lead before ceilings, ducts or flues are cut, and who may take it out?',
  },
  flue: {
    who: 'Building office, chimney sweep',
    ask: 'What must be checked on the flue and its air before the house is made tighter or a fan is added; who may touch gas or oil?',
  },
  insurer: {
    who: 'Insurer',
    ask: 'Do you want to be told; do you still pay after water, fire or a fall if we did the work ourselves?',
  },
  warranty: {
    who: 'Maker or seller',
    ask: 'What ends the warranty: fitting it ourselves, joining the lines, starting it, registering late? In writing, please.',
  },
  incentive: {
    who: 'Whoever pays',
    ask: 'Must it be granted before the order; which tier, which papers, whose licence, done by when?',
  },
};
