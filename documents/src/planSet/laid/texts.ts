import type { Margin } from '../block.ts';
import type { Looks } from '../styles.ts';
import { type Inline, inlinesOf, type Look } from './inlines.ts';
import type { Laid, Setting, Text } from './setting.ts';

export function marginOf(block: Laid, looks: Looks): Margin {
  const style = 'style' in block && block.style ? looks[block.style] : undefined;
  return ('margin' in block ? block.margin : undefined) ?? style?.margin ?? [0, 0, 0, 0];
}

export function lookOf({ style, bold }: Pick<Text, 'style' | 'bold'>, looks: Looks): Look {
  const look = looks[style ?? 'body'];
  return { size: look.fontSize, bold: bold ?? look.bold ?? false, white: look.white ?? false };
}

/** A text in words, in its own look. */
export function wordsOf(block: Text, setting: Setting): readonly Inline[] {
  const known = setting.inWords.get(block);
  if (known) return known;
  const made = inlinesOf(block.text, lookOf(block, setting.looks), setting);
  setting.inWords.set(block, made);
  return made;
}
