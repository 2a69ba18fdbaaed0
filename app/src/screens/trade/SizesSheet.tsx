import {
  changeWords,
  type DuctSizing,
  nextSizeWords,
  passesWords,
  pricesWords,
  printerFor,
  relaxationWords,
  runnerUpWords,
  sizingSentence,
  spaceTakesWords,
  type TradeResults,
} from '@kneewall/engine';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { useServices, useSession, useUnits } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';

/** The best stocked size of every duct, what the next sizes would buy, or what has to give. */
export function SizesSheet({ outcome }: { outcome: TradeResults['air']['sizing'] }) {
  return (
    <Sheet title="Sizes">
      <OutcomeOr outcome={outcome} what="The best sizes">
        {(sizing) => <Found sizing={sizing} />}
      </OutcomeOr>
    </Sheet>
  );
}

function Found({ sizing: d }: { sizing: DuctSizing }) {
  const print = printerFor(useUnits());
  const { sizing } = d;
  const prices = pricesWords(d);
  return (
    <>
      <p className="lead">{sizingSentence(d, print)}</p>
      {prices !== '' && <p>{prices}</p>}
      {sizing.status === 'nothing-fits' ? (
        <Lines lines={sizing.relaxations.map((r) => relaxationWords(d, r, print))} />
      ) : (
        <>
          {d.changed.length > 0 && (
            <>
              <Lines lines={d.changed.map((id) => changeWords(d, id, print))} />
              <TakeSizes sizing={d} />
            </>
          )}
          <p>{runnerUpWords(d, print)}</p>
          {sizing.next.length > 0 && (
            <details className="fold">
              <summary>
                <span className="fold-title">What each next size would buy</span>
              </summary>
              <Lines lines={sizing.next.map((next) => nextSizeWords(d, next, print))} />
            </details>
          )}
        </>
      )}
      <Spaces sizing={d} />
      <p className="field-help">
        At the flows the rooms ask for. What is ordered, arrived or fitted stays as it is; what is there already costs
        nothing at its size, and made new it costs the new duct whole. Spaces and kinds are entered with the ducts
        below; sizes to be had and prices under Work on the project’s page. What then really flows is worked out as soon
        as sizes change.
      </p>
    </>
  );
}

/** What every duct that has to pass a space may still be. */
function Spaces({ sizing: d }: { sizing: DuctSizing }) {
  const print = printerFor(useUnits());
  const lines = Object.values(d.sections).flatMap((s) => (s.space ? [passesWords(s, print)] : []));
  if (lines.length === 0) return null;
  const takes = spaceTakesWords(d, print);
  return (
    <>
      <h3>What the space allows</h3>
      <Lines lines={lines} />
      {takes !== '' && <p>{takes}</p>}
    </>
  );
}

function Lines({ lines }: { lines: readonly string[] }) {
  return (
    <ul className="asides">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

/** Puts the best sizes into the project in one act, which one undo takes back. */
function TakeSizes({ sizing: { sizing, sections, changed } }: { sizing: DuctSizing }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  if (sizing.status !== 'fits') return null;
  const { choice } = sizing.best;
  const take = () =>
    session.change(
      changed.flatMap((id) => {
        const shape = sections[id]?.options.find((o) => o.id === choice[id])?.shape;
        if (!shape) return [];
        const at = (field: string, after: unknown) => ({ path: ['routes', 'ducts', 'sections', id, field], after });
        const size = (value: number | undefined) => (value === undefined ? undefined : { value, known: 'estimated' });
        const [diameter, width, height] =
          'diameter' in shape ? [shape.diameter, undefined, undefined] : [undefined, shape.width, shape.height];
        return [
          ...(sections[id]?.there ? [at('already', 'replaced')] : []),
          at('kind', shape.kind),
          at('diameter', size(diameter)),
          at('width', size(width)),
          at('height', size(height)),
        ];
      }),
    );
  return (
    <Button disabled={barred} onClick={take}>
      Take these sizes
    </Button>
  );
}
