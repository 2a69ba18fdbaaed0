import type { Block } from '../block.ts';
import type { Looks } from '../styles.ts';
import type { Inline, Setter } from './inlines.ts';

/** What blocks are laid out with: the letters and the looks of the set, and what its list of contents names. */
export type Setting = Setter & {
  readonly looks: Looks;
  readonly contents: readonly Titled[];
  /** Texts in words so far: those of a table are asked for twice. */
  readonly inWords: WeakMap<Text, readonly Inline[]>;
};

/** A line of the contents: a title and by which name its page is found. */
export type Titled = { readonly title: string; readonly name: string };

export type Laid = Exclude<Block, { readonly section: unknown }>;

export type Text = Extract<Block, { readonly text: unknown }>;
