import { type DuctLayout, pictureOf } from '@kneewall/documents';
import { type MouseEvent, useMemo } from 'react';
import { useRoom } from '../../../look/useRoom.ts';
import { useUnits } from '../../../services.ts';
import { Duct, HandlerName, pointsOf, Rooms, Words } from './DuctShapes.tsx';
import { nearestDuct } from './nearestDuct.ts';
import { Scale } from './PlanScale.tsx';
import { faceTexts, roomy, textsFor } from './planTexts.ts';
import { SizeGrip } from './SizeGrip.tsx';

type Props = {
  readonly layout: DuctLayout;
  readonly north: number | undefined;
  readonly chosen: string | undefined;
  readonly hardest: ReadonlySet<string>;
  readonly pick: (id: string) => void;
  readonly refuse: (id: string) => void;
};

/** Half the side of a size grip as it is seen, px; a finger gets more. */
const gripHalf = 9;
/** Room round the house for labels, px. */
const rim = { across: 12, along: 32 };

/** The ducts from above, one pixel of the picture a pixel of the screen, so that its words stay readable. */
export function DuctPlan({ layout, north, chosen, hardest, pick, refuse }: Props) {
  const [ref, { width, em }] = useRoom<HTMLElement>();
  const letters = 0.75 * em;
  const units = useUnits();
  const { box, scaled } = layout;
  const wide = Math.max(0.1, box.right - box.left);
  const perMetre = Math.max(0, width - 2 * rim.across) / wide;
  const height = (box.top - box.bottom) * perMetre + 2 * rim.along;
  const picture = useMemo(
    () =>
      width === 0
        ? undefined
        : pictureOf(layout, {
            field: { x: 0, y: 0, width, height },
            perMetre,
            letters,
            mark: 0.62 * em,
            widthLeast: 5,
            grip: { half: gripHalf, clear: width >= roomy },
            ductTexts: textsFor(width, units),
            faceTexts: faceTexts(width, units),
          }),
    [layout, width, height, perMetre, units, em, letters],
  );
  const choose = (event: MouseEvent<SVGSVGElement>) => {
    const at = event.currentTarget.getBoundingClientRect();
    const found = picture && nearestDuct(picture, [event.clientX - at.left, event.clientY - at.top]);
    if (found !== undefined) pick(found);
  };
  return (
    <figure className="duct-plan" ref={ref}>
      {picture && (
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true" onClick={choose}>
          <Rooms picture={picture} letters={letters} />
          {picture.ducts.map((d) => (
            <Duct key={d.duct.id} drawn={d} chosen={d.duct.id === chosen} hard={hardest.has(d.duct.id)} />
          ))}
          <polygon className="duct-handler" points={pointsOf(picture.handler)} />
          <HandlerName picture={picture} />
          {picture.faces.map(({ face, box: b }) => (
            <g key={face.id} className="duct-face">
              <rect x={b.x} y={b.y} width={b.width} height={b.height} />
              <text x={b.x + b.width / 2} y={b.y + b.height / 2 + letters / 3}>
                {face.tag}
              </text>
            </g>
          ))}
          {picture.labels.map((l) => (
            <Words
              key={l.id}
              label={l}
              letters={letters}
              className={l.id === chosen ? 'duct-label chosen' : 'duct-label'}
            />
          ))}
          {scaled && <Scale width={width} height={height} perMetre={perMetre} north={north} />}
        </svg>
      )}
      {picture?.grips.map((grip) => {
        const duct = layout.ducts.find((d) => d.duct.id === grip.id)?.duct;
        const { size } = duct ?? {};
        if (!duct || !size || (width < roomy && grip.id !== chosen)) return null;
        const own = { duct: { ...duct, size }, grip, chosen: grip.id === chosen };
        return <SizeGrip key={grip.id} {...own} pick={pick} refuse={refuse} />;
      })}
    </figure>
  );
}
