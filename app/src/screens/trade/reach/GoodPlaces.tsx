import { type Asked, type GoodPlace, nightMost } from '@kneewall/engine';
import { Button } from '../../../look/Button.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { useServices, useSession } from '../../../services.ts';
import { Heard, PlaceNamed } from './PlaceAnswer.tsx';
import { placeChanges } from './unitMove.ts';

/** The places worth choosing, the best first, each with why; choosing one writes it. */
export function GoodPlaces({
  places,
  asked,
  names,
}: {
  places: readonly GoodPlace[];
  asked: Asked;
  names: Readonly<Record<string, string>>;
}) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  if (places.length === 0)
    return <p>No set for sale surely reaches a place that is free, above the snow, and can be lifted to.</p>;
  return (
    <>
      <p>
        The quietest place of each set on each wall and before it, shorter sets first. Each is free, above the snow, can
        be lifted to and stood before, drips on no walk, and is reached even with the most spare.
      </p>
      <ol className="good-places">
        {places.map((p, i) => (
          <li key={`${p.wall} ${p.stands} ${p.stock}`}>
            <div>
              <strong>
                {i + 1}. {names[p.wall] ?? p.wall}, {p.stands === 'wall' ? 'hung on it' : 'on a stand before it'}
              </strong>
              : <PlaceNamed place={p} />.
              <span className="good-why">
                The <Quantity value={asked.stock[p.stock]?.length ?? 0} kind="length" /> set leaves{' '}
                <Quantity value={p.spare} kind="length" />.<Heard {...p} /> To lift:{' '}
                <Quantity value={p.z} kind="length" />; <Quantity value={p.z - asked.unit.baseLeast} kind="length" />{' '}
                over what the snow asks.
                {Math.max(p.bedroom ?? 0, p.neighbour ?? 0) > nightMost && (
                  <>
                    {' '}
                    Louder than the <Quantity value={nightMost} kind="sound-level" /> usual at night.
                  </>
                )}
              </span>
            </div>
            <Button
              disabled={barred}
              aria-label={`Put the unit at place ${i + 1}`}
              onClick={() => session.change(placeChanges(p))}
            >
              Put it here
            </Button>
          </li>
        ))}
      </ol>
    </>
  );
}
