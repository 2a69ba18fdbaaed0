import { dotted, type SchemaNode } from '@kneewall/project';
import { useEffect, useRef, useState } from 'react';
import { useRoute } from '../route/route.ts';
import { useUnits } from '../services.ts';
import { Board } from './Board.tsx';
import { drawnWords } from './drawnWords.ts';
import { OutlineFacts } from './OutlineFacts.tsx';
import { PointList } from './PointList.tsx';
import { usePoints } from './usePoints.ts';
import { WayFacts } from './WayFacts.tsx';
import './Drawing.css';

type Props = { readonly node: SchemaNode; readonly path: readonly string[] };

/** A field that is drawn: folded to its length or area, unfolded a board and beside it the same points in numbers. */
export function DrawnField({ node, path }: Props) {
  const drawn = usePoints(path);
  const units = useUnits();
  const fold = useRef<HTMLDetailsElement>(null);
  const wanted = useRoute().field === dotted(path);
  const [open, setOpen] = useState(false);
  useEffect(() => {
    if (wanted) fold.current?.scrollIntoView({ block: 'center' });
  }, [wanted]);
  const { closed } = drawn.around;
  const shown = open || wanted;
  return (
    <details className="fold" ref={fold} open={shown} onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>
        <span className="fold-title">{node.meta.label}</span>
        <span className="fold-count">{drawnWords(drawn.points, closed, units)}</span>
      </summary>
      {shown && (
        <div className="drawing">
          {node.meta.help && <p className="field-help">{node.meta.help}</p>}
          {closed ? <OutlineFacts path={path} drawn={drawn} /> : <WayFacts path={path} drawn={drawn} />}
          <div className="drawing-both">
            <Board drawn={drawn} label={node.meta.label} />
            <PointList drawn={drawn} label={node.meta.label} />
          </div>
          {drawn.problems.map((p) => (
            <p key={p.code} className="field-problem" role="alert">
              {p.mend}
            </p>
          ))}
        </div>
      )}
    </details>
  );
}
