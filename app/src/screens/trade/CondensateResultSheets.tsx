import { type TrapPicture, trapOf, trapSvg } from '@kneewall/documents';
import type { Plan, TradeResults } from '@kneewall/engine';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { useSession, useUnits } from '../../services.ts';
import { OutcomeOr } from './OutcomeOr.tsx';
import './TrapDrawing.css';

type Condensate = TradeResults['condensate'];

/** The trap to build, to look at and to print at full size. */
export function CondensateResultSheets({ result, plan }: { result: Condensate; plan: Plan }) {
  const project = useSession((s) => s.project);
  const units = useUnits();
  const found = trapOf(plan, project);
  return (
    <Sheet title="The trap">
      <OutcomeOr outcome={result.trap} what="The trap">
        {({ drop, seal }) => (
          <>
            <p className="lead">
              <Quantity value={drop} kind="length" /> from the cabinet’s outlet down to the trap’s own, and a seal of{' '}
              <Quantity value={seal} kind="length" /> below that.
            </p>
            {found && <TrapDrawing {...found} />}
            <p>
              Both are measured at the undersides of the pipes; the seal ends at the upper side of the lowest one. They
              are for the most that the blower {result.pulls ? 'pulls' : 'pushes'} at the drain, a loaded filter and a
              wet coil counted. The maker’s own drawing stands above this one.
            </p>
            <p>
              <Button onClick={() => handOver('trap.svg', trapSvg(plan, project, units) ?? '', 'image/svg+xml')}>
                Save it at full size
              </Button>
            </p>
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

const pointsOf = (points: readonly (readonly [number, number])[]): string => points.map((p) => p.join(',')).join(' ');

function TrapDrawing({ picture, inner, outer }: { picture: TrapPicture; inner: number; outer: number }) {
  const { left, right, top, bottom } = picture.box;
  return (
    <svg
      className="trap-drawing"
      viewBox={`${left} ${top} ${right - left} ${bottom - top}`}
      role="img"
      aria-label="The trap from the side: down from the cabinet, across under standing water, up to a lower outlet, then an open vent and the drain."
    >
      {picture.pipe.map((p) => (
        <polyline key={`pipe ${pointsOf(p)}`} points={pointsOf(p)} className="trap-pipe" strokeWidth={outer} />
      ))}
      {picture.pipe.map((p) => (
        <polyline key={`bore ${pointsOf(p)}`} points={pointsOf(p)} className="trap-bore" strokeWidth={inner} />
      ))}
      <polygon points={pointsOf(picture.water)} className="trap-water" />
      <line x1={0} y1={-outer - 14} x2={0} y2={bottom - 6} className="trap-casing" />
      {picture.measures.map((m) => (
        <path
          key={m.id}
          d={`M${m.at - 2} ${m.from}h12M${m.at} ${m.from}V${m.to}M${m.at - 2} ${m.to}h12`}
          className="trap-measure"
        />
      ))}
      {picture.names.map(({ at, text }) => (
        <text key={`${text} ${at[0]}`} x={at[0]} y={at[1]}>
          {text}
        </text>
      ))}
    </svg>
  );
}
