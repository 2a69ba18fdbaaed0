import {
  answerTitles,
  type FirstAnswer,
  type FirstWinter,
  nothingStops,
  printerFor,
  type Spread,
  sizesWords,
  unitStatus,
  unitWords,
  winterWords,
} from '@kneewall/engine';
import type { ReactNode } from 'react';
import { FindingLine } from '../../findings/FindingLine.tsx';
import { StatusMark } from '../../findings/StatusMark.tsx';
import { Drivers } from '../../quantity/Drivers.tsx';
import { RangeTape } from '../../quantity/RangeTape.tsx';
import { useUnits } from '../../services.ts';

/** Each answer as low, likely and high, with its largest unknown. */
export function AnswerLines({
  answer: { heating, winter, cooling, units, stops, gatesChecked, partly },
}: {
  answer: FirstAnswer;
}) {
  const print = printerFor(useUnits());
  return (
    <>
      {heating && (
        <SpreadLine title={answerTitles.heating} spread={heating}>
          {winter && winter.verdict !== 'contradicts' && <p className="answer-winter">{winterWords(winter, print)}</p>}
        </SpreadLine>
      )}
      {winter?.verdict === 'contradicts' && <Contradiction winter={winter} words={winterWords(winter, print)} />}
      {units.length > 0 && (
        <div className="answer-line">
          <h3>{answerTitles.units}</h3>
          <ul className="answer-units">
            {units.map((unit) => (
              <li key={unit.id}>
                <StatusMark status={unitStatus(unit)} />
                <span>{unitWords(unit, print)}</span>
              </li>
            ))}
          </ul>
        </div>
      )}
      {units.length === 0 && heating && !partly && (
        <div className="answer-line">
          <h3>{answerTitles.sizes}</h3>
          <p>{sizesWords(heating, print)}</p>
        </div>
      )}
      {(stops.length > 0 || gatesChecked) && (
        <div className="answer-line">
          <h3>{answerTitles.stops}</h3>
          {stops.length === 0 && <p>{nothingStops}</p>}
          {stops.map((f) => (
            <FindingLine key={f.id} finding={f} />
          ))}
        </div>
      )}
      {cooling && <SpreadLine title={answerTitles.cooling} spread={cooling} />}
    </>
  );
}

function SpreadLine({ title, spread, children }: { title: string; spread: Spread; children?: ReactNode }) {
  return (
    <div className="answer-line">
      <h3>{title}</h3>
      <RangeTape range={spread} kind="power" />
      {children}
      <Drivers spread={spread} kind="power" most={1} />
    </div>
  );
}

/** The second witness, beside the first and not under it: its own tape and what to look at. */
function Contradiction({ winter, words }: { winter: FirstWinter; words: string }) {
  return (
    <div className="answer-line answer-contradiction">
      <h3>{answerTitles.contradiction}</h3>
      <RangeTape range={winter.fuel} kind="power" />
      <p>{words}</p>
      <Drivers spread={winter.fuel} kind="power" most={1} />
    </div>
  );
}
