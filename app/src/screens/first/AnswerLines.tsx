import type { Spread } from '@kneewall/engine';
import { FindingLine } from '../../findings/FindingLine.tsx';
import { StatusMark } from '../../findings/StatusMark.tsx';
import { Drivers } from '../../quantity/Drivers.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { RangeTape } from '../../quantity/RangeTape.tsx';
import type { FirstAnswer } from './answer.ts';

/** Each answer as low, likely and high, with its largest unknown. */
export function AnswerLines({ answer: { heating, cooling, units, stops, gatesChecked } }: { answer: FirstAnswer }) {
  return (
    <>
      {heating && <SpreadLine title="Heat on the coldest night" spread={heating} />}
      {units.length > 0 && (
        <div className="answer-line">
          <h3>Which of the units entered would do</h3>
          <ul className="answer-units">
            {units.map(({ id, name, spare }) => (
              <li key={id}>
                <StatusMark
                  status={!spare ? 'unknown' : spare.low >= 0 ? 'ok' : spare.likely >= 0 ? 'tight' : 'fails'}
                />
                <span>
                  {name}
                  {spare && (
                    <>
                      {': '}
                      {spare.likely >= 0 ? 'to spare ' : 'short by '}
                      <Quantity value={Math.abs(spare.likely)} kind="power" />
                    </>
                  )}
                </span>
              </li>
            ))}
          </ul>
        </div>
      )}
      {units.length === 0 && heating && (
        <div className="answer-line">
          <h3>Size classes that would do</h3>
          <p>
            Units that give <QuantityRange range={heating} kind="power" /> on that night. That is what a data sheet must
            show at that outdoor temperature, not the size printed on the box.
          </p>
        </div>
      )}
      {(stops.length > 0 || gatesChecked) && (
        <div className="answer-line">
          <h3>What stops it outright</h3>
          {stops.length === 0 && <p>Nothing entered so far.</p>}
          {stops.map((f) => (
            <FindingLine key={f.id} finding={f} />
          ))}
        </div>
      )}
      {cooling && <SpreadLine title="Cooling on the hottest afternoon" spread={cooling} />}
    </>
  );
}

function SpreadLine({ title, spread }: { title: string; spread: Spread }) {
  return (
    <div className="answer-line">
      <h3>{title}</h3>
      <RangeTape range={spread} kind="power" />
      <Drivers spread={spread} kind="power" most={1} />
    </div>
  );
}
