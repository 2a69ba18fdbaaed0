import { bagFlow, lookWords, type NextReading, readingWords, type VisitFound } from '@kneewall/engine';
import type { Entered, QuantityKind } from '@kneewall/project';
import { useState } from 'react';
import { Button } from '../../../look/Button.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { QuantityBoxes } from '../../../quantity/QuantityBoxes.tsx';
import { QuantityEcho } from '../../../quantity/QuantityEcho.tsx';
import { useQuantityDraft } from '../../../quantity/useQuantityDraft.ts';
import { useServices, useSession } from '../../../services.ts';
import { useReadingName } from '../../../words/useReadingName.ts';
import { meansFor, meansWords } from './meansWords.ts';
import { readingEdit } from './readingEdits.ts';

type Props = { readonly visit: string; readonly found: VisitFound };

/** One reading at a time: the one that tells most comes first, any other can be chosen. */
export function TakeReading({ visit, found }: Props) {
  const nameOf = useReadingName();
  const [chosen, setChosen] = useState<string>();
  const [best] = found.next;
  const id = chosen ?? best?.id;
  if (id === undefined) return null;
  const looks = found.next.filter((n) => n.id.startsWith('look/'));
  return (
    <section className="take" aria-label="One reading">
      <label className="take-choice">
        <span>What to read</span>
        <select className="box" value={id} onChange={(e) => setChosen(e.target.value)}>
          <optgroup label="Numbers">
            {found.expected.map((e) => (
              <option key={e.id} value={e.id}>
                {nameOf(e.id)}
              </option>
            ))}
          </optgroup>
          <optgroup label="Looks">
            {looks.map((n) => (
              <option key={n.id} value={n.id}>
                {nameOf(n.id)}
              </option>
            ))}
          </optgroup>
        </select>
      </label>
      {best && id === best.id && <TellsMost next={best} />}
      <Reading key={id} id={id} visit={visit} found={found} kept={() => setChosen(undefined)} />
    </section>
  );
}

const TellsMost = ({ next }: { next: NextReading }) => (
  <p className="field-help">
    Tells most for its work: about <Quantity value={60 * next.minutes} kind="time" />
    {next.times > 1 ? `, read ${next.times} times` : ''}.
  </p>
);

function Reading({ id, visit, found, kept }: Props & { readonly id: string; readonly kept: () => void }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const taken = useSession((s) => s.project.readings) ?? {};
  const keep = (value: Entered, means: string, repeats: number) => {
    const refused = session.change([readingEdit(taken, { visit, expected: id, means, repeats, value })]);
    if (refused.length === 0) kept();
  };
  const look = lookWords[id.split(':')[0] ?? id];
  if (look !== undefined)
    return (
      <div className="take-look">
        <p>{look}</p>
        {([1, 0] as const).map((value) => (
          <Button
            key={value}
            disabled={barred}
            onClick={() => keep({ value, known: 'measured', as: value === 1 ? 'yes' : 'no' }, 'watch', 1)}
          >
            {value === 1 ? 'Yes' : 'No'}
          </Button>
        ))}
      </div>
    );
  const expected = found.expected.find((e) => e.id === id);
  const words = readingWords[id.split(':')[0] ?? id];
  if (!expected || !words) return null;
  return (
    <>
      <p className="field-help">{words.how}</p>
      <p>
        Expected here: <Quantity value={expected.value} kind={words.kind} />; good from{' '}
        <QuantityRange
          range={{ low: expected.band.min, likely: expected.value, high: expected.band.max }}
          kind={words.kind}
        />
        .
      </p>
      <NumberRead id={id} kind={words.kind} group={expected.group} barred={barred} keep={keep} />
    </>
  );
}

type NumberProps = {
  readonly id: string;
  readonly kind: QuantityKind;
  readonly group: VisitFound['expected'][number]['group'];
  readonly barred: boolean;
  readonly keep: (value: Entered, means: string, repeats: number) => void;
};

function NumberRead({ id, kind, group, barred, keep }: NumberProps) {
  const [entered, setEntered] = useState<Entered | undefined>();
  const [means, setMeans] = useState<string>(meansFor[group][0] ?? 'gauge');
  const [repeats, setRepeats] = useState(group === 'flow' ? 3 : 1);
  const draft = useQuantityDraft(kind, entered, 'measured', (after) => {
    setEntered(after);
    return true;
  });
  // What is still being typed is taken by leaving its box, which a press on the button does.
  const understood = draft.read.state === 'understood';
  const box = `read-${id}`;
  const meta = { node: 'quantity', label: 'What you read', kind } as const;
  return (
    <div className="take-number">
      <div>
        <label htmlFor={box}>What you read</label>
        <QuantityBoxes id={box} meta={meta} kind={kind} draft={draft} barred={barred} />
        <QuantityEcho
          id={`${box}-echo`}
          read={draft.read}
          typing={draft.typing}
          entered={entered}
          meta={meta}
          choose={draft.choose}
        />
      </div>
      <label className="take-choice">
        <span>Read with</span>
        <select className="box" value={means} onChange={(e) => setMeans(e.target.value)}>
          {meansFor[group].map((m) => (
            <option key={m} value={m}>
              {meansWords[m]}
            </option>
          ))}
        </select>
      </label>
      <label className="take-choice">
        <span>Times read, this being their average</span>
        <select className="box" value={repeats} onChange={(e) => setRepeats(Number(e.target.value))}>
          {[1, 2, 3, 4, 5, 6, 9].map((n) => (
            <option key={n} value={n}>
              {n}
            </option>
          ))}
        </select>
      </label>
      {means === 'bag' && <BagSeconds give={(flow, as) => setEntered({ value: flow, known: 'measured', as })} />}
      <Button
        look="strong"
        disabled={barred || !(entered || understood)}
        onClick={() => entered && keep(entered, means, repeats)}
      >
        Keep this reading
      </Button>
    </div>
  );
}

/** A kitchen bag's seconds as a flow: its volume is not constant, so it goes by its calibration. */
function BagSeconds({ give }: { give: (flow: number, as: string) => void }) {
  const [text, setText] = useState('');
  const seconds = Number(text.replace(',', '.'));
  const flow = text.trim() === '' ? undefined : bagFlow(seconds);
  return (
    <div>
      <label className="take-choice">
        <span>Or seconds to fill a kitchen bag of 26 by 36 in (66 by 91 cm)</span>
        <input
          className="box"
          inputMode="decimal"
          autoComplete="off"
          value={text}
          onChange={(e) => setText(e.target.value)}
          onBlur={() => flow !== undefined && give(flow, `${text.trim()} s`)}
        />
      </label>
      <p className="field-help" aria-live="polite">
        {text.trim() !== '' && flow === undefined
          ? 'That bag tells between 2 and 10 seconds: take a larger one for a faster register, a smaller one for a slower.'
          : 'Stop the clock when it first stands full.'}
      </p>
    </div>
  );
}
