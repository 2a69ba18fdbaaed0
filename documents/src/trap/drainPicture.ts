import type { Name, Spot } from './trapPicture.ts';

export type DrainPlace = 'inside' | 'attic' | 'below' | 'outdoors';
export type SecondWay = 'pan' | 'overflow' | 'switch' | 'none';

/** What the drawing of a drain needs: m where nothing else is said; what is not known is left out. */
export type DrainFacts = {
  readonly stretches: readonly {
    readonly name: string;
    readonly place: DrainPlace;
    readonly run: number;
    readonly fall: number;
    readonly least: number;
  }[];
  readonly second?: SecondWay;
  readonly above?: number;
  readonly vent?: 'after' | 'before' | 'none';
  readonly risers?: { readonly is?: number; readonly least: number };
  readonly pump?: { readonly lift?: number };
  readonly ends?: string;
  readonly secondEnds?: string;
};

/** One line of the drawing and what it stands for. */
export type DrainLine = {
  readonly of: 'pipe' | 'second' | 'casing' | 'pan' | 'floor' | 'least' | 'level' | 'border' | 'pump';
  readonly points: readonly Spot[];
};

/** The drain from the side in two parts: the unit with its lines, not to scale, and below it its way, heights stretched. */
export type DrainPicture = {
  readonly lines: readonly DrainLine[];
  readonly names: readonly Name[];
  readonly width: number;
  readonly height: number;
  /** Times that heights are drawn larger than lengths in the lower part. */
  readonly stretched: number;
};

export const placeWords: Readonly<Record<DrainPlace, string>> = {
  inside: 'inside',
  attic: 'attic',
  below: 'below',
  outdoors: 'outdoors',
};

/** mm of the whole; the floor the unit stands on; where the way begins and how high it may be drawn. */
const width = 184;
const floor = 66;
const way = { left: 8, right: 176, top: 122, height: 34 } as const;

/** Draws the drain in mm; `say` prints a length. */
export function drainPicture(facts: DrainFacts, say: (metres: number) => string): DrainPicture {
  const { lines, names, stretched } = wayOf(facts, say);
  return {
    lines: [...unitLines(facts), ...secondLines(facts), ...lines],
    names: [...unitNames(facts, say), ...names],
    width,
    height: way.top + way.height + (facts.pump ? 32 : 23),
    stretched,
  };
}

const box = (left: number, top: number, right: number, bottom: number): readonly Spot[] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
  [left, top],
];

/** Cabinet on its risers, in its pan; outlet, trap, vent. */
function unitLines({ second, vent }: DrainFacts): DrainLine[] {
  const ventAt = vent === 'before' ? 117 : 146;
  return [
    {
      of: 'floor',
      points: [
        [4, floor],
        [180, floor],
      ],
    },
    { of: 'casing', points: box(62, 14, 112, 44) },
    { of: 'casing', points: box(66, 44, 72, second === 'pan' ? floor - 1.5 : floor) },
    { of: 'casing', points: box(102, 44, 108, second === 'pan' ? floor - 1.5 : floor) },
    ...(second === 'pan'
      ? [
          {
            of: 'pan',
            points: [
              [57, 57],
              [57, floor - 1],
              [117, floor - 1],
              [117, 57],
            ],
          } as const,
        ]
      : []),
    {
      of: 'pipe',
      points: [
        [112, 40],
        [124, 40],
        [124, 55],
        [134, 55],
        [134, 48],
        [180, 49],
      ],
    },
    ...(vent === 'after' || vent === 'before'
      ? [
          {
            of: 'pipe',
            points: [
              [ventAt, vent === 'before' ? 40 : 48],
              [ventAt, 26],
            ],
          } as const,
        ]
      : []),
  ];
}

/** The second outlet's line, or the pan's own, on the other side so that no lines cross. */
function secondLines({ second }: DrainFacts): DrainLine[] {
  if (second === 'overflow')
    return [
      {
        of: 'second',
        points: [
          [62, 35],
          [10, 38],
          [10, 80],
        ],
      },
      {
        of: 'level',
        points: [
          [62, 40],
          [112, 40],
        ],
      },
    ];
  if (second !== 'pan') return [];
  return [
    {
      of: 'second',
      points: [
        [57, floor - 3],
        [10, floor - 1],
        [10, 80],
      ],
    },
  ];
}

