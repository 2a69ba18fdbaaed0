import type { PowerSizes } from '@kneewall/engine';
import { Scroll } from '../../look/Scroll.tsx';

/** Hours of generator (or of want) over other sizes of panels and battery; what is there is marked. */
export function PowerSizesTable({ sizes }: { sizes: PowerSizes }) {
  const title = sizes.of === 'generator' ? 'Hours of the generator in a year' : 'Hours in which power is short';
  return (
    <>
      <Scroll label={title}>
        <table className="table">
          <caption>{title}</caption>
          <thead>
            <tr>
              <th scope="col">Battery</th>
              {sizes.arrays.map((a) => (
                <th key={a} scope="col">
                  panels × {a}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {sizes.battery.map((b, i) => (
              <tr key={b}>
                <th scope="row">× {b}</th>
                {sizes.arrays.map((a, j) => {
                  const hours = Math.round(sizes.hours[i]?.[j] ?? 0);
                  return <td key={a}>{a === 1 && b === 1 ? <strong>{hours} (yours)</strong> : hours}</td>;
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        The year’s demand replayed through other sizes by the same rules: the house is given all the heat it wants, so
        this says what a size would spare, not how cold the house gets.
      </p>
    </>
  );
}
