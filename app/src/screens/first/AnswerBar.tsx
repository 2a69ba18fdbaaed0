import { firstAnswer } from '@kneewall/engine';
import { Quantity } from '../../quantity/Quantity.tsx';
import { usePlanner } from '../../services.ts';

/** On a phone the answer lies below the questions; this line of it stays in sight and leads there. */
export function AnswerBar() {
  const plan = usePlanner((p) => p.plan);
  if (!plan) return null;
  const { heating } = firstAnswer(plan);
  const show = () => {
    const title = document.getElementById('answer-title');
    title?.scrollIntoView({ block: 'start' });
    title?.focus();
  };
  return (
    <button type="button" className="answer-bar" onClick={show}>
      <span>
        Coldest night: {heating ? <Quantity value={heating.likely} kind="power" significant={2} /> : 'not known yet'}
      </span>
      <span className="answer-more">The whole answer</span>
    </button>
  );
}
