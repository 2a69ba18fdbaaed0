import { type ControlWay, countOf, type Foresight, type Plan, savedBy } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import './ForesightSheet.css';
import { JobOffer } from './JobOffer.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

/** What smarter control could still save, up to what no control can better; worked out when somebody asks. */
export function ForesightSheet({ outcome }: { outcome: Plan['season']['foresight'] }) {
  return (
    <Sheet title="What smarter control could save">
      {!outcome.ok && outcome.because === 'pending' ? (
        <JobOffer kind="coupling/foresight" name="What smarter control could save">
          The same house, sun and loads, run by a simple rule for battery, generator and thermostat, and beside it the
          least that any control could burn, the whole year’s weather known beforehand. About half a minute, more on a
          phone; the first time it fetches a solver of a megabyte.
        </JobOffer>
      ) : (
        <OutcomeOr outcome={outcome} what="What smarter control could save">
          {(year) => <Told year={year} />}
        </OutcomeOr>
      )}
    </Sheet>
  );
}

function Told({ year }: { year: Foresight }) {
  const fuel = year.of === 'fuel';
  return (
    <>
      <p className="lead">
        A simple rule saves <Quantity value={savedBy(year, 'rule')} kind="fraction" />{' '}
        {fuel ? 'of the generator’s fuel' : 'of the cold'}; no control, however clever, could save more than{' '}
        <Quantity value={savedBy(year, 'best')} kind="fraction" />.
      </p>
      <Ways year={year} />
      <TheRule year={year} />
      <p className="field-help">
        The two last lines are bounds, not plans: they know all weather beforehand,{' '}
        {fuel && 'burn fuel as an engine at full load does, '}and may let the house be{' '}
        <Quantity value={year.band.warmer} kind="temperature-difference" /> warmer or{' '}
        <Quantity value={year.band.cooler} kind="temperature-difference" /> cooler than you want. Cells are as cold as
        in the year as it is set up; what warmer cells would do, “What would help” says. Found by a linear programme and
        proved by our own check of its answer. In it the house is air and one mass whose warmth fades in{' '}
        {Math.round(year.house.fades)} hours; where the house itself strays by{' '}
        <Quantity value={year.house.stray} kind="temperature-difference" significant={2} />, that misses it by{' '}
        <Quantity value={year.house.missed} kind="temperature-difference" significant={2} />. No stove is lit in any of
        them.
      </p>
    </>
  );
}

function TheRule({ year: { of, rule } }: { year: Foresight }) {
  const fuel = of === 'fuel';
  return (
    <>
      <h3>The rule</h3>
      <ul className="asides">
        <li>
          While the battery is full and sun is turned away, heat to{' '}
          <Quantity value={rule.ahead} kind="temperature-difference" /> more than you want.
        </li>
        <li>
          {fuel ? 'While the generator runs, and in the' : 'In the'} dark before a dark day, heat to{' '}
          <Quantity value={rule.cooler} kind="temperature-difference" /> less. A dark day gives less than half of what a
          day takes.
        </li>
        {fuel && (
          <li>
            Stop the generator from <Quantity value={rule.restAt} kind="fraction" /> of charge on, unless the day ahead
            is dark.
          </li>
        )}
      </ul>
    </>
  );
}

const words: Readonly<Record<Exclude<ControlWay['id'], 'cooler'>, string>> = {
  'as-set': 'As it is set up now',
  'rule-like-today': 'The rule, tomorrow taken to be like today',
  rule: 'The rule, with a good forecast',
  timing: 'At best, by battery and generator alone',
  best: 'At best, with the house as a store of heat',
};

function Ways({ year }: { year: Foresight }) {
  const most = Math.max(...year.ways.map((way) => countOf(year, way)), 1e-9);
  const fuel = year.of === 'fuel';
  return (
    <Scroll label="Ways to run it">
      <table className="table control-ways">
        <thead>
          <tr>
            <th scope="col">How it is run</th>
            <th scope="col">{fuel ? 'Fuel' : 'Cold'}</th>
            <th scope="col">Saved</th>
            {fuel && <th scope="col">Generator, hours</th>}
          </tr>
        </thead>
        <tbody>
          {year.ways.map((way) => (
            <tr key={way.id} className={way.hours === undefined && fuel ? 'bound' : ''}>
              <th scope="row">
                {way.id === 'cooler' ? (
                  <>
                    The house always <Quantity value={year.band.cooler} kind="temperature-difference" /> cooler
                  </>
                ) : (
                  words[way.id]
                )}
              </th>
              <td>
                <svg className="control-bar" viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
                  <rect width={(100 * countOf(year, way)) / most} height="6" />
                </svg>
                {fuel ? (
                  <Quantity value={way.litres / 1000} kind="volume" significant={3} />
                ) : (
                  <Quantity value={way.cold} kind="degree-hours" />
                )}
              </td>
              <td>{way.id === 'as-set' ? '' : <Quantity value={savedBy(year, way.id)} kind="fraction" />}</td>
              {fuel && <td>{way.hours === undefined ? '' : Math.round(way.hours)}</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}
