import type { Entered, Known, QuantityKind } from '@kneewall/project';
import { useState } from 'react';
import { useKeepTyped } from '../form/useKeepTyped.ts';
import { useUnits } from '../services.ts';
import { boxTexts, enteredFrom, type Texts, type Understood, understand, untouchedKept } from './understand.ts';

export type QuantityDraft = {
  /** What the boxes show: what is being typed, else what stands in the document. */
  readonly texts: Texts;
  readonly read: Understood;
  /** The boxes hold something that is not in the document yet. */
  readonly typing: boolean;
  type(key: keyof Texts, text: string): void;
  /** Takes one of two readings. */
  choose(key: keyof Texts, text: string): void;
  /** On leaving a box: what is understood goes into the document, whole; what is not stays in the box. */
  leave(): void;
  drop(): void;
  setRanged(ranged: boolean): void;
};

/** The text of a quantity on its way into the document. */
export function useQuantityDraft(
  kind: QuantityKind,
  entered: Entered | undefined,
  known: Known,
  change: (after: Entered | undefined) => boolean,
): QuantityDraft {
  const units = useUnits();
  const [draft, setDraft] = useState<Texts | undefined>();
  const stands = boxTexts(entered, kind, units);
  const texts = draft ?? stands;
  const commit = (next: Texts) => {
    const now = understand(next, kind, units);
    if (now.state === 'empty' && change(undefined)) setDraft(undefined);
    if (now.state !== 'understood') return;
    const value = untouchedKept(now.value, next, stands, entered);
    if (change(enteredFrom(value, now.as, known, entered))) setDraft(undefined);
  };
  const leave = () => draft && commit(draft);
  useKeepTyped(leave);
  return {
    texts,
    read: understand(texts, kind, units),
    typing: draft !== undefined,
    type: (key, text) => setDraft({ ...texts, [key]: text }),
    choose: (key, text) => {
      const next = { ...texts, [key]: text };
      setDraft(next);
      commit(next);
    },
    leave,
    drop: () => setDraft(undefined),
    setRanged: (ranged) => {
      const { likely } = texts;
      setDraft(ranged ? { low: likely, likely, high: likely } : { likely });
    },
  };
}
