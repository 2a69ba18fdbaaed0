import { listsOf, sheetsOf } from '@kneewall/documents';
import type { Plan } from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { useState } from 'react';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';

type Made = { readonly plan: Plan; readonly project: Project; readonly units: System };

/** Each list for a spreadsheet and each drawing by itself, and the whole plan as JSON. Made when they are asked for. */
export function SinglePapers(made: Made) {
  const [open, setOpen] = useState(false);
  return (
    <details className="part-choice" open={open} onToggle={({ currentTarget }) => setOpen(currentTarget.open)}>
      <summary>Lists and drawings by themselves</summary>
      {open && <Files {...made} />}
    </details>
  );
}

function Files({ plan, project, units }: Made) {
  return (
    <>
      <div className="buttons">
        {listsOf(plan, project, units).map(({ file, title, csv }) => (
          <Button key={file} onClick={() => handOver(file, csv, 'text/csv')}>
            {title} (CSV)
          </Button>
        ))}
      </div>
      <div className="buttons">
        {sheetsOf(plan, project, units).map(({ file, title, svg }) => (
          <Button key={file} onClick={() => handOver(file, svg, 'image/svg+xml')}>
            {title} (SVG)
          </Button>
        ))}
        <Button onClick={() => handOver('plan.json', JSON.stringify({ schema: 1, ...plan }), 'application/json')}>
          The whole plan (JSON)
        </Button>
      </div>
    </>
  );
}
