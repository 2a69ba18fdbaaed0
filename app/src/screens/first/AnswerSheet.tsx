import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { usePlanner } from '../../services.ts';
import { AnswerLines } from './AnswerLines.tsx';
import { type FirstAnswer, firstAnswer } from './answer.ts';
import { MissingLine } from './MissingLine.tsx';
import { NextSteps } from './NextSteps.tsx';

/** One sentence, then the lines, then what to do next. */
export function AnswerSheet() {
  const plan = usePlanner((p) => p.plan);
  const computing = usePlanner((p) => p.computing);
  if (!plan) return null;
  const answer = firstAnswer(plan);
  return (
    <section className="sheet first-answer" aria-labelledby="answer-title" aria-busy={computing}>
      <h2 id="answer-title" tabIndex={-1}>
        What it says so far
      </h2>
      <Sentence answer={answer} />
      <MissingLine paths={answer.missing} />
      <AnswerLines answer={answer} />
      <NextSteps answer={answer} />
    </section>
  );
}

function Sentence({ answer: { heating, night, units } }: { answer: FirstAnswer }) {
  if (!heating)
    return <p className="answer-sentence">A few answers more, and the heat this house needs can be said.</p>;
  const holding = units.filter((u) => u.spare && u.spare.likely >= 0);
  return (
    <p className="answer-sentence">
      On the coldest normal night this house needs about{' '}
      <Quantity value={heating.likely} kind="power" significant={2} /> of heat
      {units.length === 0 && (
        <>
          ; a unit that still gives <QuantityRange range={heating} kind="power" />
          {night !== undefined && (
            <>
              {' '}
              at <Quantity value={night} kind="temperature" />
            </>
          )}{' '}
          would do.
        </>
      )}
      {units.length > 0 && holding.length === 0 && <>, and none of the units entered gives that much then.</>}
      {holding.length > 0 && <>, and {holding.map((u) => u.name).join(' and ')} would hold it.</>}
    </p>
  );
}
