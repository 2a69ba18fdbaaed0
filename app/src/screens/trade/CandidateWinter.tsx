import type { Winter } from '@kneewall/engine';
import { printQuantity } from '@kneewall/project';
import { ChartKey } from '../../look/ChartKey.tsx';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useUnits } from '../../services.ts';
import { RibbonPatch } from './WinterRibbon.tsx';
import { type Way, waysOf } from './winterWays.ts';
import './WinterRibbon.css';
import './CandidateWinter.css';

const width = 300;
const height = 84;
const foot = 17;

/** The heating hours of a year by outdoor temperature, coldest on the left, by how this unit would run in them. */
export function CandidateWinter({ name, winter }: { name: string; winter: Winter }) {
  const units = useUnits();
  const { bins } = winter;
  const ways = waysOf(winter);
  const most = Math.max(...bins.map((b) => ways.reduce((sum, { key }) => sum + b[key], 0)), 1);
  const [first, last] = [bins[0]?.from ?? 0, (bins.at(-1)?.from ?? 0) + winter.width];
  const x = (t: number) => (width * (t - first)) / Math.max(1, last - first);
  const tens = Array.from({ length: 13 }, (_, i) => -60 + 10 * i).filter((t) => t > first && t < last);
  if (bins.length === 0) return null;
  return (
    <figure className="ribbon candidate-winter">
      <figcaption>The winter, from its coldest hours to its mildest</figcaption>
      <svg viewBox={`0 0 ${width} ${height + foot}`} aria-hidden="true" focusable="false">
        {bins.map((bin) => (
          <Column
            key={bin.from}
            bin={bin}
            ways={ways}
            x={x(bin.from) + 1}
            width={x(first + winter.width) - 2}
            most={most}
          />
        ))}
        {tens.map((t) => (
          <g key={t}>
            <line className="candidate-ten" x1={x(t)} x2={x(t)} y1={height} y2={height + 4} />
            <text x={Math.max(14, Math.min(width - 14, x(t)))} y={height + 14}>
              {printQuantity(t, 'temperature', units)}
            </text>
          </g>
        ))}
      </svg>
      <ChartKey
        box={[12, 12]}
        entries={ways.map(({ key, word, mark, hours }) => ({
          key,
          mark: <RibbonPatch way={mark} />,
          said: `${word}: ${Math.round(hours)} h`,
        }))}
      />
      <FoldedTable title="This winter in hours" columns={['Outdoors', ...ways.map((w) => w.word)]}>
        {bins.map((bin) => (
          <tr key={bin.from}>
            <th scope="row">
              <span className="unseen">{name}, </span>
              <Quantity value={bin.from} kind="temperature" /> to{' '}
              <Quantity value={bin.from + winter.width} kind="temperature" />
            </th>
            {ways.map(({ key }) => (
              <td key={key}>{Math.round(bin[key])}</td>
            ))}
          </tr>
        ))}
      </FoldedTable>
    </figure>
  );
}

type ColumnProps = {
  readonly bin: Winter['bins'][number];
  readonly ways: readonly Way[];
  readonly x: number;
  readonly width: number;
  readonly most: number;
};

function Column({ bin, ways, x, width: wide, most }: ColumnProps) {
  let below = height;
  return ways.map(({ key, mark }) => {
    const tall = ((height - 2) * bin[key]) / most;
    below -= tall;
    return tall > 0 ? <rect key={key} className={`ribbon-${mark}`} x={x} width={wide} y={below} height={tall} /> : null;
  });
}
