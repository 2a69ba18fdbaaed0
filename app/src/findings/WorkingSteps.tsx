import { formulaTitle, knownTitle, type Source, type Step } from '@kneewall/engine';
import { pathLabel } from '@kneewall/project';
import { PlainNumber } from '../quantity/PlainNumber.tsx';
import { useSession } from '../services.ts';
import { SourceWords } from './SourceWords.tsx';

type Sources = Readonly<Record<string, Source>>;
/** The calculation, step by step, in the units it was made in. */
export function WorkingSteps({ steps, sources }: { steps: readonly Step[]; sources: Sources }) {
  if (steps.length === 0) return null;
  return (
    <section className="working">
      <h3>The working</h3>
      <p className="field-help">In the units it was worked out in, from the likely values.</p>
      <ol>
        {steps.map((step, i) => (
          // Steps have no name of their own and never change places within a working.
          <li key={`${step.symbol}-${i.toString()}`}>
            <OneStep step={step} before={steps.slice(0, i)} sources={sources} />
          </li>
        ))}
      </ol>
    </section>
  );
}

function OneStep({ step, before, sources }: { step: Step; before: readonly Step[]; sources: Sources }) {
  const project = useSession((s) => s.project);
  const inputs = Object.entries(step.inputs);
  const words = formulaTitle[step.formula];
  return (
    <>
      <p className="step-line">
        <span className="step-symbol">{step.symbol}</span>
        {words === undefined && (
          <>
            {' = '}
            <code>{step.formula}</code>
          </>
        )}
        {' = '}
        <strong>
          <PlainNumber value={step.value} /> {step.unit}
        </strong>
      </p>
      {words !== undefined && (
        <p className="step-note">
          {step.path ? pathLabel(step.path, project) : words}
          {step.known && <span className="standing"> ({knownTitle[step.known]})</span>}
        </p>
      )}
      {inputs.length > 0 && (
        <ul className="step-inputs">
          {inputs.map(([symbol, value]) => (
            <li key={symbol}>
              {symbol} = <PlainNumber value={value} />{' '}
              <InputKnown earlier={before.findLast((s) => s.symbol === symbol)} />
            </li>
          ))}
        </ul>
      )}
      <p className="step-note">
        <SourceWords source={sources[step.source]} id={step.source} />
      </p>
    </>
  );
}

/** The unit of an input and how it is known, where an earlier step brought it. */
function InputKnown({ earlier }: { earlier: Step | undefined }) {
  if (!earlier) return null;
  return (
    <>
      {earlier.unit}{' '}
      <span className="standing">({earlier.known ? knownTitle[earlier.known] : 'worked out above'})</span>
    </>
  );
}
