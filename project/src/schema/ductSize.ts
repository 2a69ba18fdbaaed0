import { choice, group, quantity } from './field.ts';

/** What ducts are made of. */
export const ductKinds = {
  flexible: 'Flexible duct',
  round: 'Round metal',
  rectangular: 'Rectangular metal',
  board: 'Duct board',
} as const;

type Kind = keyof typeof ductKinds;
const eachKind = <F>(field: (label: string) => F): Record<Kind, F> => ({
  flexible: field(ductKinds.flexible),
  round: field(ductKinds.round),
  rectangular: field(ductKinds.rectangular),
  board: field(ductKinds.board),
});

/** More than nothing, and no longer than `most` metres without a question. */
const side = (label: string, most: number, help?: string) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0.02, max: most },
    possible: { above: 0 },
    usually: 'measured',
  });

export const ductKind = (label: string, help: string) => choice(ductKinds, { label, help, neededBy: [] });

/** The inner size of a duct that shops sell. */
export const ductSize = {
  diameter: side('Diameter', 0.8, 'Inside. Give it, or width and height.'),
  width: side('Width inside', 1.5),
  height: side('Height inside', 1.5),
};

/** What a section has to pass. */
export const spaceToPass = group(
  {
    passes: choice(
      {
        bay: 'In a bay of joists or studs',
        over: 'Over joists, below a roof',
        free: 'Free',
      },
      { label: 'It runs', neededBy: [] },
    ),
    depth: side('Height or depth there is', 2, 'Clear, at the tightest place. The duct counts with its insulation.'),
    width: side('Width there is', 3, 'Clear, between the two sides of the bay. Left empty it does not count.'),
  },
  { label: 'Space it must pass' },
);

/** Which kinds one section may become. */
export const mayBe = group(
  eachKind((label) => choice({ yes: 'Yes', no: 'No' }, { label, neededBy: [] })),
  {
    label: 'May be made of',
    help: 'Left empty, what is said for all ducts holds; with nothing said there, the kind drawn.',
  },
);

const workAt = (label: string) =>
  quantity('time', {
    label,
    help: 'One person, one collar, elbow or seam: 20 min.',
    neededBy: [],
    plausible: { min: 60, max: 14_400 },
    possible: { min: 0 },
    usually: 'estimated',
  });

/** What all ducts may be made of, in which sizes, and what the choice is to save. */
export const ductMake = group(
  {
    ...eachKind((label) =>
      choice(
        {
          usual: 'Yes, usual sizes',
          listed: 'Yes, listed sizes only',
          no: 'No',
        },
        { label, neededBy: [] },
      ),
    ),
    goal: choice(
      { money: 'The least money', labour: 'The least work', static: 'The least pressure' },
      { label: 'Choose the sizes for', default: 'money' },
    ),
    joints: group(eachKind(workAt), {
      label: 'Work at a joint',
      help: 'A range is welcome. Left empty a rule of thumb stands in.',
    }),
  },
  {
    label: 'What ducts may be made of',
    help: 'With nothing said every duct keeps the kind it is drawn in. Listed are the sizes with stock and prices; they come beside the usual ones.',
  },
);
