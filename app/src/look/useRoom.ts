import { type RefObject, useEffect, useRef, useState } from 'react';

/** An element's room in CSS pixels and the size of its letters; no width until it is known. */
export type Room = { readonly width: number; readonly em: number };

/** The room of an element, kept as it changes: for pictures drawn one to one, whose words grow with the page's. */
export function useRoom<E extends Element>(): readonly [RefObject<E | null>, Room] {
  const ref = useRef<E>(null);
  const [room, setRoom] = useState<Room>({ width: 0, em: 16 });
  useEffect(() => {
    const element = ref.current;
    if (!element) return;
    const watch = new ResizeObserver(([entry]) => {
      const em = Number.parseFloat(getComputedStyle(element).fontSize) || 16;
      setRoom({ width: Math.floor(entry?.contentRect.width ?? 0), em });
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return [ref, room];
}
