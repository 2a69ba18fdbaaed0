import type { DuctShape } from '@kneewall/engine';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useServices } from '../../../services.ts';
import { within } from './dragSteps.ts';
import { sizeChanges } from './sizeChanges.ts';
import { type StockedLine, stockedLine } from './stockedLine.ts';

/** A section taken hold of: its sizes, where among them it was, and where it is now. */
type Held = { readonly line: StockedLine; readonly now: number };

/**
 * Takes one section through its stocked sizes. Every step is only tried out, so that its consequences show; letting
 * go makes one act of it, giving up makes none.
 */
export function useSizeDrag(id: string, shape: DuctShape) {
  const { session } = useServices();
  const held = useRef<Held>(undefined);
  // What is drawn is the same as what is held; the events read the ref, since they may come before a drawing.
  const [drawn, draw] = useState<Held>();
  const key = JSON.stringify(shape);
  const own = useMemo(() => stockedLine(JSON.parse(key)), [key]);
  const line = drawn?.line ?? own;
  const show = (next: Held | undefined) => {
    held.current = next;
    draw(next);
  };
  const take = (): void => {
    if (!held.current) show({ line: own, now: own.at });
  };
  const to = (place: number): void => {
    const was = held.current;
    if (!was) return;
    const now = within(place, was.line.sizes.length);
    const size = was.line.sizes[now];
    if (now === was.now || !size) return;
    show({ ...was, now });
    session.tryOut(now === was.line.at ? [] : sizeChanges(id, size));
  };
  const keep = (): void => {
    const was = held.current;
    const size = was?.line.sizes[was.now];
    if (!was || !size) return;
    show(undefined);
    if (was.now === was.line.at) session.tryOut([]);
    else session.change(sizeChanges(id, size));
  };
  const giveUp = (): void => {
    if (!held.current) return;
    show(undefined);
    session.tryOut([]);
  };
  useEffect(
    () => () => {
      if (held.current) session.tryOut([]);
    },
    [session],
  );
  return { line, now: drawn?.now ?? line.at, nowAt: () => held.current?.now ?? line.at, take, to, keep, giveUp };
}
