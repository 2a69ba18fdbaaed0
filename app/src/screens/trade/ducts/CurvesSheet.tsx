import type { AirCurves, Plan } from '@kneewall/engine';
import { parseQuantity, printQuantity, type QuantityKind, type System } from '@kneewall/project';
import { ChartKey } from '../../../look/ChartKey.tsx';
import { FoldedTable } from '../../../look/FoldedTable.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { useRoom } from '../../../look/useRoom.ts';
import { Quantity } from '../../../quantity/Quantity.tsx';
import { useUnits } from '../../../services.ts';
import { OutcomeOr } from '../OutcomeOr.tsx';
import './CurvesSheet.css';
import { ductsLine } from './ductsLine.ts';

/** Blower and ducts over one axis of flow: where they meet is what flows. */
export function CurvesSheet({ plan }: { plan: Plan }) {
  const { air, equipment } = plan.trades;
  if (!air) return null;
  const unit = equipment?.chosen.ok ? equipment.candidates[equipment.chosen.value] : undefined;
  return (
    <Sheet title="Blower and ducts">
      <OutcomeOr outcome={air.curves} what="Where blower and ducts meet">
        {(curves) => <Curves curves={curves} most={unit?.blower.staticMost} />}
      </OutcomeOr>
    </Sheet>
  );
}

function Curves({ curves, most }: { curves: AirCurves; most: number | undefined }) {
  const { operating } = curves;
  return (
    <>
      <p className="lead">
        The blower’s curve and the ducts’ curve meet at <Quantity value={operating.flow} kind="flow" /> and{' '}
        <Quantity value={operating.pressure} kind="pressure" />.
        {most !== undefined && (
          <>
            {' '}
            The unit’s sheet allows <Quantity value={most} kind="pressure" />
            {operating.pressure > most ? ': it runs above that.' : '.'}
          </>
        )}
      </p>
      <CurvesPicture curves={curves} most={most} />
      <CurvesTable curves={curves} />
      <p className="field-help">
        Wider or shorter ducts lay the ducts’ curve flatter, and the two meet farther to the right. It is solved at each
        of the flows in the table, and only drawn on between them; both curves are for the air of this place at{' '}
        <Quantity value={20} kind="temperature" />.
      </p>
    </>
  );
}

/** Steps of the axes that read well in each system. */
const steps: Readonly<Record<System, { readonly flow: string; readonly pressure: string }>> = {
  us: { flow: '200 cfm', pressure: '0.2 inH2O' },
  si: { flow: '100 L/s', pressure: '50 Pa' },
};

/** Multiples of a step from nothing to an end. */
function ticks(step: string, kind: QuantityKind, end: number): number[] {
  const read = parseQuantity(step, kind);
  const size = read.ok ? read.value : end;
  return Array.from({ length: Math.floor(end / size) + 1 }, (_, i) => i * size);
}

const height = 280;

function CurvesPicture({ curves, most }: { curves: AirCurves; most: number | undefined }) {
  const [ref, { width, em }] = useRoom<HTMLElement>();
  const edge = { left: 4.9 * em, right: 12, top: 12, bottom: 2.4 * em };
  const units = useUnits();
  const { blower, rows, system, operating } = curves;
  const flowEnd = Math.max(...rows.map((p) => p.flow), operating.flow) * 1.04;
  const pressureEnd = Math.max(...rows.map((p) => p.pressure), operating.pressure, most ?? 0) * 1.08;
  const x = (flow: number) => edge.left + (Math.max(0, width - edge.left - edge.right) * flow) / flowEnd;
  const y = (pressure: number) => height - edge.bottom - ((height - edge.top - edge.bottom) * pressure) / pressureEnd;
  const line = (points: AirCurves['system']) => points.map((p) => `${x(p.flow)},${y(p.pressure)}`).join(' ');
  return (
    <figure className="air-curves" ref={ref}>
      {width > 0 && (
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true" focusable="false">
          {ticks(steps[units].pressure, 'pressure', pressureEnd).map((p) => (
            <g key={p}>
              <line className="grid" x1={edge.left} x2={width - edge.right} y1={y(p)} y2={y(p)} />
              <text className="at-left" x={edge.left - 6} y={y(p) + 4}>
                {printQuantity(p, 'pressure', units, { significant: 2 })}
              </text>
            </g>
          ))}
          {ticks(steps[units].flow, 'flow', flowEnd).map((q) => (
            <g key={q}>
              <line className="grid" x1={x(q)} x2={x(q)} y1={edge.top} y2={height - edge.bottom} />
              {q > 0 && (
                <text className="below" x={Math.min(x(q), width - 1.75 * em)} y={height - edge.bottom + 1.2 * em}>
                  {printQuantity(q, 'flow', units, { significant: 2 })}
                </text>
              )}
            </g>
          ))}
          {most !== undefined && (
            <line className="most" x1={edge.left} x2={width - edge.right} y1={y(most)} y2={y(most)} />
          )}
          <polyline className="ducts-curve" points={line(ductsLine(system, pressureEnd))} />
          <polyline className="blower-curve" points={line(blower)} />
          {rows.map((p) => (
            <circle key={p.flow} className="row" cx={x(p.flow)} cy={y(p.pressure)} r="3" />
          ))}
          <circle className="meets" cx={x(operating.flow)} cy={y(operating.pressure)} r="7" />
        </svg>
      )}
      <Key most={most !== undefined} />
    </figure>
  );
}

function Key({ most }: { most: boolean }) {
  const line = (className: string, said: string) => ({
    key: className,
    mark: <line className={className} x1="0" x2="32" y1="8" y2="8" />,
    said,
  });
  return (
    <ChartKey
      box={[32, 16]}
      entries={[
        line('blower-curve', 'blower, dots are the rows of its table'),
        line('ducts-curve', 'ducts, registers and filter'),
        ...(most ? [line('most', 'most that the unit’s sheet allows')] : []),
        { key: 'meets', mark: <circle className="meets" cx="16" cy="8" r="6" />, said: 'where it runs' },
      ]}
    />
  );
}

function CurvesTable({ curves }: { curves: AirCurves }) {
  const points = [
    ...curves.rows.map((p) => ({ ...p, of: 'Blower' })),
    ...curves.system.map((p) => ({ ...p, of: p.flow === curves.operating.flow ? 'Both: it runs here' : 'Ducts' })),
  ];
  return (
    <FoldedTable title="The curves in numbers" columns={['Curve', 'Flow', 'Pressure']}>
      {points.map((p) => (
        <tr key={`${p.of} ${p.flow}`}>
          <th scope="row">{p.of}</th>
          <td>
            <Quantity value={p.flow} kind="flow" />
          </td>
          <td>
            <Quantity value={p.pressure} kind="pressure" />
          </td>
        </tr>
      ))}
    </FoldedTable>
  );
}
