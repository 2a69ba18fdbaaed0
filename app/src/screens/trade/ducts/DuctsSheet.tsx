import { ductFacts, layOutDucts } from '@kneewall/documents';
import type { Plan } from '@kneewall/engine';
import { useMemo, useState } from 'react';
import { Button } from '../../../look/Button.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { usePlanner, useSession } from '../../../services.ts';
import { ChosenDuct } from './ChosenDuct.tsx';
import { DuctPlan } from './DuctPlan.tsx';
import { DuctTables } from './DuctTables.tsx';
import { NowAndBefore } from './NowAndBefore.tsx';
import { boughtState, boughtWords } from './sizeChanges.ts';
import './DuctsSheet.css';

/** The network in plan: sizes, flows, pressures, and one section at a time to change. */
export function DuctsSheet({ plan }: { plan: Plan }) {
  const project = useSession((s) => s.tried ?? s.project);
  const tried = usePlanner((p) => p.tried);
  const shown = tried ?? plan;
  const [picked, setPicked] = useState<string>();
  const [refused, refuse] = useState<string>();
  const pick = (id: string) => {
    setPicked(id);
    refuse(undefined);
  };
  const facts = useMemo(() => ductFacts(shown, project), [shown, project]);
  const layout = useMemo(() => layOutDucts(facts), [facts]);
  const ladder = shown.trades.air?.ladder;
  const hardest = useMemo(
    () => new Set(ladder?.ok ? ladder.value.flatMap((rung) => rung.section ?? []) : []),
    [ladder],
  );
  if (facts.ducts.length === 0) return null;
  const chosen = facts.ducts.find((d) => d.id === picked);
  const bought = refused === undefined ? undefined : boughtState(project.items, refused);
  return (
    <Sheet title="The ducts">
      <NowAndBefore plan={plan} tried={tried} />
      <DuctPlan layout={layout} north={facts.north} chosen={chosen?.id} hardest={hardest} pick={pick} refuse={refuse} />
      <p role="status" className="duct-refused">
        {bought && chosen && `${chosen.tag}: ${boughtWords(bought)}`}
      </p>
      <p className="field-help">{scaleWords(layout.scaled, layout.undrawn)}</p>
      <ul className="duct-choices" aria-label="Choose a section">
        {facts.ducts.map((d) => (
          <li key={d.id}>
            <Button aria-pressed={d.id === chosen?.id} aria-label={`${d.tag}, ${d.name}`} onClick={() => pick(d.id)}>
              {d.tag}
            </Button>
          </li>
        ))}
      </ul>
      {chosen ? (
        <ChosenDuct duct={chosen} facts={facts} plan={shown} hardest={hardest.has(chosen.id)} />
      ) : (
        <p>
          Choose a section, here or in the picture, to see what limits it. Pull its round grip outward for the next
          larger stocked size, inward for the next smaller; Escape gives up.
        </p>
      )}
      <DuctTables facts={facts} hardest={hardest} />
    </Sheet>
  );
}

function scaleWords(scaled: boolean, undrawn: readonly string[]): string {
  const worst = 'The line along the middle marks the way that uses up most of the blower’s pressure.';
  if (scaled) return `Drawn to scale, seen from above, ducts as wide as they are inside. ${worst}`;
  const [first = '', ...others] = undrawn;
  const more = others.length > 0 ? ` and ${others.length} more` : '';
  return `Not to scale: no way in plan is drawn for “${first}”${more}. ${worst}`;
}
