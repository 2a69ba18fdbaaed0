import type { SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { useRoute } from '../route/route.ts';
import { useSession } from '../services.ts';
import { enteredBelow } from './enteredBelow.ts';
import { FormNode } from './FormNode.tsx';
import './GroupFields.css';

type Props = { readonly node: SchemaNode; readonly path: readonly string[]; readonly depth: number };

/** Fields that belong together. Groups inside groups are folded until somebody wants them. */
export function GroupFields({ node, path, depth }: Props) {
  const fields = <Fields node={node} path={path} depth={depth} />;
  const count = useSession((s) => enteredBelow(s.project, path));
  const wanted = useRoute().field?.startsWith(`${path.join('.')}.`) === true;
  const [open, setOpen] = useState(false);
  if (depth === 0) return fields;
  return (
    <details className="fold" open={open || wanted} onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>
        <span className="fold-title">{node.meta.label}</span>
        <span className="fold-count">{count === 0 ? 'nothing entered' : `${count} entered`}</span>
      </summary>
      {node.meta.help && <p className="field-help">{node.meta.help}</p>}
      {(open || wanted) && fields}
    </details>
  );
}

/** Plain fields side by side, then what folds. Also the inside of one entry of a list. */
export function Fields({ node, path, depth }: Props) {
  const all = Object.entries(node.children);
  const isOpen = (n: SchemaNode) => ['group', 'map', 'points'].includes(n.meta.node);
  const plain = all.filter(([, n]) => !isOpen(n));
  const folded = all.filter(([, n]) => isOpen(n));
  return (
    <div className="fields">
      {plain.length > 0 && (
        <div className="fields-grid">
          {plain.map(([key, child]) => (
            <FormNode key={key} node={child} path={[...path, key]} depth={depth + 1} />
          ))}
        </div>
      )}
      {folded.length > 0 && (
        <div>
          {folded.map(([key, child]) => (
            <FormNode key={key} node={child} path={[...path, key]} depth={depth + 1} />
          ))}
        </div>
      )}
    </div>
  );
}
