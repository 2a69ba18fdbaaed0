import { answerSentence, answerTitles, basisWords, firstAnswer, printerFor } from '@kneewall/engine';
import { usePlanner, useUnits } from '../../services.ts';
import { AnswerLines } from './AnswerLines.tsx';
import { MissingLine } from './MissingLine.tsx';
import { NextSteps } from './NextSteps.tsx';

/** One sentence, then the lines, then what to do next. */
export function AnswerSheet() {
  const plan = usePlanner((p) => p.plan);
  const computing = usePlanner((p) => p.computing);
  const units = useUnits();
  if (!plan) return null;
  const answer = firstAnswer(plan);
  const print = printerFor(units);
  const basis = basisWords(answer, print);
  return (
    <section className="sheet first-answer" aria-labelledby="answer-title" aria-busy={computing}>
      <h2 id="answer-title" tabIndex={-1}>
        {answerTitles.whole}
      </h2>
      <p className="answer-sentence">{answerSentence(answer, print)}</p>
      {basis && <p className="field-help">{basis}</p>}
      <MissingLine paths={answer.missing} />
      <AnswerLines answer={answer} />
      <NextSteps answer={answer} />
    </section>
  );
}
