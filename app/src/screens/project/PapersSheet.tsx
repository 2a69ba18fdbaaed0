import { type PartId, partIds, partNames } from '@kneewall/documents';
import type { Letters, PrintProgress } from '@kneewall/documents/planSet';
import { useEffect, useRef, useState } from 'react';
import { fileName, handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { keepLastPrint, type LastPrint, lastPrintOf } from '../../papers/lastPrint.ts';
import { type Printing, printApart } from '../../papers/printing.ts';
import { usePlanner, useSession, useUnits } from '../../services.ts';
import { Making } from './Making.tsx';
import { PrintedBefore } from './PrintedBefore.tsx';
import { SinglePapers } from './SinglePapers.tsx';

const dayWords = new Intl.DateTimeFormat('en', { day: 'numeric', month: 'long', year: 'numeric' });

/** The plan set as a file to print or to hand on, in the units shown, in plain or large letters; whole or in parts. */
export function PapersSheet() {
  const plan = usePlanner((p) => p.plan);
  const project = useSession((s) => s.project);
  const kept = useSession(({ origin }) => ('id' in origin ? `${origin.kind}.${origin.id}` : undefined));
  const units = useUnits();
  const printing = useRef<Printing | undefined>(undefined);
  const [making, setMaking] = useState(false);
  const [progress, setProgress] = useState<PrintProgress | undefined>(undefined);
  const [said, setSaid] = useState('');
  const [parts, setParts] = useState<readonly PartId[]>(partIds);
  const [last, setLast] = useState<LastPrint | undefined>(() => (kept === undefined ? undefined : lastPrintOf(kept)));
  const pending = plan?.findings.filter((f) => f.because === 'pending').length ?? 0;
  useEffect(() => () => printing.current?.stop(), []);

  const stop = () => {
    printing.current?.stop();
    setMaking(false);
    setSaid('Stopped; nothing was made.');
  };
  const make = (letters: Letters) => {
    if (!plan) return;
    setMaking(true);
    setSaid('');
    setProgress(undefined);
    printing.current = printApart({ plan, project, units, letters, parts }, setProgress);
    printing.current.done
      .then(({ bytes, marks }) => {
        if (!bytes) return;
        handOver(fileName(project.about?.name, 'pdf'), bytes, 'application/pdf');
        const print = { day: dayWords.format(new Date()), units, letters, parts, marks };
        setLast(print);
        if (kept !== undefined) keepLastPrint(kept, print);
        setSaid('Made. Print it at 100 %, not fitted to the page, and measure the bars on its drawings.');
      })
      .catch((error: Error) => setSaid(`The papers could not be made. ${error.message}`))
      .finally(() => setMaking(false));
  };
  return (
    <Sheet title="Papers">
      <p>
        One PDF with everything: what stands against each step, loads, drawings to scale, what to buy and to do, sheets
        for the readings, the workings and their sources.
      </p>
      {pending > 0 && (
        <p className="field-help">
          {pending === 1 ? 'One check is' : `${pending} checks are`} still being worked out and would be printed as
          unknown.
        </p>
      )}
      <PartChoice chosen={parts} choose={setParts} />
      <div className="buttons">
        <Button look="strong" disabled={!plan || making} onClick={() => make('plain')}>
          Make the plan set
        </Button>
        <Button disabled={!plan || making} onClick={() => make('large')}>
          In large letters
        </Button>
      </div>
      {making && <Making progress={progress} stop={stop} />}
      <p role="status">{making ? 'Being made; that takes some seconds.' : said}</p>
      {plan && last && <PrintedBefore print={last} plan={plan} project={project} />}
      {plan && <SinglePapers plan={plan} project={project} units={units} />}
    </Sheet>
  );
}

/** Which parts go into the set; cover and cautions always do. */
function PartChoice({ chosen, choose }: { chosen: readonly PartId[]; choose: (parts: readonly PartId[]) => void }) {
  return (
    <details className="part-choice">
      <summary>
        {chosen.length === partIds.length ? 'All parts' : `${chosen.length} of ${partIds.length} parts`}
      </summary>
      <fieldset>
        <legend>In the set, behind cover and cautions</legend>
        {partIds.map((part) => (
          <label key={part}>
            <input
              type="checkbox"
              checked={chosen.includes(part)}
              onChange={({ target }) =>
                choose(partIds.filter((p) => (p === part ? target.checked : chosen.includes(p))))
              }
            />
            {partNames[part]}
          </label>
        ))}
      </fieldset>
    </details>
  );
}
