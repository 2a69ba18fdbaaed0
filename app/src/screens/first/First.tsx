import { type Bunch, bunchesFor, fieldOf } from '@kneewall/project';
import { FormNode } from '../../form/FormNode.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { useSession } from '../../services.ts';
import { UnitsSwitch } from '../../shell/ViewSwitches.tsx';
import { AnswerSheet } from './AnswerSheet.tsx';
import './First.css';

/** A handful of questions, and at once what they already say. */
export function First() {
  const project = useSession((s) => s.project);
  return (
    <>
      <header className="screen-head">
        <h1>First answer</h1>
        <p className="lead">
          Answer what you know and leave the rest empty: “don’t know” is an answer too. What follows from the answers so
          far is shown at once.
        </p>
        <div className="first-units">
          <UnitsSwitch />
        </div>
      </header>
      <div className="first">
        <div className="first-questions">
          {bunchesFor(project).map((bunch) => (
            <Questions key={bunch.title} bunch={bunch} />
          ))}
        </div>
        <AnswerSheet />
      </div>
    </>
  );
}

function Questions({ bunch }: { bunch: Bunch }) {
  return (
    <Sheet title={bunch.title}>
      <p className="field-help">{bunch.why}</p>
      <div className="fields-grid">
        {bunch.questions.map((question) => (
          <FormNode key={question.path} node={fieldOf(question)} path={question.path.split('.')} depth={1} />
        ))}
      </div>
    </Sheet>
  );
}
