import type { Project } from '@kneewall/project';

type Read = readonly [value: number, as: string];
/** What was read at each visit, by the id of the expected reading. */
export type ReadAt = { readonly first: Readonly<Record<string, Read>>; readonly later: Readonly<Record<string, Read>> };

const measured = (value: number, as?: string) => ({
  value,
  known: 'measured' as const,
  ...(as === undefined ? {} : { as }),
});
const fahrenheit = (f: number) => measured((f - 32) / 1.8, `${f} F`);

/** The one reading of the later visit that is in the file: what the cold room made them look at. */
const begun = 'air/flow:reg-bed-south';
/** Read at the first start: enough to hold a later number against. */
const atFirst = /^(air\/|commissioning\/(supply-static|return-static|filter-drop|supply-air|power))/;
/**
 * Tern Ledge a winter after it was built: unit and ducts are fitted, the first start was read, and a second visit has
 * begun because the south bedroom is cold. All readings are made by the engine in a house that is not the plan's.
 */
export function ternLedgeAfter(before: Project, read: ReadAt): Project {
  return {
    ...before,
    about: { name: 'Tern Ledge, the winter after', note, invented: true },
    items: {
      ...before.items,
      unit: { ...before.items?.unit, state: 'fitted' },
      'flex-8': { ...before.items?.['flex-8'], state: 'fitted' },
    },
    paperwork: papers(before),
    work: {
      crew: before.work?.crew,
      prices: before.work?.prices,
      hands: { ...before.work?.hands, startUp: 'licensed' },
      done,
    },
    visits: { ...visits, cold: { ...visits.cold, note: goOn(read) } },
    readings: readingsOf(read),
  } as Project;
}

const steady = { mode: 'heating', speed: 'full', filter: 'clean', strips: 'off', who: 'Ada' };
const visits = {
  first: {
    ...{ order: 'a00', name: 'First start', day: '2027-05-29', ...steady, minutes: measured(1500, '25 min') },
    ...{ outdoor: fahrenheit(43), returnAir: fahrenheit(67) },
  },
  cold: {
    ...{ order: 'a01', name: 'The south bedroom is cold', day: '2028-01-15', ...steady },
    ...{ minutes: measured(2400, '40 min'), outdoor: fahrenheit(23), returnAir: fahrenheit(68) },
  },
};

/** What a work plan would still ask for, were it not ticked: all but what comes back every season. */
const done = Object.fromEntries(
  [
    ...['loads/seal-attic-floor', 'equipment/receive', 'equipment/settings'],
    ...['air/hang', 'air/ports', 'air/seal', 'air/door-ways', 'air/dampers', 'air/balance'],
    ...['condensate/level', 'condensate/pipe', 'condensate/fill'],
    ...['lineset/rope', 'lineset/hole', 'lineset/stand', 'lineset/lay', 'lineset/join', 'lineset/seal'],
    ...['circuit/permit', 'circuit/pull', 'circuit/count', 'circuit/insulation', 'circuit/connect'],
    ...['circuit/prove-dead', 'circuit/first-power', 'offgrid/settings', 'offgrid/generator'],
    ...['access/frame', 'access/platform', 'access/up'],
    ...['commissioning/before-power', 'commissioning/first-hour', 'commissioning/first-readings'],
    ...['commissioning/first-week', 'commissioning/first-frost'],
  ].map((task, i) => [task.replace('/', '-'), { order: `a${String(i).padStart(2, '0')}`, task, day: '2027-05-29' }]),
);

/** Papers that are settled by then; offers that nobody took up are gone. */
const papers = (before: Project): object => {
  const { permit, inspection, warranty, insurance } = before.paperwork ?? {};
  const granted = { status: 'granted', evidence: 'In hand since 2027-05-20 (invented).' };
  return {
    permit: { ...permit, ...granted },
    inspection: { ...inspection, ...granted },
    warranty: { ...warranty, ...granted },
    insurance: { ...insurance, ...granted },
  };
};

const note = `Tern Ledge a winter later: unit and ducts are fitted, and the south bedroom is cold. One fault was planted in a house that is a little different from the plan, and the engine made every reading of it, with the error of a common instrument. All of it is invented. The second visit is only begun: answer what the page of readings asks for next, and watch the cause rise. What you would read stands in the note of that visit. A log of that winter lies beside the demo in demos/files/winter-after-log.csv: put it in under “What the winter taught”, or with kneewall import log.`;

const names: Readonly<Record<string, string>> = {
  'air/static': 'Pressure across the air handler',
  'commissioning/supply-static': 'Pressure in the supply plenum',
  'commissioning/return-static': 'Suction behind the filter',
  'commissioning/filter-drop': 'Across the filter',
  'commissioning/supply-air': 'Supply air',
  'commissioning/unit-return': 'Return air at the unit',
  'commissioning/power': 'Power of the unit, by its own meter',
  'commissioning/grille-flow': 'Into the return grille',
};

/** What the builder would read if they went on, so that whoever tries the demo can type it. */
function goOn(read: ReadAt): string {
  const at = (id: string): string => read.later[id]?.[1] ?? '';
  const ofRun = (kind: string): string =>
    Object.keys(read.later)
      .filter((id) => id.startsWith(kind))
      .map((id) => `${id.split(':reg-')[1]} ${at(id)}`)
      .join(', ');
  const numbers = Object.keys(read.later).flatMap((id) => {
    const name = names[id.split(':')[0] ?? ''];
    return name ? [`${name}: ${at(id)}.`] : [];
  });
  return [
    'Only begun. What you would read if you went on (invented):',
    ...numbers,
    `Flows of the registers, a bag three times: ${ofRun('air/flow:')}.`,
    `Air from the registers: ${ofRun('commissioning/register-air:')}.`,
    'Looks: the filter is clean, and whatever else is asked about, no; only at the run of the south bedroom, yes.',
  ].join(' ');
}

const meansOf = (as: string): string =>
  as.endsWith('cfm') ? 'bag' : as.endsWith('inH2O') ? 'gauge' : as.endsWith('W') ? 'meter' : 'thermometer';

function readingsOf({ first, later }: ReadAt): object {
  const taken = [
    ...Object.entries(first)
      .filter(([id]) => atFirst.test(id))
      .map(([id, read]) => ({ visit: 'first', id, read })),
    ...(later[begun] ? [{ visit: 'cold', id: begun, read: later[begun] }] : []),
  ];
  return Object.fromEntries(
    taken.map(({ visit, id, read: [value, as] }, i) => [
      `${visit}-${id.replace(/[^a-z0-9]+/g, '-')}`,
      {
        ...{ order: `a${String(i).padStart(2, '0')}`, visit, expected: id, value: measured(value, as) },
        ...{ means: meansOf(as), ...(as.endsWith('cfm') ? { repeats: measured(3) } : {}) },
      },
    ]),
  );
}
