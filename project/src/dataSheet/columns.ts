import type { QuantityKind } from '../quantity/index.ts';

/** What a row of a sheet may state, by the name it has here. */
export type ColumnId =
  | 'mode'
  | 'speed'
  | 'outdoor'
  | 'indoor'
  | 'indoorWetBulb'
  | 'capacity'
  | 'sensibleCapacity'
  | 'sensibleShare'
  | 'power'
  | 'cop'
  | 'airflow'
  | 'defrostCounted';

type Column = {
  readonly names: readonly string[];
  /** A quantity, or one of a few words. */
  readonly kind?: QuantityKind;
  readonly words?: Readonly<Record<string, readonly string[]>>;
  /** How its header is best written. */
  readonly example: string;
};

/** The columns a sheet may have: how people head them, and what stands in them. */
export const columns: Readonly<Record<ColumnId, Column>> = {
  mode: {
    names: ['mode'],
    words: { heating: ['heating', 'heat', 'h'], cooling: ['cooling', 'cool', 'c'] },
    example: 'mode',
  },
  speed: {
    names: ['speed', 'compressor speed'],
    words: {
      least: ['least', 'lowest', 'low', 'minimum', 'min'],
      between: ['between', 'intermediate', 'middle', 'mid'],
      rated: ['rated', 'nominal'],
      most: ['most', 'highest', 'high', 'full', 'maximum', 'max'],
    },
    example: 'speed',
  },
  outdoor: {
    names: ['outdoor', 'outdoor air', 'outdoor temperature', 'outdoor dry bulb'],
    kind: 'temperature',
    example: 'outdoor (°F)',
  },
  indoor: {
    names: ['indoor', 'indoor air', 'indoor temperature', 'indoor dry bulb'],
    kind: 'temperature',
    example: 'indoor (°F)',
  },
  indoorWetBulb: { names: ['indoor wet bulb', 'wet bulb'], kind: 'temperature', example: 'indoor wet bulb (°F)' },
  capacity: { names: ['capacity', 'total capacity'], kind: 'power', example: 'capacity (Btu/h)' },
  sensibleCapacity: { names: ['sensible capacity'], kind: 'power', example: 'sensible capacity (Btu/h)' },
  sensibleShare: {
    names: ['sensible share', 'sensible heat ratio', 'shr'],
    kind: 'fraction',
    example: 'sensible share',
  },
  power: { names: ['power', 'input', 'input power'], kind: 'electric-power', example: 'power (W)' },
  cop: { names: ['cop', 'coefficient of performance'], kind: 'number', example: 'COP' },
  airflow: { names: ['airflow', 'air flow', 'indoor airflow'], kind: 'flow', example: 'airflow (cfm)' },
  defrostCounted: {
    names: ['defrost counted', 'defrost'],
    words: { yes: ['yes', 'y', 'counted'], no: ['no', 'n', 'not counted'] },
    example: 'defrost counted',
  },
};

export type Heading = {
  readonly id: ColumnId;
  readonly index: number;
  /** As the file has it. */
  readonly text: string;
  readonly unit?: string;
};

/** A header cell as a name and, in brackets, a unit. */
export function splitHeading(text: string): { readonly name: string; readonly unit?: string } {
  const found = /^(.*?)\s*[([]([^)\]]+)[)\]]\s*$/.exec(text);
  const name = (found?.[1] ?? text)
    .toLowerCase()
    .replace(/[_\s]+/g, ' ')
    .trim();
  return { name, ...(found?.[2] ? { unit: found[2].trim() } : {}) };
}

export const columnNamed = (name: string): ColumnId | undefined =>
  (Object.keys(columns) as ColumnId[]).find((id) => columns[id].names.includes(name));
