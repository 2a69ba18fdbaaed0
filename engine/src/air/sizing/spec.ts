/** A limit that an option would break: left out of the choice, and tried one at a time when nothing fits. */
export type BrokenLimit = {
  /** Outer height or width in m, air speed in m/s, how many ducts side by side, how often it is bought. */
  readonly limit: 'depth' | 'width' | 'velocity' | 'runs' | 'bought';
  readonly value: number;
  readonly most: number;
};

/** One stocked size of one section. */
export type SizingOption = {
  readonly id: string;
  /** Pa lost along the section at its wanted flow, fittings included. */
  readonly loss: number;
  /** In the person's currency, and seconds of work. */
  readonly money: number;
  readonly labour: number;
  readonly breaks?: readonly BrokenLimit[];
};

export type SizingSection = {
  readonly id: string;
  readonly side: 'supply' | 'return';
  /** The section nearer the air handler, or nothing at the air handler itself. */
  readonly from?: string;
  /** Pa of the hardest register at its end, 0 where there is none. */
  readonly end: number;
  /** Already bought: its first option stays, whatever limits it breaks; any others are tried only when nothing fits. */
  readonly fixed?: boolean;
  readonly options: readonly SizingOption[];
};

export type SizingGoal = 'money' | 'labour' | 'static';

/** Two trees at wanted flows. `budget` is the pressure, Pa, for the hardest supply way and return way together. */
export type SizingSpec = {
  readonly sections: readonly SizingSection[];
  readonly budget: number;
  readonly goal: SizingGoal;
};

/** By section, the option taken. */
export type SizingChoice = Readonly<Record<string, string>>;

/** Pa along the hardest ways, currency, seconds. */
export type SizingTotals = { readonly pressure: number; readonly money: number; readonly labour: number };

/** `bounded`: no choice can cost less than `bound`; `gap` is the share by which this one may be above the best. */
export type SizingProof =
  | { readonly kind: 'proved' }
  | { readonly kind: 'bounded'; readonly bound: number; readonly gap: number };

export type SizedSystem = { readonly choice: SizingChoice; readonly totals: SizingTotals };

/** What a section's next size would do, the rest kept, and what it would cost if the rest were chosen anew. */
export type NextSize = {
  readonly section: string;
  readonly option: string;
  /** Pa less in the section itself, and of the whole system (0 where another way is harder). */
  readonly gainOwn: number;
  readonly gainSystem: number;
  readonly money: number;
  readonly labour: number;
  /** Cost of the cheapest whole system with this size, less that of the choice, in the goal's unit. */
  readonly extraBest?: number;
};

/** The hardest way with the least that every section on it can lose; `sections` from the air handler outward. */
export type HardestWay = {
  readonly side: 'supply' | 'return';
  readonly sections: readonly string[];
  readonly least: number;
};

/** One limit lifted as little as helps. `enough`: then a choice exists that meets everything else. */
export type Relaxation = {
  readonly limit: BrokenLimit['limit'] | 'budget' | 'flow';
  readonly section?: string;
  readonly option?: string;
  /** From the limit as it stands to what it takes: Pa, m, m/s, count, or m³/s. */
  readonly from: number;
  readonly to: number;
  readonly enough: boolean;
};

/** A point of the exchange between pressure and cost: no choice is better in both. */
export type ExchangePoint = { readonly pressure: number; readonly cost: number };

export type Sizing =
  | {
      readonly status: 'fits';
      readonly goal: SizingGoal;
      readonly budget: number;
      readonly best: SizedSystem;
      readonly proof: SizingProof;
      /** The cheapest other choice that fits, absent where there is none. */
      readonly runnerUp?: SizedSystem & { readonly differs: readonly string[] };
      readonly next: readonly NextSize[];
      /** From least pressure to least cost, as far as a quarter above the budget. */
      readonly front: readonly ExchangePoint[];
      readonly leastPressure: number;
    }
  | {
      readonly status: 'nothing-fits';
      readonly goal: SizingGoal;
      readonly budget: number;
      /** Sections of which no stocked size keeps within the limits. */
      readonly closed: readonly string[];
      /** Pa that even the most generous allowed sizes need; absent where a section is closed. */
      readonly leastPressure?: number;
      readonly ways: readonly HardestWay[];
      readonly relaxations: readonly Relaxation[];
    };
