import type { Range } from '@kneewall/project';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/trade.ts';
import type { Trap } from './kernels/trap.ts';

/** How the drain meets cold air: the coldest that is met, °C, and s until standing water is at 0 °C and solid. */
export type Frost = { readonly air: number; readonly cold: number; readonly solid: number };

/** What is bought along it: m of pipe, m inside, what catches the water when it stops, m of foam. */
export type Along = {
  readonly run: number;
  readonly size: number;
  readonly second?: 'pan' | 'overflow' | 'switch' | 'none';
  readonly insulation: number;
};

export type CondensateResult = ResultBase & {
  /** Whether the cabinet sucks or presses where the drain leaves. */
  readonly pulls: boolean;
  /** Litres an hour at full speed, as its data sheet wrings water out of the air. */
  readonly water: Outcome<Range>;
  /** Pa at the drain's outlet at the most: a loaded filter and a wet coil counted; suction or pressure, above 0. */
  readonly pressure: Outcome<Range>;
  /** The trap for the largest of it, and the height that it takes with its pipe, m. */
  readonly trap: Outcome<Trap>;
  readonly room: Outcome<number>;
  /** m that the drain must lose along its way, at the least. */
  readonly fallLeast: Outcome<number>;
  /** Share of what the pipe carries half full, at the fall it has. */
  readonly filled: Outcome<Range>;
  /** s until the pan runs over with its drain stopped. */
  readonly panTime: Outcome<number>;
  readonly frost: Outcome<Frost>;
  readonly along: Outcome<Along>;
};
