import { forgottenWords, holdPointTitle, type ShoppingList } from '@kneewall/engine';
import type { ReactNode } from 'react';
import { Sheet } from '../../look/Sheet.tsx';
import { useServices, useSession } from '../../services.ts';
import { tickChanges } from './tick.ts';

/** Every tool that a task names; a tick says it is at hand. */
export function ToolsSheet({ list: { tools } }: { list: ShoppingList }) {
  if (tools.length === 0) return null;
  return (
    <Sheet title="Tools">
      <TickFold all={tools}>
        {tools.map((t) => (
          <li key={t.id}>
            <HaveIt line={t.id} name={t.what} have={t.atHand} more={`Before “${holdPointTitle[t.by].title}”.`} />
          </li>
        ))}
      </TickFold>
    </Sheet>
  );
}

/** What no trade names and everybody drives back for, with the reason; a tick says it is at hand. */
export function ForgottenSheet({ list: { forgotten } }: { list: ShoppingList }) {
  if (forgotten.length === 0) return null;
  return (
    <Sheet title="Easily forgotten">
      <p className="field-help">Common practice, no source. Tick what you have.</p>
      <TickFold all={forgotten}>
        {forgotten.map((f) => (
          <li key={f.id}>
            <HaveIt
              line={`forgotten/${f.id}`}
              name={forgottenWords[f.id]?.what ?? f.id}
              have={f.atHand}
              more={forgottenWords[f.id]?.why ?? ''}
            />
          </li>
        ))}
      </TickFold>
    </Sheet>
  );
}

/** Things to tick, folded with how many of them are at hand. */
function TickFold({ all, children }: { all: readonly { readonly atHand: boolean }[]; children: ReactNode }) {
  const here = all.filter((x) => x.atHand).length;
  return (
    <details className="fold">
      <summary>
        <span className="fold-title">
          {all.length} {all.length === 1 ? 'thing' : 'things'} to tick
        </span>
        <span className="fold-count">{here === 0 ? 'none at hand yet' : `${here} at hand`}</span>
      </summary>
      <ul className="buy-ticks">{children}</ul>
    </details>
  );
}

function HaveIt({ line, name, have, more }: { line: string; name: string; have: boolean; more: string }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  return (
    <label className="buy-have">
      <input
        type="checkbox"
        checked={have}
        disabled={barred}
        onChange={(e) => {
          const ticked = { line, name: name.slice(0, 200), amount: '1' };
          session.change(tickChanges(session.now().project, ticked, e.target.checked ? 'hand' : 'open'));
        }}
      />
      <span>
        {name} <span className="field-help">{more}</span>
      </span>
    </label>
  );
}
