import { choice, date, flag, group, map, quantity, reference, text } from './field.ts';

const days = (label: string, help: string) =>
  quantity('count', {
    label,
    help,
    neededBy: [],
    plausible: { min: 1, max: 730 },
    possible: { min: 0 },
    usually: 'nameplate',
  });
const yearsOn = (label: string) =>
  quantity('count', {
    label,
    neededBy: [],
    plausible: { min: 0, max: 25 },
    possible: { min: 0 },
    usually: 'nameplate',
  });

/** Without a default: nobody may read "no" where nobody has asked. */
const yesNo = (label: string, help?: string) =>
  choice({ yes: 'Yes', no: 'No', unknown: 'Not known yet' }, { label, ...(help ? { help } : {}), default: 'unknown' });

const licence = group(
  {
    needed: yesNo('A licensed installer?', 'Ask whoever asks for this paper; no answer is never taken for a no.'),
    all: flag({ label: 'For all of the work' }),
    refrigerant: flag({ label: 'For joining, vacuum and charge' }),
    electrical: flag({ label: 'For wires and their connection' }),
    gas: flag({ label: 'For gas, oil and flues' }),
    startUp: flag({ label: 'For the first start' }),
  },
  { label: 'Licensed work', help: 'Yes, and nothing marked below, counts for all of the work.' },
);

const warranty = group(
  {
    parts: yearsOn('Years on parts'),
    compressor: yearsOn('Years on the compressor'),
    selfInstalled: choice(
      { void: 'Ends it', allowed: 'Is allowed', unknown: 'Not known yet' },
      { label: 'Fitting it yourself', default: 'unknown' },
    ),
    joints: choice(
      {
        any: 'Whoever is competent',
        once: 'The owner too, if the set comes filled with couplings for one use',
        licensed: 'Only a licensed person',
        unknown: 'Not known yet',
      },
      { label: 'Who may join the refrigerant lines', default: 'unknown' },
    ),
    startUp: choice(
      { licensed: 'Only a licensed person', anyone: 'Whoever follows the manual', unknown: 'Not known yet' },
      { label: 'Who may start it the first time', default: 'unknown' },
    ),
    register: days('Days within which it must be registered', 'From the day its terms name: purchase or first start.'),
  },
  { label: 'Terms of a warranty', help: 'Only for a warranty: as its papers say.' },
);

const incentive = group(
  {
    beforeOrder: yesNo('Must it be granted before the order?'),
    tier: text({ label: 'Efficiency tier it asks for', help: 'As written there; held against the tier of the unit.' }),
  },
  { label: 'Terms of an incentive', help: 'Only for an incentive.' },
);

const insurance = group(
  {
    tell: yesNo('Must they be told before work begins?'),
    terms: text({ label: 'What the policy says of such work', longest: 2000 }),
  },
  { label: 'Terms of an insurance', help: 'Only for an insurance.' },
);

const quote = group(
  {
    unit: flag({ label: 'The unit itself' }),
    ducts: flag({ label: 'Ducts' }),
    electrical: flag({ label: 'Electrical work' }),
    removal: flag({ label: 'Taking out the old' }),
    permit: flag({ label: 'Permit and its fees' }),
    condensate: flag({ label: 'Drain for the water' }),
    lineset: flag({ label: 'Line set' }),
    startUp: flag({ label: 'First start with a report' }),
    warrantyYears: yearsOn('Years of warranty on the work'),
  },
  {
    label: 'What a quote holds',
    help: 'Only for a quote: mark what is written in it. What is not written is not in it.',
  },
);

/** Permits, inspections, warranty and insurance terms, quotes, incentives. */
export const paperwork = map(
  {
    name: text({ label: 'Name' }),
    kind: choice(
      {
        permit: 'Permit',
        inspection: 'Inspection',
        warranty: 'Warranty',
        insurance: 'Insurance',
        quote: 'Quote',
        incentive: 'Incentive',
      },
      { label: 'Kind', default: 'permit' },
    ),
    asksFor: text({ label: 'Who asks' }),
    status: choice(
      { open: 'To ask', asked: 'Asked for', granted: 'Granted, or in hand', refused: 'Refused' },
      { label: 'Where it stands', default: 'open' },
    ),
    due: date({ label: 'By', help: 'A permit: needed by. A quote: stands until. An incentive: all done and sent by.' }),
    asked: date({ label: 'Asked on', help: 'Also the day on which you mean to ask.' }),
    waits: days(
      'Days until there is an answer',
      'As the office says. An inspection: from your call until somebody comes.',
    ),
    licensed: flag({ label: 'Needs a licensed installer', help: 'The same as Yes under Licensed work.' }),
    evidence: text({ label: 'Evidence', help: 'Its number, the letter, who said so and when.', longest: 2000 }),
    amount: quantity('money', {
      label: 'Amount',
      help: 'A quote: what it asks for all. An incentive: what it pays. A permit: its fee.',
      neededBy: [],
      plausible: { min: 0, max: 100_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    unit: reference('candidates', { label: 'For the unit', help: 'Left empty: for whichever unit is chosen.' }),
    licence,
    warranty,
    incentive,
    insurance,
    quote,
  },
  { label: 'Paperwork', one: 'Paper' },
);
