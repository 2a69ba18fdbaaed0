import type { Answer, Asked } from '@kneewall/engine';
import { StatusMark } from '../../../findings/StatusMark.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import type { On } from './unitMove.ts';

const wrong: Readonly<Record<Exclude<Answer['fits'], 'yes'>, string>> = {
  'off-wall': 'it stands out beyond the wall or the ground',
  covers: 'it covers something',
  'too-near': 'it stands too near something for its clearances',
  'too-high': 'it hangs higher than it can be lifted, cleaned and reached',
  'no-footing': 'nobody can stand firmly before it',
  ice: 'its water falls on a walk, a step or before a door, and freezes',
  line: 'it lies too near the property line',
};

/** What the place under the hand means, said at once. */
export function PlaceAnswer({ place, answer, asked }: { place: On; answer: Answer; asked: Asked }) {
  const { fits, inSnow, needed, stock, spare } = answer;
  const set = stock === undefined ? undefined : asked.stock[stock];
  const holds = fits === 'yes' && inSnow <= 1e-9 && set !== undefined;
  return (
    <p className="reach-answer" aria-live="polite">
      <StatusMark status={holds ? 'ok' : 'fails'} /> <PlaceNamed place={place} />:{' '}
      {set && spare !== undefined ? (
        <>
          the{' '}
          <strong>
            <Quantity value={set.length} kind="length" />
          </strong>{' '}
          set reaches and leaves <Quantity value={spare} kind="length" />
        </>
      ) : needed === undefined ? (
        'no way of the line leads there'
      ) : (
        <>
          no set reaches; the line takes <Quantity value={needed} kind="length" />
        </>
      )}
      {fits !== 'yes' && <>. No place for it: {wrong[fits]}</>}
      {inSnow > 1e-9 && (
        <>
          . Its base lies <Quantity value={inSnow} kind="length" /> too low for the snow
        </>
      )}
      .<Heard {...answer} />
    </p>
  );
}

/** A place by its measures from a corner of the wall. */
export function PlaceNamed({ place: { stands, x, z, out } }: { place: Omit<On, 'wall'> }) {
  return (
    <>
      <Quantity value={x} kind="length" /> from the left end,{' '}
      {stands === 'ground' && (
        <>
          <Quantity value={out} kind="length" /> out from the wall,{' '}
        </>
      )}
      base <Quantity value={z} kind="length" /> up
    </>
  );
}

/** Who hears it how loud. */
export function Heard({ bedroom, neighbour, line }: Pick<Answer, 'bedroom' | 'neighbour' | 'line'>) {
  const heard = [
    ['at the bedroom window', bedroom],
    ['at the neighbour’s', neighbour],
    ['at the property line', line],
  ] as const;
  const known = heard.flatMap(([where, level]) => (level === undefined ? [] : [{ where, level }]));
  if (known.length === 0) return null;
  return (
    <>
      {' '}
      Heard at{' '}
      {known.map(({ where, level }, i) => (
        <span key={where}>
          {i > 0 && ', '}
          <Quantity value={level} kind="sound-level" /> {where}
        </span>
      ))}
      .
    </>
  );
}
