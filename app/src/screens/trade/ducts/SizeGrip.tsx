import { type DuctFact, type Grip, sizeWords } from '@kneewall/documents';
import type { KeyboardEvent, PointerEvent } from 'react';
import { useRef } from 'react';
import { useSession, useUnits } from '../../../services.ts';
import { dragSteps, keyStep, pxPerStep } from './dragSteps.ts';
import { boughtState } from './sizeChanges.ts';
import { useSizeDrag } from './useSizeDrag.ts';

type Props = {
  readonly duct: DuctFact & { readonly size: NonNullable<DuctFact['size']> };
  readonly grip: Grip;
  readonly chosen: boolean;
  readonly pick: (id: string) => void;
  /** Told when somebody pulls at a section that cannot be resized. */
  readonly refuse: (id: string) => void;
};

type Pulled = { readonly pointer: number; readonly x: number; readonly y: number; readonly grip: Grip };

/** The grip on a section's wall: pulled outward it is the next larger stocked size, inward the next smaller. */
export function SizeGrip({ duct, grip, chosen, pick, refuse }: Props) {
  const units = useUnits();
  const fixed = useSession((s) => s.barred ?? boughtState(s.project.items, duct.id)) !== undefined;
  const drag = useSizeDrag(duct.id, { kind: duct.kind, ...duct.size });
  const { line } = drag;
  const pulled = useRef<Pulled>(undefined);
  const begin = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    pick(duct.id);
    if (fixed) refuse(duct.id);
    // A thumb that scrolls the page must not change a size: by touch a section is chosen first.
    if (fixed || (event.pointerType === 'touch' && !chosen)) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    pulled.current = { pointer: event.pointerId, x: event.clientX, y: event.clientY, grip };
    drag.take();
  };
  const pull = (event: PointerEvent<HTMLDivElement>) => {
    const from = pulled.current;
    if (from?.pointer === event.pointerId)
      drag.to(line.at + dragSteps([event.clientX - from.x, event.clientY - from.y], from.grip.out));
  };
  const done = (end: () => void) => () => {
    pulled.current = undefined;
    end();
  };
  const press = (event: KeyboardEvent) => {
    if (event.key === 'Escape') done(drag.giveUp)();
    const next = keyStep(event.key, drag.nowAt(), line.sizes.length);
    if (next === undefined) return;
    event.preventDefault();
    pick(duct.id);
    if (fixed) return refuse(duct.id);
    drag.take();
    drag.to(next);
  };
  const standing = pulled.current?.grip ?? grip;
  const shift = pulled.current ? (drag.now - line.at) * pxPerStep : 0;
  return (
    <div
      className={`size-grip ${fixed ? 'fixed' : ''} ${chosen ? 'chosen' : ''}`}
      style={{ left: standing.at[0] + standing.out[0] * shift, top: standing.at[1] + standing.out[1] * shift }}
      role="slider"
      tabIndex={0}
      aria-label={`Size of ${duct.tag}, ${duct.name}`}
      aria-disabled={fixed}
      aria-valuemin={0}
      aria-valuemax={line.sizes.length - 1}
      aria-valuenow={drag.now}
      aria-valuetext={sizeWords(duct.size, units)}
      onPointerDown={begin}
      onPointerMove={pull}
      onPointerUp={done(drag.keep)}
      onPointerCancel={done(drag.giveUp)}
      onKeyDown={press}
      onKeyUp={(e) => keyStep(e.key, 0, 1) !== undefined && drag.keep()}
      onBlur={done(drag.keep)}
    >
      <GripMark out={standing.out} fixed={fixed} />
    </div>
  );
}

/** Two arrow heads across the wall; a padlock where nothing can be pulled. */
function GripMark({ out, fixed }: { out: Grip['out']; fixed: boolean }) {
  const turn = (Math.atan2(out[1], out[0]) * 180) / Math.PI;
  return (
    <svg viewBox="-10 -10 20 20" width="20" height="20" aria-hidden="true" focusable="false">
      <circle r="9" />
      {fixed ? (
        <path className="size-grip-mark" d="M-4 -1 H4 V5 H-4 Z M-2.5 -1 V-3 A2.5 2.5 0 0 1 2.5 -3 V-1" />
      ) : (
        <path className="size-grip-mark" d="M-2 -4 L-6 0 L-2 4 M2 -4 L6 0 L2 4" transform={`rotate(${turn})`} />
      )}
    </svg>
  );
}