function unitNames({ second, above, vent, risers, secondEnds }: DrainFacts, say: (metres: number) => string): Name[] {
  const left = (y: number, text: string): Name => ({ at: [4, y], text, anchor: 'start' });
  const height =
    risers === undefined
      ? []
      : [`risers ${risers.is === undefined ? 'not measured' : say(risers.is)}, least ${say(risers.least)}`];
  return [
    { at: [87, 27], text: 'unit', anchor: 'middle' },
    { at: [129, 63], text: 'trap', anchor: 'middle' },
    ...(vent === 'after' || vent === 'before'
      ? [{ at: [vent === 'before' ? 116 : 132, 22], text: 'open vent', anchor: 'start' } as const]
      : []),
    { at: [180, 59], text: 'drain', anchor: 'end' },
    ...height.map((text): Name => ({ at: [87, 75], text, anchor: 'middle' })),
    ...(second === 'overflow'
      ? [left(20, 'second outlet'), ...(above === undefined ? [] : [left(28, `${say(above)} above`)])]
      : []),
    ...(second === 'pan' ? [left(54, 'pan’s own line')] : []),
    ...(second === 'switch' ? [left(28, 'float switch')] : []),
    ...(secondEnds && (second === 'pan' || second === 'overflow')
      ? [{ at: [14, 86], text: secondEnds, anchor: 'start' } as const]
      : []),
  ];
}

/** The way from the trap to the end, lengths to scale, heights stretched; dashed, the least fall all along. */
function wayOf(
  { stretches, pump, ends }: DrainFacts,
  say: (metres: number) => string,
): { lines: DrainLine[]; names: Name[]; stretched: number } {
  const run = stretches.reduce((sum, s) => sum + s.run, 0);
  if (!(run > 0)) return { lines: [], names: [], stretched: 1 };
  const fall = stretches.reduce((sum, s) => sum + s.fall, 0);
  const least = stretches.reduce((sum, s) => sum + s.least, 0);
  const across = (way.right - way.left - (pump ? 14 : 0)) / run;
  const down = way.height / Math.max(fall, least);
  let [x, y]: Spot = [way.left, way.top];
  const corners: Spot[] = [[x, y]];
  const names: Name[] = [];
  stretches.forEach((s, i) => {
    const wide = s.run * across;
    const full = `${i + 1} ${placeWords[s.place]}`;
    const text = wide > 4 * full.length ? full : `${i + 1}`;
    names.push({ at: [x + wide / 2, way.top - 6], text, anchor: 'middle' });
    x += wide;
    y += s.fall * down;
    corners.push([x, y]);
  });
  const bottom = way.top + way.height;
  const borders = corners.map(
    ([at]): DrainLine => ({
      of: 'border',
      points: [
        [at, way.top - 14],
        [at, bottom],
      ],
    }),
  );
  const rising: DrainLine[] = pump
    ? [
        { of: 'pump', points: box(x, y, x + 8, y + 6) },
        {
          of: 'second',
          points: [
            [x + 8, y + 2],
            [x + 12, y + 2],
            [x + 12, way.top - 12],
          ],
        },
      ]
    : [];
  return {
    lines: [
      ...borders,
      {
        of: 'least',
        points: [
          [way.left, way.top],
          [way.left + run * across, way.top + least * down],
        ],
      },
      { of: 'pipe', points: corners },
      ...rising,
    ],
    names: [
      { at: [4, way.top - 20], text: 'The drain’s way from the trap to its end', anchor: 'start' },
      ...names,
      ...below(pump, ends, `${say(run)} long, loses ${say(fall)}; dashed: least ${say(least)}`, say),
    ],
    stretched: down / across,
  };
}

/** What stands below the way: its sums, the pump after it, and where it ends. */
function below(
  pump: DrainFacts['pump'],
  ends: string | undefined,
  sums: string,
  say: (metres: number) => string,
): Name[] {
  const lifted = pump?.lift === undefined ? 'then a pump' : `then a pump lifts it ${say(pump.lift)}`;
  return [sums, ...(pump ? [lifted] : []), ...(ends ? [ends] : [])].map((text, i) => ({
    at: [4, way.top + way.height + 10 + 9 * i],
    text,
    anchor: 'start',
  }));
}
