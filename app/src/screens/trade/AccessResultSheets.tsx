import { type TradeResults, type Verdict, verdictOf } from '@kneewall/engine';
import { useId, useState } from 'react';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { AtticHoursSheet } from './AtticHoursSheet.tsx';
import { HatchDrawing } from './HatchDrawing.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PassagePicture } from './passage/PassagePicture.tsx';

type Access = TradeResults['access'];
type Way = Extract<Access['ways'], { ok: true }>['value'][number];

const pieceWords: Readonly<Record<Way['piece'], string>> = {
  handler: 'Air handler',
  handlerCrated: 'Air handler, crated',
  handlerPart: 'Air handler, taken apart',
  outdoorUnit: 'Outdoor unit',
};
const verdictWords: Readonly<Record<Verdict, string>> = {
  yes: '✓ Yes',
  barely: '! Barely',
  no: '✗ No',
  pending: '… being worked out',
  unknown: '? Not known',
};

const nameOf = (w: Way): string => `${w.candidate} ${w.passage} ${w.piece}`;
const spareOf = (w: Way): number => verdictOf(w).spare ?? Number.POSITIVE_INFINITY;

/** Whether the boxes pass their openings: every unit at a glance, and any of them drawn on its way. */
export default function AccessResultSheets({ result }: { result: Access }) {
  return (
    <>
      <Sheet title="Ways in">
        <OutcomeOr outcome={result.ways} what="Whether the boxes pass">
          {(ways) => <WaysIn ways={ways} chosen={result.chosen.ok ? result.chosen.value : ''} />}
        </OutcomeOr>
      </Sheet>
      <AtticHoursSheet hours={result.heatHours} />
    </>
  );
}

/** The tightest way of the chosen unit's bare boxes is drawn first; another is picked by name. */
function WaysIn({ ways, chosen }: { ways: readonly Way[]; chosen: string }) {
  const [picked, pick] = useState('');
  const id = useId();
  const [tightest] = ways
    .filter((w) => w.candidate === chosen && w.piece !== 'handlerCrated' && w.passing.ok)
    .toSorted((x, y) => spareOf(x) - spareOf(y));
  const drawn = ways.find((w) => nameOf(w) === picked) ?? tightest ?? ways[0];
  return (
    <>
      <WaysTable ways={ways} />
      {drawn && (
        <p>
          <label htmlFor={id}>Drawn: </label>
          <select
            id={id}
            className="input passage-pick"
            value={nameOf(drawn)}
            onChange={(e) => pick(e.currentTarget.value)}
          >
            {ways.map((w) => (
              <option key={nameOf(w)} value={nameOf(w)}>
                {`${w.name}: ${w.unit}, ${pieceWords[w.piece].toLowerCase()}`}
              </option>
            ))}
          </select>
        </p>
      )}
      {drawn && <Drawn key={nameOf(drawn)} way={drawn} />}
    </>
  );
}

function Drawn({ way }: { way: Way }) {
  const { verdict, spare } = verdictOf(way);
  const piece = pieceWords[way.piece].toLowerCase();
  const passes = verdict === 'yes' || verdict === 'barely';
  return (
    <figure className="hatch">
      <p className="lead">
        {way.name}: the {piece} {passes ? 'passes' : verdict === 'no' ? 'does not pass' : 'may or may not pass'}
        {spare === undefined ? '.' : passes ? ', with ' : '; '}
        {spare !== undefined && <Quantity value={Math.abs(spare)} kind="length" />}
        {spare === undefined ? '' : passes ? ' to spare.' : ' are lacking.'}
      </p>
      {way.passing.ok && way.kind === 'hatch' && <HatchDrawing passing={way.passing.value} />}
      {way.planned.ok &&
        way.planned.value.stages.map((stage) => (
          <PassagePicture key={stage.view} stage={stage} passes={passes} name={`${way.name}, ${piece}`} />
        ))}
      <figcaption>
        {way.kind === 'hatch' &&
          'First the opening as a line with the end of the box that goes first, then its way, to scale. '}
        <WhatWouldDo way={way} passes={passes} />
      </figcaption>
    </figure>
  );
}

/** The height and opening that would do, and how it was proved. */
function WhatWouldDo({ way, passes }: { way: Way; passes: boolean }) {
  const planned = way.planned.ok ? way.planned.value : undefined;
  const opening = planned?.opening ?? (way.passing.ok ? way.passing.value.smallest : undefined);
  return (
    <>
      {planned?.headroom !== undefined && (
        <>
          <Quantity value={planned.headroom} kind="length" /> of free height above it are enough, room for hands
          counted.{' '}
        </>
      )}
      {!passes && opening && way.kind === 'hatch' && (
        <>
          An opening of <Quantity value={opening[0]} kind="length" /> by <Quantity value={opening[1]} kind="length" />{' '}
          would do.{' '}
        </>
      )}
      {planned?.answer === 'passes' && 'The way was replayed against framing, walls and roof. '}
      {planned?.answer === 'blocked' &&
        !passes &&
        'That no way exists square to the opening is proved; twisting it is not looked at. '}
      {way.asked.ok &&
        way.kind === 'hatch' &&
        way.asked.value.passage.headroom === undefined &&
        'Nobody has entered the height above it: no roof is drawn. '}
    </>
  );
}

function WaysTable({ ways }: { ways: readonly Way[] }) {
  return (
    <Scroll label="Every unit at every way in">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">Unit</th>
            <th scope="col">Piece</th>
            <th scope="col">Way in</th>
            <th scope="col">Passes</th>
            <th scope="col">To spare</th>
          </tr>
        </thead>
        <tbody>
          {ways.map((w) => {
            const { verdict, spare } = verdictOf(w);
            return (
              <tr key={nameOf(w)}>
                <th scope="row">{w.unit}</th>
                <td>{pieceWords[w.piece]}</td>
                <td>{w.name}</td>
                <td>{verdictWords[verdict]}</td>
                <td>{spare === undefined ? '–' : <Quantity value={spare} kind="length" />}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroll>
  );
}
